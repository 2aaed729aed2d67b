using PartsMatch.Fit.Judging;
using PartsMatch.Learning;
using PartsMatch.Ranking;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>A need that was held out, with every part on offer that may do its job and leaves nothing open that decides.</summary>
/// <param name="Lived">What was done about it.</param>
/// <param name="Need">The need.</param>
/// <param name="Offers">The parts, in the order of hand-set weights.</param>
internal sealed record OfferedNeed(Lived Lived, Need Need, IReadOnlyList<Case> Offers)
{
    /// <summary>As many as a list may have; more are not looked at by anybody.</summary>
    private const int Most = 200;

    /// <summary>A list of fewer is in order however it is sorted.</summary>
    private const int Least = 3;

    /// <summary>The parts of a family as a catalogue.</summary>
    public static Catalogue CatalogueOf(History history) => Catalogue.Of(history.Family, history.Parts.Parts.Where(part => !part.IsDiscontinued).Select(part => new CataloguePart(part.Number, part.Spec, IsOffered: true)));

    /// <summary>The first so many of those held out for which there is a choice.</summary>
    public static IReadOnlyList<OfferedNeed> Of(History history, Split split, Catalogue catalogue, int count)
    {
        var byHand = Weights.HandSet(history.Family);
        return [.. split.HeldOut.AsParallel().AsOrdered().Select(lived => Of(history, catalogue, byHand, lived)).Where(one => one.Offers.Count >= Least).Take(count)];
    }

    /// <summary>How near to the best order the first five are: the sum of what each is worth, less the further down it stands, as a share of what the best order has (Järvelin and Kekäläinen 2002). A part is worth what it is right by the truth.</summary>
    public double Ndcg(Func<Case, double> score)
    {
        var best = Offers.Select(one => one.Right).OrderDescending();
        return Quality.Gain(InOrder(score).Select(one => one.Right)) / Quality.Gain(best);
    }

    /// <summary>What the likeliest by the truth is right more often than the first one.</summary>
    public double Regret(Func<Case, double> score) => Offers.Max(one => one.Right) - InOrder(score).First().Right;

    /// <summary>The parts in somebody's order, ties by number.</summary>
    public IEnumerable<Case> InOrder(Func<Case, double> score) => Offers.OrderByDescending(score).ThenBy(one => one.Example.PartNumber, StringComparer.Ordinal);

    private static OfferedNeed Of(History history, Catalogue catalogue, Weights byHand, Lived lived)
    {
        var (need, outcome) = (history.NeedOf(lived.Outcome), lived.Outcome);
        var page = (RankingPage.Listed)Ranker.Rank(catalogue, byHand, new(need, Include: null, Most, After: null, LeftOut: outcome.Old));
        return new(lived, need, [.. page.Parts.Select(part => Offer(part)).OfType<Case>()]);

        Case? Offer(RankedPart part)
        {
            var demo = history[part.Number];
            if (history.Columns.ExampleOf(new(outcome.Id, outcome.On, outcome.Place, need, outcome.Old, part.Number, demo.Spec, Result.CameBack)) is not { } example) return null;
            return new(example, outcome.Old, history.District.Right(outcome.Old, part.Number, outcome.Place, outcome.On), demo.Price, part.Explained.Sheet.Findings.Count(one => one.Finding.Verdict == Verdict.Meets));
        }
    }
}
