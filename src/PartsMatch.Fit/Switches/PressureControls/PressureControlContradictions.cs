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
    public static IReadOnlyList<Contradiction> AtTheSite(PressureControlSpec plate, PressureControlSite site) => [.. ContactAgreement.OfLoads(plate, site, "control"), .. Needed(plate, site), .. NeededWrongWayRound(plate, site), .. OverItsPressure(plate, site), .. ReliefOfNone(site), .. ContactsDo.Rule.Disagreement(plate.Action, site.Wired, PressureControlSources.Action)];

    private static IEnumerable<Contradiction> FunctionAndAction(PressureControlSpec plate)
    {
        if ((plate.Function, plate.Action) is (PressureFunction.HighPressure, PressureAction.OpensOnFall) or (PressureFunction.LowPressure or PressureFunction.FanCycling, PressureAction.OpensOnRise))
        {
            yield return new(["function", "action"], $"A control for {Deducing.Text(plate.Function!.Value)} does not {(plate.Action == PressureAction.OpensOnRise ? "open on rise" : "open on fall")}.", PressureControlSources.Action);
        }
    }

    private static IEnumerable<Contradiction> WrongWayRound(PressureControlSpec plate)
    {
        if (plate is not { CutOut: { } cutOut, CutIn: { } cutIn, Running: { } running } || !Settings.AreWrongWayRound(running, cutOut, cutIn)) yield break;
        yield return new(["cutOut", "cutIn"], $"It {Does(running)}, and its cut-out of {Deducing.Text(cutOut)} is not {Beside(running)} its cut-in of {Deducing.Text(cutIn)}.", PressureControlSources.Differential);
    }

    /// <summary>Of the old one's own two it is told as such.</summary>
    private static IEnumerable<Contradiction> NeededWrongWayRound(PressureControlSpec plate, PressureControlSite site)
    {
        if (site is not { CutOutNeeded: { } cutOut, CutInNeeded: { } cutIn } || site.RunningBeside(plate) is not { } running || !Settings.AreWrongWayRound(running, cutOut, cutIn)) yield break;
        if (plate.Running is not null && cutOut.Equals(plate.CutOut) && cutIn.Equals(plate.CutIn)) yield break;
        string[] fields = plate switch { { Running: null } => [], { Action: null or PressureAction.ChangeOver } => ["function"], _ => ["action"] };
        yield return new(fields, $"It {Does(running)}, and the cut-out of {Deducing.Text(cutOut)} that is needed is not {Beside(running)} the cut-in of {Deducing.Text(cutIn)}.", PressureControlSources.Differential) { SiteFields = ["cutOutNeeded", "cutInNeeded", .. plate.Running is null ? (string[])["sidesWired"] : []] };
    }

    private static string Does(PressureAction running) => running == PressureAction.OpensOnRise ? "opens on rise" : "opens on fall";

    private static string Beside(PressureAction running) => running == PressureAction.OpensOnRise ? "above" : "below";

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
            if (!Settings.AreOthers(has, needed)) continue;
            yield return new([field], $"The old one was set to {Deducing.Text(has!.Value)}, and {Deducing.Text(needed!.Value)} is said to be needed: what is needed is judged by.", PressureControlSources.Settings) { SiteFields = [$"{field}Needed"] };
        }
    }

    private static IEnumerable<Contradiction> OverItsPressure(PressureControlSpec plate, PressureControlSite site)
    {
        if (Settings.In(plate.PressureMost) is not { } bore || Settings.In(site.TestPressure) is not { } tested || Within.AtLeast(bore, tested)) yield break;
        yield return new(["pressureMost"], $"The old one bore {Deducing.Text(plate.PressureMost!.Value)}, and its side is tested at {Deducing.Text(site.TestPressure!.Value)}: it was a wrong one, or one of the two is misread.", PressureControlSources.WorkingPressure) { SiteFields = ["testPressure"] };
    }

    private static IEnumerable<Contradiction> ReliefOfNone(PressureControlSite site)
    {
        if (site is { HasRelief: false, ReliefSetting: { } set }) yield return new([], $"Its side is said to have no relief valve, and one set to {Deducing.Text(set)}: the setting is judged by.", PressureControlSources.HighSetting) { SiteFields = ["hasRelief", "reliefSetting"] };
    }
}
