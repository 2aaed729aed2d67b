using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Tests;

namespace PartsMatch.Learning.Tests;

/// <summary>From outcomes to weights that rank.</summary>
public sealed class TrainerTests
{
    private static readonly Family Family = Gaskets.Family();
    private static readonly FeatureColumns Columns = new(Family);
    private static readonly DateOnly Today = new(2026, 3, 14);
    private static readonly Outcome FailsInBore = new("fails", Today, "a place", Gaskets.Need(bore: 0), "Q-0", "Q-99", Gaskets.Part("Q-99", bore: 12).Spec, Result.CameBack);

    [Fact]
    public void Trained_weights_written_read_and_asked_give_the_trainers_probabilities()
    {
        var outcomes = Outcomes(4_000, seed: 1, SteepInBore);
        var trained = Train(outcomes);
        trained.Choice.ShouldBe(Choice.Trained, trained.Reason);

        var (read, complaints) = WeightsFile.Read(WeightsFile.Write(trained.Weights), Family);
        complaints.ShouldBeEmpty();
        var model = Model.Trained([.. outcomes.Select(Columns.ExampleOf).OfType<Example>()], Columns, cancel: TestContext.Current.CancellationToken);
        foreach (var outcome in outcomes.Take(500))
        {
            if (Columns.ExampleOf(outcome) is not { } example) continue;
            var explained = Ranker.Explain(Family, read!, outcome.Need, outcome.Part, outcome.PartNumber);
            Drawn.ChanceOf(read!.Intercept + explained.Score.Value).ShouldBe(Drawn.ChanceOf(model.LogOdds(example)), 1e-5);
        }
    }

    [Fact]
    public void What_was_told_of_outcomes_held_out_is_kept_in_ten_bins_and_its_error_is_the_one_that_is_told()
    {
        var training = Train(Outcomes(2_000, seed: 5, SteepInBore)).Weights.Training!;

        training.Calibration.Count.ShouldBe(10);
        training.Calibration.Sum(point => point.Outcomes).ShouldBe(training.Outcomes);
        training.Calibration.Select(point => point.Told).ShouldBeInOrder();
        (training.Calibration.Sum(point => point.Outcomes * Math.Abs(point.Told - point.Happened)) / training.Outcomes).ShouldBe(training.Figures["calibrationError"], 1e-12);
        (training.Calibration.Sum(point => point.Outcomes * point.Floor) / training.Outcomes).ShouldBe(training.Figures["calibrationFloor"], 1e-12);
    }

    [Fact]
    public void What_outcomes_say_of_an_aspect_is_learnt_and_what_they_do_not_say_stays_as_it_was_by_hand()
    {
        var weights = Train(Outcomes(6_000, seed: 2, SteepInBore)).Weights;

        // The truth costs nothing for half of the way, and 5 for the rest; by hand it was 1 for the whole.
        var bore = weights.Aspects["bore"].Shortfall;
        bore.At(0.4).ShouldBeLessThan(0.8);
        bore.At(0.8).ShouldBeInRange(2.4, 4.2);
        bore.At(1).ShouldBeInRange(4.2, 5.8);
        weights.Aspects["colour"].Shortfall.At(1).ShouldBeGreaterThan(0);
    }

    [Fact]
    public void Where_hand_set_weights_are_right_they_stay_and_the_reason_is_told()
    {
        // The truth is the hand-set weights themselves: nothing can be gained, and chance alone decides the sign.
        var byHand = Weights.HandSet(Family);
        var trainings = Enumerable.Range(10, 12).Select(seed => Train(Outcomes(300, seed, (outcome, random) =>
            random.NextDouble() < Drawn.ChanceOf(1 + Ranker.Explain(Family, byHand, outcome.Need, outcome.Part).Score.Value)))).ToList();

        trainings.Count(trained => trained.Choice == Choice.Trained).ShouldBeLessThan(6);
        foreach (var stayed in trainings.Where(trained => trained.Choice == Choice.Rescaled))
        {
            stayed.Reason.ShouldEndWith("hand-set weights rank, rescaled.");
            stayed.Weights.Origin.ShouldBe(WeightsOrigin.Rescaled);
            var ratios = Family.Aspects.Where(aspect => aspect.DefaultWeight.Effort > 0).Select(aspect => stayed.Weights.Aspects[aspect.Name].Effort / aspect.DefaultWeight.Effort).ToList();
            ratios.ShouldAllBe(ratio => Math.Abs(ratio - ratios[0]) < 1e-9);
        }
    }

    [Fact]
    public void Too_few_outcomes_train_nothing_and_it_is_said_how_many_it_takes()
    {
        var present = Weights.HandSet(Family);
        var trained = Train([.. Outcomes(40, seed: 3, (_, _) => true), FailsInBore, FailsInBore], present: present);
        (trained.Choice, trained.Outcomes, trained.LeftOut).ShouldBe((Choice.TooFew, 42, 2));
        trained.Weights.ShouldBeSameAs(present);
        trained.Reason.ShouldBe("Training takes 50 outcomes of parts that fit, 10 of them right first time and as many not; there are 40 and 0.");
    }

    [Fact]
    public void A_part_that_failed_an_aspect_teaches_nothing_and_is_counted()
    {
        List<Outcome> outcomes = [.. Outcomes(200, seed: 4, SteepInBore), .. Enumerable.Repeat(FailsInBore, 7)];
        Train(outcomes).LeftOut.ShouldBe(7);
    }

    [Fact]
    public void Demo_data_among_what_teaches_something_is_counted_with_the_weights()
    {
        List<Outcome> outcomes = [.. Outcomes(200, seed: 4, SteepInBore).Select((outcome, at) => outcome with { IsInvented = at % 4 == 0 }), FailsInBore with { IsInvented = true }];
        var trained = Train(outcomes);
        (trained.Invented, trained.Weights.Training!.Invented).ShouldBe((50, 50));
        WeightsFile.Read(WeightsFile.Write(trained.Weights), Family).Weights!.Training!.Invented.ShouldBe(50);
    }

    [Fact]
    public void Outcomes_of_one_place_alone_prove_nothing_and_hand_set_weights_rank_rescaled()
    {
        var trained = Train([.. Outcomes(400, seed: 6, SteepInBore).Select(outcome => outcome with { Place = "the only place" })]);
        trained.Choice.ShouldBe(Choice.Rescaled);
        trained.Reason.ShouldStartWith("All outcomes are of fewer than 5 places");

        var (read, complaints) = WeightsFile.Read(WeightsFile.Write(trained.Weights), Family);
        complaints.ShouldBeEmpty();
        read!.Training!.Figures.ShouldBeEmpty("nothing was measured");
        read.Training.Calibration.ShouldBeEmpty();
    }

    [Fact]
    public void Outcomes_that_name_no_place_are_taken_for_ones_of_many()
    {
        var trained = Train([.. Outcomes(4_000, seed: 1, SteepInBore).Select(outcome => outcome with { Place = string.Empty })]);
        trained.Choice.ShouldBe(Choice.Trained, trained.Reason);
    }

    [Fact]
    public void Weights_that_rank_at_present_stay_where_the_same_outcomes_are_learnt_from_again()
    {
        var outcomes = Outcomes(2_000, seed: 1, SteepInBore);
        var first = Train(outcomes);
        first.Choice.ShouldBe(Choice.Trained, first.Reason);

        var again = Train(outcomes, present: first.Weights);
        again.Choice.ShouldBe(Choice.Present, again.Reason);
        again.Weights.ShouldBeSameAs(first.Weights);
        again.Reason.ShouldEndWith("may have seen some of these outcomes: those that rank at present stay.");
    }

    [Fact]
    public void Weights_that_somebody_set_by_hand_here_stay_until_others_are_shown_to_be_better()
    {
        var outcomes = Outcomes(2_000, seed: 1, SteepInBore);
        var first = Train(outcomes).Weights;
        var byHand = Columns.WeightsOf(WeightsOrigin.HandSet, Model.Of(first, Columns).Costs, new Dictionary<string, double>(), Today, first.Training!);

        var trained = Train(outcomes, present: byHand);
        trained.Choice.ShouldBe(Choice.Present, trained.Reason);
        trained.Weights.ShouldBeSameAs(byHand);
        trained.Reason.ShouldEndWith("those were set by hand here: those that rank at present stay.");
    }

    [Fact]
    public void Rescaled_weights_that_somebody_changed_by_hand_since_stay_until_others_are_shown_to_be_better()
    {
        var outcomes = Outcomes(2_000, seed: 1, SteepInBore);
        var first = Train(outcomes).Weights;
        var changed = Columns.WeightsOf(WeightsOrigin.Rescaled, Model.Of(first, Columns).Costs, new Dictionary<string, double>(), Today, first.Training!);
        var trained = Train(outcomes, present: changed);
        trained.Choice.ShouldBe(Choice.Present, trained.Reason);
        trained.Weights.ShouldBeSameAs(changed);

        var rescaled = Columns.WeightsOf(WeightsOrigin.Rescaled, Model.Rescaled([.. outcomes.Select(Columns.ExampleOf).OfType<Example>()], Columns).Costs, new Dictionary<string, double>(), Today, first.Training!);
        Train(outcomes, present: rescaled).Choice.ShouldBe(Choice.Trained, "nobody changed these");
    }

    [Fact]
    public void Weights_that_rank_at_present_give_way_where_many_more_outcomes_are_known()
    {
        var outcomes = Outcomes(6_000, seed: 1, SteepInBore);
        var present = Train([.. outcomes.Take(500)]);
        present.Choice.ShouldBe(Choice.Trained, present.Reason);
        var later = Train(outcomes, present: present.Weights);
        later.Choice.ShouldBe(Choice.Trained, later.Reason);
    }

    [Fact]
    public void Weights_that_rank_at_present_give_way_where_times_have_changed()
    {
        var present = Train(Outcomes(2_000, seed: 1, SteepInBore)).Weights;
        var later = Train(Outcomes(2_000, seed: 2, (outcome, random) => random.NextDouble() < Drawn.ChanceOf(2 - (2.0 * Math.Abs(((GasketSpec)outcome.Part).Hardness!.Value - 5)))), present: present);
        later.Choice.ShouldBe(Choice.Trained, later.Reason);
        later.Figures["logLossPresent"].ShouldBeGreaterThan(later.Figures["logLossTrained"]);
    }

    /// <summary>The mean of what is told of many is what happened to them, if the figures are of the weights that rank: by hand a gasket that nothing speaks against is told to do in 97 of 100.</summary>
    [Fact]
    public void Figures_are_those_of_the_weights_that_rank()
    {
        var byHand = Weights.HandSet(Family);
        var stayed = Enumerable.Range(10, 12).Select(seed => Train(Outcomes(300, seed, (outcome, random) =>
            random.NextDouble() < Drawn.ChanceOf(1 + Ranker.Explain(Family, byHand, outcome.Need, outcome.Part).Score.Value)))).First(trained => trained.Choice == Choice.Rescaled);
        var training = stayed.Weights.Training!;
        var distinct = training.Calibration.Select(bin => bin.Told).Distinct().Count();
        distinct.ShouldBeGreaterThan(1);
        training.Calibration.Sum(bin => bin.Outcomes * bin.Told).ShouldBe(training.Calibration.Sum(bin => bin.Outcomes * bin.Happened), 0.05 * training.Outcomes);
    }

    /// <summary>In other orders, judged on one core or on two, folds trained side by side: no sum is added up in another order.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void The_same_outcomes_give_the_same_weights_and_figures_to_the_last_bit(int cores)
    {
        var outcomes = Outcomes(3_000, seed: 7, SteepInBore);
        var once = WeightsFile.Write(Train(outcomes).Weights);
        foreach (var seed in (int[])[1, 2])
        {
            var shuffled = outcomes.ToArray();
            new Random(seed).Shuffle(shuffled);
            var again = Trainer.Train(new FeatureColumns(Family), shuffled.AsParallel().WithDegreeOfParallelism(cores), Weights.HandSet(Family), Today, cancel: TestContext.Current.CancellationToken);
            WeightsFile.Write(again.Weights).ShouldBe(once);
        }
    }

    /// <summary>The same, said once more without anything side by side.</summary>
    [Fact]
    public void One_core_after_another_comes_to_the_same_as_all_at_once()
    {
        var outcomes = Outcomes(3_000, seed: 7, SteepInBore);
        var trained = Train(outcomes);
        List<Example> examples = [.. outcomes.Select(Columns.ExampleOf).OfType<Example>().OrderBy(example => example.On).ThenBy(example => example.Id, StringComparer.Ordinal)];

        var all = Model.Trained(examples, Columns, cancel: TestContext.Current.CancellationToken);
        trained.Weights.Intercept.ShouldBe(all.Costs.Intercept);
        Columns.CostsOf(trained.Weights).ShouldBe(all.Costs.OfColumn);
        trained.Weights.Records.ShouldBe(all.Records);
        var losses = new List<double>();
        foreach (var (learnt, heldOut) in Folds.Parted(examples, 10)) losses.Add(Quality.LogLoss(Model.Trained(learnt, Columns, all.Costs, TestContext.Current.CancellationToken).TellOf(heldOut)));
        trained.Figures["logLossTrained"].ShouldBe(losses.Average());
    }

    [Fact]
    public void Progress_is_told_to_its_end()
    {
        var told = new Told();
        Train(Outcomes(200, seed: 5, SteepInBore), told);
        told.All.Select(one => one.Done).ShouldBe(told.All.Select(one => one.Done).Order());
        (told.All[0].Done, told.All[^1].Done).ShouldBe((0, told.All[^1].Of));
    }

    private static Trained Train(IReadOnlyList<Outcome> outcomes, IProgress<Progress>? progress = null, Weights? present = null) =>
        Trainer.Train(Columns, outcomes.AsParallel().AsOrdered(), present ?? Weights.HandSet(Family), Today, progress, TestContext.Current.CancellationToken);

    private static bool SteepInBore(Outcome outcome, Random random)
    {
        var (need, part) = ((GasketSpec)outcome.Need.Plate, (GasketSpec)outcome.Part);
        var steps = Math.Abs(need.Bore!.Value - part.Bore!.Value);
        return random.NextDouble() < Drawn.ChanceOf(3 - (steps > 2 ? 2.0 * (steps - 2.5) : 0));
    }

    private static List<Outcome> Outcomes(int count, int seed, Func<Outcome, Random, bool> works)
    {
        var random = new Random(seed);
        var outcomes = new List<Outcome>();
        while (outcomes.Count < count)
        {
            var number = random.Next(100);
            var part = Gaskets.Part(FormattableString.Invariant($"Q-{number}"), bore: random.Next(11), thickness: 3 + random.Next(5), hardness: 4 + random.Next(3));
            var outcome = new Outcome(FormattableString.Invariant($"told-{outcomes.Count:00000}"), Today.AddDays(-random.Next(700)), FormattableString.Invariant($"place {random.Next(60)}"), Gaskets.Need(), FormattableString.Invariant($"OLD-{random.Next(30)}"), part.Number, part.Spec, Result.RightFirstTime);
            outcomes.Add(works(outcome, random) ? outcome : outcome with { Result = random.Next(2) == 0 ? Result.CameBack : Result.Reworked });
        }

        return outcomes;
    }

    private sealed class Told : IProgress<Progress>
    {
        public List<Progress> All { get; } = [];

        public void Report(Progress value) => All.Add(value);
    }
}
