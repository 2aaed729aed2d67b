using System.ComponentModel;
using PartsMatch.Ranking;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Graph.Transport;

namespace PartsMatch.Service.Graph.Results;

[Description("A part that does not fit, and comes nearest to it.")]
internal sealed class NearMiss(CatalogueEntry part, NearestMiss miss)
{
    private const int Most = 20;

    [Description("The part.")]
    public Part Part => new(part);

    [Description("What stands in the way: the aspects that fail, one or two.")]
    public IEnumerable<FindingOut> InTheWay => miss.InTheWay.Select(one => new FindingOut(one));

    [Description("One finding an aspect, in the family's order.")]
    public IEnumerable<FindingOut> Findings => FindingOut.AllOf(miss.Explained.Sheet);

    internal static int CheckFirst(int first) => first is >= 1 and <= Most
        ? first
        : throw new RefusedError(new Refusal(Codes.FirstOutOfRange, "first", $"first is 1 to {Most} here."));
}
