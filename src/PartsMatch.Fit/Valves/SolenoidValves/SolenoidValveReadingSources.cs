using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>Where the limits of readings come from of solenoid valves.</summary>
public static class SolenoidValveReadingSources
{
    /// <summary>What a coil's ohms tell.</summary>
    public static Source ValveCoilOhms { get; } = new("A good coil has some ohms: none at all is a short, open is a break", SourceStatus.Practice);

    /// <summary>Temperature across an open liquid valve.</summary>
    public static Source ValveDropWhenOpen { get; } = new("An open liquid-line valve is as warm behind as before it: 3 °F (1.7 K) colder behind tells a throttled one, and as much warmer that nothing flows or that the clamps are swapped", SourceStatus.Practice);

    /// <summary>What an open valve for gas shows.</summary>
    public static Source ValvePassesGas { get; } = new("Behind an open hot-gas valve the pipe gets about as hot as before it, and before an open suction valve the pressure comes down to about the compressor's, both with the compressor running", SourceStatus.Practice);

    /// <summary>What a look and an ear tell.</summary>
    public static Source ValveSigns { get; } = new("A valve that passes when its coil leaves it shut has dirt or wear at its seat; a leak outward is mended or the valve replaced", SourceStatus.Practice);

    /// <summary>Volts at a solenoid valve's coil.</summary>
    public static Source ValveCoilVolts { get; } = new("UFGS 15652A, 2.21.3: a solenoid valve's coil works from 15 % under to 5 % over its marked volts; to 10 % over by practice", SourceStatus.Published);
}
