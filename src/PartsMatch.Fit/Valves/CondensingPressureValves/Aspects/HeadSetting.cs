using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

/// <summary>What is read of a valve's setting.</summary>
/// <param name="Holds">What it comes set to, kPa gauge; null where not given.</param>
/// <param name="Least">Lowest setting, kPa; null of a fixed one.</param>
/// <param name="Most">Highest setting, kPa; null of a fixed one.</param>
/// <param name="IsDifference">Whether these are differences that open it, not heads that it holds; null where its arrangement is not given.</param>
public readonly record struct SettingFacet(double? Holds, double? Least, double? Most, bool? IsDifference);

/// <summary>Does the valve hold the pressure that is needed?</summary>
/// <remarks>
/// Within 10 psi, edges included, meets; one that can be set there is a change. Further off is a check; lower, however little, only where the expansion valves are not known to need more, else it fails.
/// One that holds no less than is needed, though that is said to be less than the expansion valves need, is a check: one of the two is wrong.
/// A differential check valve is set to a difference, which is held against another difference alone, never against a head: further off it is a check, whichever way.
/// </remarks>
public sealed class HeadSetting() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, SettingFacet>("Setting", isDeciding: true, CondensingPressureValveSources.HeadSetting, new(0.8, 0.6, 1.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a pressure", "off the one needed", 0, HeadLimits.Near, "kPa");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["setting", "settingLeast", "settingMost"], ["settingNeeded", "leastHead"]) { Besides = ["arrangement", "needsArrangement"] };

    /// <inheritdoc/>
    public override SettingFacet Read(CondensingPressureValveSpec part) => Facet(part);

    /// <inheritdoc/>
    public override Finding Judge(HeadNeed need, SettingFacet facet)
    {
        if (Rounded.Kilopascal(need.Site.SettingNeeded) is not { } needed) return Finding.Unknown(Side.Site, "settingNeeded", $"The pressure that is to be held there is not known.");
        switch (facet.IsDifference, OpensAtDifference(need.Site.NeedsArrangement))
        {
            case (true, null): return Finding.Unknown(Side.Site, "needsArrangement", $"It opens at a difference of pressures; whether the {new ShownPressure(needed)} needed there are a difference or a head is not known.");
            case (null, true): return Finding.Unknown(Side.Part, "arrangement", $"A difference of {new ShownPressure(needed)} is needed; whether it opens at a difference or holds a head is not given.");
            case (true, false) or (false, true): return Finding.Fails($"The one of it and of the valve needed is set to a difference of pressures, the other to a head: neither does what the other does.");
        }

        var does = facet.IsDifference == true ? "opens at a difference of" : "holds";
        var bears = facet.IsDifference == true ? null : Rounded.Kilopascal(need.Site.LeastHead);
        var starves = facet.Holds is { } head && bears is { } least && !Within.AtLeast(head, least);
        if (!starves && facet.Holds is { } held && Within.AtMost(Math.Abs(held - needed), HeadLimits.Near)) return Finding.Meets($"It {does} {new ShownPressure(held)}; {new ShownPressure(needed)} are needed, within 10 psi (69 kPa).") with { Shortfall = Math.Min(1, Math.Abs(held - needed) / HeadLimits.Near) };
        if (facet is { Least: { } from, Most: { } to } && Within.Span(needed, from, to)) return Finding.MeetsWith([new(CondensingPressureValveChanges.SetPressure, $"set it to {new ShownPressure(needed)}")], $"It is set from {new ShownPressure(from)} to {new ShownPressure(to)}; {new ShownPressure(needed)} are needed.");
        if (facet.Holds is not { } holds) return Finding.Unknown(Side.Part, "setting", $"The pressure that it {(facet.IsDifference == true ? "opens at" : "holds")} is not given.");
        Change check = new(CondensingPressureValveChanges.CheckHead, $"check the head: it {does} {new ShownPressure(holds)} where {new ShownPressure(needed)} were {(facet.IsDifference == true ? "needed" : "held")}");
        if (starves)
        {
            // Where neither says what it is, both numbers may be differences, of which the expansion valves say nothing.
            if (facet.IsDifference is null && need.Site.NeedsArrangement is null) return Finding.Unknown(Side.Site, "needsArrangement", $"It is set to {new ShownPressure(holds)}; whether that is a head, of which the expansion valves need {new ShownPressure(bears!.Value)}, or a difference is not known.");
            return holds < needed
                ? Finding.Fails(new(holds - bears!.Value, "kPa"), $"It holds {new ShownPressure(holds)}; the expansion valves need {new ShownPressure(bears.Value)} to pass their load.")
                : Finding.MeetsWith([check], $"It holds {new ShownPressure(holds)}, no less than the {new ShownPressure(needed)} needed; the expansion valves are said to need {new ShownPressure(bears!.Value)} to pass their load.") with { Shortfall = 1 };
        }

        if (holds > needed || facet.IsDifference == true) return Finding.MeetsWith([check], $"It {does} {new ShownPressure(holds)}, over 10 psi (69 kPa) {(holds > needed ? "above" : "below")} the {new ShownPressure(needed)} needed.") with { Shortfall = 1 };
        return bears is { } borne
            ? Finding.MeetsWith([check], $"It holds {new ShownPressure(holds)}, below the {new ShownPressure(needed)} needed; the expansion valves bear {new ShownPressure(borne)}.") with { Shortfall = 1 }
            : Finding.Unknown(Side.Site, "leastHead", $"It holds {new ShownPressure(holds)}, over 10 psi (69 kPa) below the {new ShownPressure(needed)} needed; whether the expansion valves still pass their load then is not known.") with { Shortfall = 1 };
    }

    /// <summary>What a part is set to once it is in, kPa: as it comes, where it cannot be set or is near enough; else as near to what is needed as it can be set. Null where neither is known.</summary>
    internal static double? SetThere(CondensingPressureValveSpec part, CondensingPressureValveSite site) =>
        Rounded.Kilopascal(site.SettingNeeded) is { } needed ? SetThere(Facet(part), needed, Rounded.Kilopascal(site.LeastHead)) : Rounded.Kilopascal(part.Setting);

    private static double? SetThere(SettingFacet facet, double needed, double? leastHead) => facet switch
    {
        { Holds: { } holds } when IsNear(holds, needed) && !Starves(facet, holds, leastHead) => holds,
        { Least: { } least, Most: { } most } when least <= most => Math.Clamp(needed, least, most),
        _ => facet.Holds,
    };

    private static bool IsNear(double set, double needed) => Within.AtMost(Math.Abs(set - needed), HeadLimits.Near);

    /// <summary>Whether the expansion valves need more than the head that it holds; a difference says nothing of them.</summary>
    private static bool Starves(SettingFacet facet, double holds, double? leastHead) => facet.IsDifference != true && leastHead is { } least && !Within.AtLeast(holds, least);

    private static SettingFacet Facet(CondensingPressureValveSpec part) => new(Rounded.Kilopascal(part.Setting), Rounded.Kilopascal(part.SettingLeast), Rounded.Kilopascal(part.SettingMost), OpensAtDifference(part.Arrangement));

    private static bool? OpensAtDifference(Arrangement? arrangement) => arrangement is { } how ? how == Arrangement.DifferentialCheck : null;
}
