using System.Diagnostics;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;

namespace PartsMatch.Benchmarks.Unknowns;

/// <summary>What is told of needs with hidden fields, beside what should have been.</summary>
internal sealed class Told
{
    /// <summary>Of the first that are listed: as shown, against brute force.</summary>
    public ToldAgainst First { get; } = new();

    /// <summary>Of others that are listed, by chance: as shown, against brute force.</summary>
    public ToldAgainst ByChance { get; } = new();

    /// <summary>As shown, against the need with nothing hidden.</summary>
    public ToldAgainst Shown { get; } = new();

    /// <summary>Brute force against the need with nothing hidden.</summary>
    public ToldAgainst ByNearness { get; } = new();

    /// <summary>Brute force over machines that agree or not, against the need with nothing hidden.</summary>
    public ToldAgainst ByAgreement { get; } = new();

    /// <summary>How long brute force by nearness took.</summary>
    public TimeSpan BruteForce { get; private set; }

    /// <summary>Tells all needs.</summary>
    /// <param name="drawn">The needs.</param>
    /// <param name="catalogue">The parts.</param>
    /// <param name="weights">What their shortcomings cost.</param>
    /// <param name="random">Draws parts of the list.</param>
    /// <param name="listed">How many parts are looked at of those first in the list, and how many more by chance.</param>
    /// <param name="most">How many completions are told apart.</param>
    public static Told Of(HiddenFields drawn, Catalogue catalogue, Weights weights, Random random, int listed, int most)
    {
        var (told, family) = (new Told(), catalogue.Family);
        var specs = drawn.Parts.ToDictionary(part => part.Number, part => part.Spec);
        foreach (var need in drawn.Needs)
        {
            var completions = drawn.Machines.Complete(need.Open, most);
            var page = (RankingPage.Listed)Ranker.Rank(catalogue, weights, new(need.Open, null, drawn.Parts.Count, null) { Completions = completions });
            var others = page.Parts.Skip(listed).ToArray();
            random.Shuffle(others);
            List<RankedPart> looked = [.. page.Parts.Take(listed), .. others.Take(listed)];
            List<Spec> judged = [.. looked.Select(part => specs[part.Number])];

            var near = drawn.Machines.Near(need.Open);
            var start = Stopwatch.GetTimestamp();
            var byNearness = EveryMachine.Likelihoods(family, weights, need.Open, [.. near.Select(machine => new Counted(machine.Spec, machine.Weight))], judged);
            told.BruteForce += Stopwatch.GetElapsedTime(start);
            var byAgreement = EveryMachine.Likelihoods(family, weights, need.Open, EveryMachine.AgreeingOrNot(family, need.Open, drawn.MachineSpecs), judged);
            foreach (var (at, part) in looked.Index())
            {
                var (shown, truth) = (part.Likelihood.Percent / 100.0, EveryMachine.Likelihood(family, weights, need.Full, judged[at]));
                (at < listed ? told.First : told.ByChance).Add(shown, byNearness[at]);
                told.Shown.Add(shown, truth);
                told.ByNearness.Add(byNearness[at], truth);
                told.ByAgreement.Add(byAgreement[at], truth);
            }
        }

        return told;
    }
}
