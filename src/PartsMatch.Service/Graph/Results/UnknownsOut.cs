using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Results;

[Name("ReadingAdvice")]
[Description("A reading that is worth taking.")]
internal sealed class ReadingAdviceOut(ReadingAdvice advice)
{
    [Description("Whose field it is.")]
    public Side Side => advice.Side;

    [Description("The field's name, on that side.")]
    public string Field => advice.Field.Name;

    [Description("What a person calls it.")]
    public string Label => advice.Field.Label;

    [Description("How to read or measure it.")]
    public string Help => advice.Field.Help;

    [Description("Minutes it takes with the tool at hand (practice).")]
    public double Minutes => advice.Field.Tool.Minutes();

    [Description("What it is expected to settle, in bits: which of the best 50 parts is the best, and whether each of them does.")]
    public double Narrowing => advice.Narrowing;

    [Description("Of the best 50 parts, how many it decides between.")]
    public int Parts => advice.Parts;

    [Description("Whether known machines tell what it may show; else an even chance is taken for each part that waits for it.")]
    public bool IsEstimated => advice.IsEstimated;

    [Description("Whether none of the best 50 parts can be told to fit yet for want of it, or of a reading in its place: such readings stand first.")]
    public bool EveryPartWaits => advice.EveryPartWaits;

    [Description("What to do and why, in words.")]
    public string Sentence => advice.Sentence;
}

[Name("CarrySet")]
[Description("The smallest set of parts of which one fits nearly whatever the old part was.")]
internal sealed class CarrySetOut(PartsToCarry carry)
{
    [Description("The parts, the one that fits most first; empty when nothing is open, or when of nothing on offer it can be told that it fits.")]
    public IEnumerable<CarriedPartOut> Parts => carry.Parts.Select(one => new CarriedPartOut(one.Part, one.Carried, one.Kit));

    [Description("How many known machines it rests on; 0 when the plate leaves nothing open.")]
    public int Machines => carry.Set.Machines;

    [Description("The share of these machines that one of the parts fits, 0 to 1; the nearer a machine comes to what is known, the more it counts.")]
    public double Reached => carry.Set.Reached;

    [Description("Whether there is surely no smaller set; else one may have been missed.")]
    public bool IsSmallest => carry.Set.IsSmallest;
}

[Name("CarriedPart")]
[Description("A part to carry.")]
internal sealed class CarriedPartOut(CatalogueEntry part, CarriedPart carried, IReadOnlyList<Fit.Notes.KitItem> kit)
{
    [Description("The part.")]
    public Part Part => new(part);

    [Description("The share of the known machines that it fits for sure, 0 to 1: all that decides is met, or cannot be told of the machine's own part either, from which nothing tells it. The nearer a machine comes to what is known, the more it counts.")]
    public double Share => carried.Share;

    [Description("What to bring besides it, for whichever of these machines it is.")]
    public IEnumerable<KitItemOut> Kit => kit.Select(item => new KitItemOut(item));
}
