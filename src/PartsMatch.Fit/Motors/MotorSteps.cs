using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>The steps of every motor's job round its changes, with the numbers of its need and part.</summary>
internal static class MotorSteps
{
    /// <summary>What every motor's job is made of.</summary>
    public static JobSteps Of(MotorNeed need, MotorSpec part)
    {
        var discharges = Discharges(need).ToList();
        return new(
            [
                SafeSteps.LockOut,
                SafeSteps.ProveDead("the motor's leads", VoltsThere(need)),
                .. discharges,
                .. MotorBeforeSteps.Of(need, part),
                .. MotorStartSteps.Of(need, part),
            ],
            MotorFinishSteps.Of(need, part))
        {
            Kit = [.. discharges.Count > 0 ? (KitItem[])[SafeSteps.Resistor] : [], SafeSteps.Connectors(Joints(need, part)), SafeSteps.LockAndTag, SafeSteps.Meter],
            Cautions = [SafeSteps.CodesFirst, SafeSteps.Ladders, .. HazardCautions.Of(need.Site.Hazard), SafeSteps.BladesStart],
            Diagram = change => MotorConnections.Diagram(need, part, change),
        };
    }

    /// <summary>The turn that the fan needs, facing the shaft; null when it or the end it is seen from is not known.</summary>
    public static Direction? TurnNeeded(MotorNeed need) => (need.Site.TurnNeeded ?? need.Plate.Rotation)?.FacingShaft;

    /// <summary>That turn in words; null when not known.</summary>
    public static string? TurnWords(MotorNeed need) => TurnNeeded(need) switch
    {
        Direction.Clockwise => "clockwise facing the shaft",
        Direction.Counterclockwise => "counterclockwise facing the shaft",
        _ => null,
    };

    /// <summary>The volts that the old motor had, as measured, or else as its plate says; null when neither is known.</summary>
    public static string? VoltsThere(MotorNeed need) => (need.Site.Volts, need.Plate.Voltage) switch
    {
        _ when TapChoice.Old(need) == Between.LineAndNeutral => $"{string.Join("/", need.Site.NeutralVolts!.Select(volts => FormattableString.Invariant($"{volts.Volts:0.#}")))} V to neutral",
        ({ } measured, _) => $"{string.Join("/", measured.Select(volts => FormattableString.Invariant($"{volts.Volts:0.#}")))} V",
        (null, { Count: 1 } plate) => VoltTap.Of(plate[0]).ToString(),
        _ => null,
    };

    /// <summary>The capacitor that is there, as far as known.</summary>
    public static CapacitorRating? CapacitorThere(MotorNeed need) => need.Site.CapacitorThere ?? RunCapacitor.RatingOf(need.Plate);

    private static IEnumerable<Step> Discharges(MotorNeed need)
    {
        if (need.Plate.Type is MotorType.CapacitorStart or MotorType.CapacitorStartCapacitorRun) yield return SafeSteps.Discharge("its start capacitor", null);
        if (CapacitorThere(need) is not { } there)
        {
            yield return SafeSteps.Discharge("its run capacitor, if it has one,", null);
        }
        else if (there.Capacitance is { } first)
        {
            var all = Rounded.To(first.Microfarads + (there.SecondSection?.Microfarads ?? 0), 2);
            yield return SafeSteps.Discharge($"the {CapacitorRating.Form.Write(there)} run capacitor", all, there.SecondSection is not null);
        }

        if (need.Plate.Type == MotorType.ElectronicallyCommutated)
        {
            yield return new(Stage.MakeSafe, "wait as long as the old motor's label says before touching its plugs, five minutes if it says nothing", "Its electronics hold a charge behind the plug, where no resistor reaches (practice).");
        }
    }

    /// <summary>One connector a line, and one a group of leads that are joined to one another.</summary>
    private static int Joints(MotorNeed need, MotorSpec part) =>
        ((part.Phase ?? need.Site.SupplyPhase) == Phases.Single ? 2 : 3)
        + MotorConnections.ForTap(need, part).Select(connection => connection.Joined.Count).DefaultIfEmpty(0).Max();
}
