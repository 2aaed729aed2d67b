using System.Globalization;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>How many defrosts a day a programme can start, from fewest to most: 1 to 6 a day.</summary>
/// <param name="Least">The fewest; 1 or more.</param>
/// <param name="Most">The most; the same again where the number cannot be set.</param>
public sealed record StartsADay(int Least, int Most) : IHaveTextForm<StartsADay>
{
    /// <inheritdoc/>
    public static TextForm<StartsADay> Form { get; } = new StartsADayForm();

    /// <inheritdoc/>
    public override string ToString() => Form.Write(this);

    private sealed class StartsADayForm : TextForm<StartsADay>
    {
        /// <summary>One every quarter of an hour; no defrost is shorter.</summary>
        private const int MostStarts = 96;

        private const int HoursADay = 24;

        private const string Every = "every";

        /// <summary>One every so many hours, with or without the word: every 6 h.</summary>
        private static readonly string[] Hours = ["h", "hr", "hrs", "hour", "hours"];

        private static readonly string[] Spellings = ["a day", "per day", "/day", "/24 h", "per 24 h", "per 24 hours", "daily", "defrosts a day", "defrosts per day"];

        public override string Expected => "how many starts a day, such as 1 to 6 a day";

        public override string Example => "1 to 6 a day";

        public override IReadOnlyList<string> UnitSpellings => [.. Spellings, .. Hours];

        public override TextReading<StartsADay> Read(string text)
        {
            var plain = PlainSigns.In(text).Trim();
            if (EveryHours(plain) is { } hours) return HoursADay % hours == 0 ? TextReading<StartsADay>.Of(new(HoursADay / hours, HoursADay / hours)) : TextReading<StartsADay>.Refused($"“{text.Trim()}” is no whole number of starts a day");
            foreach (var spelling in Spellings.OrderByDescending(one => one.Length))
            {
                if (!plain.EndsWith(spelling, StringComparison.OrdinalIgnoreCase)) continue;
                plain = plain[..^spelling.Length].TrimEnd();
                break;
            }

            var ends = plain.Split(["to", "TO", "To", "-", "–"], StringSplitOptions.TrimEntries);
            if (ends.Length is not (1 or 2) || Count(ends[0]) is not { } least || Count(ends[^1]) is not { } most)
            {
                return TextReading<StartsADay>.Refused(string.IsNullOrWhiteSpace(text) ? "nothing is written" : $"“{text.Trim()}” is not {Expected}");
            }

            return least <= most ? TextReading<StartsADay>.Of(new(least, most)) : TextReading<StartsADay>.Refused($"“{text.Trim()}” falls: the fewest stand first");
        }

        public override string Write(StartsADay value, Units units = Units.AsGiven) =>
            value.Least == value.Most ? string.Create(CultureInfo.InvariantCulture, $"{value.Least} a day") : string.Create(CultureInfo.InvariantCulture, $"{value.Least} to {value.Most} a day");

        private static int? EveryHours(string plain)
        {
            var rest = plain.StartsWith(Every, StringComparison.OrdinalIgnoreCase) ? plain[Every.Length..].TrimStart() : plain;
            var unit = Hours.Where(hour => rest.EndsWith(hour, StringComparison.OrdinalIgnoreCase)).MaxBy(hour => hour.Length);
            return unit is not null && int.TryParse(rest[..^unit.Length].TrimEnd(), NumberStyles.None, CultureInfo.InvariantCulture, out var hours) && hours is >= 1 and <= HoursADay ? hours : null;
        }

        private static int? Count(string text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count is >= 1 and <= MostStarts ? count : null;
    }
}
