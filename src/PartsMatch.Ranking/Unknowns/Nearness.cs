using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>How much each known machine counts for a need: the more, the nearer it comes to what is known of the need.</summary>
/// <remarks>
/// A machine's distance is the sum over the known fields of how many steps it is apart there, 0 to 1, those that deciding aspects look at counted twice. Each reach further off
/// than the nearest halves what it counts for, so that there is always one that counts in full. Back-off: the reach is the least of 1/16, 1/8, 1/4 … 16 at which the machines together
/// count as <see cref="Enough"/> alike ones or more, (Σw)² / Σw², Kish's effective size of a sample (Survey Sampling, 1965; from memory).
/// </remarks>
internal sealed class Nearness
{
    /// <summary>What the nearest machine counts for: weights are whole numbers, so that a sum does not hang on its order. What counts for less than half of one counts for nothing.</summary>
    public const int Full = 1000;

    /// <summary>Machines that count as so many alike ones are enough (practice: of 3, 5, 8, 10, 20 and 40 it told the demo catalogue's hidden fields about as well as any, and 20 told them worse).</summary>
    public const double Enough = 5;

    /// <summary>So often a field counts that a deciding aspect looks at.</summary>
    public const int DecidingCounts = 2;

    private const int Reaches = 9;

    /// <summary>Of every reach and every distance in hundredths of a step what a machine counts for that is so much further off than the nearest; beyond, nothing.</summary>
    private static readonly int[][] Counts = [.. Enumerable.Range(0, Reaches).Select(reach => CountsWithin(ReachOf(reach)))];

    private readonly MachineTable machines;
    private readonly IReadOnlyList<KnownField> known;

    private Nearness(MachineTable machines, IReadOnlyList<KnownField> known, int[] weights, double effective) => (this.machines, this.known, Weights, Effective) = (machines, known, weights, effective);

    /// <summary>Of every machine, what it counts for, 0 to <see cref="Full"/>.</summary>
    public int[] Weights { get; }

    /// <summary>As how many alike machines they count together.</summary>
    public double Effective { get; }

    /// <summary>Measures machines against what is known of a need.</summary>
    /// <param name="machines">The machines; at least one.</param>
    /// <param name="known">What is known.</param>
    public static Nearness Of(MachineTable machines, IReadOnlyList<KnownField> known)
    {
        var apart = new int[machines.All.Length];
        foreach (var field in known)
        {
            var (codes, of, times) = (machines.Column(field.Telling.At), field.Apart, field.Telling.IsDeciding ? DecidingCounts : 1);
            for (var machine = 0; machine < apart.Length; machine++) apart[machine] += times * of[codes[machine]];
        }

        // How many machines lie so much further off than the nearest tells of any reach as how many they count.
        var (nearest, enough) = (apart.Min(), Math.Min(Enough, apart.Length / 2.0));
        var further = new int[apart.Max() - nearest + 1];
        foreach (var distance in apart) further[distance - nearest]++;
        var counts = Array.Find(Counts, counts => EffectiveOf(counts, further) >= enough) ?? Counts[^1];
        var weights = new int[apart.Length];
        for (var machine = 0; machine < weights.Length; machine++)
        {
            var distance = apart[machine] - nearest;
            weights[machine] = distance < counts.Length ? counts[distance] : 0;
        }

        return new(machines, known, weights, EffectiveOf(counts, further));
    }

    /// <summary>How many machines say nothing else than what is known, wherever they say something.</summary>
    public int Agreeing()
    {
        var agrees = Enumerable.Repeat(true, Weights.Length).ToArray();
        foreach (var field in known)
        {
            var codes = machines.Column(field.Telling.At);
            for (var machine = 0; machine < codes.Length; machine++) agrees[machine] &= codes[machine] == FieldCodes.Unknown || field.Apart[codes[machine]] == 0;
        }

        return agrees.Count(agreeing => agreeing);
    }

    /// <summary>What is known and lies, on the mean over what counts, more than half a step off.</summary>
    public IReadOnlyList<Field> Differing()
    {
        var half = SaidValues.Step * Weights.Sum(weight => (long)weight) / 2;
        return [.. known.Where(field => machines.Column(field.Telling.At).Zip(Weights, (code, weight) => (long)weight * field.Apart[code]).Sum() > half).Select(field => field.Telling.Field)];
    }

    private static double ReachOf(int reach) => Math.Pow(2, reach - 4);

    private static int[] CountsWithin(double reach) =>
        [.. Enumerable.Range(0, int.MaxValue).Select(further => (int)Math.Round(Full * Math.Pow(2, -further / (reach * SaidValues.Step)))).TakeWhile(count => count > 0)];

    /// <summary>As how many alike machines they count together.</summary>
    /// <param name="counts">Of every distance, what a machine counts there; beyond, nothing.</param>
    /// <param name="machines">Of every distance, how many machines lie there; beyond, none.</param>
    private static double EffectiveOf(int[] counts, int[] machines)
    {
        var (sum, squares) = (0L, 0L);
        for (var distance = 0; distance < counts.Length && distance < machines.Length; distance++)
        {
            long weight = counts[distance], all = weight * machines[distance];
            (sum, squares) = (sum + all, squares + (weight * all));
        }

        return sum * (double)sum / squares;
    }
}

/// <summary>A field of which something is known.</summary>
/// <param name="Telling">The field.</param>
/// <param name="Apart">Of every code, how far from what is known it lies, in hundredths of a step.</param>
internal sealed record KnownField(TellingField Telling, int[] Apart);
