using Microsoft.ML;
using Microsoft.ML.Data;
using Microsoft.ML.Trainers.LightGbm;
using PartsMatch.Learning;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>Gradient-boosted trees over the same columns: what a model may find that nobody has to explain to anybody.</summary>
internal static class Rivals
{
    /// <summary>Learns from some and tells the log-odds of any.</summary>
    public static Func<Example, double> LightGbm(IReadOnlyCollection<Example> learnt, int columns)
    {
        var learning = new MLContext(seed: 1);
        var schema = SchemaDefinition.Create(typeof(Row));
        schema[nameof(Row.Features)].ColumnType = new VectorDataViewType(NumberDataViewType.Single, columns);
        var data = learning.Data.LoadFromEnumerable(learnt.Select(example => RowOf(example, columns)).ToList(), schema);
        var model = learning.BinaryClassification.Trainers.LightGbm(new LightGbmBinaryTrainer.Options
        {
            LabelColumnName = nameof(Row.Worked),
            FeatureColumnName = nameof(Row.Features),
            NumberOfLeaves = 15,
            NumberOfIterations = 200,
            LearningRate = 0.05,
            MinimumExampleCountPerLeaf = 20,
            NumberOfThreads = 1,
            Seed = 1,
        }).Fit(data);
        var engine = learning.Model.CreatePredictionEngine<Row, Told>(model, inputSchemaDefinition: schema);
        return example =>
        {
            var chance = Math.Clamp(engine.Predict(RowOf(example, columns)).Probability, 1e-6, 1 - 1e-6);
            return Math.Log(chance / (1 - chance));
        };
    }

    private static Row RowOf(Example example, int columns)
    {
        var features = new float[columns];
        for (var at = 0; at < example.Columns.Length; at++) features[example.Columns[at]] = (float)example.Values[at];
        return new() { Worked = example.Worked, Features = features };
    }

    private sealed class Row
    {
        public bool Worked { get; set; }

        public float[] Features { get; set; } = [];
    }

    private sealed class Told
    {
        public float Probability { get; set; }
    }
}
