using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>A run capacitor's marking, 5 µF 370 V, one of two sections, 45+5 µF 440 V, or the statement that there is none.</summary>
/// <param name="Capacitance">The only or larger section; null when there is no capacitor.</param>
/// <param name="Volts">The marked AC volts; null when not known or when there is none.</param>
/// <param name="SecondSection">The second section of a two-section one (the fan's); null otherwise.</param>
public sealed record CapacitorRating(ElectricCapacitance? Capacitance, ElectricPotential? Volts, ElectricCapacitance? SecondSection = null) : IHaveTextForm<CapacitorRating>
{
    /// <summary>No capacitor: known, not unknown.</summary>
    public static CapacitorRating None { get; } = new(null, null);

    /// <inheritdoc/>
    public static TextForm<CapacitorRating> Form { get; } = new CapacitorRatingForm();

    /// <summary>Whether it says that there is no capacitor.</summary>
    public bool IsNone => Capacitance is null;

    private sealed class CapacitorRatingForm : TextForm<CapacitorRating>
    {
        public override string Expected => "a capacitor's µF and volts, such as 5 µF 370 V, 45+5 µF 440 V, or none";

        public override string Example => "5 µF 370 V";

        public override IReadOnlyList<string> Words => ["none"];

        public override IReadOnlyList<string> UnitSpellings => QuantityForms.Capacitance.UnitSpellings;

        public override TextReading<CapacitorRating> Read(string text)
        {
            var given = text.Trim();
            if (given.Equals("none", StringComparison.OrdinalIgnoreCase)) return TextReading<CapacitorRating>.Of(None);
            var refused = TextReading<CapacitorRating>.Refused(given.Length == 0 ? "nothing is written" : $"“{given}” is not {Expected}");
            var (microfarads, volts) = Halves(given);
            var sections = microfarads.Split('+', StringSplitOptions.TrimEntries);
            if (sections.Length > 2) return refused;
            var last = QuantityForms.Capacitance.Read(sections[^1]);
            var first = QuantityForms.Capacitance.Read(sections[0]);
            if (!first.IsRead || !last.IsRead) return refused;
            ElectricPotential? marked = null;
            if (volts.Length > 0)
            {
                var reading = QuantityForms.Volts.Read(volts);
                if (!reading.IsRead) return refused;
                marked = reading.Value;
            }

            return TextReading<CapacitorRating>.Of(new(first.Value, marked, sections.Length == 2 ? last.Value : null));
        }

        public override string Write(CapacitorRating value, Units units = Units.AsGiven)
        {
            if (value.Capacitance is not { } capacitance) return "none";
            var microfarads = QuantityForms.Capacitance.Write(capacitance, units);
            if (value.SecondSection is { } second)
            {
                microfarads = $"{microfarads[..microfarads.IndexOf(' ', StringComparison.Ordinal)]}+{QuantityForms.Capacitance.Write(second, units)}";
            }

            return value.Volts is { } volts ? $"{microfarads} {QuantityForms.Volts.Write(volts, units)}" : microfarads;
        }

        /// <summary>5 µF 370 V, 5 mfd / 370 VAC and 5/370 fall into µF and volts.</summary>
        private static (string Microfarads, string Volts) Halves(string text)
        {
            var slash = text.IndexOfAny(['/', '@', ',']);
            if (slash > 0 && !(text[slash] == ',' && slash + 1 < text.Length && char.IsAsciiDigit(text[slash + 1]))) return (text[..slash].Trim(), text[(slash + 1)..].Trim());

            // Without a slash the volts are the last number, behind the unit of capacitance.
            for (var at = 1; at < text.Length; at++)
            {
                if (char.IsAsciiDigit(text[at]) && text[..at].TrimEnd() is { Length: > 0 } before && char.IsLetter(before[^1])) return (before, text[at..]);
            }

            return (text, string.Empty);
        }
    }
}
