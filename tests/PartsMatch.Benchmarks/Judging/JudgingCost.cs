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
    /// <summary>Each round judges everything anew, and of every need the least time counts: a machine with other work is measured too.</summary>
    public const int Rounds = 8;

    /// <summary>Judgements a need and aspect: about as many as a query asks for.</summary>
    public const int Judgements = 200;

    public static IReadOnlyList<JudgingCost> Measure(IReadOnlyList<Aspect> aspects, IReadOnlyList<IReadOnlyList<object>> facets, IReadOnlyList<Need> needs)
    {
        List<object[]> judged = [.. facets.Select(all => Enumerable.Range(0, Judgements).Select(at => all[(int)((long)at * all.Count / Judgements)]).ToArray())];
        var least = needs.Select(_ => aspects.Select(_ => Lap.Longest).ToArray()).ToArray();
        for (var round = 0; round <= Rounds; round++)
        {
            foreach (var (at, need) in needs.Index())
            {
                // A copy, which knows nothing yet of what follows from the need.
                var asked = need with { };
                for (var aspect = 0; aspect < aspects.Count; aspect++) least[at][aspect] = least[at][aspect].Least(Lap.Of(aspects[aspect], asked, judged[aspect]));
            }
        }

        return [.. aspects.Select((aspect, at) => new JudgingCost(
            aspect,
            facets[at].Count,
            least.Average(laps => laps[at].Ticks) * 1e9 / Stopwatch.Frequency / (Judgements - 1),
            least.Average(laps => laps[at].Bytes) / (Judgements - 1),
            least.Average(laps => laps[at].FirstTicks) * 1e9 / Stopwatch.Frequency))];
    }

    private readonly record struct Lap(long FirstTicks, long Ticks, long Bytes)
    {
        public static Lap Longest { get; } = new(long.MaxValue, long.MaxValue, long.MaxValue);

        public static Lap Of(Aspect aspect, Need need, object[] facets)
        {
            var start = Stopwatch.GetTimestamp();
            aspect.JudgeUnread(need, facets[0]);
            var (began, held) = (Stopwatch.GetTimestamp(), GC.GetAllocatedBytesForCurrentThread());
            for (var facet = 1; facet < facets.Length; facet++) aspect.JudgeUnread(need, facets[facet]);
            var (ended, holds) = (Stopwatch.GetTimestamp(), GC.GetAllocatedBytesForCurrentThread());
            return new(began - start, ended - began, holds - held);
        }

        public Lap Least(Lap other) => new(Math.Min(FirstTicks, other.FirstTicks), Math.Min(Ticks, other.Ticks), Math.Min(Bytes, other.Bytes));
    }
}
