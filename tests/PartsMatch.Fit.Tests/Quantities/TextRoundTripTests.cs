using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Quantities;

/// <summary>Whatever a text form writes in the units given, it reads back as an equal value: on an English, a German and a Swedish machine.</summary>
public sealed class TextRoundTripTests
{
    private static readonly string[] Cultures = ["en-US", "de-DE", "sv-SE"];

    public static TheoryData<TextForm> Forms => [.. Families.All
        .SelectMany(family => family.SpecShape.Fields.Concat(family.SiteShape.Fields))
        .Select(one => one.Form)
        .DistinctBy(form => form.ValueType)];

    [Theory]
    [MemberData(nameof(Forms))]
    public void The_example_of_every_form_reads_and_writes_back_to_an_equal_value(TextForm form) => InEveryCulture(() =>
    {
        var reading = form.ReadAny(form.Example);
        reading.IsRead.ShouldBeTrue($"{form.Example}: {reading.Wrong}");
        form.ReadAny(form.WriteAny(reading.Value, Units.AsGiven)).Value.ShouldBe(reading.Value);
    });

    [Theory]
    [MemberData(nameof(Forms))]
    public void Every_choice_of_every_form_reads_and_is_written_as_it_stands_in_the_list(TextForm form)
    {
        foreach (var choice in form.Choices) form.WriteAny(form.ReadAny(choice).Value!, Units.AsGiven).ShouldBe(choice);
    }

    [Property]
    public Property Every_quantity_reads_back_in_every_unit_it_may_stand_in() => Prop.ForAll(
        Gen.Choose(1, 999_999).Zip(Gen.Choose(0, 6)).ToArbitrary(),
        pair =>
        {
            var number = pair.Item1 / Math.Pow(10, pair.Item2);
            InEveryCulture(() =>
            {
                ReadsBack(QuantityForms.Power, number, QuantityForms.Power.Us, QuantityForms.Power.Si);
                ReadsBack(QuantityForms.Length, number, QuantityForms.Length.Us, QuantityForms.Length.Si);
                ReadsBack(QuantityForms.Temperature, number / 10, QuantityForms.Temperature.Us, QuantityForms.Temperature.Si);
                ReadsBack(QuantityForms.Volts, number, QuantityForms.Volts.Si);
                ReadsBack(QuantityForms.Amps, number, QuantityForms.Amps.Si);
                ReadsBack(QuantityForms.Hertz, number, QuantityForms.Hertz.Si);
                ReadsBack(QuantityForms.Speed, number, QuantityForms.Speed.Si);
                ReadsBack(QuantityForms.Capacitance, number, QuantityForms.Capacitance.Si);
                ReadsBack(QuantityForms.Percent, number, QuantityForms.Percent.Si);
                ReadsBack(QuantityForms.Angle, number, QuantityForms.Angle.Si);
            });
        });

    [Fact]
    public void A_small_number_is_written_without_an_exponent()
    {
        var degrees = Temperature.FromDegreesFahrenheit(0.0000685);
        QuantityForms.Temperature.Write(degrees).ShouldBe("0.0000685 °F");
        QuantityForms.Temperature.Read("0.0000685 °F").Value.ShouldBe(degrees);
    }

    [Property]
    public Property Any_double_in_range_reads_back_to_the_last_bit() => Prop.ForAll(
        ArbMap.Default.ArbFor<NormalFloat>(),
        any =>
        {
            var volts = ElectricPotential.FromVolts(1 + (Math.Abs(any.Get) % 14_000));
            InEveryCulture(() => QuantityForms.Volts.Read(QuantityForms.Volts.Write(volts)).Value.Volts.ShouldBe(volts.Volts));
        });

    [Property]
    public Property Fractions_of_a_horsepower_and_of_an_inch_read_back() => Prop.ForAll(
        Gen.Elements(2, 3, 4, 5, 6, 8, 10, 12, 15, 16, 20, 25, 30, 32, 50, 64, 100).Zip(Gen.Choose(0, 9)).ToArbitrary(),
        pair =>
        {
            var horsepower = Power.From(pair.Item2 + (1m / pair.Item1), UnitsNet.Units.PowerUnit.ElectricalHorsepower);
            var inches = Length.FromInches(pair.Item2 + (1.0 / pair.Item1));
            InEveryCulture(() =>
            {
                QuantityForms.Power.Write(horsepower).ShouldContain($"1/{pair.Item1} hp");
                QuantityForms.Power.Read(QuantityForms.Power.Write(horsepower)).Value.ShouldBe(horsepower);
                if (FractionText.DividesAnInch(pair.Item1)) QuantityForms.Length.Read(QuantityForms.Length.Write(inches)).Value.ShouldBe(inches);
            });
        });

    [Property]
    public Property Figures_side_by_side_read_back() => Prop.ForAll(
        Gen.Choose(1, 4000).NonEmptyListOf().Where(list => list.Count <= 5).ToArbitrary(),
        numbers =>
        {
            var speeds = new Figures<RotationalSpeed>(numbers.Select(number => RotationalSpeed.FromRevolutionsPerMinute(number)));
            var powers = new Figures<Power>(numbers.Select(number => Power.From(1m / number, UnitsNet.Units.PowerUnit.ElectricalHorsepower)));
            var wholePowers = new Figures<Power>(numbers.Select(number => Power.From(1 + ((decimal)number % 12), UnitsNet.Units.PowerUnit.ElectricalHorsepower)));
            var amps = new Figures<Spread<ElectricCurrent>>(numbers.Select(number => new Spread<ElectricCurrent>(ElectricCurrent.FromAmperes(number / 10.0), ElectricCurrent.FromAmperes(number / 11.0))));
            InEveryCulture(() =>
            {
                TextForms.Of<Figures<RotationalSpeed>>().Read(TextForms.Of<Figures<RotationalSpeed>>().Write(speeds)).Value.ShouldBe(speeds);
                TextForms.Of<Figures<Power>>().Read(TextForms.Of<Figures<Power>>().Write(powers)).Value.ShouldBe(powers);
                TextForms.Of<Figures<Power>>().Read(TextForms.Of<Figures<Power>>().Write(wholePowers)).Value.ShouldBe(wholePowers);
                TextForms.Of<Figures<Spread<ElectricCurrent>>>().Read(TextForms.Of<Figures<Spread<ElectricCurrent>>>().Write(amps)).Value.ShouldBe(amps);
            });
        });

    [Property]
    public Property Taps_read_back_whatever_their_spans() => Prop.ForAll(
        Gen.Choose(100, 150).Zip(Gen.Choose(0, 120)).NonEmptyListOf().Where(list => list.Count <= 3).ToArbitrary(),
        spans =>
        {
            // Taps of a plate lie more than 1.25 apart, else they would be one span: each is twice the one before.
            var taps = new Figures<Spread<ElectricPotential>>(spans.Select((span, index) =>
            {
                var low = span.Item1 * Math.Pow(3, index);
                return new Spread<ElectricPotential>(ElectricPotential.FromVolts(low), ElectricPotential.FromVolts(low + span.Item2));
            }));
            InEveryCulture(() => TextForms.Of<Figures<Spread<ElectricPotential>>>().Read(TextForms.Of<Figures<Spread<ElectricPotential>>>().Write(taps)).Value.ShouldBe(taps));
        });

    [Property]
    public void No_text_makes_any_form_throw(string? text)
    {
        foreach (var form in Forms)
        {
            var reading = form.Data.ReadAny(text ?? string.Empty);
            (reading.IsRead || reading.Wrong!.Length > 0).ShouldBeTrue();
        }
    }

    private static void ReadsBack<T>(QuantityForm<T> form, double number, params UnitText[] units)
        where T : struct, IQuantity
    {
        foreach (var unit in units)
        {
            var value = (T)(default(T).Value.IsDecimal ? Quantity.From((decimal)number, unit.Unit) : Quantity.From(number, unit.Unit));
            var si = value.As(form.Si.Unit);
            if (si < form.Least || si > form.Most)
            {
                form.Read(form.Write(value)).IsRead.ShouldBeFalse();
                continue;
            }

            form.Read(form.Write(value)).Value.ShouldBe(value);

            // Converted texts are rounded to the trade's precision, so they read back to within half of the last digit.
            foreach (var system in new[] { Units.Us, Units.Si })
            {
                var isLarge = form.Large is { } large && si >= large.From;
                var shown = system == Units.Us ? isLarge ? form.Large!.Value.Us : form.Us : isLarge ? form.Large!.Value.Si : form.Si;
                var written = form.Read(form.Write(value, system));
                if (written.IsRead) written.Value.As(shown.Unit).ShouldBe(value.As(shown.Unit), (0.5 * Math.Pow(10, -shown.Digits)) + 1e-9);
            }
        }
    }

    private static void InEveryCulture(Action check)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            foreach (var culture in Cultures)
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                check();
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
