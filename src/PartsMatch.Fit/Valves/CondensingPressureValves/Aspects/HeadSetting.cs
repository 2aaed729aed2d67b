using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Aspects;

/// <summary>What is read of a valve's setting.</summary>
/// <param name="Holds">What it comes set to, kPa gauge; null where not given.</param>
/// <param name="Least">Lowest setting, kPa; null of a fixed one.</param>
/// <param name="Most">Highest setting, kPa; null of a fixed one.</param>
public readonly record struct SettingFacet(double? Holds, double? Least, double? Most);

/// <summary>Does the valve hold the pressure that is needed?</summary>
/// <remarks>
/// Within 10 psi, edges included, meets; one that can be set there is a change. Further off is a check; lower only where the expansion valves still pass their load at that head, else it fails.
/// </remarks>
public sealed class HeadSetting() : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, SettingFacet>("Setting", isDeciding: true, CondensingPressureValveSources.HeadSetting, new(0.8, 0.6, 1.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a pressure", "off the one needed", 0, HeadLimits.Near, "kPa");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["setting", "settingLeast", "settingMost"], ["settingNeeded", "leastHead"]);

    /// <inheritdoc/>
    public override SettingFacet Read(CondensingPressureValveSpec part) => new(Rounded.Kilopascal(part.Setting), Rounded.Kilopascal(part.SettingLeast), Rounded.Kilopascal(part.SettingMost));

    /// <inheritdoc/>
    public override Finding Judge(HeadNeed need, SettingFacet facet)
    {
        if (Rounded.Kilopascal(need.Site.SettingNeeded) is not { } needed) return Finding.Unknown(Side.Site, "settingNeeded", $"The pressure that is to be held there is not known.");
        if (facet.Holds is { } held && Within.AtMost(Math.Abs(held - needed), HeadLimits.Near)) return Finding.Meets($"It holds {new ShownPressure(held)}; {new ShownPressure(needed)} are needed, within 10 psi (69 kPa).") with { Shortfall = Math.Min(1, Math.Abs(held - needed) / HeadLimits.Near) };
        if (facet is { Least: { } least, Most: { } most } && Within.Span(needed, least, most)) return Finding.MeetsWith([new(CondensingPressureValveChanges.SetPressure, $"set it to {new ShownPressure(needed)}")], $"It is set from {new ShownPressure(least)} to {new ShownPressure(most)}; {new ShownPressure(needed)} are needed.");
        if (facet.Holds is not { } holds) return Finding.Unknown(Side.Part, "setting", $"The pressure that it holds is not given.");
        if (holds > needed) return Finding.MeetsWith([Check(holds, needed)], $"It holds {new ShownPressure(holds)}, over 10 psi (69 kPa) above the {new ShownPressure(needed)} needed.") with { Shortfall = 1 };
        return Rounded.Kilopascal(need.Site.LeastHead) switch
        {
            null => Finding.Unknown(Side.Site, "leastHead", $"It holds {new ShownPressure(holds)}, over 10 psi (69 kPa) below the {new ShownPressure(needed)} needed; whether the expansion valves still pass their load then is not known.") with { Shortfall = 1 },
            { } bears when Within.AtLeast(holds, bears) => Finding.MeetsWith([Check(holds, needed)], $"It holds {new ShownPressure(holds)}, below the {new ShownPressure(needed)} needed; the expansion valves bear {new ShownPressure(bears)}.") with { Shortfall = 1 },
            { } bears => Finding.Fails(new(holds - bears, "kPa"), $"It holds {new ShownPressure(holds)}; the expansion valves need {new ShownPressure(bears)} to pass their load."),
        };
    }

    private static Change Check(double holds, double needed) => new(CondensingPressureValveChanges.CheckHead, $"check the head: it holds {new ShownPressure(holds)} where {new ShownPressure(needed)} were held");
}
