using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>Where the rules for a motor's circuit, protection, speed control and hazards come from.</summary>
public static class CircuitSources
{
    /// <summary>1 % without derating, the curve up to 5 %, nothing beyond.</summary>
    public static Source Unbalance { get; } = new("NEMA MG 1 12.45 and 14.36 (figure 14-1)", SourceStatus.Published);

    /// <summary>What a contact or switch is marked for; more than the old motor took asks for a look at the circuit.</summary>
    public static Source RunningCurrent { get; } = new("A contact carries the full-load amps it is marked for, all its motors added up; the overload follows the plate's amps (NFPA 70 430.6(A)(2), 430.32)", SourceStatus.Published);

    /// <summary>Starting amps have a rating of their own.</summary>
    public static Source StartingCurrent { get; } = new("Locked-rotor amps are a rating of their own; where only full-load amps are marked they are taken as 6 times those (UL/IEC 60730-1); an electronically commutated motor ramps up to its full load (practice)", SourceStatus.Memory);

    /// <summary>The fuse of the branch.</summary>
    public static Source BranchFuse { get; } = new("NFPA 70 table 430.52 for the most; not under 125 % of full load by practice; marked amps count for slow, shaded-pole and split-capacitor motors (430.6, from memory)", SourceStatus.Published);

    /// <summary>Something guards the winding.</summary>
    public static Source Overload { get; } = new("NFPA 70 430.32 and 430.7(A) (a motor is guarded against overload, in itself or in the circuit); no restart by itself where that can injure (430.43, from memory)", SourceStatus.Published);

    /// <summary>What a motor must be made for to have its speed controlled.</summary>
    public static Source SpeedControl { get; } = new("Phase cutting needs a motor made for it; a drive needs inverter duty (NEMA MG 1 parts 30 and 31); a signal needs the same kind of motor", SourceStatus.Practice);

    /// <summary>Marked for what could burn there.</summary>
    public static Source Hazard { get; } = new("ASHRAE 34 and IEC 60335-2-89 (flammable refrigerants), NFPA 70 articles 500 and 501 (classified areas): marked for it, and nothing that sparks", SourceStatus.Memory);
}
