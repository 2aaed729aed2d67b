using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>A code that passes an aspect, and what it takes from the score, in millionths.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Passing(int Code, int Contribution);

/// <summary>One need's judgements, made before anything is measured: of every aspect the codes that pass. A code that is absent fails.</summary>
/// <param name="ByAspect">By aspect; codes in rising order.</param>
/// <param name="Admitted">How many rows pass all of them.</param>
internal sealed record CodeLists(IReadOnlyList<Passing[]> ByAspect, int Admitted)
{
    /// <summary>Judges only the facets of rows that have passed everything before: the peers' lists are as short as can be.</summary>
    /// <remarks>
    /// It favours them: who asks a database has not walked over the rows, and would have to judge every facet of every aspect. That takes a second a need already at 100,000 parts;
    /// and of the longest lists half the codes would pass, where of these two in a hundred rows do.
    /// </remarks>
    public static CodeLists Of(FacetTable table, Weights weights, Need need)
    {
        var lists = new List<Passing[]>();
        var rows = Enumerable.Range(0, table.Rows).ToArray();
        for (var aspect = 0; aspect < table.Codes.Length; aspect++)
        {
            var (codes, judged) = (table.Codes[aspect], new int?[table.Facets[aspect].Count]);
            var seen = new bool[judged.Length];
            var kept = 0;
            foreach (var row in rows)
            {
                var code = codes[row];
                if (!seen[code])
                {
                    seen[code] = true;
                    var finding = table.Family.Aspects[aspect].Judge(need, table.Facets[aspect][code]);
                    if (finding.Verdict != Verdict.Fails) judged[code] = checked((int)weights.Contribution(table.Family.Aspects[aspect], finding).Millionths);
                }

                if (judged[code] is not null) rows[kept++] = row;
            }

            rows = rows[..kept];
            lists.Add([.. judged.Index().Where(one => one.Item is not null).Select(one => new Passing(one.Index, one.Item!.Value))]);
        }

        return new(lists, rows.Length);
    }
}
