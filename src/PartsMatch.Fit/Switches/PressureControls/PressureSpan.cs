using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>Gauge pressures from one to another, or a single one: 100 to 400 psi, -0.3 to 7 bar, 20 psi.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The higher end; the same again for a single pressure.</param>
public sealed record PressureSpan(Pressure Low, Pressure High) : IHaveTextForm<PressureSpan>
{
    /// <inheritdoc/>
    public static TextForm<PressureSpan> Form { get; } = new PressureSpanForm();

    /// <summary>Both ends in kPa, rounded as facets are.</summary>
    internal Band Kilopascals => new(Rounded.To(Low.Kilopascals, 1), Rounded.To(High.Kilopascals, 1));

    private sealed class PressureSpanForm : TextForm<PressureSpan>
    {
        private static readonly QuantityForm<Pressure> One = QuantityForms.GaugePressure;

        public override string Expected => "gauge pressures with their unit, such as 100 to 400 psi";

        public override string Example => "100 to 400 psi";

        public override IReadOnlyList<string> UnitSpellings => One.UnitSpellings;

        public override TextReading<PressureSpan> Read(string text)
        {
            var rest = PlainSigns.In(text).AsSpan().Trim();
            if (!TradeNumber.TryRead(rest, fractions: false, signed: true, out var first, out var length)) return Refused(text);
            rest = rest[length..].TrimStart();
            var joined = Joiner(rest);
            if (joined == 0) return One.UnitOf(rest) is { } only ? Of(first, first, only, text) : Refused(text);
            rest = rest[joined..].TrimStart();
            if (!TradeNumber.TryRead(rest, fractions: false, signed: true, out var last, out length)) return Refused(text);
            return One.UnitOf(rest[length..].Trim()) is { } unit ? Of(first, last, unit, text) : Refused(text);
        }

        public override string Write(PressureSpan value, Units units = Units.AsGiven)
        {
            var unit = One.UnitFor(value.Low, units);
            var low = One.WriteNumber(value.Low, unit, units);
            var high = One.WriteNumber(value.High, unit, units);
            return low == high ? $"{low} {unit.Symbol}" : $"{low} to {high} {unit.Symbol}";
        }

        private static int Joiner(ReadOnlySpan<char> text) => text switch
        {
            ['t' or 'T', 'o' or 'O', ..] => 2,
            ['-' or '–' or '/', ..] => 1,
            _ => 0,
        };

        private static TextReading<PressureSpan> Of(TradeNumber first, TradeNumber last, UnitText unit, string text)
        {
            var (low, high) = (One.Make(first, unit, text), One.Make(last, unit, text));
            if (!low.IsRead) return TextReading<PressureSpan>.Refused(low.Wrong);
            if (!high.IsRead) return TextReading<PressureSpan>.Refused(high.Wrong);
            return low.Value <= high.Value
                ? TextReading<PressureSpan>.Of(new(low.Value, high.Value))
                : TextReading<PressureSpan>.Refused($"“{text.Trim()}” falls: the lower pressure stands first");
        }

        private static TextReading<PressureSpan> Refused(string text) =>
            TextReading<PressureSpan>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not gauge pressures with their unit, such as 100 to 400 psi");
    }
}

/// <summary>A gauge pressure in a sentence, in psi and kPa; formed only when the sentence is shown.</summary>
/// <param name="Kilopascals">The pressure, as a facet holds it.</param>
internal readonly record struct ShownPressure(double Kilopascals)
{
    private const double OfOnePsi = 6.894757;

    /// <summary>10 psi (69 kPa).</summary>
    public override string ToString() => FormattableString.Invariant($"{Kilopascals / OfOnePsi:0.#;−0.#;0} psi ({Kilopascals:0;−0;0} kPa)");
}
