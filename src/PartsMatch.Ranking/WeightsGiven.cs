using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking;

/// <summary>What weights are made of.</summary>
/// <param name="Origin">Where they come from.</param>
/// <param name="Intercept">The log-odds of a part that nothing speaks against.</param>
public sealed record WeightsGiven(WeightsOrigin Origin, double Intercept)
{
    /// <summary>The day they were made.</summary>
    public DateOnly? MadeOn { get; init; }

    /// <summary>What aspects cost, by name; one that is left out costs what it does by hand.</summary>
    public IReadOnlyDictionary<string, AspectCost> Aspects { get; init; } = new Dictionary<string, AspectCost>();

    /// <summary>What pairs cost, by name; nothing where left out.</summary>
    public IReadOnlyDictionary<string, double> Pairs { get; init; } = new Dictionary<string, double>();

    /// <summary>What parts cost by their record, by number.</summary>
    public IReadOnlyDictionary<string, double> Records { get; init; } = new Dictionary<string, double>();

    /// <summary>What they were trained on, and how they did.</summary>
    public Training? Training { get; init; }
}

/// <summary>What two aspects cost besides when both fall short.</summary>
/// <param name="Pair">The pair.</param>
/// <param name="One">The place of its first aspect in the family's order.</param>
/// <param name="Other">The place of its second.</param>
/// <param name="Cost">In units of log-odds, for both at their limit; 0 or more.</param>
public sealed record PairCost(AspectPair Pair, int One, int Other, double Cost)
{
    /// <summary>How much of its cost two shortfalls ask for: their product, each counted to its limit. It rises with each of them.</summary>
    public static double Share(double one, double other) => Math.Clamp(one, 0, 1) * Math.Clamp(other, 0, 1);
}

/// <summary>What weights were trained on, and how they did where they had not seen the outcome.</summary>
/// <param name="Outcomes">How many outcomes.</param>
/// <param name="From">The day of the first.</param>
/// <param name="To">The day of the last.</param>
/// <param name="Figures">What was measured, by name: docs/weights.md says what each is.</param>
public sealed record Training(int Outcomes, DateOnly From, DateOnly To, IReadOnlyDictionary<string, double> Figures)
{
    /// <summary>How many of them are demo data, which say nothing of real parts; null where nobody counted.</summary>
    public int? Invented { get; init; }

    /// <summary>What trained weights told beside what happened, on outcomes held out, the least likely first; empty where nobody kept it.</summary>
    public IReadOnlyList<CalibrationPoint> Calibration { get; init; } = [];
}

/// <summary>What was told of some outcomes of much the same likelihood, beside what happened.</summary>
/// <param name="Told">Their mean likelihood as told, 0 to 1.</param>
/// <param name="Happened">The share of them that was right the first time.</param>
/// <param name="Outcomes">How many, 1 or more.</param>
public sealed record CalibrationPoint(double Told, double Happened, int Outcomes)
{
    /// <summary>How far what happens lies from what was told by chance alone, on the mean, if that is true: √(2p(1 − p) / πn).</summary>
    public double Floor => Math.Sqrt(2 * Told * (1 - Told) / (Math.PI * Outcomes));
}
