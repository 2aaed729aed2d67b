using PartsMatch.Fit.Motors;
using PartsMatch.Ranking;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Motors;

/// <summary>A catalogue of any size, made anew whenever it is read: a part follows from the seed and its row alone, so ten million of them need no memory.</summary>
internal sealed class ManyMotors(int count, int seed)
{
    private readonly MotorPool pool = new(seed);

    public int Count => count;

    public IEnumerable<CataloguePart> Parts => Enumerable.Range(0, count).Select(PartAt);

    public CataloguePart PartAt(int row)
    {
        var (motor, isMade, random) = At(row);
        return new(NumberAt(row), Variation.WithGaps(motor, random), IsOffered: true, isMade);
    }

    /// <summary>A part as it is, without the gaps that the catalogue has.</summary>
    public MotorSpec WholeAt(int row) => At(row).Motor;

    /// <summary>Some parts are at the counter, most have a price.</summary>
    public Stock StockAt(int row) => StockBy(RandomAt(row));

    /// <summary>A motor that is no part of the catalogue but could be one, with nothing left out.</summary>
    public MotorSpec MotorBy(Random random) => Variation.Of(pool.Pick(random), random);

    /// <summary>Numbers sort as rows do, so that a row stands for its number wherever only the order counts.</summary>
    public static string NumberAt(int row) => Invariant($"BM-{row:00000000}");

    public static int RowOf(string number) => int.Parse(number.AsSpan(3), System.Globalization.CultureInfo.InvariantCulture);

    private (MotorSpec Motor, bool IsMade, Random Then) At(int row)
    {
        var random = RandomAt(row);
        var isMade = StockBy(random).OnHand > 0 || random.Next(8) > 0;
        return (MotorBy(random), isMade, random);
    }

    private static Stock StockBy(Random random)
    {
        var onHand = random.Next(12) == 0 ? random.Next(1, 9) : (int?)null;
        return new(onHand, random.Next(6) == 0 ? null : random.Next(40, 400) + 0.95m);
    }

    /// <summary>Neighbouring seeds give likewise numbers: they are spread by Knuth's multiplier.</summary>
    private Random RandomAt(int row) => new(unchecked((int)(((uint)row + 1) * 2_654_435_761) ^ (seed * 40_503)));
}
