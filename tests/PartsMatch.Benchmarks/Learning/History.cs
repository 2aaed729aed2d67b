using PartsMatch.Demo;
using PartsMatch.Demo.Outcomes;
using PartsMatch.Fit;
using PartsMatch.Learning;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>An example with what only the generator knows of it.</summary>
/// <param name="Example">What training sees.</param>
/// <param name="Right">How likely it was right first time by the hidden truth.</param>
internal sealed record Lived(Example Example, double Right);

/// <summary>A family's invented outcomes, read as the service reads them: through texts, with what follows.</summary>
/// <param name="Columns">The family's columns.</param>
/// <param name="All">All that no aspect fails, the oldest first.</param>
/// <param name="Outcomes">How many there were.</param>
internal sealed record History(FeatureColumns Columns, IReadOnlyList<Lived> All, int Outcomes)
{
    public List<KeyValuePair<string, int>> FailsOf { get; set; } = [];

    public static History Of(FamilyParts parts)
    {
        var family = Families.Find(parts.Family.Kind)!;
        var columns = new FeatureColumns(family);
        var specs = parts.Parts.ToDictionary(part => part.Number, part => part.Spec, StringComparer.Ordinal);
        var outcomes = DemoCatalogue.OutcomesOf(parts);
        var lived = outcomes.AsParallel().AsOrdered().Select(outcome =>
        {
            var need = family.ReadNeed(new(null, [], outcome.Site, specs[outcome.Old])).Need;
            var example = columns.ExampleOf(new(outcome.On, outcome.Place, need, outcome.New, specs[outcome.New], ResultOf(outcome)));
            return example is null ? null : new Lived(example, outcome.Right);
        });
        var fails = outcomes.Take(3000).SelectMany(outcome => family.Judge(family.ReadNeed(new(null, [], outcome.Site, specs[outcome.Old])).Need, specs[outcome.New]).Failures.Select(f => f.Aspect.Name)).CountBy(x => x).OrderByDescending(x => x.Value).ToList();
        return new(columns, [.. lived.OfType<Lived>()], outcomes.Count) { FailsOf = fails };
    }

    private static Result ResultOf(DemoOutcome outcome) => outcome.Result switch
    {
        "right first time" => Result.RightFirstTime,
        "reworked" => Result.Reworked,
        _ => Result.CameBack,
    };
}
