using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Writing;

namespace PartsMatch.Demo.Tests.Outcomes;

/// <summary>The invented outcomes: the same every time, and as awkward as records are.</summary>
public sealed class DistrictTests
{
    private static readonly FamilyParts Contactors = DemoCatalogue.Make().Families.Single(family => family.Family.Kind == "contactor");
    private static readonly IReadOnlyList<DemoOutcome> All = DemoCatalogue.OutcomesOf(Contactors);

    [Fact]
    public void They_are_the_same_every_time() =>
        DemoCatalogue.OutcomesOf(Contactors).Select(TextOf).ShouldBe(All.Select(TextOf));

    [Fact]
    public void There_are_as_many_as_said_each_with_its_own_id_the_oldest_first()
    {
        All.Count.ShouldBe(2_000);
        All.Select(outcome => outcome.Id).ShouldBeUnique();
        All.Select(outcome => outcome.On).ShouldBeInOrder();
    }

    [Fact]
    public void Old_and_new_parts_are_parts_of_the_catalogue_and_what_is_put_in_is_still_made()
    {
        var parts = Contactors.Parts.ToDictionary(part => part.Number);
        All.ShouldAllBe(outcome => parts.ContainsKey(outcome.Old) && !parts[outcome.New].IsDiscontinued && outcome.Old != outcome.New);
    }

    [Fact]
    public void A_reason_is_given_where_it_was_not_right_the_first_time_and_only_there() =>
        All.ShouldAllBe(outcome => (outcome.Result == "right first time") == (outcome.Reason.Length == 0));

    /// <summary>Of those that the hidden truth gives 60 to 80 % about as many are right: within four standard errors.</summary>
    [Fact]
    public void They_happen_as_often_as_the_truth_has_it()
    {
        var likely = All.Where(outcome => outcome.Right is > 0.6 and < 0.8).ToList();
        likely.Count.ShouldBeGreaterThan(100);
        var (told, happened) = (likely.Average(outcome => outcome.Right), likely.Average(outcome => outcome.Result == "right first time" ? 1.0 : 0));
        happened.ShouldBe(told, 4 * Math.Sqrt(0.25 / likely.Count));
    }

    /// <summary>People mostly put in what looks like the old part: a part drawn blindly would differ from it in poles or coil most of the time.</summary>
    [Fact]
    public void What_is_put_in_mostly_looks_like_the_old_part()
    {
        var parts = Contactors.Parts.ToDictionary(part => part.Number, part => new PartFigures(Contactors.Family, part));
        var poles = Contactors.Family.Shape.Fields.Index().Single(field => field.Item.Name == "poleCount").Index;
        All.Count(outcome => parts[outcome.Old].TextAt(poles) == parts[outcome.New].TextAt(poles)).ShouldBeGreaterThan(1_700);
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
            var lines = File.ReadAllLines(path);
            lines[0].ShouldBe("id,kind,on,place,oldPart,plate,site,part,result,reason,note,corrects");
            lines.Length.ShouldBe(2_001);
            lines[1].ShouldStartWith($"contactor-00001,contactor,{All[0].On:yyyy-MM-dd},{All[0].Place},{All[0].Old},,");
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
