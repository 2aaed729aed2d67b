using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>The words of motors' plates.</summary>
public static class MotorVocabulary
{
    /// <summary>All of them.</summary>
    public static Vocabulary All { get; } = new(MotorLabels.All, MotorWords.All)
    {
        OnlyAtLabel = MotorWords.OnlyAtLabel,
        Strangers = MotorWords.Strangers,
        Fillers = MotorWords.Fillers,
        Steps = ["HI", "HIGH", "MED HI", "MED", "MEDIUM", "MED LO", "LO", "LOW"],
        Groups = [["voltage", "phase", "frequency"], ["voltage", "frequency", "phase"]],
        Limits = MotorLimits.All,

        Vague =
        [
            new("protection", "thermal", "automatic", "manual"),
            new("rotation", "CW", "CW shaft end", "CW lead end"),
            new("rotation", "CCW", "CCW shaft end", "CCW lead end"),
        ],

        // US run capacitors are marked 370 or 440 V, others 400 to 660 V; no motor with one is fed that much.
        Tails = [new("runCapacitor", 300, 700, "V", "VAC", "V AC", "VOLT", "VOLTS", "V~") { Usual = CapacitorVolts.Usual }],
    };
}
