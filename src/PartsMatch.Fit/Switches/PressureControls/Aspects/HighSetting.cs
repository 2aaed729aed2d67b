using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the high setting reads of a pressure control, kPa.</summary>
/// <param name="Highest">The highest that it can be set to; null when not known.</param>
/// <param name="IsAdjustable">Whether it can be set; null when not known.</param>
public readonly record struct HighSettingFacet(double? Highest, bool? IsAdjustable);

/// <summary>Does a high-pressure control open before the design pressure, and well before the relief valve?</summary>
/// <remarks>At most the design pressure and 90 % of the relief's setting, edges included. A control that can be set beyond gets a stop: a change. Only of high-pressure controls.</remarks>
public sealed class HighSetting() : Aspect<PressureControlSpec, PressureControlSite, HighSettingFacet>("High-pressure limit", isDeciding: false, PressureControlSources.HighSetting, new(0.4, 0.5, 0.4))
{
    private const double ReliefShare = 0.9;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["range", "function"], ["cutOutNeeded", "designPressure", "reliefSetting"]) { Besides = ["isAdjustable", "cutOut", "differential"] };

    /// <inheritdoc/>
    public override HighSettingFacet Read(PressureControlSpec part) => new(part.Range?.Kilopascals.High, part.IsAdjustable);

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, HighSettingFacet facet)
    {
        if (need.Plate.Function is not { } function) return Finding.Unknown(Side.Plate, "function", $"Whether it is a high-pressure control is not known.");
        if (function != PressureFunction.HighPressure) return Finding.Meets($"It is no high-pressure control.");
        var (design, relief) = (Settings.In(need.Site.DesignPressure), Settings.In(need.Site.ReliefSetting * ReliefShare));
        if (Settings.In(need.Site.CutOutNeeded) is not { } cutOut) return Finding.Unknown(Side.Site, "cutOutNeeded", $"Where it is to open is not known.");
        if (Least(design, relief) is not { } most) return Finding.Unknown(Side.Site, "designPressure", $"The design pressure of the high side, and the relief's setting, are not known.");
        if (!Within.AtMost(cutOut, most)) return Finding.Fails(new Margin(most - cutOut, "kPa"), $"It is to open at {new ShownPressure(cutOut)}; {new ShownPressure(most)} is the most, by the design pressure and 90 % of the relief's setting.");
        if (design is null) return Finding.Unknown(Side.Site, "designPressure", $"It opens at {new ShownPressure(cutOut)}, before the relief valve; the design pressure is not known.");
        if (facet.IsAdjustable == false) return Finding.Meets($"It opens at {new ShownPressure(cutOut)} and cannot be set higher; {new ShownPressure(most)} is the most.") with { Margin = new(most - cutOut, "kPa") };
        if (facet.Highest is not { } highest) return Finding.Unknown(Side.Part, "range", $"{new ShownPressure(most)} is the most; how high it can be set is not known.");
        return Within.AtMost(highest, most)
            ? Finding.Meets($"It cannot be set above {new ShownPressure(highest)}; {new ShownPressure(most)} is the most.") with { Margin = new(most - cutOut, "kPa") }
            : Finding.MeetsWith([new(PressureControlChanges.FitStop, $"fit a stop at {new ShownPressure(most)}: it could be set to {new ShownPressure(highest)}") { Kit = [new($"limit stop for the control")] }], $"It can be set to {new ShownPressure(highest)}; {new ShownPressure(most)} is the most, by the design pressure and 90 % of the relief's setting.") with { Margin = new(most - cutOut, "kPa") };
    }

    private static double? Least(double? one, double? other) => one is { } a && other is { } b ? Math.Min(a, b) : one ?? other;
}
