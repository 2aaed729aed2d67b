using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the settings read of a pressure control, kPa.</summary>
/// <param name="Low">Lowest setting; null when not known.</param>
/// <param name="High">Highest setting; null when not known.</param>
/// <param name="CutOut">Where it opens as shipped; null when not known.</param>
/// <param name="CutIn">Where it closes as shipped; null when not known.</param>
/// <param name="IsAdjustable">Whether it can be set; null when not known.</param>
/// <param name="IsManual">Whether it is reset by hand, so that its cut-in is of no matter.</param>
public readonly record struct SettingsFacet(double? Low, double? High, double? CutOut, double? CutIn, bool? IsAdjustable, bool IsManual);

/// <summary>Can it open and close where it is needed?</summary>
/// <remarks>
/// The range holds cut-out and cut-in, edges included; setting it is a change, unless it is shipped within 5 psi of both (practice), which is enough where nobody gave its range. One that cannot be set is within 5 psi of both, or it fails. With manual reset only the cut-out counts. Two that are the wrong way round tell nothing: one of them is misread, unless the cut-in is of no matter.
/// </remarks>
public sealed class Settings() : Aspect<PressureControlSpec, PressureControlSite, SettingsFacet>("Cut-out and cut-in", isDeciding: true, PressureControlSources.Settings, new(0.6, 0.6, 1.5))
{
    /// <summary>5 psi, kPa (practice), and the tenth of a kPa by which two rounded pressures may lie off.</summary>
    internal const double Near = 34.6;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["range", "cutOut", "cutIn"], ["cutOutNeeded", "cutInNeeded"]) { Besides = ["isAdjustable", "differential", "reset", "function", "action", "sidesWired"] };

    /// <inheritdoc/>
    public override SettingsFacet Read(PressureControlSpec part) => new(part.Range?.Kilopascals.Low, part.Range?.Kilopascals.High, In(part.CutOut), In(part.CutIn), part.IsAdjustable, part.Reset == ContactReset.Manual);

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, SettingsFacet facet)
    {
        if (In(need.Site.CutOutNeeded) is not { } cutOut) return Finding.Unknown(Side.Site, "cutOutNeeded", $"Where it is to open is not known.");
        if (!facet.IsManual && WrongWayRound(need) is { } wrong) return wrong;
        var cutIn = facet.IsManual ? null : In(need.Site.CutInNeeded);
        var isWhole = facet.IsManual || cutIn is not null;
        if (Fixed(facet)) return OfFixed(facet, cutOut, cutIn, isWhole);
        var isShippedSo = IsNear(facet.CutOut, cutOut) && (cutIn is { } shut ? IsNear(facet.CutIn, shut) : facet.IsManual);
        if (facet is not { Low: { } low, High: { } high }) return isShippedSo ? Shipped(cutOut, cutIn) : Finding.Unknown(Side.Part, "range", $"It is to open at {new ShownPressure(cutOut)}; what it can be set to is not known.");
        foreach (var needed in cutIn is { } closes ? (double[])[cutOut, closes] : [cutOut])
        {
            if (!Within.Span(needed, low, high)) return Finding.Fails(new Margin(Math.Min(needed - low, high - needed), "kPa"), $"It can be set {ShownRange.Set(new ShownPressure(low), new ShownPressure(high))}; {new ShownPressure(needed)} is needed.");
        }

        if (!isWhole) return Finding.Unknown(Side.Site, "cutInNeeded", $"Its range holds the cut-out of {new ShownPressure(cutOut)}; where it is to close again is not known.");
        var margin = new Margin(Math.Min(Edge(cutOut, low, high), cutIn is { } other ? Edge(other, low, high) : double.MaxValue), "kPa");
        return isShippedSo
            ? Shipped(cutOut, cutIn) with { Margin = margin }
            : Finding.MeetsWith([new(PressureControlChanges.SetControl, $"set it to {new Needed(cutOut, cutIn)}")], $"It can be set {ShownRange.Set(new ShownPressure(low), new ShownPressure(high))}; needed: {new Needed(cutOut, cutIn)}.") with { Margin = margin };
    }

    /// <summary>A gauge pressure in kPa, as facets hold it.</summary>
    internal static double? In(Pressure? pressure) => pressure is { } known ? Rounded.To(known.Kilopascals, 1) : null;

    /// <summary>The distance of two pressures in kPa, as facets hold one: rounded once, for the difference of two rounded ones may lie a tenth beside a rounded difference.</summary>
    internal static double Between(Pressure one, Pressure other) => Rounded.To(Math.Abs(one.Kilopascals - other.Kilopascals), 1);

    /// <summary>What is answered where cut-out and cut-in that are needed cannot be those of the contacts; null where they can.</summary>
    internal static Finding? WrongWayRound(PressureControlNeed need) => WrongWayRound(need.Site.RunningBeside(need.Plate), In(need.Site.CutOutNeeded), In(need.Site.CutInNeeded)) is { } wrong
        ? Finding.Unknown(Side.Site, "cutOutNeeded", wrong)
        : null;

    /// <summary>What is said where a cut-out and a cut-in, kPa, cannot be those of contacts that go one way; null where they can, or where one of the three is not known.</summary>
    internal static FormattableString? WrongWayRound(PressureAction? running, double? cutOut, double? cutIn) => running is { } way && cutOut is { } opens && cutIn is { } closes && AreWrongWayRound(way, opens, closes)
        ? (FormattableString)$"It {(way == PressureAction.OpensOnRise ? "opens on rise" : "opens on fall")}, and is said to open at {new ShownPressure(opens)} and close at {new ShownPressure(closes)}: one of the two is misread."
        : null;

    /// <summary>Whether contacts of one way cannot have such a cut-out and cut-in: those that open on rise open above where they close.</summary>
    internal static bool AreWrongWayRound(PressureAction running, Pressure cutOut, Pressure cutIn) => AreWrongWayRound(running, In(cutOut)!.Value, In(cutIn)!.Value);

    /// <summary>Whether two pressures are known, and over 5 psi off.</summary>
    internal static bool AreOthers(Pressure? one, Pressure? other) => In(one) is { } has && In(other) is { } needed && !IsNear(has, needed);

    private static bool AreWrongWayRound(PressureAction running, double cutOut, double cutIn) => running == PressureAction.OpensOnRise ? cutOut <= cutIn : cutOut >= cutIn;

    private static Finding Shipped(double cutOut, double? cutIn) => Finding.Meets($"It is shipped within 5 psi of what is needed: {new Needed(cutOut, cutIn)}.");

    private static bool Fixed(SettingsFacet facet) => facet is { IsAdjustable: false, CutOut: not null };

    private static Finding OfFixed(SettingsFacet facet, double cutOut, double? cutIn, bool isWhole)
    {
        if (!IsNear(facet.CutOut, cutOut)) return Finding.Fails(new Margin(Near - Math.Abs(facet.CutOut!.Value - cutOut), "kPa"), $"It opens at {new ShownPressure(facet.CutOut.Value)} and cannot be set; {new ShownPressure(cutOut)} within 5 psi is needed.");
        if (facet.IsManual) return Finding.Meets($"It opens at {new ShownPressure(facet.CutOut!.Value)} and cannot be set; {new ShownPressure(cutOut)} within 5 psi is needed.");
        if (!isWhole) return Finding.Unknown(Side.Site, "cutInNeeded", $"It opens where it is needed; where it is to close again is not known.");
        if (facet.CutIn is not { } closes) return Finding.Unknown(Side.Part, "cutIn", $"It opens where it is needed; where it closes again is not known.");
        return IsNear(closes, cutIn!.Value)
            ? Finding.Meets($"It cannot be set, and is within 5 psi of what is needed: {new Needed(cutOut, cutIn)}.")
            : Finding.Fails(new Margin(Near - Math.Abs(closes - cutIn.Value), "kPa"), $"It closes at {new ShownPressure(closes)} and cannot be set; {new ShownPressure(cutIn.Value)} within 5 psi is needed.");
    }

    private static bool IsNear(double? has, double needed) => has is { } known && Within.AtMost(Math.Abs(known - needed), Near);

    private static double Edge(double needed, double low, double high) => Math.Min(needed - low, high - needed);

    private readonly record struct Needed(double CutOut, double? CutIn)
    {
        public override string ToString() => CutIn is { } closes ? $"cut-out {new ShownPressure(CutOut)}, cut-in {new ShownPressure(closes)}" : $"cut-out {new ShownPressure(CutOut)}";
    }
}
