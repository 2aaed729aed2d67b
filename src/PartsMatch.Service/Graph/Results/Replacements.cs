using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Results;

[Description("A page of parts that may do the job, best first: by likelihood; then those at hand, those still made, those discontinued with none at hand; then price, then number.")]
internal sealed class ReplacementConnection(RankedParts ranked, bool hasPrevious) : NeedAnswer(ranked.Need)
{
    [Description("The parts of this page.")]
    public IReadOnlyList<ReplacementEdge> Edges { get; } = [.. ranked.Parts.Select(one => new ReplacementEdge(one.Part, one.Ranked))];

    [Description("Where this page stands.")]
    public PageInfo PageInfo => new(ranked.HasNext, hasPrevious, Edges is [var start, ..] ? start.Cursor : null, Edges is [.., var end] ? end.Cursor : null);

    [Complexity(200)]
    [Description("How many of all parts on offer fit, and how. Judges every part, so ask only when it is shown.")]
    public IEnumerable<FitCount> TotalByFit() => ranked.CountByFit().Select(pair => new FitCount(pair.Key, pair.Value));

    [Complexity(200)]
    [Description("Parts that fail one aspect, then those that fail two, with what stands in the way. Judges every part, so ask only when nothing fits.")]
    public IEnumerable<NearMiss> NearestMisses([Description("How many at most, 1 to 20.")] int first = 3) =>
        ranked.NearestMisses(NearMiss.CheckFirst(first)).Select(one => new NearMiss(one.Part, one.Miss));
}

[Description("A part with its place in the ranking.")]
internal sealed class ReplacementEdge(CatalogueEntry part, RankedPart ranked)
{
    [Description("Its place, to be given as after. It holds only as long as the weights do: others answer CURSOR_EXPIRED.")]
    public string Cursor => ranked.Cursor;

    [Description("The part, judged.")]
    public Replacement Node => new(part, ranked);
}

[Description("A part that may do the job, judged.")]
internal sealed class Replacement(CatalogueEntry part, RankedPart ranked)
{
    [Description("The part.")]
    public Part Part => new(part);

    [Description("Whether it does the job.")]
    public PartFit Fit => ranked.Fit;

    [Description("How likely it does the job the first time, in whole percent, 1 to 99.")]
    public int Likelihood => ranked.Likelihood.Percent;

    [Description("What the likelihood is worked out from: hand-set weights, or outcomes of past installations.")]
    public string LikelihoodFrom => Words.From(ranked.Likelihood);

    [Description("Over how many known machines the likelihood was averaged, the nearer to what is known the more each counts, since the plate does not tell enough; 0 when it is the need's own.")]
    public int LikelihoodOver => ranked.Likelihood.Machines;

    [Description("The sum of what each aspect takes, in units of log-odds; never positive.")]
    public double Score => ranked.Explained.Score.Value;

    [Description("All that must be changed or checked.")]
    public IEnumerable<ChangeOut> Changes => ChangeOut.AllOf(ranked.Explained.Sheet);

    [Description("One finding an aspect, in the family's order.")]
    public IEnumerable<FindingOut> Findings => FindingOut.AllOf(ranked.Explained.Sheet);

    [Description("How many are at hand, as last told; null when nobody told.")]
    public int? OnHand => part.Stock?.OnHand;

    [Description("What it costs, as last told; null when nobody told.")]
    public Price? Price => Price.Of(part.Stock);
}

[Description("How many parts fit in one way.")]
internal sealed class FitCount(PartFit fit, int count)
{
    [Description("The way.")]
    public PartFit Fit => fit;

    [Description("How many parts on offer.")]
    public int Count => count;
}
