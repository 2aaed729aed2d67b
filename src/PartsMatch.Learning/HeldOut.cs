using System.Runtime.InteropServices;

namespace PartsMatch.Learning;

/// <summary>What was told of an outcome by a model that had not seen it.</summary>
/// <param name="LogOdds">How likely it was said to be right the first time, as log-odds.</param>
/// <param name="Worked">Whether it was.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct HeldOut(double LogOdds, bool Worked)
{
    /// <summary>The likelihood, 0 to 1.</summary>
    public double Chance => 1 / (1 + Math.Exp(-LogOdds));
}

/// <summary>So many outcomes of much the same likelihood.</summary>
/// <param name="Told">Their mean likelihood as told, 0 to 1.</param>
/// <param name="Happened">The share of them that was right the first time.</param>
/// <param name="Outcomes">How many.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct CalibrationBin(double Told, double Happened, int Outcomes);

/// <summary>How good what was told is, in figures that any textbook has.</summary>
public static class Quality
{
    private const int Bins = 10;

    /// <summary>Mean log-loss, nats: 0 is clairvoyance, 0.69 a coin.</summary>
    /// <param name="told">At least one.</param>
    public static double LogLoss(IReadOnlyCollection<HeldOut> told) => told.Average(one => PenalisedFit.LossOf(one.LogOdds, one.Worked));

    /// <summary>The area under the curve: how often one that worked was told to be likelier than one that did not, ties by half. 0.5 where all are of a kind.</summary>
    public static double Auc(IReadOnlyCollection<HeldOut> told)
    {
        double worked = told.Count(one => one.Worked), others = told.Count - worked;
        if (worked == 0 || others == 0) return 0.5;
        var (ranks, before) = (0.0, 0);
        foreach (var tied in told.GroupBy(one => one.LogOdds).OrderBy(group => group.Key))
        {
            // All of a tie have its middle rank.
            var count = tied.Count();
            ranks += tied.Count(one => one.Worked) * (before + ((count + 1) / 2.0));
            before += count;
        }

        return (ranks - (worked * (worked + 1) / 2)) / (worked * others);
    }

    /// <summary>
    /// How near parts that were put in for one old part come to their best order, those that worked first: NDCG@5 (Järvelin and Kekäläinen 2002), the mean over old parts of which some worked and some did not.
    /// Null where there are none. Outcomes of one old part are as near to one list as outcomes come.
    /// </summary>
    /// <param name="examples">What happened.</param>
    /// <param name="told">What was told of each, in their order.</param>
    public static double? Order(IReadOnlyList<Example> examples, IReadOnlyList<HeldOut> told)
    {
        double[] lists = [.. examples.Zip(told).Where(one => one.First.Old.Length > 0).GroupBy(one => one.First.Old, one => one.Second, StringComparer.Ordinal)
            .Select(list => list.ToList()).Where(list => list.Any(one => one.Worked) && list.Any(one => !one.Worked)).Select(Ndcg)];
        return lists.Length == 0 ? null : lists.Average();
    }

    /// <summary>What the first five of a list are worth, each the less the further down it stands.</summary>
    /// <param name="worth">What each is worth, the first first.</param>
    public static double Gain(IEnumerable<double> worth) => worth.Take(5).Select((one, at) => one / Math.Log2(at + 2)).Sum();

    /// <summary>What was told beside what happened, in ten bins of equally many, the least likely first; fewer where there are fewer than ten.</summary>
    public static IReadOnlyList<CalibrationBin> Calibration(IReadOnlyCollection<HeldOut> told)
    {
        List<HeldOut> sorted = [.. told.OrderBy(one => one.LogOdds)];
        var bins = Math.Min(Bins, sorted.Count);
        return [.. Enumerable.Range(0, bins).Select(bin => sorted[(bin * sorted.Count / bins)..((bin + 1) * sorted.Count / bins)])
            .Select(bin => new CalibrationBin(bin.Average(one => one.Chance), bin.Average(one => one.Worked ? 1.0 : 0), bin.Count))];
    }

    /// <summary>How far what was told is off what happened, on the mean over <see cref="Calibration"/>'s bins.</summary>
    /// <param name="told">At least one.</param>
    public static double CalibrationError(IReadOnlyCollection<HeldOut> told) => Calibration(told).Sum(bin => bin.Outcomes * Math.Abs(bin.Told - bin.Happened)) / told.Count;

    /// <summary>What the calibration error would be on the mean if all that was told were true, by chance alone: for a bin of n at p, √(2p(1 − p) / πn).</summary>
    /// <param name="told">At least one.</param>
    public static double CalibrationFloor(IReadOnlyCollection<HeldOut> told) =>
        Calibration(told).Sum(bin => bin.Outcomes * Math.Sqrt(2 * bin.Told * (1 - bin.Told) / (Math.PI * bin.Outcomes))) / told.Count;

    /// <summary>Those that are told alike count their mean, whichever stands first.</summary>
    private static double Ndcg(List<HeldOut> list) =>
        Gain(list.GroupBy(one => one.LogOdds).OrderByDescending(tied => tied.Key).SelectMany(tied => Enumerable.Repeat(tied.Average(one => one.Worked ? 1.0 : 0), tied.Count())))
        / Gain(Enumerable.Repeat(1.0, list.Count(one => one.Worked)));
}
