using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Trainers.LightGbm;
using PartsMatch.Learning;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>Gradient-boosted trees over the same columns: what may be found that nobody has to explain to anybody.</summary>
internal static class Rivals
{
    /// <summary>Learns from outcomes, and tells the log-odds of any.</summary>
    public static Func<Example, double> Trees(IReadOnlyCollection<Example> learnt, int columns)
    {
        var rows = learnt.Select(example => RowOf(example, columns, columns, example.Worked ? 1 : 0)).ToList();
        var tell = Fit(rows, columns, learning => learning.BinaryClassification.Trainers.LightGbm(new LightGbmBinaryTrainer.Options
        {
            LabelColumnName = nameof(Row.Worked),
            FeatureColumnName = nameof(Row.Features),
            NumberOfLeaves = 15,
            NumberOfIterations = 200,
            LearningRate = 0.05,
            MinimumExampleCountPerLeaf = 20,
            NumberOfThreads = 1,
            Seed = 1,
        }));
        return example => LogOddsOf(tell(RowOf(example, columns, columns, 0)).Probability);
    }

    /// <summary>The best that columns allow, as near as many outcomes bring it: learns the truth's own probabilities instead of what happened, so that no luck is in it.</summary>
    /// <param name="learnt">Very many.</param>
    /// <param name="columns">How many columns there are.</param>
    /// <param name="further">One figure more of every example; null for none.</param>
    public static Func<Example, double> Ceiling(IReadOnlyCollection<Case> learnt, int columns, Func<Example, double>? further = null)
    {
        var size = columns + (further is null ? 0 : 1);
        var rows = learnt.Select(one => Widened(one.Example, (float)one.Right)).ToList();
        var tell = Fit(rows, size, learning => learning.Regression.Trainers.LightGbm(new LightGbmRegressionTrainer.Options
        {
            LabelColumnName = nameof(Row.Right),
            FeatureColumnName = nameof(Row.Features),
            NumberOfLeaves = 63,
            NumberOfIterations = 300,
            LearningRate = 0.05,
            MinimumExampleCountPerLeaf = 30,
            NumberOfThreads = 1,
            Seed = 1,
        }));
        return example => LogOddsOf(tell(Widened(example, 0)).Score);

        Row Widened(Example example, float right)
        {
            var row = RowOf(example, columns, size, right);
            if (further is not null) row.Features[columns] = (float)further(example);
            return row;
        }
    }

    private static Func<Row, Told> Fit<TModel>(List<Row> rows, int columns, Func<MLContext, IEstimator<TModel>> trainer)
        where TModel : class, ITransformer
    {
        var learning = new MLContext(seed: 1);
        var schema = SchemaDefinition.Create(typeof(Row));
        schema[nameof(Row.Features)].ColumnType = new VectorDataViewType(NumberDataViewType.Single, columns);
        var model = trainer(learning).Fit(learning.Data.LoadFromEnumerable(rows, schema));
        var engine = learning.Model.CreatePredictionEngine<Row, Told>(model, inputSchemaDefinition: schema);
        return engine.Predict;
    }

    private static double LogOddsOf(double chance)
    {
        var kept = Math.Clamp(chance, 1e-6, 1 - 1e-6);
        return Math.Log(kept / (1 - kept));
    }

    private static Row RowOf(Example example, int columns, int size, float right)
    {
        var features = new float[size];
        for (var at = 0; at < example.Columns.Length; at++) features[example.Columns[at]] = (float)example.Values[at];
        return new() { Worked = right > 0.5, Right = right, Features = features };
    }

    private sealed class Row
    {
        public bool Worked { get; set; }

        public float Right { get; set; }

        public float[] Features { get; set; } = [];
    }

    private sealed class Told
    {
        public float Probability { get; set; }

        public float Score { get; set; }
    }
}
