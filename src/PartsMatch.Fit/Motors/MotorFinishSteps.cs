using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>What stands behind the changes: the blade at its place, the leads joined, the figures written down.</summary>
internal static class MotorFinishSteps
{
    public static IReadOnlyList<Step> Of(MotorNeed need, MotorSpec part)
    {
        var chosen = ChosenTap.Of(need, part);
        return
        [
            Drive(need),
            new(
                Stage.Wire,
                $"earth it first, then join its leads by the diagram on the motor{(chosen is { Tap: var tap } ? $", for {tap}" : string.Empty)}",
                "Cap each lead that is not used by itself. Colours are makers' custom: where marks and diagram are missing, ask before joining.",
                MotorConnections.OfLeads(need, part)),
            .. SpeedSteps.Wiring(need, part),
            new(
                Stage.Record,
                $"write down part, date, volts, amps and turn{(part.RunCapacitor is { IsNone: false } asked ? $", and the run capacitor that is on it now ({Asked(asked)})" : string.Empty)}, and leave it with the equipment",
                "Whoever comes next starts from these figures."),
        ];
    }

    /// <summary>What the motor asks for, beside which the one that was fitted is written down: often it is marked for more volts.</summary>
    private static string Asked(CapacitorRating rating) =>
        FormattableString.Invariant($"{Rounded.Microfarads(rating.Capacitance)} µF{(Rounded.Volts(rating.Volts) is { } volts ? $", {volts} V or more," : string.Empty)} was asked for");

    private static Step Drive(MotorNeed need)
    {
        if (need.Site.Drive == Motors.Drive.Belt) return new(Stage.Mount, "line up the sheaves, set the belt as it was, and turn it by hand");
        var (what, where) = need.Site.FanKind == FanKind.BlowerWheel ? ("wheel", "housing") : ("blade", "ring");
        var depth = Rounded.Millimetres(need.Site.BladeDepth) is { } known ? $"its depth of {new Shown(known)}" : "its old depth";
        var holds = ShaftToHub.HeldBy(need) switch
        {
            ShaftForm.Flat => ", its screw square on the flat,",
            ShaftForm.DoubleFlat => ", its screws square on the flats,",
            ShaftForm.Keyway => ", its key in the keyway,",
            _ => string.Empty,
        };
        return new(Stage.Mount, need.Site.BladeStays == false ? $"set the new {what} on the shaft{holds} and turn it by hand: it clears its {where} all round" : $"set the {what} at {depth}{holds} and turn it by hand: it clears its {where} all round");
    }
}
