namespace PartsMatch.Service.Counter.Trainings;

/// <summary>How a training ended, or what else became of a family's weights.</summary>
public enum TrainingEnd
{
    /// <summary>Trained weights were put in place.</summary>
    Adopted,

    /// <summary>Trained weights were not better enough: hand-set ones, rescaled, were put in place.</summary>
    Rescaled,

    /// <summary>Nothing was better enough than the weights in place, which were trained before: they stayed.</summary>
    Kept,

    /// <summary>There are too few outcomes: the weights stayed.</summary>
    TooFew,

    /// <summary>Someone stopped it, or the service stopped: the weights stayed.</summary>
    Stopped,

    /// <summary>Something went wrong: the weights stayed.</summary>
    Failed,

    /// <summary>Nothing was trained: someone put the previous weights back.</summary>
    WentBack,
}

/// <summary>A line of the log of trainings.</summary>
/// <param name="At">When it ended.</param>
/// <param name="By">The label of the key of whoever began it.</param>
/// <param name="End">How it ended.</param>
/// <param name="Outcomes">How many outcomes there were.</param>
/// <param name="LeftOut">How many of them teach nothing: the part fails an aspect, or a reading was open that decides.</param>
/// <param name="Reason">Why it ended so, in a sentence.</param>
/// <param name="Figures">What was measured, by name: docs/weights.md says what each is.</param>
public sealed record TrainingEntry(DateTimeOffset At, string By, TrainingEnd End, int Outcomes, int LeftOut, string Reason, IReadOnlyDictionary<string, double> Figures)
{
    /// <summary>How many of those that teach something are demo data; null where nobody counted.</summary>
    public int? Invented { get; init; }
}
