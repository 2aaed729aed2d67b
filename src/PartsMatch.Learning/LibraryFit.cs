using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Trainers;

namespace PartsMatch.Learning;

/// <summary>
/// The same logistic costs fitted by Microsoft.ML's L-BFGS, none negative and with nothing held before: a second opinion on <see cref="PenalisedFit"/>, which it cannot stand in for, since it knows no prior but zero.
/// </summary>
/// <remarks>It repeats bit for bit on one machine; vector instructions and the order of rows move a cost by about 0.015 between machines, so it is compared by probabilities.</remarks>
public static class LibraryFit
{
    /// <summary>The trainer stops when the loss falls by less than this share.</summary>
    private const float Tolerance = 1e-9f;

    /// <summary>It stops short where ramps rise together, and is begun again where it stopped, so many times at most, as long as that helps.</summary>
    private const int MostGoes = 50;

    /// <summary>How many steps it looks back on: where it stops short by one, it goes further by another, and the least loss is taken.</summary>
    private static readonly int[] Histories = [20, 40, 60];

    /// <summary>What a go must gain, nats an example.</summary>
    private const double Helps = 1e-9;

    /// <summary>Fits costs to examples.</summary>
    /// <param name="examples">At least one of each kind.</param>
    /// <param name="columns">How many columns there are.</param>
    public static Costs Of(IReadOnlyCollection<Example> examples, int columns)
    {
        int[] used = [.. examples.SelectMany(example => example.Columns).Distinct().Order()];
        if (used.Length == 0) return new(PenalisedFit.Of([.. examples], Prior.None(0)).Intercept, new double[columns]);
        var learning = new MLContext(seed: 1);
        var schema = SchemaDefinition.Create(typeof(Row));
        schema[nameof(Row.Features)].ColumnType = new VectorDataViewType(NumberDataViewType.Single, used.Length);
        var data = learning.Data.LoadFromEnumerable(examples.Select(example => RowOf(example, used)).ToList(), schema);
        return Histories.Select(Fitted).MinBy(fitted => fitted.Loss).Costs;

        (Costs Costs, double Loss) Fitted(int history)
        {
            var trainer = learning.BinaryClassification.Trainers.LbfgsLogisticRegression(new LbfgsLogisticRegressionBinaryTrainer.Options
            {
                LabelColumnName = nameof(Row.Worked),
                FeatureColumnName = nameof(Row.Features),
                L1Regularization = 0,
                L2Regularization = 0,
                OptimizationTolerance = Tolerance,
                HistorySize = history,
                EnforceNonNegativity = true,
                NumberOfThreads = 1,
                MaximumNumberOfIterations = 2000,
            });
            LinearModelParameters? fitted = null;
            var (costs, loss) = (new Costs(0, new double[columns]), double.PositiveInfinity);
            for (var go = 0; go < MostGoes; go++)
            {
                fitted = trainer.Fit(data, fitted).Model.SubModel;
                var next = CostsOf(fitted, used, columns);
                var less = examples.Average(example => PenalisedFit.LossOf(example.LogOdds(next), example.Worked));
                if (less > loss - Helps) break;
                (costs, loss) = (next, less);
            }

            return (costs, loss);
        }
    }

    private static Costs CostsOf(LinearModelParameters fitted, int[] used, int columns)
    {
        var costs = new double[columns];
        for (var at = 0; at < used.Length; at++) costs[used[at]] = fitted.Weights[at];
        return new(fitted.Bias, costs);
    }

    /// <summary>It worked is the label and what speaks against it is negative, so that costs that are not negative, and an intercept that is kept so as well, can say it.</summary>
    private static Row RowOf(Example example, int[] used)
    {
        var features = new float[used.Length];
        for (var at = 0; at < example.Columns.Length; at++) features[Array.BinarySearch(used, example.Columns[at])] = -(float)example.Values[at];
        return new() { Worked = example.Worked, Features = features };
    }

    private sealed class Row
    {
        public bool Worked { get; set; }

        public float[] Features { get; set; } = [];
    }
}
