using PartsMatch.Demo.Trade;
using PartsMatch.Learning;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>How a list does when half of what the plate says cannot be read: what is unknown is averaged over known machines.</summary>
/// <param name="Ndcg">How near the first five are to the best order by the whole need; a part that does not fit it is worth nothing.</param>
/// <param name="Told">The mean likelihood told of the first part.</param>
/// <param name="Right">How often it is right by the truth, and fits.</param>
internal sealed record HalfKnown(Bootstrap Ndcg, double Told, double Right)
{
    private const int Shown = 5;
    private const int Seed = 23;

    /// <summary>Asks the ranking.</summary>
    public static HalfKnown Of(History history, IReadOnlyList<OfferedNeed> needs, Catalogue catalogue, Weights weights)
    {
        var machines = KnownMachines.Of(history.Family, history.Parts.Parts.Select(part => new CataloguePart(part.Number, part.Spec, IsOffered: !part.IsDiscontinued)));
        var asked = needs.Select((need, at) => Ask(history, need, catalogue, weights, machines, new Draw(Seed + at))).ToList();
        return new(Bootstrap.Of(asked.Select(one => (one.Place, one.Ndcg))), asked.Average(one => one.Told), asked.Average(one => one.Right));
    }

    private static (string Place, double Ndcg, double Told, double Right) Ask(History history, OfferedNeed need, Catalogue catalogue, Weights weights, KnownMachines machines, Draw draw)
    {
        var outcome = need.Lived.Outcome;
        var plate = history.Family.SpecShape.Write(history[outcome.Old].Spec);
        var read = history.Family.ReadNeed(new(null, [.. draw.Some(plate, plate.Count / 2)], outcome.Site)).Need;
        var page = (RankingPage.Listed)Ranker.Rank(catalogue, weights, new(read, Include: null, Shown, After: null, LeftOut: outcome.Old) { Completions = machines.Complete(read) });
        var worth = page.Parts.Select(part => need.Offers.FirstOrDefault(one => one.Example.PartNumber == part.Number)?.Right ?? 0).ToList();
        return (outcome.Place, Quality.Gain(worth) / Quality.Gain(need.Offers.Select(one => one.Right).OrderDescending()), page.Parts.Count == 0 ? 0 : page.Parts[0].Likelihood.Percent / 100.0, worth.FirstOrDefault());
    }
}
