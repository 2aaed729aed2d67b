using System.Globalization;

namespace PartsMatch.Fit.Quantities;

/// <summary>What an ohmmeter or an insulation tester shows: a resistance, or that it is open, beyond what the meter can show.</summary>
/// <param name="Value">Ohms, at least 0; positive infinity when it is open.</param>
/// <param name="Text">The number and unit as they were read.</param>
public sealed record Ohms(double Value, string Text) : IHaveTextForm<Ohms>
{
    /// <summary>Beyond what the meter can show.</summary>
    public static Ohms Open { get; } = new(double.PositiveInfinity, "open");

    /// <inheritdoc/>
    public static TextForm<Ohms> Form { get; } = new OhmsForm();

    /// <summary>Whether it is beyond what the meter can show.</summary>
    public bool IsOpen => double.IsInfinity(Value);

    /// <summary>The number in MΩ.</summary>
    public double Megohms => Value / 1e6;

    /// <summary>A milliohm beside a megohm is a slip of 10⁹, so the unit must be said, and the m of a megohm is a capital.</summary>
    private sealed class OhmsForm : TextForm<Ohms>
    {
        private const double Most = 1e13;

        /// <summary>The Greek letter, and the sign that some keyboards write for it.</summary>
        private static readonly (string Spelling, string Symbol, double Factor)[] UnitsOfOhms =
        [
            ("Ω", "Ω", 1), ("\u2126", "Ω", 1), ("ohm", "Ω", 1), ("ohms", "Ω", 1), ("Ohm", "Ω", 1), ("Ohms", "Ω", 1), ("OHM", "Ω", 1), ("OHMS", "Ω", 1),
            ("kΩ", "kΩ", 1e3), ("k\u2126", "kΩ", 1e3), ("KΩ", "kΩ", 1e3), ("kohm", "kΩ", 1e3), ("kohms", "kΩ", 1e3), ("kilohm", "kΩ", 1e3), ("kilohms", "kΩ", 1e3),
            ("MΩ", "MΩ", 1e6), ("M\u2126", "MΩ", 1e6), ("Mohm", "MΩ", 1e6), ("Mohms", "MΩ", 1e6), ("megohm", "MΩ", 1e6), ("megohms", "MΩ", 1e6), ("megaohm", "MΩ", 1e6), ("megaohms", "MΩ", 1e6),
            ("GΩ", "GΩ", 1e9), ("G\u2126", "GΩ", 1e9), ("Gohm", "GΩ", 1e9), ("gigohm", "GΩ", 1e9), ("gigohms", "GΩ", 1e9),
        ];

        private static readonly string[] OpenWords = ["open", "OL", "O.L.", "infinite", "∞"];

        public override string Expected => "a resistance with its unit, such as 4.2 Ω (4.2 ohm) or 20 MΩ (20 megohm), or open";

        public override string Example => "4.2 Ω";

        public override IReadOnlyList<string> UnitSpellings => [.. UnitsOfOhms.Select(unit => unit.Spelling)];

        public override TextReading<Ohms> Read(string text)
        {
            var rest = text.AsSpan().Trim();
            var given = rest.ToString();
            if (OpenWords.Contains(given, StringComparer.OrdinalIgnoreCase)) return TextReading<Ohms>.Of(Open);
            if (!TradeNumber.TryRead(rest, fractions: false, signed: false, out var number, out var length)) return Refuse(given);
            var spelt = rest[length..].Trim().ToString();
            var (_, symbol, factor) = Array.Find(UnitsOfOhms, unit => unit.Spelling == spelt);
            if (symbol is null) return Refuse(given);
            return number.Double * factor <= Most
                ? TextReading<Ohms>.Of(new(number.Double * factor, $"{number.Double.ToString("0.############################", CultureInfo.InvariantCulture)} {symbol}"))
                : TextReading<Ohms>.Refused($"“{given}” is more than any meter shows: that is open");
        }

        public override string Write(Ohms value, Units units = Units.AsGiven) => value.Text;

        public override Figure? FigureOf(object value, Units units) => value is Ohms { IsOpen: false } ohms ? new(ohms.Value, "Ω") : null;

        private TextReading<Ohms> Refuse(string given) => TextReading<Ohms>.Refused(given.Length == 0 ? "nothing is written" : $"“{given}” is not {Expected}");
    }
}
