namespace PartsMatch.Benchmarks.Unknowns;

/// <summary>Likelihoods that were told, beside what they should have been.</summary>
internal sealed class ToldAgainst
{
    private const int Bins = 10;

    private readonly List<(double Told, double Is)> all = [];

    public void Add(double told, double real) => all.Add((told, real));

    public int Count => all.Count;

    public double MeanError => all.Average(one => Math.Abs(one.Told - one.Is));

    public double WorstError => all.Max(one => Math.Abs(one.Told - one.Is));

    public double RootMeanSquare => Math.Sqrt(all.Average(one => (one.Told - one.Is) * (one.Told - one.Is)));

    /// <summary>How much more is told than is, on the mean.</summary>
    public double Bias => all.Average(one => one.Told - one.Is);

    /// <summary>How far what is told is off what is, on the mean over the bins by how many are in each.</summary>
    public double CalibrationError => Calibration.Sum(bin => bin.Count * Math.Abs(bin.Told - bin.Is)) / all.Count;

    /// <summary>By tenths of what was told.</summary>
    public IEnumerable<(int Tenth, double Told, double Is, int Count)> Calibration => all.GroupBy(one => Math.Min(Bins - 1, (int)(one.Told * Bins))).OrderBy(bin => bin.Key)
        .Select(bin => (bin.Key, bin.Average(one => one.Told), bin.Average(one => one.Is), bin.Count()));
}
