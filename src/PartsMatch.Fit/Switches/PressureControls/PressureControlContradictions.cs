using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>What a pressure control's plate, and its place, cannot say all at once.</summary>
public static class PressureControlContradictions
{
    /// <summary>All that disagrees on the plate.</summary>
    public static IReadOnlyList<Contradiction> Find(PressureControlSpec plate) => [.. ContactAgreement.OfRatings(plate), .. FunctionAndAction(plate), .. WrongWayRound(plate), .. BesideItsDifferential(plate)];

    /// <summary>All of the place that does not go with the plate.</summary>
    public static IReadOnlyList<Contradiction> AtTheSite(PressureControlSpec plate, PressureControlSite site) => [.. ContactAgreement.OfLoads(plate, site, "control"), .. Needed(plate, site), .. OverItsPressure(plate, site), .. ContactsDo.Rule.Disagreement(plate.Action, site.Wired, PressureControlSources.Action)];

    private static IEnumerable<Contradiction> FunctionAndAction(PressureControlSpec plate)
    {
        if ((plate.Function, plate.Action) is (PressureFunction.HighPressure, PressureAction.OpensOnFall) or (PressureFunction.LowPressure or PressureFunction.FanCycling, PressureAction.OpensOnRise))
        {
            yield return new(["function", "action"], $"A control for {Deducing.Text(plate.Function!.Value)} does not {(plate.Action == PressureAction.OpensOnRise ? "open on rise" : "open on fall")}.", PressureControlSources.Action);
        }
    }

    private static IEnumerable<Contradiction> WrongWayRound(PressureControlSpec plate)
    {
        if (Settings.In(plate.CutOut) is not { } cutOut || Settings.In(plate.CutIn) is not { } cutIn) yield break;
        if (plate.Running == PressureAction.OpensOnRise && cutOut <= cutIn) yield return new(["cutOut", "cutIn"], $"It opens on rise, and its cut-out of {Deducing.Text(plate.CutOut!.Value)} is not above its cut-in of {Deducing.Text(plate.CutIn!.Value)}.", PressureControlSources.Differential);
        if (plate.Running == PressureAction.OpensOnFall && cutOut >= cutIn) yield return new(["cutOut", "cutIn"], $"It opens on fall, and its cut-out of {Deducing.Text(plate.CutOut!.Value)} is not below its cut-in of {Deducing.Text(plate.CutIn!.Value)}.", PressureControlSources.Differential);
    }

    private static IEnumerable<Contradiction> BesideItsDifferential(PressureControlSpec plate)
    {
        if (plate.CutOut is not { } cutOut || plate.CutIn is not { } cutIn || plate.Differential?.Kilopascals is not { } span) yield break;
        if (Within.Span(Settings.Between(cutOut, cutIn), span.Low - Settings.Near, span.High + Settings.Near)) yield break;
        yield return new(["cutOut", "cutIn", "differential"], $"Between its cut-out and cut-in lies another distance than its differential of {Deducing.Text(plate.Differential)}.", PressureControlSources.Differential);
    }

    private static IEnumerable<Contradiction> Needed(PressureControlSpec plate, PressureControlSite site)
    {
        foreach (var (has, needed, field) in new[] { (plate.CutOut, site.CutOutNeeded, "cutOut"), (plate.CutIn, site.CutInNeeded, "cutIn") })
        {
            if (Settings.In(has) is not { } was || Settings.In(needed) is not { } asked || Within.AtMost(Math.Abs(was - asked), Settings.Near)) continue;
            yield return new([field], $"The old one was set to {Deducing.Text(has!.Value)}, and {Deducing.Text(needed!.Value)} is said to be needed: what is needed is judged by.", PressureControlSources.Settings) { SiteFields = [$"{field}Needed"] };
        }
    }

    private static IEnumerable<Contradiction> OverItsPressure(PressureControlSpec plate, PressureControlSite site)
    {
        if (Settings.In(plate.PressureMost) is not { } bore || Settings.In(site.TestPressure) is not { } tested || Within.AtLeast(bore, tested)) yield break;
        yield return new(["pressureMost"], $"The old one bore {Deducing.Text(plate.PressureMost!.Value)}, and its side is tested at {Deducing.Text(site.TestPressure!.Value)}: it was a wrong one, or one of the two is misread.", PressureControlSources.WorkingPressure) { SiteFields = ["testPressure"] };
    }
}
