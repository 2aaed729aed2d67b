using System.Diagnostics;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Benchmarks.Judging;

/// <summary>What judgements of one aspect cost.</summary>
/// <param name="Aspect">The aspect.</param>
/// <param name="Facets">Its distinct facets.</param>
/// <param name="Nanoseconds">Time of a judgement but for the first of a need.</param>
/// <param name="Bytes">What it allocates.</param>
/// <param name="FirstNanoseconds">Time of the first judgement of a need.</param>
internal sealed record JudgingCost(Aspect Aspect, int Facets, double Nanoseconds, double Bytes, double FirstNanoseconds)
{
    /// <summary>Each round judges everything anew; what disturbs one of them does not count.</summary>
    public const int Rounds = 5;

    /// <summary>Facets a need and aspect: about as many as a query judges.</summary>
    public const int MostFacets = 200;

    public static IReadOnlyList<JudgingCost> Measure(IReadOnlyList<Aspect> aspects, IReadOnlyList<IReadOnlyList<object>> facets, IReadOnlyList<Need> needs)
    {
        List<object[]> chosen = [.. facets.Select(all => Enumerable.Range(0, Math.Min(all.Count, MostFacets)).Select(at => all[(int)((long)at * all.Count / Math.Min(all.Count, MostFacets))]).ToArray())];
        Round(aspects, chosen, needs);
        List<Tally[]> rounds = [.. Enumerable.Range(0, Rounds).Select(_ => Round(aspects, chosen, needs))];
        return [.. aspects.Select((aspect, at) => new JudgingCost(
            aspect,
            facets[at].Count,
            rounds.Min(round => round[at].Ticks) * 1e9 / Stopwatch.Frequency / Math.Max(1, rounds[0][at].Judged),
            rounds.Min(round => round[at].Bytes) / (double)Math.Max(1, rounds[0][at].Judged),
            rounds.Min(round => round[at].FirstTicks) * 1e9 / Stopwatch.Frequency / needs.Count))];
    }

    private static Tally[] Round(IReadOnlyList<Aspect> aspects, List<object[]> facets, IReadOnlyList<Need> needs)
    {
        var tallies = new Tally[aspects.Count];
        foreach (var need in needs)
        {
            // A copy, which knows nothing yet of what follows from the need.
            var asked = need with { };
            for (var at = 0; at < aspects.Count; at++)
            {
                var (aspect, judged, start) = (aspects[at], facets[at], Stopwatch.GetTimestamp());
                aspect.Judge(asked, judged[0]);
                var (began, held) = (Stopwatch.GetTimestamp(), GC.GetAllocatedBytesForCurrentThread());
                for (var facet = 1; facet < judged.Length; facet++) aspect.Judge(asked, judged[facet]);
                var (ended, holds) = (Stopwatch.GetTimestamp(), GC.GetAllocatedBytesForCurrentThread());
                tallies[at].Add(began - start, ended - began, holds - held, judged.Length - 1);
            }
        }

        return tallies;
    }

    private struct Tally
    {
        public long FirstTicks;
        public long Ticks;
        public long Bytes;
        public int Judged;

        public void Add(long firstTicks, long ticks, long bytes, int judged)
        {
            FirstTicks += firstTicks;
            Ticks += ticks;
            Bytes += bytes;
            Judged += judged;
        }
    }
}
