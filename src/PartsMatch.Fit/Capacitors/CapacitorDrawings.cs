using PartsMatch.Fit.Capacitors.Aspects;
using PartsMatch.Fit.Capacitors.Proof;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors;

/// <summary>What is drawn of a capacitor: its µF against what is asked for, a scale for each section that is asked for.</summary>
public static class CapacitorDrawings
{
    /// <summary>So many times the tolerance is drawn on either side.</summary>
    private const double Tolerances = 3;

    /// <summary>A part's marked µF; none where they, or what is asked for, are not known.</summary>
    public static IReadOnlyList<Drawing> Of(CapacitorNeed need, CapacitorSpec part)
    {
        if (need.Site.MotorAsksFor is { IsNone: true }) return [];
        var asked = Asked.Of(need);
        var (first, second) = Capacitance.Pair(asked, SectionsFacet.Of(part));
        var percent = Capacitance.Percent(need);
        return Scales(asked.First, first, asked.Second, second, percent, "marked");
    }

    /// <summary>What was measured at a new one; none where nothing was, or it is not known what is asked for.</summary>
    internal static IReadOnlyList<Drawing> Of(CapacitorCase one) =>
        Scales(one.FirstAsked, one.First.Readings.Microfarads(one.Hertz), one.SecondAsked, one.Second.Readings.Microfarads(one.Hertz), one.Percent, "measured");

    private static IReadOnlyList<Drawing> Scales(double? askedFirst, double? first, double? askedSecond, double? second, double percent, string how) =>
    [
        .. new[]
        {
            Of("capacitance", askedSecond is null ? "µF of the capacitor" : "µF of the first section", askedFirst, first, percent, how),
            Of("secondCapacitance", "µF of the second section", askedSecond, second, percent, how),
        }.OfType<Scale>(),
    ];

    private static Scale? Of(string name, string title, double? asked, double? has, double percent, string how)
    {
        if (asked is not { } right || has is not { } there || right <= 0) return null;
        var good = new Band(right * (1 - (percent / 100)), right * (1 + (percent / 100)));
        var wide = Tolerances * (good.High - right);
        var range = new Band(Math.Max(0, Math.Min(right - wide, 0.98 * there)), Math.Max(right + wide, 1.02 * there));
        return new(
            name,
            title,
            FormattableString.Invariant($"Asked for: {right:0.##} µF within {percent:0.#} %, {good.ToString("0.##")} µF; {how}: {there:0.##} µF, {(good.Holds(there) ? "within them" : "outside them")}."),
            "µF",
            range,
            [new("too little", Role.Bad, new(range.Low, good.Low)), new("good", Role.Good, good), new("too much", Role.Bad, new(good.High, range.High))],
            [
                new(FormattableString.Invariant($"{how}: {there:0.##} µF"), Role.New, Band.Exactly(there)),
                new(FormattableString.Invariant($"asked for: {right:0.##} µF ±{percent:0.#} %"), Role.Old, Band.Exactly(right)),
            ]);
    }
}
