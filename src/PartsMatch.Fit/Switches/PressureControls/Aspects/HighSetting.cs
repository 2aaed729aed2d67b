using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the high setting reads of a pressure control, kPa.</summary>
/// <param name="Highest">The highest that it can be set to; null when not known.</param>
/// <param name="IsAdjustable">Whether it can be set; null when not known.</param>
/// <param name="CutOut">Where it opens as shipped, which is where it stays when it cannot be set; null when not known.</param>
public readonly record struct HighSettingFacet(double? Highest, bool? IsAdjustable, double? CutOut);

/// <summary>Does a high-pressure control open before the design pressure, and well before the relief valve?</summary>
/// <remarks>At most the design pressure and 90 % of the relief's setting, edges included. One that cannot be set is judged by its own cut-out, any other by the one that it is to be set to; where one of the two is not known it may be the lower one. Where no relief valve is there, the design pressure alone limits. One that can be set beyond gets a stop: a change. Only of high-pressure controls.</remarks>
public sealed class HighSetting() : Aspect<PressureControlSpec, PressureControlSite, HighSettingFacet>("High-pressure limit", isDeciding: false, PressureControlSources.HighSetting, new(0.4, 0.5, 0.4))
{
    private const double ReliefShare = 0.9;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["range", "cutOut", "function"], ["cutOutNeeded", "designPressure", "reliefSetting"]) { Besides = ["hasRelief", "isAdjustable", "differential"] };

    /// <inheritdoc/>
    public override HighSettingFacet Read(PressureControlSpec part) => new(part.Range?.Kilopascals.High, part.IsAdjustable, Settings.In(part.CutOut));

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, HighSettingFacet facet)
    {
        if (need.Plate.Function is not { } function) return Finding.Unknown(Side.Plate, "function", $"Whether it is a high-pressure control is not known.");
        if (function != PressureFunction.HighPressure) return Finding.Meets($"It is no high-pressure control.");
        var (design, relief) = (Settings.In(need.Site.DesignPressure), Settings.In(need.Site.ReliefSetting * ReliefShare));
        if (Limit.Of(design, relief) is not { } most) return Finding.Unknown(Side.Site, "designPressure", need.Site.HasRelief == false ? (Reason)$"The design pressure of the high side is not known." : $"The design pressure of the high side, and the relief's setting, are not known.");
        var found = Judge(need, facet, design, most);
        return relief is not null || need.Site.HasRelief == false || found.Verdict is not (Verdict.Meets or Verdict.MeetsWithChanges)
            ? found
            : Finding.Unknown(Side.Site, "reliefSetting", found.Changes, $"{most}; the relief valve's setting, of which it is to open at no more than 90 %, is not known{(need.Site.HasRelief is null ? ", nor whether there is such a valve" : string.Empty)}.");
    }

    private static Finding Judge(PressureControlNeed need, HighSettingFacet facet, double? design, Limit most)
    {
        if (facet.IsAdjustable == false && facet.CutOut is { } opens) return Opens(opens, most, design) ?? Finding.Meets($"It opens at {new ShownPressure(opens)} and cannot be set; {most}.") with { Margin = new(most.Kilopascals - opens, "kPa") };
        if (Settings.In(need.Site.CutOutNeeded) is not { } needed) return Finding.Unknown(Side.Site, "cutOutNeeded", $"Where it is to open is not known.");
        return Opens(needed, most, design) ?? AtMost(facet, needed, most);
    }

    /// <summary>What is wrong, or open, about where it opens; null where that is before design and relief.</summary>
    private static Finding? Opens(double at, Limit most, double? design)
    {
        if (!Within.AtMost(at, most.Kilopascals)) return Finding.Fails(new Margin(most.Kilopascals - at, "kPa"), $"It would open at {new ShownPressure(at)}; {most}.");
        return design is null ? Finding.Unknown(Side.Site, "designPressure", $"It opens at {new ShownPressure(at)}, before the relief valve; the design pressure is not known.") : null;
    }

    private static Finding AtMost(HighSettingFacet facet, double needed, Limit most)
    {
        var margin = new Margin(most.Kilopascals - needed, "kPa");
        if (facet.Highest is { } bound && Within.AtMost(bound, most.Kilopascals)) return Finding.Meets($"It cannot be set above {new ShownPressure(bound)}; {most}.") with { Margin = margin };
        if (facet.IsAdjustable == false) return Finding.Unknown(Side.Part, "cutOut", $"{most}; it cannot be set, and where it opens is not known.");
        return facet.Highest is { } highest
            ? Finding.MeetsWith([new(PressureControlChanges.FitStop, $"fit a stop at {new ShownPressure(most.Kilopascals)}: it could be set to {new ShownPressure(highest)}") { Kit = [new($"limit stop for the control")] }], $"It can be set to {new ShownPressure(highest)}; {most}.") with { Margin = margin }
            : Finding.Unknown(Side.Part, "range", $"{most}; how high it can be set is not known.");
    }

    /// <summary>Where it is to open at most, and what says so.</summary>
    /// <param name="Kilopascals">The pressure, kPa.</param>
    /// <param name="IsDesign">Whether that is the design pressure; else it is 90 % of the relief's setting.</param>
    private readonly record struct Limit(double Kilopascals, bool IsDesign)
    {
        /// <summary>The lower of the two; null where neither is known.</summary>
        public static Limit? Of(double? design, double? relief) => relief is { } share && !(design <= share) ? new(share, false) : design is { } most ? new(most, true) : null;

        public override string ToString() => FormattableString.Invariant($"{new ShownPressure(Kilopascals)} is the most, by {(IsDesign ? "the design pressure" : "90 % of the relief's setting")}");
    }
}
