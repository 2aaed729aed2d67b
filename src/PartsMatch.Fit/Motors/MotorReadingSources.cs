using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>Where the limits of readings come from of motors, before one is condemned and after the swap.</summary>
public static class MotorReadingSources
{
    /// <summary>No volts, no run.</summary>
    public static Source NoVolts { get; } = new("Called for and no volts at its leads: look up the circuit; under a tenth of the tap counts as none", SourceStatus.Practice);

    /// <summary>Volts, no amps, hot.</summary>
    public static Source ProtectorOpen { get; } = new("Volts, no amps and a hot shell: the protector inside is open; let it cool and try again", SourceStatus.Practice);

    /// <summary>Volts and no amps.</summary>
    public static Source NoCurrent { get; } = new("Under a twentieth of full-load amps, or under 0.05 A where they are not known, counts as no current", SourceStatus.Practice);

    /// <summary>Binds by hand.</summary>
    public static Source Binds { get; } = new("A motor that binds by hand with the power off has lost its bearings, where nothing drags on the blade", SourceStatus.Practice);

    /// <summary>Hums and spins free.</summary>
    public static Source Stalled { get; } = new("Hums at locked amps and spins free by hand: the capacitor, then the windings; when all of these are good, the rotor or the switch inside", SourceStatus.Practice);

    /// <summary>5 MΩ.</summary>
    public static Source Insulation { get; } = new("IEEE 43: at least 5 MΩ for random-wound machines under 1 kV; under 1 MΩ is condemned by practice", SourceStatus.Memory);

    /// <summary>Sum of two windings.</summary>
    public static Source WindingSum { get; } = new("Run to start has the ohms of common to run and common to start together, within 5 %, beside 0.1 Ω a reading for the meter's last digit and 0.3 Ω for its leads", SourceStatus.Practice);

    /// <summary>Three windings alike.</summary>
    public static Source WindingSpread { get; } = new("The three windings of a three-phase motor differ by at most 5 % of their mean, beside 0.1 Ω a reading for the meter's last digit", SourceStatus.Practice);

    /// <summary>Ohms by volts and amps.</summary>
    public static Source LeastOhms { get; } = new("By volts over locked-rotor amps (a usual multiple of full load where they are not given) a sound winding has at least 5 % of that with three phases, 10 % with one, and under 1 % and 2 % it is shorted, beside 0.1 Ω for the meter's last digit and 0.3 Ω for its leads", SourceStatus.Practice);

    /// <summary>Command of an electronically commutated motor.</summary>
    public static Source Command { get; } = new("An electronically commutated motor that has volts and its command and takes no current has failed", SourceStatus.Practice);

    /// <summary>Amps against the plate.</summary>
    public static Source AmpsAgainstPlate { get; } = new("Running amps stay within the plate's full-load amps, service-factor amps only where a service factor is marked and the supply is the rated one: volts and frequency within 2 %, legs within 1 %, at most 1000 m up", SourceStatus.Practice);

    /// <summary>Speed under too many amps.</summary>
    public static Source SlowedByLoad { get; } = new("Too much load slows an induction motor: its slip grows at least half as far over the plate's as its amps do", SourceStatus.Practice);

    /// <summary>Amps of the legs.</summary>
    public static Source AmpsUnbalance { get; } = new("A current unbalance over 10 % is looked into; unlike volts make up to ten times their own unbalance of it", SourceStatus.Practice);

    /// <summary>The new motor turns.</summary>
    public static Source TurnsUp { get; } = new("A new motor that has its volts, and its command where it takes one, turns up; one that stands still with current in it is switched off", SourceStatus.Practice);

    /// <summary>Volts of the legs.</summary>
    public static Source VoltsUnbalance { get; } = new("NEMA MG 1 12.45, 14.36: 1 % without derating, not over 5 %", SourceStatus.Published);

    /// <summary>Volts under load.</summary>
    public static Source VoltsDrop { get; } = new("A drop of over 10 % under the motor's load means wiring or supply trouble", SourceStatus.Practice);

    /// <summary>Turn by the air.</summary>
    public static Source Turn { get; } = new("A propeller turning backwards blows the wrong way; a blower wheel blows the right way either way round, so its air proves nothing", SourceStatus.Practice);

    /// <summary>Blade clear.</summary>
    public static Source BladeClear { get; } = new("The blade clears its ring and guard all round", SourceStatus.Practice);

    /// <summary>Speed against the plate.</summary>
    public static Source RunningSpeed { get; } = new("A fan motor that carries its load runs within 5 % of its rated speed or above it, and below synchronous speed", SourceStatus.Practice);

    /// <summary>Split against the design.</summary>
    public static Source Split { get; } = new("Condensing split: looked into at 25 % over the unit's design or earlier one; 30 °F (17 K) is the ceiling of any", SourceStatus.Practice);

    /// <summary>Warm box.</summary>
    public static Source WarmBox { get; } = new("On a warm box the evaporator fans start late by design: nothing is judged and no refrigerant added until they run", SourceStatus.Practice);

    /// <summary>What kills motors.</summary>
    public static Source Killers { get; } = new("What killed the old motor kills the new one", SourceStatus.Practice);

    /// <summary>Added rise of an unbalanced winding.</summary>
    public static Source AddedRise { get; } = new("NEMA MG 1 14.36: added temperature rise of about 2 u² percent at u percent unbalance", SourceStatus.Memory);
}
