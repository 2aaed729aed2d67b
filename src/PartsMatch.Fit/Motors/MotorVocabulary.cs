using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>The words of motors' plates.</summary>
public static class MotorVocabulary
{
    private static readonly string[] Delta = ["Δ", "D", "DELTA", "TRIANGLE"];

    private static readonly string[] Star = ["Y", "STAR", "WYE"];

    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new(MotorLabels.All, MotorWords.All)
    {
        Example = "HP 1/4 RPM 1075 V 208-230 PH 1 ROT CCW LE",
        OnlyAtLabel = MotorWords.OnlyAtLabel,
        Strangers = MotorWords.Strangers,
        Alike = [new("runCapacitor", "START CAP", "START CAPACITOR", "STARTING CAP", "STARTING CAPACITOR", "START CAP MFD")],
        Fillers = MotorWords.Fillers,
        Names = MotorWords.Names,
        Steps = ["HI", "HIGH", "MED HI", "MED", "MEDIUM", "MED LO", "LO", "LOW"],
        StepsOf = "speed",

        // The same winding takes 1/√3 of the volts in delta, and √3 of the amps (IEC 60034-8).
        Marks =
        [
            new("voltage", ["LOW", "LO"], ["HIGH", "HI"]),
            new("voltage", Delta, Star) { Says = new("starDelta", "yes") },
            new("fullLoadAmps", Delta, Star) { FirstIsLess = false, Says = new("starDelta", "yes") },
        ],
        Pairs = [["speed", "speeds"], ["voltage", "speeds"]],
        Groups = [["voltage", "phase", "frequency"], ["voltage", "frequency", "phase"]],
        Limits = MotorLimits.All,
        Usual = [StandardHorsepower.Limit],
        Denials = ["NO"],

        Vague =
        [
            new("protection", "thermal", "automatic", "manual"),
            new("rotation", "CW", "CW shaft end", "CW lead end"),
            new("rotation", "CCW", "CCW shaft end", "CCW lead end"),
        ],

        // US run capacitors are marked 370 or 440 V, others 400 to 660 V; no motor with one is fed that much.
        // Nothing is supplied with 370 V, so that 7.5/370 needs no word; 3/440 may be phases and volts.
        Tails = [new("runCapacitor", 300, 700, "V", "VAC", "V AC", "VOLT", "VOLTS", "V~") { Usual = CapacitorVolts.Usual, NeedNoLabel = [370] }],
    };
}
