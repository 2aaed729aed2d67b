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
        weights.Aspects["thickness"].ShouldBe(new(0.6, 0, 0.4));
        weights.Aspects["hardness"].ShouldBe(new(2, 0.1, 0.7));
        weights.Aspects["colour"].ShouldBe(new(0.4, 0, 0));
    }

    [Fact]
    public void Everything_that_is_wrong_is_said_at_once()
    {
        var complaints = Complaints("""
            {
              "version": 2, "kind": "motor", "origin": "guessed", "madeOn": "14.3.2026", "intercept": 21, "note": "x",
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
            "UNKNOWN_FIELD note: note: there is no such name here; the names are version, kind, origin, madeOn, intercept, aspects.",
            "UNREADABLE version: version must be 1, the version that this program reads, not 2.",
            "UNREADABLE kind: kind must be “gasket”: weights of one kind of part say nothing of another, not \"motor\".",
            "UNREADABLE origin: origin must be “hand-set” or “trained”, not \"guessed\".",
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
    public void Only_version_1_is_read(string version) =>
        Complaints($$"""{ "version": {{version}}, "kind": "gasket", "origin": "trained", "intercept": 0 }""")
            .ShouldBe([$"UNREADABLE version: version must be 1, the version that this program reads, not {version}."]);

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
        var one = Weights.Of(Family, WeightsOrigin.HandSet, null, 3, new Dictionary<string, AspectWeight>());
        Weights.Of(Gaskets.Family(), WeightsOrigin.Trained, new DateOnly(2026, 3, 14), 3, one.Aspects).Id.ShouldBe(one.Id);
        Weights.Of(Family, WeightsOrigin.HandSet, null, 3.0000001, one.Aspects).Id.ShouldNotBe(one.Id);
        Weights.Of(Family, WeightsOrigin.HandSet, null, 3, new Dictionary<string, AspectWeight> { ["colour"] = new(0.4, 0.001, 0) }).Id.ShouldNotBe(one.Id);
    }

    [Fact]
    public void Weights_made_in_code_are_held_to_the_same_ranges()
    {
        Should.Throw<ArgumentException>(() => Weights.Of(Family, WeightsOrigin.Trained, null, double.NaN, new Dictionary<string, AspectWeight>()));
        Should.Throw<ArgumentException>(() => Weights.Of(Family, WeightsOrigin.Trained, null, 0, new Dictionary<string, AspectWeight> { ["bore"] = new(-1, 0, 0) }));
        Should.Throw<ArgumentException>(() => Weights.Of(Family, WeightsOrigin.Trained, null, 0, new Dictionary<string, AspectWeight> { ["gloss"] = new(1, 0, 0) }));
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
