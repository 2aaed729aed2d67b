using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;
using PartsMatch.Ranking;

namespace PartsMatch.Service.Pages.Models;

/// <summary>Likelihoods as they were told, beside what happened, drawn and in figures.</summary>
/// <param name="points">Of every bin; at least two, the least likely first.</param>
public sealed class CalibrationTold(IReadOnlyList<CalibrationPoint> points)
{
    /// <summary>So many floors, mean deviations of a normal distribution, hold 19 of 20: 1.96 · √(π/2).</summary>
    private const double NineteenOfTwenty = 2.46;

    private const double Tenth = 10;

    public IReadOnlyList<CalibrationRow> Rows { get; } =
        [.. points.Select(point => new CalibrationRow(Percent(point.Told), Percent(point.Happened), point.Outcomes, FormattableString.Invariant($"{ByChance(point).Low:0} to {ByChance(point).High:0} %")))];

    /// <summary>What is seen, and how many bins lie further off than chance makes 19 of 20.</summary>
    public string Words
    {
        get
        {
            var beyond = points.Count(point => !ByChance(point).Holds(100 * point.Happened));
            var told = FormattableString.Invariant($"{points.Count} bins of equally many outcomes that were held out, by the likelihood that was told. By chance alone 19 of 20 lie in the shaded band, if all that was told is true");
            return beyond == 0 ? $"{told}; so do all of these." : FormattableString.Invariant($"{told}; {beyond} of these {(beyond == 1 ? "does" : "do")} not.");
        }
    }

    public Chart Drawing
    {
        get
        {
            var least = points.Min(point => Math.Min(100 * point.Happened, ByChance(point).Low));
            var range = new Band(Math.Min(100 - Tenth, Tenth * Math.Floor(least / Tenth)), 100);
            return new(
                "calibration",
                "Likelihood told, and how many were right",
                Words,
                new("Likelihood told", "%", range),
                new("Right the first time", "%", range),
                [new("By chance alone 19 of 20 lie here", Role.Soft, [.. points.Select(point => At(point, ByChance(point).Low))], [.. points.Select(point => At(point, ByChance(point).High))])],
                [new("as told", Role.Ink, [new(range.Low, range.Low), new(range.High, range.High)]), new("as it happened", Role.New, [.. points.Select(point => At(point, 100 * point.Happened))])],
                [.. points.Select(point => new Mark(string.Empty, Role.New, At(point, 100 * point.Happened), Band.Exactly(100 * point.Told), Band.Exactly(100 * point.Happened)))]);
        }
    }

    private static Point At(CalibrationPoint point, double percent) => new(100 * point.Told, percent);

    private static Band ByChance(CalibrationPoint point) =>
        new(Math.Max(0, 100 * (point.Told - (NineteenOfTwenty * point.Floor))), Math.Min(100, 100 * (point.Told + (NineteenOfTwenty * point.Floor))));

    private static string Percent(double share) => FormattableString.Invariant($"{100 * share:0} %");
}

/// <summary>A bin in figures.</summary>
/// <param name="Told">The likelihood told.</param>
/// <param name="Happened">What happened.</param>
/// <param name="Outcomes">How many outcomes.</param>
/// <param name="ByChance">From where to where it lies by chance alone, 19 of 20 times.</param>
public sealed record CalibrationRow(string Told, string Happened, int Outcomes, string ByChance);
