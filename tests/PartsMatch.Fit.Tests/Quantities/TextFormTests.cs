using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Quantities;

/// <summary>Texts as the trade writes them, and what they mean.</summary>
public sealed class TextFormTests
{
    /// <summary>More than are kept, each twice and from several threads.</summary>
    [Fact]
    public void A_text_reads_as_it_did_whatever_was_read_before()
    {
        var form = TextForms.Of<Length>();
        Parallel.For(0, 6_000, turn =>
        {
            var text = FormattableString.Invariant($"{turn % 3_000 / 8.0} {(turn % 5 == 0 ? "furlongs" : "in")}");
            var (any, fresh) = (form.ReadAny(text), form.Read(text));
            (any.IsRead, any.Wrong).ShouldBe((fresh.IsRead, fresh.Wrong));
            if (fresh.IsRead) any.Value.ShouldBe(fresh.Value);
        });
    }

    // Units: NIST SP 811 (published): electric horsepower 746 W exactly, inch 25.4 mm exactly. The rest is arithmetic, worked by hand.
    [Theory]
    [InlineData("1/4 hp", 186.5)]
    [InlineData("1/4HP", 186.5)]
    [InlineData("0.25 hp", 186.5)]
    [InlineData(".25 hp", 186.5)]
    [InlineData("1-1/2 hp", 1119)]
    [InlineData("1 1/2 HP", 1119)]
    [InlineData("0,37 kW", 370)]
    [InlineData("16 W", 16)]
    [InlineData("1/20 hp", 37.3)]
    [InlineData("1 / 4 hp", 186.5)]
    [InlineData("1/ 4 hp", 186.5)]
    [InlineData("1 1 / 2 HP", 1119)]
    [InlineData("1-1 / 2 HP", 1119)]
    [InlineData("1\u20444 hp", 186.5)]
    [InlineData("1\u22154 hp", 186.5)]
    [InlineData("¼ hp", 186.5)]
    [InlineData("1½ hp", 1119)]
    [InlineData("１／４ ｈｐ", 186.5)]
    public void A_power_is_read_as_the_trade_writes_it(string text, double watts) =>
        QuantityForms.Power.Read(text).Value.Watts.ShouldBe((decimal)watts, 1e-9m);

    [Theory]
    [InlineData("1/2 in", 12.7)]
    [InlineData("1/2\"", 12.7)]
    [InlineData("5.6 in", 142.24)]
    [InlineData("7/16 inch", 11.1125)]
    [InlineData("7 / 16 in", 11.1125)]
    [InlineData("¾ in", 19.05)]
    [InlineData("1¾\"", 44.45)]
    [InlineData("8 mm", 8)]
    [InlineData("3,5 cm", 35)]
    [InlineData("2 ft", 609.6)]
    public void A_length_is_read_with_its_unit(string text, double millimetres) =>
        QuantityForms.Length.Read(text).Value.Millimeters.ShouldBe(millimetres, 1e-9);

    [Theory]
    [InlineData("140 °F", 60)]
    [InlineData("140F", 60)]
    [InlineData("60C", 60)]
    [InlineData("-10 °F", -23.3333333333)]
    [InlineData("−10 F", -23.3333333333)]
    public void A_temperature_is_read_with_its_unit_and_sign(string text, double celsius) =>
        QuantityForms.Temperature.Read(text).Value.DegreesCelsius.ShouldBe(celsius, 1e-9);

    [Theory]
    [InlineData("1 hp = 550 ft lbf/s is 745.7 W", "not a power")]
    [InlineData("1/0 hp", "not a power")]
    [InlineData("-1/4 hp", "not a power")]
    [InlineData("1e999 hp", "not a power")]
    [InlineData("1/4", "not a power")]
    [InlineData("", "nothing is written")]
    [InlineData("🔥", "not a power")]
    [InlineData("99999999999999999999999999999999 hp", "not a power")]
    [InlineData("5000000 kW", "outside 0.1 to 1000000 W")]
    public void What_is_no_power_is_refused_with_a_reason(string text, string reason) =>
        QuantityForms.Power.Read(text).Wrong.ShouldNotBeNull().ShouldContain(reason);

    [Fact]
    public void A_comma_that_may_mean_a_thousand_or_a_decimal_is_not_guessed()
    {
        QuantityForms.Speed.Read("1,075 rpm").IsRead.ShouldBeFalse();
        QuantityForms.Amps.Read("2,6 A").Value.Amperes.ShouldBe(2.6);
    }

    [Theory]
    [InlineData("230", 230)]
    [InlineData("230 VAC", 230)]
    [InlineData("207.5V", 207.5)]
    public void Volts_may_stand_without_their_unit(string text, double volts) => QuantityForms.Volts.Read(text).Value.Volts.ShouldBe(volts);

    // Slashed volts of a ratio up to 1.25 are a span, above it taps (practice); a written "to" is a span of any width.
    [Theory]
    [InlineData("208-230 V", "208-230 V")]
    [InlineData("208/230", "208-230 V")]
    [InlineData("230/208", "208-230 V")]
    [InlineData("115/208-230", "115/208-230 V")]
    [InlineData("115/230 V", "115/230 V")]
    [InlineData("115-230 V", "115/230 V")]
    [InlineData("208-230/460 V", "208-230/460 V")]
    [InlineData("200/208/230 V", "200-230 V")]
    [InlineData("230/400 V", "230/400 V")]
    [InlineData("115V/230V", "115/230 V")]
    [InlineData("115 / 230 V", "115/230 V")]
    [InlineData("115\u2044230 V", "115/230 V")]
    [InlineData("115\u2215230 V", "115/230 V")]
    [InlineData("１１５／２３０ V", "115/230 V")]
    [InlineData("100 to 240 V", "100 to 240 V")]
    [InlineData("200-250 V", "200-250 V")]
    [InlineData("200-251 V", "200/251 V")]
    public void Slashes_and_dashes_between_volts_make_taps_or_a_span_by_their_ratio(string text, string written)
    {
        var form = TextForms.Of<Figures<Spread<ElectricPotential>>>();
        form.Write(form.Read(text).Value!).ShouldBe(written);
    }

    [Theory]
    [InlineData("5.4/2.8 A", "5.4/2.8 A")]
    [InlineData("7.4/3.9-3.7A", "7.4/3.9-3.7 A")]
    [InlineData("2.8-2.6", "2.8-2.6 A")]
    public void Amps_keep_the_order_in_which_they_stand(string text, string written)
    {
        var form = TextForms.Of<Figures<Spread<ElectricCurrent>>>();
        form.Write(form.Read(text).Value!).ShouldBe(written);
    }

    [Theory]
    [InlineData("1.3-1.0-0.8 A", "1.3/1/0.8 A")]
    [InlineData("1.3-1.1-0.9 A", "1.3/1.1/0.9 A")]
    [InlineData("2.0-1.8-1.6-1.4 A", "2/1.8/1.6/1.4 A")]
    [InlineData("1.9-1.5-1.0/0.8 A", "1.9/1.5/1/0.8 A")]
    [InlineData("5.0-4.8-2.4 A", "5-4.8/2.4 A")]
    [InlineData("2.4-1.3-1.2 A", "2.4/1.3-1.2 A")]
    [InlineData("5.0-4.8/2.5-2.4 A", "5-4.8/2.5-2.4 A")]
    public void Three_amps_with_dashes_are_three_steps_unless_two_are_the_ends_of_a_span_and_the_third_another_tap(string text, string written)
    {
        var form = TextForms.Of<Figures<Spread<ElectricCurrent>>>();
        form.Write(form.Read(text).Value!).ShouldBe(written);
    }

    [Theory]
    [InlineData("3/4-1/3 HP", 559.5, 248.6666667)]
    [InlineData("3/4/1/3 HP", 559.5, 248.6666667)]
    [InlineData("1/2 - 1/4 hp", 373, 186.5)]
    [InlineData("1 / 1/2 hp", 746, 373)]
    [InlineData("3 / 4 / 1 / 3 hp", 559.5, 248.6666667)]
    [InlineData("3 / 4 - 1 / 3 hp", 559.5, 248.6666667)]
    [InlineData("3 / 4-1 / 3 hp", 559.5, 248.6666667)]
    [InlineData("3 / 2 hp", 2238, 1492)]
    [InlineData("1 / 2-1/2 hp", 746, 1865)]
    [InlineData("1 / 2.5 hp", 746, 1865)]
    [InlineData("5 / 7 hp", 3730, 5222)]
    [InlineData("1 hp / 4 hp", 746, 2984)]
    [InlineData("1 / 4 kW", 1000, 4000)]
    [InlineData("0,37/0,25 kW", 370, 250)]
    public void Powers_of_two_speeds_stand_side_by_side(string text, double high, double low) =>
        TextForms.Of<Figures<Power>>().Read(text).Value!.Select(power => (double)power.Watts).ShouldBe([high, low], 1e-6);

    [Theory]
    [InlineData("1 / 4 hp", "1/4 hp")]
    [InlineData("1 hp / 4 hp", "1 hp / 4 hp")]
    [InlineData("3/2 hp", "1-1/2 hp")]
    [InlineData("3 / 2 hp", "3 / 2 hp")]
    public void One_horsepower_and_four_are_written_apart_from_a_quarter(string text, string written)
    {
        var form = TextForms.Of<Figures<Power>>();
        var read = form.Read(text).Value!;
        form.Write(read).ShouldBe(written);
        form.Read(form.Write(read)).Value.ShouldBe(read);
    }

    [Fact]
    public void One_and_a_half_horsepower_is_one_figure() =>
        TextForms.Of<Figures<Power>>().Read("1-1/2 hp").Value!.Count.ShouldBe(1);

    [Fact]
    public void More_than_twelve_figures_are_a_slip() =>
        TextForms.Of<Figures<RotationalSpeed>>().Read(string.Join('/', Enumerable.Repeat("1075", 13))).IsRead.ShouldBeFalse();

    [Theory]
    [InlineData("5 µF 370 V", "5 µF 370 V")]
    [InlineData("5/370", "5 µF 370 V")]
    [InlineData("5 MFD 370 VAC", "5 µF 370 V")]
    [InlineData("7.5UF/440V", "7.5 µF 440 V")]
    [InlineData("45+5 µF 440 V", "45+5 µF 440 V")]
    [InlineData("45+5/440", "45+5 µF 440 V")]
    [InlineData("8µF 400V", "8 µF 400 V")]
    [InlineData("2,5 µF 450 V", "2.5 µF 450 V")]
    [InlineData("10 µF", "10 µF")]
    [InlineData("none", "none")]
    [InlineData("40/5 mfd 440", "40+5 µF 440 V")]
    [InlineData("40/5", "40+5 µF")]
    [InlineData("45/5/440", "45+5 µF 440 V")]
    [InlineData("10 mfd 440", "10 µF 440 V")]
    [InlineData("10µF 440", "10 µF 440 V")]
    [InlineData("7.5 uf 370v", "7.5 µF 370 V")]
    [InlineData("45+5 MFD 370/440 VAC", "45+5 µF 440 V")]
    [InlineData("MFD 10 VAC 370", "10 µF 370 V")]
    [InlineData("5 mfd / 370 VAC", "5 µF 370 V")]
    [InlineData("5 µF @ 370", "5 µF 370 V")]
    [InlineData("5\u2044370", "5 µF 370 V")]
    [InlineData("5½ µF 370 V", "5.5 µF 370 V")]
    public void A_capacitor_is_read_with_its_volts(string text, string written) =>
        CapacitorRating.Form.Write(CapacitorRating.Form.Read(text).Value!).ShouldBe(written);

    // A start capacitor's span is no capacitance, two voltages are none, and the smaller section stands second (practice).
    [Theory]
    [InlineData("88-108 µF 250 V")]
    [InlineData("88/108 µF 250 V")]
    [InlineData("370/440 V")]
    [InlineData("10-370")]
    [InlineData("10 370")]
    [InlineData("5 V 370 µF")]
    [InlineData("5 µF 370 µF 440 V")]
    [InlineData("45+5+5 µF 440 V")]
    [InlineData("440 VAC")]
    [InlineData("⅓ µF")]
    public void What_is_no_capacitors_marking_is_refused_and_quoted(string text) => CapacitorRating.Form.Read(text).Wrong.ShouldNotBeNull().ShouldContain($"“{text}”");

    // NEMA MG 1 4.2 and IEC 60072-1: whose number it is.
    [Theory]
    [InlineData("48y", FrameSystem.Nema, 48, "Y", false)]
    [InlineData("56C", FrameSystem.Nema, 56, "C", true)]
    [InlineData("143T", FrameSystem.Nema, 143, "T", true)]
    [InlineData("56HZ", FrameSystem.Nema, 56, "HZ", false)]
    [InlineData("IEC 56", FrameSystem.Iec, 56, "", true)]
    [InlineData("71", FrameSystem.Iec, 71, "", true)]
    [InlineData("90S", FrameSystem.Iec, 90, "S", true)]
    public void A_frame_is_read_with_its_suffix(string text, FrameSystem system, int number, string suffix, bool promises)
    {
        var frame = FrameSize.Form.Read(text).Value!;
        (frame.System, frame.Number, frame.Suffix, frame.PromisesDimensions).ShouldBe((system, number, suffix, promises));
    }

    [Theory]
    [InlineData("1")]
    [InlineData("48QQQQQ")]
    [InlineData("IEC 9999")]
    [InlineData("frame")]
    public void What_is_no_frame_is_refused(string text) => FrameSize.Form.Read(text).Wrong.ShouldNotBeNull().ShouldContain("48Y");
}
