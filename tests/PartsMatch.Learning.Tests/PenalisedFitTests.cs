using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;

namespace PartsMatch.Learning.Tests;

/// <summary>The fit against what can be worked out, against what the data were drawn from, and against a library's trainer.</summary>
public sealed class PenalisedFitTests
{
    private static readonly Costs Truth = new(3, [2, 0, 1, 0.5, 3, 0]);

    /// <summary>A two by two table has its answer in closed form (any textbook of categorical data): the log of the odds, and of the odds' ratio.</summary>
    [Fact]
    public void One_column_that_is_there_or_not_gives_the_log_of_the_odds_ratio()
    {
        List<Example> table =
        [
            .. Many(60, [], Result.RightFirstTime), .. Many(15, [], Result.CameBack),
            .. Many(20, [0], Result.RightFirstTime), .. Many(30, [0], Result.Reworked),
        ];

        var fitted = Fit(table, Prior.None(1));

        fitted.Intercept.ShouldBe(Math.Log(60.0 / 15), 1e-6);
        fitted.OfColumn[0].ShouldBe(Math.Log(60.0 / 15) - Math.Log(20.0 / 30), 1e-6);
    }

    /// <summary>The odds' ratio speaks for the column here: the best cost that is not negative is none, and the intercept is the log of all odds.</summary>
    [Fact]
    public void A_column_that_seems_to_help_costs_nothing_rather_than_less()
    {
        List<Example> table = [.. Many(60, [], Result.RightFirstTime), .. Many(30, [], Result.CameBack), .. Many(50, [0], Result.RightFirstTime), .. Many(10, [0], Result.CameBack)];

        var fitted = Fit(table, Prior.None(1));

        fitted.OfColumn[0].ShouldBe(0);
        fitted.Intercept.ShouldBe(Math.Log(110.0 / 40), 1e-6);
    }

    /// <summary>An independent implementation: L-BFGS of Microsoft.ML. The tolerance is the issue's, 0.01 of probability.</summary>
    [Theory]
    [InlineData(2_000, 1)]
    [InlineData(20_000, 2)]
    public void Without_a_prior_it_gives_the_librarys_probabilities(int count, int seed)
    {
        var examples = Drawn.Of(Truth, count, seed);

        var (ours, theirs) = (Fit(examples, Prior.None(6)), LibraryFit.Of(examples, 6));

        examples.Max(example => Math.Abs(Drawn.ChanceOf(example.LogOdds(ours)) - Drawn.ChanceOf(example.LogOdds(theirs)))).ShouldBeLessThan(0.01);
    }

    /// <summary>As another machine's arithmetic might have it: every figure off by some of its last bits, and the sums in another order.</summary>
    [Theory]
    [InlineData(200, 1)]
    [InlineData(5_000, 2)]
    public void Figures_that_differ_in_their_last_bits_move_no_probability_by_a_millionth(int count, int seed)
    {
        var (examples, random) = (Drawn.Of(Truth, count, seed), new Random(seed));
        List<Example> elsewhere = [.. examples.Select(example => example with { Values = [.. example.Values.Select(value => value * (1 + (1e-14 * random.Next(-5, 6))))] }).Reverse()];
        var prior = new Prior([1, 1, 1, 1, 1, 1], [4, 4, 4, 4, 4, 4]);

        var (here, there) = (Fit(examples, prior), Fit(elsewhere, prior));

        examples.Max(example => Math.Abs(Drawn.ChanceOf(example.LogOdds(here)) - Drawn.ChanceOf(example.LogOdds(there)))).ShouldBeLessThan(1e-6);
    }

    [Fact]
    public void Of_many_examples_the_costs_are_those_that_they_were_drawn_from()
    {
        var fitted = Fit(Drawn.Of(Truth, 60_000, seed: 3), Prior.None(6));

        // Four standard errors of the widest, as the curvature gives them at 60,000 examples.
        for (var column = 0; column < 6; column++) fitted.OfColumn[column].ShouldBe(Truth.OfColumn[column], 0.16, $"column {column}");
    }

    [Fact]
    public void What_is_held_firmly_stays_and_a_few_examples_move_it_little()
    {
        var held = new Prior([2, 2], [1e9, 4]);
        var fitted = Fit(Many(3, [0, 1], Result.CameBack), held);
        fitted.OfColumn[0].ShouldBe(2, 1e-4);
        fitted.OfColumn[1].ShouldBeInRange(2, 2.8);
    }

    /// <summary>At the best costs the loss has no slope, but upwards where a cost is held at 0 (conditions of Karush, Kuhn and Tucker); found by differences, not by the fit's own slopes.</summary>
    [Property(MaxTest = 30)]
    public Property No_step_to_any_side_makes_it_better() => Prop.ForAll(Gen.Choose(1, 1_000_000).Zip(Gen.Choose(30, 400)).ToArbitrary(), given =>
    {
        var examples = Drawn.Of(new(1.5, [1, 0, 2, 0]), given.Item2, given.Item1);
        var prior = new Prior([1, 0.5, 0, 0], [1, 2, 0.5, 4]);
        var fitted = Fit(examples, prior);
        fitted.OfColumn.ShouldAllBe(cost => cost >= 0);
        for (var at = -1; at < 4; at++)
        {
            foreach (var step in (double[])[0.01, -0.01])
            {
                if (at >= 0 && fitted.OfColumn[at] + step < 0) continue;
                var other = new Costs(fitted.Intercept + (at < 0 ? step : 0), [.. fitted.OfColumn.Select((cost, column) => cost + (column == at ? step : 0))]);
                Loss(examples, prior, other).ShouldBeGreaterThanOrEqualTo(Loss(examples, prior, fitted) - 1e-9);
            }
        }
    });

    [Fact]
    public void The_same_examples_give_the_same_costs_to_the_last_bit()
    {
        var (one, other) = (Fit(Drawn.Of(Truth, 3_000, 5), Prior.None(6)), Fit(Drawn.Of(Truth, 3_000, 5), Prior.None(6)));
        one.Intercept.ShouldBe(other.Intercept);
        one.OfColumn.ShouldBe(other.OfColumn);
    }

    [Fact]
    public void Who_gives_up_is_heard() =>
        Should.Throw<OperationCanceledException>(() => PenalisedFit.Of(Drawn.Of(Truth, 100, 6), Prior.None(6), cancel: new CancellationToken(canceled: true)));

    private static Costs Fit(IReadOnlyList<Example> examples, Prior prior) => PenalisedFit.Of(examples, prior, cancel: TestContext.Current.CancellationToken);

    private static double Loss(List<Example> examples, Prior prior, Costs costs) =>
        examples.Sum(example => -Math.Log(example.Worked ? Drawn.ChanceOf(example.LogOdds(costs)) : 1 - Drawn.ChanceOf(example.LogOdds(costs))))
        + costs.OfColumn.Select((cost, column) => 0.5 * prior.Precisions[column] * Math.Pow(cost - prior.Means[column], 2)).Sum();

    private static List<Example> Many(int count, int[] columns, Result result) =>
        [.. Enumerable.Repeat(Drawn.Example(columns, [.. columns.Select(_ => 1.0)], result), count)];
}
