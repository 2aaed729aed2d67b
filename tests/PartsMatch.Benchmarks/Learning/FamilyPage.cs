using PartsMatch.Learning;
using PartsMatch.Ranking;
using static System.FormattableString;

namespace PartsMatch.Benchmarks.Learning;

/// <summary>What was measured of one family.</summary>
internal static class FamilyPage
{
    /// <summary>Needs for which lists are put in order.</summary>
    private const int Needs = 600;

    /// <summary>Of these, so many are asked with half of their plates unknown.</summary>
    private const int HalfKnownNeeds = 300;

    private static readonly int[] Curve = [50, 100, 200, 500, 1_000, 2_000, 5_000, 10_000, 20_000];
    private static readonly int[] Small = [50, 100, 200, 500];

    /// <summary>Measures, and writes it down.</summary>
    /// <param name="history">The outcomes.</param>
    /// <param name="isMain">Whether as much is learnt from as aims were set for; else as much as seed-data holds.</param>
    public static string Of(History history, bool isMain)
    {
        var card = new ModelCard();
        var (split, columns) = (Split.Of(history), history.Columns);
        var catalogue = OfferedNeed.CatalogueOf(history);
        var needs = OfferedNeed.Of(history, split, catalogue, Needs);
        var size = isMain ? Curve[^1] : Math.Max(50, (int)(2_000.0 * history.Lived.Count / history.Outcomes));
        var learnt = split.Examples(size);
        var (_, gate, _) = Trainer.Fit(learnt, columns);
        var tellers = (IReadOnlyList<Teller>)[.. Teller.Untaught(columns), .. Teller.Taught(learnt, columns), .. Teller.Knowing(history, split)];
        var standings = tellers.Select(teller => Evaluation.StandingOf(teller, split, needs)).ToList();
        var curve = Curve.Where(count => count <= split.Learnt.Count).Select(count => Evaluation.PointOf(split, columns, count)).ToList();
        var small = Small.Where(count => count * 2 <= split.Learnt.Count).Select(count => Evaluation.ResampledOf(split, columns, needs, count)).ToList();

        card.Paragraph($"## {char.ToUpperInvariant(history.Family.Title[0])}{history.Family.Title[1..]}");
        card.Say($"{history.Outcomes:#,0} outcomes were drawn. {history.Lived.Count:#,0} teach something, {100.0 * history.Lived.Count(one => one.Case.Example.Worked) / Math.Max(1, history.Lived.Count):0} % of them right the first time; most of the others: {string.Join(", ", history.WhyLeftOut)}.");
        card.Say($"Learnt from {learnt.Count:#,0}; told {split.HeldOut.Count:#,0} that were held out; {needs.Count:#,0} needs with {(needs.Count == 0 ? 0 : needs.Average(need => need.Offers.Count)):0.0} parts on the mean were put in order. {gate.Reason}\n");
        if (needs.Count == 0 || split.HeldOut.Count == 0) return card.Text;

        card.Table(
            ["told by", "expected loss", "log-loss", "AUC", "calibration error", "by chance alone", "NDCG@5", "regret"],
            standings.Select(one => (IReadOnlyList<string>)[one.Name, ModelCard.Figure(one.Expected), ModelCard.Figure(one.LogLoss), ModelCard.Figure(one.Auc), ModelCard.Figure(one.CalibrationError), ModelCard.Figure(one.CalibrationFloor), one.Ndcg.ToString(), one.Regret.ToString()]));
        card.Paragraph(Winners(standings));
        card.Paragraph(Order(standings));
        card.Paragraph("Calibration of trained weights:");
        card.Calibration([.. split.HeldOut.Select(one => new HeldOut(tellers.First(teller => teller.Name == Teller.Trained).ScoreOf(one.Case), one.Case.Example.Worked))]);

        card.Paragraph("Expected loss by how many outcomes were learnt from; the last column says whether trained weights would be taken:");
        string[] names = [.. curve[0].Expected.Keys];
        card.Table(["outcomes", .. names, "taken"], curve.Select(point => (IReadOnlyList<string>)[Invariant($"{point.Examples:#,0}"), .. names.Select(name => ModelCard.Figure(point.Expected[name])), point.IsAdopted ? "yes" : "no"]));

        card.Paragraph(Invariant($"NDCG@5 of what training hands out, gate and all, less that of hand-set weights, over {Evaluation.Resamples} samples (where a sample has under {Trainer.LeastOutcomes / 5} of a kind, `train` would leave the weights as they are, and its figure be 0):"));
        card.Table(["outcomes", "mean gain", "worst", "trained ones taken"], small.Select(one => (IReadOnlyList<string>)[Invariant($"{one.Examples}"), Signed(one.Mean), Signed(one.Worst), Invariant($"{one.Adopted} of {Evaluation.Resamples}")]));

        Unknowns(card, history, needs, catalogue, columns, learnt);
        Propensity(card, needs, tellers);
        Aims(card, standings, small, split, learnt.Count);
        return card.Text;
    }

    private static void Unknowns(ModelCard card, History history, IReadOnlyList<OfferedNeed> needs, Catalogue catalogue, FeatureColumns columns, IReadOnlyList<Example> learnt)
    {
        var asked = needs.Take(HalfKnownNeeds).ToList();
        var none = new Training(learnt.Count, learnt[0].On, learnt[^1].On, new Dictionary<string, double>());
        card.Paragraph(Invariant($"With half of what the plate says hidden ({asked.Count} needs), by the ranking itself, what is unknown averaged over known machines:"));
        card.Table(["told by", "NDCG@5", "told of the first, mean", "right by the truth, mean"], new[] { (Teller.Rescaled, WeightsOrigin.Rescaled, Model.Rescaled(learnt, columns)), (Teller.Trained, WeightsOrigin.Trained, Model.Trained(learnt, columns)) }.Select(one =>
        {
            var half = HalfKnown.Of(history, asked, catalogue, columns.WeightsOf(one.Item2, one.Item3.Costs, one.Item3.Records, learnt[^1].On, none));
            return (IReadOnlyList<string>)[one.Item1, half.Ndcg.ToString(), ModelCard.Figure(half.Told), ModelCard.Figure(half.Right)];
        }));
    }

    private static void Propensity(ModelCard card, IReadOnlyList<OfferedNeed> needs, IReadOnlyList<Teller> tellers)
    {
        card.Paragraph("What the first part would be right first time, by the records of those who put it in anyway, each weighed by one over how often parts of its place in the hand-set list are put in. What people know and no record tells is in no such weight: the skew is measured, and not taken out. The truth beside it is of all needs.");
        card.Table(["first by", "right by records", "rests on as many as", "right by the truth"], tellers.Where(teller => teller.Name is "hand-set weights" or Teller.Trained or Teller.Trees).Select(teller =>
        {
            var value = SelfNormalised.Of(needs, teller.ScoreOf);
            return (IReadOnlyList<string>)[teller.Name, ModelCard.Figure(value.Value), Invariant($"{value.Effective:0}"), ModelCard.Figure(value.Truth)];
        }));
    }

    private static string Winners(List<Standing> standings)
    {
        var fair = standings.TakeWhile(one => one.Name != Teller.Ceiling).ToList();
        var (byLoss, byOrder) = (fair.Where(one => one.Expected is not null).MinBy(one => one.Expected)!, fair.MaxBy(one => one.Ndcg.Mean)!);
        return $"Of those who know no more than records, the least is lost by: {byLoss.Name}. The best order is by: {byOrder.Name}.";
    }

    /// <summary>The gate looks at the order of what was put in; what weights do to whole lists is said here.</summary>
    private static string Order(List<Standing> standings)
    {
        var (rescaled, trained) = (standings.First(one => one.Name == Teller.Rescaled).Ndcg, standings.First(one => one.Name == Teller.Trained).Ndcg);
        return Invariant($"Whole lists are in {(trained.Mean >= rescaled.Mean ? "no worse" : "a worse")} order by trained weights than by hand-set ones: NDCG@5 {trained.Mean:0.0000} against {rescaled.Mean:0.0000}.");
    }

    private static void Aims(ModelCard card, List<Standing> standings, List<Resampled> small, Split split, int learnt)
    {
        var (rescaled, trained, trees, ceiling, unheld, ofOthers) = (Named(Teller.Rescaled), Named(Teller.Trained), Named(Teller.Trees), Named(Teller.Ceiling), Named(Teller.Unheld), Named(Teller.CeilingOfOthers));
        var (closed, closedUnheld) = (Closed(trained, ceiling), Closed(unheld, ceiling));
        var whyOpen = closedUnheld > closed + 0.05
            ? Invariant($"Costs are held near hand-set ones, rescaled (decision 8), and where these tell little trained ones move too little: with nothing held {100 * closedUnheld:0} % is closed.")
            : Invariant($"With nothing held it is {100 * closedUnheld:0} %, so how costs are held is not why: the ceiling knows pairs of parts again by their figures, as the same pairs fail again and again here, and costs that add up cannot.");
        var toOthers = ofOthers.Expected < rescaled.Expected
            ? Invariant($"Of the way to what the ceiling tells of old parts that it has not seen {100 * Closed(trained, ofOthers):0} % is closed.")
            : "Of old parts that it has not seen the ceiling tells less than rescaled hand-set weights do: it is none there.";
        var (isNdcgMet, isClosed, isSafe, isCalibrated) = (trained.Ndcg.Mean >= trees.Ndcg.Mean * 0.99, closed >= 0.9, small.All(one => one.Mean >= -0.002), trained.CalibrationError <= 0.03);
        card.Paragraph(Invariant($"Aims that were set for 20,000 outcomes, here with {learnt:#,0}:"));
        Aim(isNdcgMet, $"NDCG@5 not under that of boosted trees by more than 1 %: {trained.Ndcg.Mean:0.0000} against {trees.Ndcg.Mean:0.0000}.{(isNdcgMet ? string.Empty : Invariant($" With nothing held it is {unheld.Ndcg.Mean:0.0000}, by hand-set weights {rescaled.Ndcg.Mean:0.0000}: they order these lists badly, and trained weights are held near them."))}");
        Aim(isClosed, $"At least 90 % of the way from rescaled hand-set weights to the ceiling of the columns, in expected loss: {100 * closed:0} %.{(isClosed ? string.Empty : $" {whyOpen}")} {toOthers}");
        Aim(isSafe, $"No mean loss of more than 0.002 in NDCG@5 against hand-set weights at {string.Join(", ", small.Select(one => one.Examples))} outcomes: the worst mean is {Signed(small.Min(one => one.Mean))}, the worst sample {Signed(small.Min(one => one.Worst))}.{(isSafe ? string.Empty : " The gate judges by what was put in, which is no fair sample of what whole lists hold.")}");
        Aim(isCalibrated && split.HeldOut.Count >= 5_000, $"Calibration error at most 0.03 on at least 5,000: {trained.CalibrationError:0.0000} on {split.HeldOut.Count:#,0}.{(isCalibrated ? split.HeldOut.Count >= 5_000 ? string.Empty : " The error is small enough, the number is not: so few were held out." : Invariant($" By chance alone it would be {trained.CalibrationFloor:0.0000}; what was held out is of later months and other places, which are harder than what was learnt from."))}");
        card.Paragraph(string.Empty);

        double? Closed(Standing of, Standing to) => (rescaled.Expected - of.Expected) / (rescaled.Expected - to.Expected);

        Standing Named(string name) => standings.First(one => one.Name == name);

        void Aim(bool isMet, FormattableString what) => card.Say($"- {(isMet ? "Met" : "**Missed**")}: {Invariant(what)}");
    }

    private static string Signed(double value) => value.ToString("+0.0000;-0.0000;0.0000", System.Globalization.CultureInfo.InvariantCulture);
}
