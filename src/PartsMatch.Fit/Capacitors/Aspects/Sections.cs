using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Capacitors.Aspects;

/// <summary>Has the capacitor a section for each motor that it serves?</summary>
/// <remarks>Two single ones in place of one of two sections are a change; so is a section that is left unused.</remarks>
public sealed class Sections() : Aspect<CapacitorSpec, CapacitorSite, SectionsFacet>("Sections", isDeciding: true, CapacitorSources.CapacitorSections, new(0.3, 1, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["rating"], ["motorAsksFor", "secondMotorAsksFor"]);

    /// <inheritdoc/>
    public override SectionsFacet Read(CapacitorSpec part) => SectionsFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(CapacitorNeed need, SectionsFacet facet)
    {
        var asked = Asked.Of(need);
        if (asked.First is not { } first) return Finding.Unknown(Side.Plate, "rating", $"Whether the capacitor serves one motor or two is not known.");
        return (asked.Second, facet.First, facet.Second) switch
        {
            (_, null, _) => Finding.Unknown(Side.Part, "rating", $"Whether the capacitor has one section or two is not known."),
            ({ } second, _, null) => Finding.MeetsWith([new(CapacitorChanges.BringSecond, $"bring a second capacitor of {second} µF for the second motor, with a strap") { Kit = [new($"run capacitor, {second} µF{AtLeast(asked.LeastVolts)}"), new($"strap for the second capacitor")] }], $"Two motors ask for {first} and {second} µF; it has one section, for the first."),
            (null, { } one, { } two) => Finding.MeetsWith([new(CapacitorChanges.LeaveSectionUnused, $"use its {(IsNearer(one, two, first) ? one : two)} µF section; leave the {(IsNearer(one, two, first) ? two : one)} µF section unused, its terminal covered") { Kit = [new($"insulating cover for a capacitor terminal")] }], $"One motor asks for {first} µF; it has two sections."),
            (null, _, null) => Finding.Meets($"One motor is served, and it has one section."),
            _ => Finding.Meets($"Two motors are served, and it has two sections."),
        };
    }

    private static string AtLeast(double? volts) => volts is { } known ? FormattableString.Invariant($", {known} V or more") : string.Empty;

    private static bool IsNearer(double one, double other, double asked) => Math.Abs(one - asked) <= Math.Abs(other - asked);
}
