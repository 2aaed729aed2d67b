using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Tests;

/// <summary>The weights file: what it says, and what is said of a bad one.</summary>
public sealed class WeightsFileTests
{
    private static readonly Family Family = Gaskets.Family();

    public static TheoryData<string> Kinds => [.. Families.All.Select(family => family.Kind)];

    [Property]
    public Property What_is_written_reads_back_to_the_last_bit_on_any_machine() => Prop.ForAll(
        Cases.WeightsFor(Family).Zip(Gen.Elements("en-US", "de-DE")).ToArbitrary(),
        given => In(given.Item2, () => IsSame(Read(WeightsFile.Write(given.Item1)), given.Item1)));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Hand_set_weights_of_every_family_read_back(string kind)
    {
        var family = Families.Find(kind)!;
        var (weights, complaints) = WeightsFile.Read(WeightsFile.Write(Weights.HandSet(family)), family);
        complaints.ShouldBeEmpty();
        IsSame(weights!, Weights.HandSet(family));
        weights!.IsHandSet.ShouldBeTrue();
    }

    [Fact]
    public void The_example_of_the_page_reads_and_what_it_leaves_out_is_default()
    {
        var page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "weights.md"));
        var weights = Read(page.Split("```json\n")[1].Split("```")[0]);

        // The figures stand in the page; the last two are what Hardness and Colour declare.
        weights.Origin.ShouldBe(WeightsOrigin.Trained);
        weights.MadeOn.ShouldBe(new DateOnly(2026, 3, 14));
        weights.Intercept.ShouldBe(3.1);
        weights.Aspects["bore"].ShouldBe(new(2.4, 0.8, 1.5));
        weights.Aspects["thickness"].ShouldBe(new(new ShortfallCurve(0, 0, 0.1, 0.2, 0.3, 0.6), 0, 0.4));
        weights.Pairs.Single(pair => pair.Pair.Name == "bore+hardness").Cost.ShouldBe(0.5);
        weights.Records.ShouldBe(new Dictionary<string, double> { ["QX-17"] = 0.31 });
        weights.Training!.Outcomes.ShouldBe(2400);
        weights.Training.Calibration.ShouldBe([new(0.71, 0.69, 240)]);
        weights.Aspects["hardness"].ShouldBe(new(2, 0.1, 0.7));
        weights.Aspects["colour"].ShouldBe(new(0.4, 0, 0));
    }

    [Fact]
    public void A_record_is_found_by_the_number_that_ranking_has_however_it_is_written()
    {
        var written = WeightsFile.Write(Weights.Of(Family, new(WeightsOrigin.Trained, 3) { Records = new Dictionary<string, double> { ["QX-17"] = 0.25, ["QX 17"] = 0.5, ["Z-1"] = 0.125 } }));
        var (weights, complaints) = WeightsFile.Read(written, Family, number => string.Concat(number.Where(char.IsLetterOrDigit)));
        complaints.ShouldBeEmpty();
        weights!.Records.ShouldBe(new Dictionary<string, double> { ["QX17"] = 0.5, ["Z1"] = 0.125 }, ignoreOrder: true);
        Read(written).Records.Count.ShouldBe(3);
    }

    /// <summary>Files from before there was a word for it say "trained", and by a figure that they are not.</summary>
    [Theory]
    [InlineData("rescaled", "", WeightsOrigin.Rescaled)]
    [InlineData("trained", "\"isTrained\": 0, ", WeightsOrigin.Rescaled)]
    [InlineData("trained", "\"isTrained\": 1, ", WeightsOrigin.Trained)]
    [InlineData("trained", "", WeightsOrigin.Trained)]
    public void Weights_that_outcomes_only_brought_to_scale_have_an_origin_of_their_own(string origin, string figure, WeightsOrigin read)
    {
        var weights = Read($$"""{ "version": 2, "kind": "gasket", "origin": "{{origin}}", "intercept": 1, "training": { "outcomes": 60, "from": "2026-01-02", "to": "2026-01-02", "figures": { {{figure}}"gain": 0.1 } } }""");
        weights.Origin.ShouldBe(read);
        weights.IsHandSet.ShouldBeFalse();
        weights.Training!.Figures.Keys.ShouldBe(["gain"]);
        Read(WeightsFile.Write(weights)).Origin.ShouldBe(read);
    }

    /// <summary>The names are those of the family's declaration: hardness was toughness once, and nobody smells at gaskets any more.</summary>
    [Fact]
    public void A_question_that_was_renamed_keeps_its_cost_and_one_that_is_gone_costs_nothing()
    {
        const string before = """{ "version": 2, "kind": "gasket", "origin": "trained", "intercept": 3, "aspects": { "smell": { "shortfall": 9, "effort": 9, "unknown": 9 }, "toughness": { "shortfall": 4, "effort": 0.5, "unknown": 0.2 }MORE } }""";

        var weights = Read(before.Replace("MORE", "", StringComparison.Ordinal));
        weights.Aspects["hardness"].ShouldBe(new(4, 0.5, 0.2));
        weights.Aspects.Keys.ShouldBe(Family.Aspects.Select(aspect => aspect.Name));

        Read(before.Replace("MORE", """, "hardness": { "shortfall": 7, "effort": 1, "unknown": 1 }""", StringComparison.Ordinal)).Aspects["hardness"].ShouldBe(new(7, 1, 1), "the new name counts where both are there");
        Read(before.Replace("MORE", """, "firmness": { "shortfall": 7, "effort": 1, "unknown": 1 }""", StringComparison.Ordinal)).Aspects["hardness"].ShouldBe(new(4, 0.5, 0.2), "of two old names the first counts");
        Complaints(before.Replace("9, \"effort\"", "-9, \"effort\"", StringComparison.Ordinal)).ShouldNotBeEmpty("what is not a cost is told even there");
    }

    /// <summary>Lines are only ever added to the list: it is what files on other people's disks name.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_question_that_weights_were_ever_kept_for_is_still_read(string kind)
    {
        var family = Families.Find(kind)!;
        var kept = File.ReadAllLines(Path.Combine(Repository.Root, "tests", "PartsMatch.Ranking.Tests", "kept-questions.csv")).Select(line => line.Split(',')).Where(line => line[0] == kind).Select(line => line[1]).ToList();
        var asked = family.Aspects.Select(aspect => aspect.Name).ToList();

        asked.Except(kept).ShouldBeEmpty("add what is asked now to kept-questions.csv");
        kept.Except([.. asked, .. family.FormerAspects.Keys]).ShouldBeEmpty("say in the family's FormerAspects what became of it");
        family.FormerAspects.Values.OfType<string>().Except(asked).ShouldBeEmpty();
        family.FormerAspects.Keys.Intersect(asked).ShouldBeEmpty();
    }

    [Fact]
    public void Everything_that_is_wrong_is_said_at_once()
    {
        var complaints = Complaints("""
            {
              "version": 3, "kind": "motor", "origin": "guessed", "madeOn": "14.3.2026", "intercept": 21, "note": "x",
              "aspects": {
                "bore": { "shortfall": -0.1, "effort": "1", "unknown": 1e999 },
                "thickness": { "shortfall": 1, "effort": 100.5, "effort": 1 },
                "gloss": { "shortfall": 1 },
                "colour": 3
              }
            }
            """);

        complaints.ShouldBe(
        [
            "UNKNOWN_FIELD note: note: there is no such name here; the names are version, kind, origin, madeOn, intercept, aspects, pairs, records, training.",
            "UNREADABLE version: version must be 1 or 2, the versions that this program reads, not 3.",
            "UNREADABLE kind: kind must be “gasket”: weights of one kind of part say nothing of another, not \"motor\".",
            "UNREADABLE origin: origin must be “hand-set”, “rescaled” or “trained”, not \"guessed\".",
            "UNREADABLE madeOn: madeOn must be a day such as “2026-03-14”, not \"14.3.2026\".",
            "UNREADABLE intercept: intercept must be a number from -20 to 20, not 21.",
            "UNKNOWN_FIELD aspects.gloss: aspects.gloss: there is no such name here; the names are bore, thickness, hardness, colour.",
            "UNREADABLE aspects.bore.shortfall: aspects.bore.shortfall must be a number from 0 to 100, not -0.1.",
            "UNREADABLE aspects.bore.effort: aspects.bore.effort must be a number from 0 to 100, not \"1\".",
            "UNREADABLE aspects.bore.unknown: aspects.bore.unknown must be a number from 0 to 100, not 1e999.",
            "GIVEN_TWICE aspects.thickness.effort: aspects.thickness.effort is given twice; give it once.",
            "UNREADABLE aspects.thickness.effort: aspects.thickness.effort must be a number from 0 to 100, not 100.5.",
            "EMPTY aspects.thickness.unknown: aspects.thickness.unknown is missing.",
            "UNREADABLE aspects.colour: aspects.colour must be an object in braces, not 3.",
        ]);
    }

    [Fact]
    public void What_is_wrong_in_curves_pairs_records_and_training_is_said_with_its_place() => Complaints("""
        {
          "version": 2, "kind": "gasket", "origin": "trained", "intercept": 0,
          "aspects": { "bore": { "shortfall": [0, 1, -1, 1, 1, 1], "effort": 0, "unknown": 0 }, "colour": { "shortfall": [1, 2], "effort": 0, "unknown": 0 } },
          "pairs": { "bore+hardness": -1, "bore+gloss": 1 },
          "records": { "Q 1/4": "much" },
          "training": { "outcomes": 0.5, "from": "2026-01-01", "figures": { "logLoss": null } }
        }
        """).ShouldBe(
        [
            "UNREADABLE aspects.bore.shortfall[2]: aspects.bore.shortfall[2] must be a number from 0 to 100, not -1.",
            "UNREADABLE aspects.colour.shortfall: aspects.colour.shortfall must be one number, or 6 in brackets, not [1, 2].",
            "UNKNOWN_FIELD pairs.bore+gloss: pairs.bore+gloss: there is no such name here; the names are bore+hardness, thickness+colour.",
            "UNREADABLE pairs.bore+hardness: pairs.bore+hardness must be a number from 0 to 100, not -1.",
            "UNREADABLE records.Q 1/4: records.Q 1/4 must be a number from 0 to 100, not \"much\".",
            "UNREADABLE training.outcomes: training.outcomes must be a whole number, 0 or more, not 0.5.",
            "EMPTY training.to: training.to is missing.",
            "UNREADABLE training.figures.logLoss: training.figures.logLoss must be a number, not null.",
        ]);

    [Fact]
    public void What_was_told_beside_what_happened_is_kept_with_a_training_and_may_be_left_out()
    {
        List<CalibrationPoint> points = [new(0.5, 0.25, 40), new(0.97, 1, 41)];
        Calibration(points).ShouldBe(points);
        Calibration([]).ShouldBeEmpty();

        static IReadOnlyList<CalibrationPoint> Calibration(IReadOnlyList<CalibrationPoint> points)
        {
            var training = new Training(81, new(2026, 1, 2), new(2026, 3, 4), new Dictionary<string, double>()) { Calibration = points };
            return Read(WeightsFile.Write(Weights.Of(Family, new(WeightsOrigin.Trained, 3) { Training = training }))).Training!.Calibration;
        }
    }

    [Theory]
    [InlineData("{}", "UNREADABLE training.calibration: training.calibration must be a list in brackets, not {}.")]
    [InlineData("[1]", "UNREADABLE training.calibration[0]: training.calibration[0] must be an object in braces, not 1.")]
    [InlineData("[{\"told\": 1.01, \"happened\": -0.01, \"outcomes\": 0}]", "UNREADABLE training.calibration[0].told: training.calibration[0].told must be a number from 0 to 1, not 1.01. | UNREADABLE training.calibration[0].happened: training.calibration[0].happened must be a number from 0 to 1, not -0.01. | UNREADABLE training.calibration[0].outcomes: training.calibration[0].outcomes must be a whole number, 1 or more, not 0.")]
    [InlineData("[{\"told\": 0, \"happened\": 1}]", "EMPTY training.calibration[0].outcomes: training.calibration[0].outcomes is missing.")]
    public void A_calibration_that_is_none_is_refused(string calibration, string said) =>
        string.Join(" | ", Complaints($$"""{ "version": 2, "kind": "gasket", "origin": "trained", "intercept": 0, "training": { "outcomes": 1, "from": "2026-01-02", "to": "2026-01-02", "figures": {}, "calibration": {{calibration}} } }""")).ShouldBe(said);

    [Theory]
    [InlineData(" ", "EMPTY : The weights file is empty; docs/weights.md shows one.")]
    [InlineData("[]", "UNREADABLE : The weights file must be an object in braces, not [].")]
    [InlineData("{\n  \"version\": 1,}", "UNREADABLE : The weights file is not JSON: it cannot be read from line 2, byte 16 on.")]
    [InlineData("{}", "EMPTY version: version is missing. | EMPTY kind: kind is missing. | EMPTY origin: origin is missing. | EMPTY intercept: intercept is missing.")]
    public void A_text_that_is_no_weights_file_is_refused(string text, string said) => string.Join(" | ", Complaints(text)).ShouldBe(said);

    [Theory]
    [InlineData("1.0")]
    [InlineData("\"1\"")]
    [InlineData("null")]
    [InlineData("1e99")]
    public void Only_versions_1_and_2_are_read(string version) =>
        Complaints($$"""{ "version": {{version}}, "kind": "gasket", "origin": "trained", "intercept": 0 }""")
            .ShouldBe([$"UNREADABLE version: version must be 1 or 2, the versions that this program reads, not {version}."]);

    [Theory]
    [InlineData("0", "100", true)]
    [InlineData("-0.000001", "0", false)]
    [InlineData("0", "100.000001", false)]
    public void Weights_lie_from_0_to_100_edges_included(string shortfall, string effort, bool isRead) =>
        Complaints($$"""
            {
              "version": 1, "kind": "gasket", "origin": "trained", "intercept": -20,
              "aspects": { "bore": { "shortfall": {{shortfall}}, "effort": {{effort}}, "unknown": 0 } }
            }
            """).Count.ShouldBe(isRead ? 0 : 1);

    [Property]
    public Property No_text_whatever_throws() => Prop.ForAll(
        Gen.Choose(0, 400).Zip(Gen.Elements("{", "}", "\"", "null", "1e5", "[", ",", "\ud800", "\\ud800", "\0")).ToArbitrary(),
        given =>
        {
            var text = WeightsFile.Write(Weights.HandSet(Family));
            var at = Math.Min(given.Item1, text.Length);
            var (weights, complaints) = WeightsFile.Read(text[..at] + given.Item2 + text[at..], Family);
            (weights is null).ShouldBe(complaints.Count > 0);
        });

    [Fact]
    public void The_id_follows_what_decides_a_ranking_and_nothing_else()
    {
        var one = Weights.Of(Family, new(WeightsOrigin.HandSet, 3));
        Weights.Of(Gaskets.Family(), new(WeightsOrigin.Trained, 3) { MadeOn = new DateOnly(2026, 3, 14), Aspects = one.Aspects }).Id.ShouldBe(one.Id);
        Weights.Of(Family, new(WeightsOrigin.HandSet, 3.0000001)).Id.ShouldNotBe(one.Id);
        Weights.Of(Family, new(WeightsOrigin.HandSet, 3) { Aspects = new Dictionary<string, AspectCost> { ["colour"] = new(0.4, 0.001, 0) } }).Id.ShouldNotBe(one.Id);
        Weights.Of(Family, new(WeightsOrigin.HandSet, 3) { Pairs = new Dictionary<string, double> { ["bore+hardness"] = 0.1 } }).Id.ShouldNotBe(one.Id);
        Weights.Of(Family, new(WeightsOrigin.HandSet, 3) { Records = new Dictionary<string, double> { ["Q-1"] = 0.1 } }).Id.ShouldNotBe(one.Id);
    }

    [Fact]
    public void Weights_made_in_code_are_held_to_the_same_ranges()
    {
        Should.Throw<ArgumentException>(() => Weights.Of(Family, new(WeightsOrigin.Trained, double.NaN)));
        Should.Throw<ArgumentException>(() => Weights.Of(Family, new(WeightsOrigin.Trained, 0) { Aspects = new Dictionary<string, AspectCost> { ["bore"] = new(-1, 0, 0) } }));
        Should.Throw<ArgumentException>(() => Weights.Of(Family, new(WeightsOrigin.Trained, 0) { Aspects = new Dictionary<string, AspectCost> { ["gloss"] = new(1, 0, 0) } }));
        Should.Throw<ArgumentException>(() => Weights.Of(Family, new(WeightsOrigin.Trained, 0) { Pairs = new Dictionary<string, double> { ["bore+gloss"] = 1 } }));
        Should.Throw<ArgumentException>(() => Weights.Of(Family, new(WeightsOrigin.Trained, 0) { Records = new Dictionary<string, double> { ["Q-1"] = -1 } }));
    }

    private static Weights Read(string text)
    {
        var (weights, complaints) = WeightsFile.Read(text, Family);
        complaints.ShouldBeEmpty();
        return weights.ShouldNotBeNull();
    }

    private static List<string> Complaints(string text)
    {
        var (weights, complaints) = WeightsFile.Read(text, Family);
        (weights is null).ShouldBe(complaints.Count > 0);
        return [.. complaints.Select(complaint => $"{complaint.Code} {complaint.Field}: {complaint.Message}")];
    }

    private static void IsSame(Weights one, Weights other)
    {
        (one.Kind, one.Origin, one.MadeOn, one.Intercept, one.Id).ShouldBe((other.Kind, other.Origin, other.MadeOn, other.Intercept, other.Id));
        one.Aspects.ShouldBe(other.Aspects, ignoreOrder: true);
        one.Pairs.ShouldBe(other.Pairs);
        one.Records.ShouldBe(other.Records, ignoreOrder: true);
        (one.Training?.Outcomes, one.Training?.From, one.Training?.To).ShouldBe((other.Training?.Outcomes, other.Training?.From, other.Training?.To));
        (one.Training?.Figures ?? new Dictionary<string, double>()).ShouldBe(other.Training?.Figures ?? new Dictionary<string, double>(), ignoreOrder: true);
    }

    private static void In(string culture, Action act)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            act();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
