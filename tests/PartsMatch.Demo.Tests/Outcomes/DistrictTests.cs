using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Writing;

namespace PartsMatch.Demo.Tests.Outcomes;

/// <summary>The invented outcomes: the same every time, and as awkward as records are.</summary>
public sealed class DistrictTests
{
    private static readonly FamilyParts Contactors = Districts.Of("contactor").Made;

    public static TheoryData<string> Kinds => [.. Districts.Kinds];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void They_are_the_same_every_time(string kind)
    {
        var first = Districts.Of(kind);
        DemoCatalogue.DistrictOf(first.Made).Outcomes(1_000).Select(TextOf).ShouldBe(first.District.Outcomes(1_000).Select(TextOf));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void There_are_as_many_as_said_each_with_its_own_id_the_oldest_first(string kind)
    {
        var all = Districts.Of(kind).Outcomes;
        all.Count.ShouldBeGreaterThanOrEqualTo(kind == "motor" ? 30_000 : 2_000);
        all.Select(outcome => outcome.Id).Distinct().Count().ShouldBe(all.Count);
        all.Zip(all.Skip(1)).ShouldAllBe(two => two.First.On <= two.Second.On);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Old_and_new_parts_are_parts_of_the_catalogue_and_what_is_put_in_is_still_made(string kind)
    {
        var parts = Districts.Of(kind).Made.Parts.ToDictionary(part => part.Number);
        Districts.Of(kind).Outcomes.ShouldAllBe(outcome => parts.ContainsKey(outcome.Old) && !parts[outcome.New].IsDiscontinued && outcome.Old != outcome.New);
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_reason_is_given_where_it_was_not_right_the_first_time_and_only_there(string kind) =>
        Districts.Of(kind).Outcomes.ShouldAllBe(outcome => (outcome.Result == "right first time") == (outcome.Reason.Length == 0));

    /// <summary>Of the less likely half and of the likelier one by the hidden truth as many are right as it says: within four standard errors.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void They_happen_as_often_as_the_truth_has_it(string kind)
    {
        var sorted = Districts.Of(kind).Outcomes.OrderBy(outcome => outcome.Right).ToList();
        foreach (var half in sorted.Chunk((sorted.Count + 1) / 2))
        {
            half.Sum(outcome => outcome.Result == "right first time" ? 1.0 : 0).ShouldBe(half.Sum(outcome => outcome.Right), 4 * Math.Sqrt(half.Sum(outcome => outcome.Right * (1 - outcome.Right))));
        }
    }

    /// <summary>The same part for the same old one at the same place does worse from September 2025 on, on any day as on any other, and no worse before.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Times_get_harder_once_and_stay_so(string kind)
    {
        var (district, some) = (Districts.Of(kind).District, Districts.Of(kind).Outcomes.Take(300).ToList());
        foreach (var outcome in some)
        {
            On(2022, 1, 10).ShouldBe(On(2025, 8, 31));
            On(2025, 9, 1).ShouldBeLessThan(On(2025, 8, 31));
            On(2026, 10, 30).ShouldBe(On(2025, 9, 1));

            double On(int year, int month, int day) => district.Right(outcome.Old, outcome.New, outcome.Place, new(year, month, day));
        }
    }

    /// <summary>Of thirty thousand outcomes of each family: parts of lesser quality come back more often than the others by more than four standard errors.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Parts_of_lesser_quality_come_back_more_often(string kind)
    {
        var district = Districts.Of(kind).District;
        var outcomes = district.Outcomes(30_000).ToLookup(outcome => district.QualityOf(outcome.New) >= 0.2);
        var (lesser, others) = (CameBack(outcomes[true]), CameBack(outcomes[false]));
        (lesser.Share - others.Share).ShouldBeGreaterThan(4 * Math.Sqrt(lesser.Variance + others.Variance));

        static (double Share, double Variance) CameBack(IEnumerable<DemoOutcome> some)
        {
            var (share, count) = (some.Average(outcome => outcome.Result == "came back" ? 1.0 : 0), some.Count());
            return (share, share * (1 - share) / count);
        }
    }

    /// <summary>People mostly put in what looks like the old part: a part drawn blindly would differ from it in poles or coil most of the time.</summary>
    [Fact]
    public void What_is_put_in_mostly_looks_like_the_old_part()
    {
        var parts = Contactors.Parts.ToDictionary(part => part.Number, part => new PartFigures(Contactors.Family, part));
        var poles = Contactors.Family.Shape.Fields.Index().Single(field => field.Item.Name == "poleCount").Index;
        Districts.Of("contactor").Outcomes.Count(outcome => parts[outcome.Old].TextAt(poles) == parts[outcome.New].TextAt(poles)).ShouldBeGreaterThan(1_700);
    }

    /// <summary>A softened ramp, worked by hand: ln 2 at the threshold, about the distance beyond it far above, nothing far below.</summary>
    [Theory]
    [InlineData(0.2, 0.6931)]
    [InlineData(1.2, 10.0000)]
    [InlineData(-0.8, 0.0000)]
    public void A_hidden_rule_has_a_threshold_without_an_edge(double off, double hazard)
    {
        var part = new PartFigures(Contactors.Family, Contactors.Parts[0]);
        new HiddenRule((_, _, _) => off, Threshold: 0.2, Softness: 0.1, Hazard: 1, IsRework: false)
            .HazardOf(part, part, new Place("a place", 0, 30, IsWet: false, Harshness: 1, Skill: 1)).ShouldBe(hazard, 0.0001);
    }

    [Fact]
    public void The_table_to_import_has_a_row_an_outcome_and_the_site_in_one_cell()
    {
        var path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            OutcomeFile.Write(new DemoCatalogue([Contactors], []), path);
            var (lines, first) = (File.ReadAllLines(path), Districts.Of("contactor").Outcomes[0]);
            lines[0].ShouldBe("id,kind,on,place,oldPart,plate,site,part,result,reason,note,corrects");
            lines.Length.ShouldBe(2_001);
            lines[1].ShouldStartWith($"contactor-00001,contactor,{first.On:yyyy-MM-dd},{first.Place},{first.Old},,");
            lines.Skip(1).Count(line => line.Contains("controlVolts=", StringComparison.Ordinal)).ShouldBeGreaterThan(1_900);
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static string TextOf(DemoOutcome outcome) =>
        $"{outcome.Id} {outcome.On:O} {outcome.Place} {outcome.Old} {outcome.New} {outcome.Result} {outcome.Reason} {string.Join(';', outcome.Site)}";
}
