using System.Numerics;
using System.Runtime.CompilerServices;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>One aspect's codes in as few bytes as they fit in, and the need's contribution of each.</summary>
internal abstract class CodeColumn
{
    protected const int Fails = int.MinValue;

    private protected CodeColumn(int facets) => Contributions = new int[facets];

    protected int[] Contributions { get; }

    public abstract int BytesARow { get; }

    public static CodeColumn Of(int[] codes, int facets) => facets switch
    {
        <= byte.MaxValue + 1 => new CodeColumn<byte>(codes, facets),
        <= ushort.MaxValue + 1 => new CodeColumn<ushort>(codes, facets),
        _ => new CodeColumn<int>(codes, facets),
    };

    public void Take(Passing[] list)
    {
        Array.Fill(Contributions, Fails);
        foreach (var (code, contribution) in list) Contributions[code] = contribution;
    }

    /// <summary>Keeps those of the rows that pass, and adds what the aspect takes to their sums.</summary>
    /// <returns>How many are kept.</returns>
    public abstract int Keep(Span<int> rows, Span<int> sums);
}

/// <summary>The same, with codes of one width.</summary>
internal sealed class CodeColumn<T>(int[] codes, int facets) : CodeColumn(facets)
    where T : unmanaged, IBinaryInteger<T>
{
    private readonly T[] codes = Array.ConvertAll(codes, T.CreateTruncating);

    public override int BytesARow => Unsafe.SizeOf<T>();

    public override int Keep(Span<int> rows, Span<int> sums)
    {
        var kept = 0;
        for (var i = 0; i < rows.Length; i++)
        {
            var contribution = Contributions[int.CreateTruncating(codes[rows[i]])];
            rows[kept] = rows[i];
            sums[kept] = sums[i] + contribution;
            if (contribution != Fails) kept++;
        }

        return kept;
    }
}
