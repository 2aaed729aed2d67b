using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.SolenoidValves.Proof;

/// <summary>Does gas pass it while it is open?</summary>
/// <remarks>A pipe that is colder behind tells nothing of a suction or hot-gas line, so it is looked at there whether anything passes at all. What does not condemns it only where its coil leaves it open.</remarks>
public sealed class PassesGas() : ReadingRule<SolenoidValveCase>("When open", SolenoidValveReadingSources.ValvePassesGas)
{
    /// <summary>How it is asked which state it is in without power.</summary>
    internal const string WhichState = "Read whether it is normally closed or normally open: with power the one opens and the other shuts.";

    /// <inheritdoc/>
    public override Ruling? Judge(SolenoidValveCase one) => (one.Readings.PassesWhenOpen, one.IsLeftOpen) switch
    {
        (null, true) when one.OpensWithPower && (one.Readings.PassesWhenShut is null || one.New is not null) => Asked(one.Need.Site.Line),
        (null, null) when one is { State: null, Need.Site.Line: RefrigerantLine.Suction or RefrigerantLine.HotGas, Readings: { MagnetPulls: true, PassesWhenShut: null } } => Ruling.Read("normalState", WhichState, Side.Plate),
        (null, _) => null,
        (true, _) => Ruling.Good($"It passes when it is open."),
        (_, true) when one.New is null => Ruling.Bad($"Its coil leaves it open, and nothing passes: its plunger or piston sticks, its pilot hole is plugged, or it does not lift against the pressures there.").ThePartHasFailed(),
        (_, true) => Ruling.Bad($"Its coil leaves it open, and nothing passes: see its arrow, and what it opens against; flush brazing dirt from it."),
        _ when one.State is null => Ruling.CantTell($"It does not pass; whether it is open with power or without is not known.").ThenRead("normalState", WhichState, Side.Plate),
        _ when !one.OpensWithPower => Ruling.CantTell($"It does not pass, and power shuts a normally open valve.").ThenTakeItsPower(one, "look again whether gas passes"),
        _ when one.Readings.MagnetPulls == true => Ruling.CantTell($"It does not pass; whether its coil has volts enough to lift it is not known."),
        _ => Ruling.CantTell($"It does not pass; that its coil opens it is not known.").ThenRead("magnetPulls", "Hold a steel screwdriver near the coil's nut while it is called for: only where it is pulled is the valve to be open."),
    };

    private static Ruling? Asked(RefrigerantLine? line) => line switch
    {
        RefrigerantLine.HotGas => Ruling.Read("passesWhenOpen", "Feel, or clamp, the pipe behind the valve while it is energised and the compressor runs: within a few minutes it gets about as hot as the one before it where gas passes."),
        RefrigerantLine.Suction => Ruling.Read("passesWhenOpen", "Put a gauge before the valve while it is energised and the compressor runs: the pressure comes down to about the compressor's where gas passes."),
        _ => null,
    };
}
