using PartsMatch.Demo;
using PartsMatch.Demo.Outcomes;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Learning;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>A part for a need: what a model sees of it, and what only the generator knows.</summary>
/// <param name="Example">What a model sees.</param>
/// <param name="Old">The number of the part that had failed.</param>
/// <param name="Right">How likely it is right first time by the hidden truth.</param>
/// <param name="Price">What it costs, where that was asked.</param>
/// <param name="Met">How many aspects it meets without a change, where that was asked.</param>
internal sealed record Case(Example Example, string Old, double Right, decimal Price = 0, int Met = 0);

/// <summary>An outcome that teaches something.</summary>
/// <param name="Case">What was put in.</param>
/// <param name="Outcome">What was recorded.</param>
internal sealed record Lived(Case Case, DemoOutcome Outcome);

/// <summary>A family's invented outcomes, read as the service reads them: through texts, with what follows.</summary>
/// <param name="Parts">The family with its parts.</param>
/// <param name="Columns">The family's columns.</param>
/// <param name="District">Where they happened.</param>
/// <param name="Lived">All that teach something, the oldest first.</param>
/// <param name="Outcomes">How many there were.</param>
/// <param name="WhyLeftOut">Which aspects failed or were open in those that teach nothing, with how often, the most frequent first.</param>
internal sealed record History(FamilyParts Parts, FeatureColumns Columns, District District, IReadOnlyList<Lived> Lived, int Outcomes, IReadOnlyList<string> WhyLeftOut)
{
    /// <summary>So many aspects are named that keep outcomes from teaching.</summary>
    private const int Named = 6;

    private readonly Dictionary<string, DemoPart> byNumber = Parts.Parts.ToDictionary(part => part.Number, StringComparer.Ordinal);

    /// <summary>The family.</summary>
    public Family Family => Columns.Family;

    /// <summary>The first outcomes of a family's district.</summary>
    /// <param name="parts">The family with its parts.</param>
    /// <param name="count">How many.</param>
    public static History Of(FamilyParts parts, int count)
    {
        var family = Families.Find(parts.Family.Kind)!;
        var begun = new History(parts, new FeatureColumns(family), DemoCatalogue.DistrictOf(parts), [], count, []);
        var read = begun.District.Outcomes(count).AsParallel().AsOrdered().Select(begun.Read).ToList();
        return begun with
        {
            Lived = [.. read.Select(one => one.Lived).OfType<Lived>()],
            WhyLeftOut = [.. read.SelectMany(one => one.Why).CountBy(why => why).OrderByDescending(why => why.Value).ThenBy(why => why.Key, StringComparer.Ordinal).Take(Named).Select(why => FormattableString.Invariant($"{why.Key} ({why.Value:#,0})"))],
        };
    }

    /// <summary>A part by its number.</summary>
    public DemoPart this[string number] => byNumber[number];

    /// <summary>The need that was recorded.</summary>
    public Need NeedOf(DemoOutcome outcome) => Family.ReadNeed(new(null, [], outcome.Site, this[outcome.Old].Spec)).Need;

    /// <summary>What an outcome teaches, or why nothing.</summary>
    private (Lived? Lived, IReadOnlyList<string> Why) Read(DemoOutcome outcome)
    {
        var (need, part) = (NeedOf(outcome), this[outcome.New]);
        return Columns.ExampleOf(new(outcome.Id, outcome.On, outcome.Place, need, outcome.Old, outcome.New, part.Spec, ResultOf(outcome))) is { } example
            ? (new(new(example, outcome.Old, outcome.Right), outcome), [])
            : (null, WhyOf(Family.Judge(need, part.Spec)));
    }

    private static IReadOnlyList<string> WhyOf(FitSheet sheet) => sheet.Fit == PartFit.DoesntFit
        ? [.. sheet.Failures.Select(one => $"{one.Aspect.Name} fails")]
        : [.. sheet.Findings.Where(one => one.Aspect.IsDeciding && one.Finding.Verdict == Verdict.Unknown).Select(one => $"{one.Aspect.Name} open")];

    private static Result ResultOf(DemoOutcome outcome) => outcome.Result switch
    {
        "right first time" => Result.RightFirstTime,
        "reworked" => Result.Reworked,
        _ => Result.CameBack,
    };
}
