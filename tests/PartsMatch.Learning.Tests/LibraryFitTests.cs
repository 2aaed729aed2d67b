using PartsMatch.Demo;
using PartsMatch.Demo.Outcomes;
using PartsMatch.Fit;

namespace PartsMatch.Learning.Tests;

/// <summary>Our fit beside an independent one, L-BFGS of Microsoft.ML, on the columns of real families: ramps that rise together, and columns that are hardly ever there.</summary>
public sealed class LibraryFitTests
{
    /// <summary>The issue's: 0.01 of probability. Costs of columns that say much the same may differ; what they come to may not.</summary>
    private const double Tolerance = 0.01;

    [Theory]
    [InlineData("motor", 5_000)]
    [InlineData("contactor", 4_000)]
    public void Without_a_prior_both_tell_the_same_of_demo_outcomes(string kind, int count)
    {
        var family = Families.Find(kind)!;
        var columns = new FeatureColumns(family);
        var examples = WithoutEndless(Examples(columns, count));
        examples.Count.ShouldBeGreaterThan(1_500);
        examples.SelectMany(example => example.Columns).Distinct().Count().ShouldBeGreaterThan(25, "columns that are there at all");

        var (ours, theirs) = (PenalisedFit.Of(examples, Prior.None(columns.Count), cancel: TestContext.Current.CancellationToken), LibraryFit.Of(examples, columns.Count));

        examples.Max(example => Math.Abs(Drawn.ChanceOf(example.LogOdds(ours)) - Drawn.ChanceOf(example.LogOdds(theirs)))).ShouldBeLessThan(Tolerance);
    }

    /// <summary>A column of which no example worked has no best cost, the greater the better, and every fit stops somewhere on that way: such columns' examples are left out.</summary>
    private static List<Example> WithoutEndless(List<Example> examples)
    {
        var finite = examples.Where(example => example.Worked).SelectMany(example => example.Columns).ToHashSet();
        return [.. examples.Where(example => Array.TrueForAll(example.Columns, finite.Contains))];
    }

    /// <summary>Demo outcomes as examples, read as a service reads them.</summary>
    private static List<Example> Examples(FeatureColumns columns, int count)
    {
        var made = DemoCatalogue.Make().Families.Single(one => one.Family.Kind == columns.Family.Kind);
        var byNumber = made.Parts.ToDictionary(part => part.Number, part => part.Spec);
        return [.. DemoCatalogue.DistrictOf(made).Outcomes(count).Select(ExampleOf).OfType<Example>()];

        Example? ExampleOf(DemoOutcome outcome) => columns.ExampleOf(new(
            outcome.Id, outcome.On, outcome.Place, columns.Family.ReadNeed(new(null, [], outcome.Site, byNumber[outcome.Old])).Need, outcome.Old, outcome.New, byNumber[outcome.New], outcome.Result switch
            {
                "right first time" => Result.RightFirstTime,
                "reworked" => Result.Reworked,
                _ => Result.CameBack,
            }));
    }
}
