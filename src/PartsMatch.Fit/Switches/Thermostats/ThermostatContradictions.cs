using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>What a thermostat's plate, and its place, cannot say all at once.</summary>
public static class ThermostatContradictions
{
    /// <summary>All that disagrees on the plate.</summary>
    public static IReadOnlyList<Contradiction> Find(ThermostatSpec plate) => [.. ContactAgreement.OfRatings(plate), .. OfFansRatings(plate), .. FunctionAndAction(plate), .. FunctionAndTemperatures(plate), .. WrongWayRound(plate), .. BesideItsDifferential(plate), .. OutOfItsRange(plate)];

    /// <summary>All of the place that does not go with the plate.</summary>
    public static IReadOnlyList<Contradiction> AtTheSite(ThermostatSpec plate, ThermostatSite site) => [.. ContactAgreement.OfLoads(plate, site, "thermostat"), .. OfFans(plate, site), .. Needed(plate, site), .. NeededBesideDifferential(plate, site), .. NeededWrongWayRound(plate, site), .. FansNeededWrongWayRound(plate, site), .. HotterThanItBore(plate, site), .. ContactsDo.Rule.Disagreement(plate.Action, site.Wired, ThermostatSources.Action)];

    private static IEnumerable<Contradiction> OfFansRatings(ThermostatSpec plate) => plate.FansContact is { } fans ? ContactAgreement.OfRatings(fans).Select(one => OnFans(one, plate)) : [];

    /// <summary>Fans of an old one with three wires against its fans' contacts; one of another function has none.</summary>
    private static IEnumerable<Contradiction> OfFans(ThermostatSpec plate, ThermostatSite site) => (plate.Function, site) switch
    {
        (ThermostatFunction.FanDelayAndDefrostEnd, _) => ContactAgreement.OfLoads(plate.FansContact ?? plate, site.FansContact, "fans' contact").Select(one => OnFans(one, plate)),
        (null, _) or (_, { FanMotors: null, FanHeaterAmps: null, FanCoilsVa: null, FanCoilsInrushVa: null }) => [],
        _ => [new(["function"], $"A {Deducing.Text(plate.Function!.Value)} has no contacts of their own for fans: what is on its one contact is given as motors, heaters or coils.", ContactSources.LoadsNamed) { SiteFields = [site.FanMotors is not null ? "fanMotors" : site.FanHeaterAmps is not null ? "fanHeaterAmps" : site.FanCoilsVa is not null ? "fanCoilsVa" : "fanCoilsInrushVa"] }],
    };

    /// <summary>What disagrees of the fans' contacts, by their own fields.</summary>
    private static Contradiction OnFans(Contradiction one, ThermostatSpec plate) => one with
    {
        Fields = [.. one.Fields.Select(field => plate.FansContact is null || (field == "ratedVolts" && plate.FanRatedVolts is null) ? field : FansFields.InSpec(field))],
        SiteFields = [.. one.SiteFields.Select(FansFields.InSite)],
    };

    private static IEnumerable<Contradiction> FunctionAndAction(ThermostatSpec plate)
    {
        if ((plate.Function, plate.Action) is (ThermostatFunction.FanDelay or ThermostatFunction.HighLimit, ThermostatAction.ClosesOnRise) or (ThermostatFunction.LowLimit, ThermostatAction.OpensOnRise))
        {
            yield return new(["function", "action"], $"A {Deducing.Text(plate.Function!.Value)} does not {(plate.Action == ThermostatAction.OpensOnRise ? "open" : "close")} on rise.", ThermostatSources.ActionOfFunction);
        }
    }

    /// <summary>Where it opens and closes outranks what its function mostly does, and where its function leaves but one way nothing is taken: beside that it is told.</summary>
    private static IEnumerable<Contradiction> FunctionAndTemperatures(ThermostatSpec plate)
    {
        if (plate is not { Function: { } function, CutOut: { } opens, CutIn: { } closes } || TakenOfTheOldOne.ActionOf(function) is not { } usual) yield break;
        var higher = Degrees.In(opens) > Degrees.In(closes) ? ThermostatAction.OpensOnRise : ThermostatAction.ClosesOnRise;
        if (Degrees.In(opens).Equals(Degrees.In(closes)) || higher == usual) yield break;
        yield return new(["function", "cutOut", "cutIn"], $"It opens at {Deducing.Text(opens)} and closes at {Deducing.Text(closes)}; a {Deducing.Text(function)} mostly {(usual == ThermostatAction.OpensOnRise ? "opens" : "closes")} at the higher of the two{(function == ThermostatFunction.Box ? ", unless it is one for heat" : string.Empty)}.", ThermostatSources.ActionOfFunction);
    }

    private static IEnumerable<Contradiction> WrongWayRound(ThermostatSpec plate)
    {
        if (Degrees.In(plate.CutOut) is { } opens && Degrees.In(plate.CutIn) is { } closes)
        {
            if (plate.MarkedWay == ThermostatAction.OpensOnRise && opens <= closes) yield return new(["cutOut", "cutIn"], $"It opens on rise, and its cut-out of {Deducing.Text(plate.CutOut!.Value)} is not above its cut-in of {Deducing.Text(plate.CutIn!.Value)}.", ThermostatSources.Differential);
            if (plate.MarkedWay == ThermostatAction.ClosesOnRise && opens >= closes) yield return new(["cutOut", "cutIn"], $"It closes on rise, and its cut-out of {Deducing.Text(plate.CutOut!.Value)} is not below its cut-in of {Deducing.Text(plate.CutIn!.Value)}.", ThermostatSources.Differential);
        }

        if (Degrees.In(plate.FanCutOut) is { } stops && Degrees.In(plate.FanCutIn) is { } starts && stops <= starts)
        {
            yield return new(["fanCutOut", "fanCutIn"], $"The fans' contacts open as the coil warms, and {Deducing.Text(plate.FanCutOut!.Value)} is not above the {Deducing.Text(plate.FanCutIn!.Value)} where they close.", ThermostatSources.Differential);
        }
    }

    private static IEnumerable<Contradiction> BesideItsDifferential(ThermostatSpec plate)
    {
        if (Degrees.In(plate.CutOut) is not { } cutOut || Degrees.In(plate.CutIn) is not { } cutIn || plate.Differential?.Kelvins is not { } span) yield break;
        if (Within.Span(Degrees.Between(cutOut, cutIn), span.Low - Degrees.NearDifferential, span.High + Degrees.NearDifferential)) yield break;
        yield return new(["cutOut", "cutIn", "differential"], $"Between its cut-out and cut-in lies another distance than its differential of {Deducing.Text(plate.Differential)}.", ThermostatSources.Differential);
    }

    /// <summary>Scales of one setting name where it opens or where it closes: one of the two lies in its range.</summary>
    private static IEnumerable<Contradiction> OutOfItsRange(ThermostatSpec plate)
    {
        if (plate.Range?.Celsius is not { } range || (plate.CutOut ?? plate.CutIn) is not { } set) yield break;
        if (new[] { Degrees.In(plate.CutOut), Degrees.In(plate.CutIn) }.Any(one => one is { } known && Within.Span(known, range.Low - Degrees.Near, range.High + Degrees.Near))) yield break;
        yield return new([plate.CutOut is null ? "cutIn" : "cutOut", "range"], $"It is set to {Deducing.Text(set)}, which its range of {Deducing.Text(plate.Range)} does not hold.", ThermostatSources.Temperatures);
    }

    private static IEnumerable<Contradiction> Needed(ThermostatSpec plate, ThermostatSite site)
    {
        foreach (var (has, needed, field) in new[] { (plate.CutOut, site.CutOutNeeded, "cutOut"), (plate.CutIn, site.CutInNeeded, "cutIn"), (plate.FanCutOut, site.FanCutOutNeeded, "fanCutOut"), (plate.FanCutIn, site.FanCutInNeeded, "fanCutIn") })
        {
            if (!Degrees.AreOthers(has, needed)) continue;
            yield return new([field], $"The old one moved at {Deducing.Text(has!.Value)}, and {Deducing.Text(needed!.Value)} is said to be needed: what is needed is judged by.", ThermostatSources.Temperatures) { SiteFields = [$"{field}Needed"] };
        }
    }

    private static IEnumerable<Contradiction> NeededBesideDifferential(ThermostatSpec plate, ThermostatSite site)
    {
        foreach (var (has, needed, field, other) in new[] { (plate.CutOut, site.CutInNeeded, "cutOut", "cutIn"), (plate.CutIn, site.CutOutNeeded, "cutIn", "cutOut") })
        {
            if (!ThermostatDeductions.IsBesideDifferential(plate, has, needed)) continue;
            yield return new([field, "differential"], $"The old one moved at {Deducing.Text(has!.Value)}, and by its differential of {Deducing.Text(plate.Differential!)} not at the {Deducing.Text(needed!.Value)} that are said to be needed: what is needed is judged by.", ThermostatSources.Differential) { SiteFields = [$"{other}Needed"] };
        }
    }

    /// <summary>What is as good as the old one's own two, and the same way round, is judged as its own: they may be those of the side that is not wired.</summary>
    private static IEnumerable<Contradiction> NeededWrongWayRound(ThermostatSpec plate, ThermostatSite site)
    {
        if (Degrees.In(site.CutOutNeeded) is not { } opens || Degrees.In(site.CutInNeeded) is not { } closes) yield break;
        if (!opens.Equals(closes) && Degrees.In(plate.CutOut) is { } cutOut && Degrees.In(plate.CutIn) is { } cutIn && Degrees.AreNear(opens, cutOut) && Degrees.AreNear(closes, cutIn) && opens.CompareTo(closes) == cutOut.CompareTo(cutIn)) yield break;
        var (action, fields, does, wired) = (site.WiredSide, plate.Action) switch
        {
            _ when plate.Function == ThermostatFunction.FanDelayAndDefrostEnd => (plate.MarkedWay, (string[])["function"], "is to ", (string[])[]),
            _ when TakenOfTheOldOne.HasOneWay(plate.Function) => (TakenOfTheOldOne.ActionOf(plate.Function), (string[])["function"], "is taken to ", (string[])[]),
            ({ } side, _) => (side, (string[])[], "is wired to ", (string[])["sidesWired"]),
            (_, not null) => (plate.Action, ["action"], "does ", []),
            _ => (TakenOfTheOldOne.Action(plate.Function, plate.CutOut, plate.CutIn), ["function"], "is taken to ", []),
        };
        if (action == ThermostatAction.OpensOnRise && opens <= closes) yield return new(fields, $"It {does}open on rise, and the cut-out of {Deducing.Text(site.CutOutNeeded!.Value)} that is needed is not above the cut-in of {Deducing.Text(site.CutInNeeded!.Value)}.", ThermostatSources.Differential) { SiteFields = ["cutOutNeeded", "cutInNeeded", .. wired] };
        if (action == ThermostatAction.ClosesOnRise && opens >= closes) yield return new(fields, $"It {does}close on rise, and the cut-out of {Deducing.Text(site.CutOutNeeded!.Value)} that is needed is not below the cut-in of {Deducing.Text(site.CutInNeeded!.Value)}.", ThermostatSources.Differential) { SiteFields = ["cutOutNeeded", "cutInNeeded", .. wired] };
    }

    private static IEnumerable<Contradiction> FansNeededWrongWayRound(ThermostatSpec plate, ThermostatSite site)
    {
        if (Degrees.In(site.FanCutOutNeeded) is not { } stops || Degrees.In(site.FanCutInNeeded) is not { } starts || stops > starts || (stops.Equals(Degrees.In(plate.FanCutOut)) && starts.Equals(Degrees.In(plate.FanCutIn)))) yield break;
        yield return new([], $"The fans' contacts open as the coil warms, and the cut-out of {Deducing.Text(site.FanCutOutNeeded!.Value)} that is needed is not above the {Deducing.Text(site.FanCutInNeeded!.Value)} where they are to close.", ThermostatSources.Differential) { SiteFields = ["fanCutOutNeeded", "fanCutInNeeded"] };
    }

    private static IEnumerable<Contradiction> HotterThanItBore(ThermostatSpec plate, ThermostatSite site)
    {
        if (Degrees.In(plate.BulbMost) is not { } bore || Degrees.In(site.DefrostPeak) is not { } peak || Within.AtLeast(bore, peak)) yield break;
        yield return new(["bulbMost"], $"The old one's bulb bore {Deducing.Text(plate.BulbMost!.Value)}, and its place comes to {Deducing.Text(site.DefrostPeak!.Value)}: it was a wrong one, or one of the two is misread.", ThermostatSources.PeakAtBulb) { SiteFields = ["defrostPeak"] };
    }
}
