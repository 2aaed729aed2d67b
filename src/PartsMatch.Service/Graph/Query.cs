using System.ComponentModel;
using GraphQL;
using Microsoft.Extensions.Options;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Counter.Trainings;
using PartsMatch.Service.Graph.Limits;
using PartsMatch.Service.Graph.Results;
using PartsMatch.Service.Graph.Transport;

namespace PartsMatch.Service.Graph;

[Description("What reads.")]
internal sealed class Query
{
    /// <summary>A walk over the catalogue costs as much as this many fields.</summary>
    private const double WalkCost = 200;

    [Description("Reads the text of a nameplate, as typed, in any order and layout.")]
    public static NameplateOut ReadNameplate(
        [Description("What kind of part the plate is on.")] Family kind,
        [Description("The plate's text.")] string text) =>
        new(kind, Nameplates.Read(kind, text).OrRefuse());

    [Complexity(WalkCost)]
    [Description("Parts on offer that may do the job, best first. Parts that do not fit are left out; retired parts are never offered.")]
    public static ReplacementConnection Replacements(
        [FromServices] Judgements judgements,
        [FromServices] IOptions<QueryLimits> limits,
        [Description("What is to be replaced, and where.")] NeedGiven need,
        [Description("The page after this cursor.")] string? after,
        [Description("Only parts that fit in these ways; all that may fit when left out.")] IEnumerable<PartFit>? include,
        [Description("How many, 1 to 100.")] int first = 10) =>
        new(judgements.Replacements(need, limits.Value.CheckFirst(first), after, include?.ToList()).OrRefuse(), after is not null);

    [Description("The best replacements of many old parts, in the order of their numbers; one that nothing can be said of keeps its place and says why.")]
    public static Task<IEnumerable<CrossReferenceRow>> CrossReference(
        [FromServices] Judgements judgements,
        [FromServices] IOptions<QueryLimits> limits,
        [Id, Description("The old parts' numbers, at most 200. Dashes, spaces and case do not matter.")] IEnumerable<string> partNumbers,
        [Description("What all the new parts will meet; what follows from each old part when left out. Only numbers of its kind are then answered.")] SiteGiven? site,
        CancellationToken stop) =>
        CrossReferenceRow.AllOfAsync(judgements.Now, NumbersAtOnce.Check(limits.Value, partNumbers), site, stop);

    [Complexity(WalkCost)]
    [Description("Which readings to take next: those that are expected to settle most for their effort, the most worth first; empty when nothing is open.")]
    public static IEnumerable<ReadingAdviceOut> NextReadings(
        [FromServices] Judgements judgements,
        [FromServices] IOptions<QueryLimits> limits,
        [Description("What is to be replaced, and where.")] NeedGiven need,
        [Description("How many at most, 1 to 100.")] int first = 3) =>
        judgements.Unknowns(need).OrRefuse().NextReadings(limits.Value.CheckFirst(first)).Select(advice => new ReadingAdviceOut(advice));

    [Complexity(WalkCost)]
    [Description("What to carry when the plate cannot be read.")]
    public static CarrySetOut CarrySet(
        [FromServices] Judgements judgements,
        [Description("What is to be replaced, and where.")] NeedGiven need,
        [Description("The share of known machines of which one of the parts shall fit, 0 to 1; as many as can be when that is fewer.")] double atLeast = Ranking.Unknowns.CarrySet.UsualShare) =>
        new(judgements.Unknowns(need).OrRefuse().CarrySet(CarryShare.Check(atLeast)));

    [Description("Everything about one part for a need: what meets, what must be changed, and why.")]
    public static FitSheetOut FitSheet(
        [FromServices] Judgements judgements,
        [Description("What is to be replaced, and where.")] NeedGiven need,
        [Id, Description("The number of the part to judge, retired ones too.")] string partNumber,
        [Description("What was read at the old part: what killed it is then mended first in the notes. The kind is the need's.")] ReadingsGiven? readings) =>
        new(judgements.FitSheet(need, partNumber, readings).OrRefuse());

    [Description("One part of the catalogue judged in the place of another: the old one's entry is the plate.")]
    public static FitSheetOut Compare(
        [FromServices] Judgements judgements,
        [Id, Description("The number of the old part, retired ones too.")] string oldPartNumber,
        [Id, Description("The number of the part to judge, retired ones too.")] string newPartNumber,
        [Description("What the new part will meet; what follows from the old part when left out.")] SiteGiven? site) =>
        new(judgements.Compare(oldPartNumber, newPartNumber, site).OrRefuse());

    [Description("Whether it is the part: what readings at the old one say before it is condemned, or which reading to take next.")]
    public static DiagnosisOut BeforeCondemning(
        [FromServices] Proofs proofs,
        [Description("What is suspected, and where.")] NeedGiven need,
        [Description("What was read at it. The kind is the need's.")] ReadingsGiven readings) =>
        new(proofs.BeforeCondemning(need, readings).OrRefuse());

    [Description("Whether a new part runs as it should, by readings taken after the swap, and what is likely wrong if it does not.")]
    public static AfterSwapOut AfterSwap(
        [FromServices] Proofs proofs,
        [Description("What was replaced, and where.")] NeedGiven need,
        [Id, Description("The number of the part that was put in, retired ones too.")] string partNumber,
        [Description("What was read at it. The kind is the need's.")] ReadingsGiven readings) =>
        new(proofs.AfterSwap(need, partNumber, readings).OrRefuse());

    [Description("A part of the catalogue, retired ones too; null when there is none of that number.")]
    public static Part? Part([Id, Description("Its number. Dashes, spaces and case do not matter.")] string number, [FromServices] Catalogues catalogues) =>
        catalogues.Shelf.Find(number) is { } entry ? new(entry) : null;

    [Description("What parts of a kind are ranked by: the weights, what they were trained on, the last trainings, and how far one that goes on has come.")]
    public static ModelOut Model(
        [Description("The kind.")] Family kind,
        [FromServices] ModelTrainings trainings,
        [FromServices] Catalogues catalogues) =>
        new(trainings.Report(kind), catalogues);

    [Description("The catalogue, page by page, in the order of part numbers; retired parts are left out.")]
    public static PartConnection Parts(
        [FromServices] Catalogues catalogues,
        [FromServices] IOptions<QueryLimits> limits,
        [Description("Only parts of this kind.")] Family? kind,
        [Description("Only parts that have each of these words in number, maker, title or spec.")] string? text,
        [Description("The page after this cursor.")] string? after,
        [Description("How many, 1 to 100.")] int first = 20) =>
        new(PartLists.Page(catalogues.Shelf, kind, text, limits.Value.CheckFirst(first), after).OrRefuse());

    [Description("What became of parts that were put in, page by page, the newest record first; corrected ones too.")]
    public static async Task<OutcomeConnection> Outcomes(
        [FromServices] OutcomeRecords records,
        [FromServices] IOptions<QueryLimits> limits,
        [Description("Only of parts of this kind.")] Family? kind,
        [Id, Description("Only of the part of this number.")] string? part,
        [Description("The page after this cursor.")] string? after,
        [Description("How many, 1 to 100.")] int first = 20) =>
        new((await records.PageAsync(kind, part, limits.Value.CheckFirst(first), after)).OrRefuse());
}
