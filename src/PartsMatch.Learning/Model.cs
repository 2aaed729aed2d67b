using PartsMatch.Ranking;

namespace PartsMatch.Learning;

/// <summary>What training comes to: costs, and the records of parts.</summary>
/// <param name="Costs">What features cost.</param>
/// <param name="Records">What parts cost besides, by number.</param>
public sealed record Model(Costs Costs, IReadOnlyDictionary<string, double> Records)
{
    private static readonly Dictionary<string, double> NoRecords = [];

    /// <summary>The most likely costs given outcomes, about hand-set ones rescaled to the same outcomes, with the records that they leave.</summary>
    /// <param name="examples">At least one.</param>
    /// <param name="columns">The family's columns.</param>
    /// <param name="start">Where to begin, which changes nothing but the time it takes: the costs of much the same examples, where they are known.</param>
    /// <param name="cancel">Gives up.</param>
    public static Model Trained(IReadOnlyList<Example> examples, FeatureColumns columns, Costs? start = null, CancellationToken cancel = default)
    {
        var rescaled = Rescaling.Of(examples, columns);
        var costs = PenalisedFit.Of(examples, Held.About(rescaled, columns), start ?? rescaled, cancel);
        return new(costs, PartRecords.Of(examples, costs));
    }

    /// <summary>What weights hold, as a model.</summary>
    public static Model Of(Weights weights, FeatureColumns columns) => new(Costs.Of(weights, columns), weights.Records);

    /// <summary>Hand-set costs rescaled to outcomes: what stays where more is not justified.</summary>
    public static Model Rescaled(IReadOnlyList<Example> examples, FeatureColumns columns) => new(Rescaling.Of(examples, columns), NoRecords);

    /// <summary>The log-odds of an example, the part's record among them.</summary>
    public double LogOdds(Example example) => example.LogOdds(Costs) - Records.GetValueOrDefault(example.PartNumber);

    /// <summary>What it tells of examples.</summary>
    public IReadOnlyList<HeldOut> TellOf(IEnumerable<Example> examples) => [.. examples.Select(example => new HeldOut(LogOdds(example), example.Worked))];
}
