using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the high setting reads of a pressure control, kPa.</summary>
/// <param name="Highest">The highest that it can be set to; null when not known.</param>
/// <param name="IsAdjustable">Whether it can be set; null when not known.</param>
/// <param name="CutOut">Where it opens as shipped, which is where it stays when it cannot be set; null when not known.</param>
public readonly record struct HighSettingFacet(double? Highest, bool? IsAdjustable, double? CutOut);

/// <summary>Does a high-pressure control open before the design pressure, and well before the relief valve?</summary>
/// <remarks>At most the design pressure and 90 % of the relief's setting, edges included. One that cannot be set is judged by its own cut-out, any other by the one that it is to be set to; one that can be set beyond gets a stop: a change. Only of high-pressure controls.</remarks>
public sealed class HighSetting() : Aspect<PressureControlSpec, PressureControlSite, HighSettingFacet>("High-pressure limit", isDeciding: false, PressureControlSources.HighSetting, new(0.4, 0.5, 0.4))
{
    private const double ReliefShare = 0.9;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["range", "cutOut", "function"], ["cutOutNeeded", "designPressure", "reliefSetting"]) { Besides = ["isAdjustable", "differential"] };

    /// <inheritdoc/>
    public override HighSettingFacet Read(PressureControlSpec part) => new(part.Range?.Kilopascals.High, part.IsAdjustable, Settings.In(part.CutOut));

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, HighSettingFacet facet)
    {
        if (need.Plate.Function is not { } function) return Finding.Unknown(Side.Plate, "function", $"Whether it is a high-pressure control is not known.");
        if (function != PressureFunction.HighPressure) return Finding.Meets($"It is no high-pressure control.");
        var (design, relief) = (Settings.In(need.Site.DesignPressure), Settings.In(need.Site.ReliefSetting * ReliefShare));
        if (Least(design, relief) is not { } most) return Finding.Unknown(Side.Site, "designPressure", $"The design pressure of the high side, and the relief's setting, are not known.");
        var found = Judge(need, facet, design, most);
        return relief is not null || found.Verdict is not (Verdict.Meets or Verdict.MeetsWithChanges) ? found : found with
        {
            CautionWords = $"The relief valve's setting is not known: see that the control opens at no more than 90 % of it.",
        };
    }

    private static Finding Judge(PressureControlNeed need, HighSettingFacet facet, double? design, double most)
    {
        if (facet.IsAdjustable == false && facet.CutOut is { } opens) return Opens(opens, most, design) ?? Finding.Meets($"It opens at {new ShownPressure(opens)} and cannot be set; {new ShownPressure(most)} is the most.") with { Margin = new(most - opens, "kPa") };
        if (Settings.In(need.Site.CutOutNeeded) is not { } needed) return Finding.Unknown(Side.Site, "cutOutNeeded", $"Where it is to open is not known.");
        return Opens(needed, most, design) ?? AtMost(facet, needed, most);
    }

    /// <summary>What is wrong, or open, about where it opens; null where that is before design and relief.</summary>
    private static Finding? Opens(double at, double most, double? design)
    {
        if (!Within.AtMost(at, most)) return Finding.Fails(new Margin(most - at, "kPa"), $"It would open at {new ShownPressure(at)}; {new ShownPressure(most)} is the most, by the design pressure and 90 % of the relief's setting.");
        return design is null ? Finding.Unknown(Side.Site, "designPressure", $"It opens at {new ShownPressure(at)}, before the relief valve; the design pressure is not known.") : null;
    }

    private static Finding AtMost(HighSettingFacet facet, double needed, double most)
    {
        var margin = new Margin(most - needed, "kPa");
        if (facet.Highest is { } bound && Within.AtMost(bound, most)) return Finding.Meets($"It cannot be set above {new ShownPressure(bound)}; {new ShownPressure(most)} is the most.") with { Margin = margin };
        if (facet.IsAdjustable == false) return Finding.Unknown(Side.Part, "cutOut", $"{new ShownPressure(most)} is the most; it cannot be set, and where it opens is not known.");
        return facet.Highest is { } highest
            ? Finding.MeetsWith([new(PressureControlChanges.FitStop, $"fit a stop at {new ShownPressure(most)}: it could be set to {new ShownPressure(highest)}") { Kit = [new($"limit stop for the control")] }], $"It can be set to {new ShownPressure(highest)}; {new ShownPressure(most)} is the most, by the design pressure and 90 % of the relief's setting.") with { Margin = margin }
            : Finding.Unknown(Side.Part, "range", $"{new ShownPressure(most)} is the most; how high it can be set is not known.");
    }

    private static double? Least(double? one, double? other) => one is { } a && other is { } b ? Math.Min(a, b) : one ?? other;
}
