using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

/// <summary>What is read of a valve's setting.</summary>
/// <param name="Holds">What it comes set to, kPa gauge; null where not given.</param>
/// <param name="Least">Lowest setting, kPa; null of a fixed one.</param>
/// <param name="Most">Highest setting, kPa; null of a fixed one.</param>
/// <param name="CanBeSet">Whether it can be set; null where not given.</param>
/// <param name="IsDifference">Whether these are differences that open it, not heads that it holds; null where its arrangement is not given.</param>
public readonly record struct SettingFacet(double? Holds, double? Least, double? Most, bool? CanBeSet, bool? IsDifference);

/// <summary>Does the valve hold the pressure that is needed?</summary>
/// <remarks>
/// Within 10 psi, edges included, meets; one that can be set is judged by the setting nearest to what is needed, and no lower than the expansion valves need where its range allows that, which is a change. Further off is a check; lower, however little, only where the expansion valves are not known to need more, else it fails.
/// One that holds no less than is needed, though that is said to be less than the expansion valves need, is a check: one of the two is wrong.
/// Of one that comes set too low, by which it fails or the expansion valves may starve, and that may be settable, it is asked whether it can be set, and how high, unless these may be differences: that is asked first; any other comes to no worse by being set.
/// A differential check valve is set to a difference, which is held against another difference alone, never against a head: further off it is a check, whichever way.
/// </remarks>
public sealed class HeadSetting() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, SettingFacet>("Setting", isDeciding: true, CondensingPressureValveSources.HeadSetting, new(0.8, 0.6, 1.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a pressure", "off the one needed", 0, HeadLimits.Near, "kPa");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["setting", "settingLeast", "settingMost"], ["settingNeeded", "leastHead"]) { Besides = ["arrangement", "needsArrangement", "isAdjustable"] };

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
            case (true, false): return Finding.Fails($"It opens at a difference of pressures, and a valve is needed that holds a head: neither does what the other does.");
            case (false, true): return Finding.Fails($"It holds a head, and a valve is needed that opens at a difference of pressures: neither does what the other does.");
        }

        var leastHead = Rounded.Kilopascal(need.Site.LeastHead);
        if (SetThere(facet, needed, leastHead) is not { } set) return Finding.Unknown(Side.Part, "setting", $"The pressure that it {(facet.IsDifference == true ? "opens at" : "holds")} is not given.");
        if (!set.Equals(facet.Holds))
        {
            var found = At(need, facet, set, needed, leastHead, facet.IsDifference == true ? "can be set to a difference of" : "can be set to hold").Then(Range(facet));
            return found.Verdict is Verdict.Meets or Verdict.MeetsWithChanges ? found.With([new(CondensingPressureValveChanges.SetPressure, $"set it to {new ShownPressure(set)}"), .. found.Changes]) : found;
        }

        var asItComes = At(need, facet, set, needed, leastHead, facet.IsDifference == true ? "opens at a difference of" : "holds");
        if (asItComes.Verdict == Verdict.Meets || facet is { CanBeSet: false } or { Least: not null, Most: not null }) return asItComes;
        if (asItComes.Verdict != Verdict.MeetsWithChanges) return asItComes.Missing is [{ Field: "needsArrangement" }] ? asItComes : Anew(facet, set, needed, leastHead);
        return asItComes.Then(facet.CanBeSet == true ? $"How {(set > needed && !Starves(facet, set, leastHead) ? "low" : "high")} it can be set is not given." : (Reason)$"Whether it can be set anew is not given.");
    }

    /// <summary>The answer about one that comes set too low, and may be set higher for all that is given.</summary>
    private static Finding Anew(SettingFacet facet, double set, double needed, double? leastHead)
    {
        var wants = Starves(facet, set, leastHead) ? (FormattableString)$"{new ShownPressure(needed)} are needed, and {new ShownPressure(leastHead!.Value)} by the expansion valves" : $"{new ShownPressure(needed)} are needed";
        return facet.CanBeSet == true
            ? Finding.Unknown(Side.Part, "settingMost", $"It comes set to {new ShownPressure(set)}; {wants}. It can be set anew, and how high is not given.")
            : Finding.Unknown(Side.Part, "isAdjustable", $"It comes set to {new ShownPressure(set)}; {wants}. Whether it can be set anew is not given.");
    }

    /// <summary>From where to where it can be set, as far as that is given.</summary>
    private static FormattableString Range(SettingFacet facet) => (facet.Least, facet.Most) switch
    {
        ({ } least, { } most) => $"It is set {ShownRange.Set(new ShownPressure(least), new ShownPressure(most))}.",
        ({ } least, _) => $"It is set from {new ShownPressure(least)} upwards.",
        (_, var most) => $"It is set up to {new ShownPressure(most!.Value)}.",
    };

    /// <summary>The answer about what it is set to, kPa, with what it does in words.</summary>
    private static Finding At(HeadNeed need, SettingFacet facet, double set, double needed, double? leastHead, string does)
    {
        var isDifference = facet.IsDifference == true;
        Change check = new(CondensingPressureValveChanges.CheckHead, $"check the head: it {(isDifference ? "opens at a difference of" : "holds")} {new ShownPressure(set)} where {new ShownPressure(needed)} were {(isDifference ? "needed" : "held")}");
        if (Starves(facet, set, leastHead))
        {
            // Where neither says what it is, both numbers may be differences, of which the expansion valves say nothing.
            if (facet.IsDifference is null && need.Site.NeedsArrangement is null) return Finding.Unknown(Side.Site, "needsArrangement", $"It {does} {new ShownPressure(set)}; whether that is a head, of which the expansion valves need {new ShownPressure(leastHead!.Value)}, or a difference is not known.");
            return set < needed
                ? Finding.Fails(new(set - leastHead!.Value, "kPa"), $"It {does} {new ShownPressure(set)}; the expansion valves need {new ShownPressure(leastHead.Value)} to pass their load.")
                : Finding.MeetsWith([check], $"It {does} {new ShownPressure(set)}, no less than the {new ShownPressure(needed)} needed; the expansion valves are said to need {new ShownPressure(leastHead!.Value)} to pass their load.") with { Shortfall = 1 };
        }

        if (IsNear(set, needed)) return Finding.Meets($"It {does} {new ShownPressure(set)}; {new ShownPressure(needed)} are needed, within 10 psi (69 kPa).") with { Shortfall = Math.Min(1, Math.Abs(set - needed) / HeadLimits.Near) };
        if (set > needed || isDifference) return Finding.MeetsWith([check], $"It {does} {new ShownPressure(set)}, over 10 psi (69 kPa) {(set > needed ? "above" : "below")} the {new ShownPressure(needed)} needed.") with { Shortfall = 1 };
        return leastHead is { } borne
            ? Finding.MeetsWith([check], $"It {does} {new ShownPressure(set)}, below the {new ShownPressure(needed)} needed; the expansion valves bear {new ShownPressure(borne)}.") with { Shortfall = 1 }
            : Finding.Unknown(Side.Site, "leastHead", $"It {does} {new ShownPressure(set)}, over 10 psi (69 kPa) below the {new ShownPressure(needed)} needed; whether the expansion valves still pass their load then is not known.") with { Shortfall = 1 };
    }

    /// <summary>What a part is set to once it is in, kPa: as it comes, where it cannot be set or is near enough; else as near to what is needed as it can be set without starving the expansion valves. Null where neither is known.</summary>
    internal static double? SetThere(CondensingPressureValveSpec part, CondensingPressureValveSite site) =>
        Rounded.Kilopascal(site.SettingNeeded) is { } needed ? SetThere(Facet(part), needed, Rounded.Kilopascal(site.LeastHead)) : Rounded.Kilopascal(part.Setting);

    /// <summary>What an old one was set to, kPa: of one that can be set its plate says what it came set to, and what was needed outranks that. Null where neither is known.</summary>
    internal static double? SetBefore(CondensingPressureValveSpec plate, CondensingPressureValveSite site) => (Facet(plate), Rounded.Kilopascal(site.SettingNeeded)) switch
    {
        ({ Least: { } least, Most: { } most }, { } needed) when least < most => Math.Clamp(needed, least, most),
        (var facet, _) => facet.Holds,
    };

    private static double? SetThere(SettingFacet facet, double needed, double? leastHead) => facet.Holds is { } holds && IsNear(holds, needed) && !Starves(facet, holds, leastHead)
        ? holds
        : Nearest(facet, facet.IsDifference == false && leastHead > needed ? leastHead.Value : needed) ?? facet.Holds;

    /// <summary>The setting nearest to a wanted one, kPa; null where what is known of its range does not tell. What it comes set to lies within its range, whose other end tells the rest then.</summary>
    private static double? Nearest(SettingFacet facet, double wanted) => facet switch
    {
        { Least: { } least, Most: { } most } => least <= most ? Math.Clamp(wanted, least, most) : null,
        { Most: { } most } => wanted >= most ? most : wanted >= facet.Holds ? wanted : null,
        { Least: { } least } => wanted <= least ? least : wanted <= facet.Holds ? wanted : null,
        _ => null,
    };

    private static bool IsNear(double set, double needed) => Within.AtMost(Math.Abs(set - needed), HeadLimits.Near);

    /// <summary>Whether the expansion valves need more than the head that it holds; a difference says nothing of them.</summary>
    private static bool Starves(SettingFacet facet, double holds, double? leastHead) => facet.IsDifference != true && leastHead is { } least && !Within.AtLeast(holds, least);

    /// <summary>A range with equal ends, or of one that cannot be set, is none: the one is the only setting, and deduced as such, and of the other one of the two is misread.</summary>
    private static SettingFacet Facet(CondensingPressureValveSpec part)
    {
        var (least, most) = part.CanBeSet == false ? (null, null) : (Rounded.Kilopascal(part.SettingLeast), Rounded.Kilopascal(part.SettingMost));
        return new(Rounded.Kilopascal(part.Setting), least, most, part.CanBeSet, OpensAtDifference(part.Arrangement));
    }

    private static bool? OpensAtDifference(Arrangement? arrangement) => arrangement is { } how ? how == Arrangement.DifferentialCheck : null;
}
