using System.Globalization;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>A mean and how far it may be off by the luck of the draw.</summary>
/// <param name="Mean">The mean.</param>
/// <param name="Low">In 95 of 100 samples it is no less,</param>
/// <param name="High">and no more.</param>
internal sealed record Bootstrap(double Mean, double Low, double High)
{
    private const int Samples = 1000;
    private const int Seed = 17;

    /// <summary>Draws whole places anew, as needs of one place are alike (percentile bootstrap, Efron 1979).</summary>
    public static Bootstrap Of(IEnumerable<(string Place, double Value)> values)
    {
        var places = values.GroupBy(one => one.Place, StringComparer.Ordinal).Select(place => (Sum: place.Sum(one => one.Value), Count: place.Count())).ToList();
        var random = new Random(Seed);
        double[] means = [.. Enumerable.Range(0, Samples).Select(_ => MeanOf(random.GetItems(places.ToArray(), places.Count))).Order()];
        return new(MeanOf(places), means[Samples / 40], means[^(Samples / 40)]);
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Mean:0.0000} ({Low:0.0000} to {High:0.0000})");

    private static double MeanOf(IReadOnlyCollection<(double Sum, int Count)> places) => places.Sum(place => place.Sum) / places.Sum(place => place.Count);
}
