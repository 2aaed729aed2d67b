using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Parts;

/// <summary>A catalogue of any size of one family, made anew whenever it is read: a part follows from the seed and its row alone, so ten million of them need no memory.</summary>
internal abstract class ManyParts(Family family, int count, int seed)
{
    public Family Family => family;

    public int Count => count;

    public IEnumerable<CataloguePart> Parts => Enumerable.Range(0, count).Select(PartAt);

    /// <summary>Different needs, whose old parts are of the catalogue's designs and none of its parts; nothing that decides is open.</summary>
    public abstract IReadOnlyList<Need> Needs(int many, int from);

    public CataloguePart PartAt(int row)
    {
        var (spec, isMade, random) = At(row);
        return new(NumberAt(row), WithGaps(spec, random), IsOffered: true, isMade);
    }

    /// <summary>Some parts are at the counter, most have a price.</summary>
    public Stock StockAt(int row) => StockBy(RandomAt(row));

    /// <summary>Numbers sort as rows do, so that a row stands for its number wherever only the order counts.</summary>
    public static string NumberAt(int row) => Invariant($"BM-{row:00000000}");

    public static int RowOf(string number) => int.Parse(number.AsSpan(3), System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Whether the old part itself would fit, and nothing of plate or site leaves that open.</summary>
    public static bool IsKnown(Family family, Need need, Spec old) => family.Judge(need, old) is { Fit: not PartFit.DoesntFit } sheet
        && !sheet.Findings.Any(one => one.Aspect.IsDeciding && one.Finding.Missing.Any(missing => missing.Side != Side.Part));

    /// <summary>A part that is none of the catalogue but could be one, with nothing left out.</summary>
    protected abstract Spec Drawn(Random random);

    /// <summary>The entry as a catalogue prints it.</summary>
    protected abstract Spec WithGaps(Spec whole, Random random);

    /// <summary>A part as it is, without the gaps that the catalogue has.</summary>
    protected Spec DrawnAt(int row) => At(row).Spec;

    private (Spec Spec, bool IsMade, Random Then) At(int row)
    {
        var random = RandomAt(row);
        var isMade = StockBy(random).OnHand > 0 || random.Next(8) > 0;
        return (Drawn(random), isMade, random);
    }

    private static Stock StockBy(Random random)
    {
        var onHand = random.Next(12) == 0 ? random.Next(1, 9) : (int?)null;
        return new(onHand, random.Next(6) == 0 ? null : random.Next(40, 400) + 0.95m);
    }

    /// <summary>Neighbouring seeds give likewise numbers: they are spread by Knuth's multiplier.</summary>
    private Random RandomAt(int row) => new(unchecked((int)(((uint)row + 1) * 2_654_435_761) ^ (seed * 40_503)));
}
