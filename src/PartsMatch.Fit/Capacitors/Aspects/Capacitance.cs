using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors.Aspects;

/// <summary>What capacitance reads of a capacitor.</summary>
/// <param name="First">µF of the only section, or of one of two; null when not known.</param>
/// <param name="Second">µF of the second section; null when there is none.</param>
public readonly record struct SectionsFacet(double? First, double? Second)
{
    /// <summary>Reads a capacitor; a marking that says there is none tells nothing.</summary>
    internal static SectionsFacet Of(CapacitorSpec part) => new(Rounded.Microfarads(part.Rating?.Capacitance), Rounded.Microfarads(part.Rating?.SecondSection));
}

/// <summary>Has the capacitor the µF that the motor's plate asks for?</summary>
/// <remarks>
/// Within 6 % of what the motor asks for, or within the old capacitor's marked tolerance where that is closer; both edges meet. Of a two-section capacitor for two motors each section must match;
/// one for a single motor is enough with either; a single one for two motors must match the first, and the second is brought besides.
/// </remarks>
public sealed class Capacitance() : Aspect<CapacitorSpec, CapacitorSite, SectionsFacet>("Capacitance", isDeciding: true, CapacitorSources.Capacitance, new(1.2, 1, 1.5))
{
    /// <summary>Percent either way (EIA-456-A practice); a wider marking of the old capacitor does not widen what the motor bears.</summary>
    private const double UsualPercent = 6;

    /// <summary>Where the µF are not known the volts are not either: with <see cref="Volts"/>'s, and the intercept of hand-set weights, one part in twenty fits, as there are some twenty common sizes (practice).</summary>
    public override double OpenReadingPenalty => DefaultWeight.Unknown;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["rating", "tolerance"], ["motorAsksFor", "secondMotorAsksFor"]);

    /// <inheritdoc/>
    public override SectionsFacet Read(CapacitorSpec part) => SectionsFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(CapacitorNeed need, SectionsFacet facet)
    {
        if (need.Site.MotorAsksFor is { IsNone: true }) return Finding.Fails($"The motor's plate asks for no run capacitor.");
        var asked = Asked.Of(need);
        if (asked.First is not { } first) return Finding.Unknown(Side.Plate, "rating", $"The µF that the motor asks for is not known.");
        if (facet.First is not { } one) return Finding.Unknown(Side.Part, "rating", $"The motor asks for {first} µF; the capacitor's is not known.");
        var percent = Percent(need);
        var (forFirst, forSecond) = Pair(asked, facet);
        var off = Math.Max(Off(forFirst!.Value, first), forSecond is { } section ? Off(section, asked.Second!.Value) : 0);
        var sentence = Words(asked, first, one, facet.Second, percent);
        return Within.AtMost(off, percent)
            ? Finding.Meets(sentence) with { Shortfall = off / percent, Margin = new(percent - off, "%") }
            : Finding.Fails(sentence) with { Shortfall = off / percent, Margin = new(percent - off, "%") };
    }

    /// <summary>How far off it may be either way, in percent.</summary>
    internal static double Percent(CapacitorNeed need) => Math.Min(UsualPercent, need.Plate.Tolerance?.Percent ?? UsualPercent);

    /// <summary>Which section serves which motor, by the better of the ways to connect them; null for one that is not there or not asked for. The first is known where µF asked for and had are.</summary>
    internal static (double? ForFirst, double? ForSecond) Pair(Asked asked, SectionsFacet facet) => (asked.First, asked.Second, facet.First, facet.Second) switch
    {
        ({ } first, { } second, { } one, { } two) => Math.Max(Off(one, first), Off(two, second)) <= Math.Max(Off(two, first), Off(one, second)) ? (one, two) : (two, one),
        ({ } first, null, { } one, { } two) => (Off(one, first) <= Off(two, first) ? one : two, null),
        _ => (facet.First, null),
    };

    private static Reason Words(Asked asked, double first, double one, double? other, double percent) => (asked.Second, other) switch
    {
        ({ } second, { } two) => $"The motors ask for {first} and {second} µF, within {percent} %; it has {one} and {two} µF.",
        (null, { } two) => $"The motor asks for {first} µF within {percent} %; its sections have {one} and {two} µF.",
        ({ } second, null) => $"The motors ask for {first} and {second} µF; it has {one} µF, which must be within {percent} % of the first.",
        _ => $"The motor asks for {first} µF within {percent} %; it has {one} µF.",
    };

    private static double Off(double microfarads, double asked) => Math.Abs(microfarads - asked) / asked * 100;
}
