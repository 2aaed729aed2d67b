using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Signs of temperatures and pressures on plates. Expected values are worked by hand: a plate that writes one sign writes the other, and a minus with a space on both sides may be a dash.</summary>
public sealed class SignsOnPlatesTests
{
    private const string Thermostat = "thermostat";
    private const string PressureControl = "pressureControl";

    [Theory]
    [InlineData(Thermostat, "RANGE +15 -25 C")]
    [InlineData(Thermostat, "RANGE +20 -30 F")]
    [InlineData(Thermostat, "RANGE +20 -20 F")]
    [InlineData(Thermostat, "RANGE + 20 -20 F")]
    [InlineData(Thermostat, "RANGE +15 C -25 C")]
    [InlineData(Thermostat, "RANGE +15 TO -25 C")]
    [InlineData(PressureControl, "RANGE +3 -7 BAR")]
    public void Behind_a_figure_with_a_plus_a_minus_is_no_dash_and_a_span_that_falls_is_told(string kind, string plate)
    {
        var reading = Families.Find(kind)!.ReadNameplate(plate);
        reading.Fields.ShouldBeEmpty();
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(plate);
        reading.Complaints.ShouldHaveSingleItem().Message.ShouldContain("cannot be read as a whole");
    }

    [Theory]
    [InlineData(Thermostat, "CUT-OUT - 10 F DIFF 4 F", "differential=4 °F", "CUT-OUT - 10 F")]
    [InlineData(Thermostat, "RANGE - 30 TO 90 F DIFF 4 F", "differential=4 °F", "RANGE - 30 TO 90 F")]
    [InlineData(PressureControl, "CUT-OUT - 0.2 BAR DIFF 1 BAR", "differential=1 bar", "CUT-OUT - 0.2 BAR")]
    [InlineData("expansionValve", "R22 RANGE - 40 TO 50 F", "refrigerants=R-22", "RANGE - 40 TO 50 F")]
    [InlineData(Thermostat, "CUT-OUT - 10 F CUT-IN + 5 F CAP - 6 FT", "cutIn=5 °F; capillary=6 ft", "CUT-OUT - 10 F")]
    public void A_free_minus_before_what_may_be_below_zero_is_a_dash_or_a_sign_and_neither_is_taken(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        var reading = Families.Find(kind)!.ReadNameplate(plate);
        reading.Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
        reading.Complaints.ShouldHaveSingleItem().Code.ShouldBe(ComplaintCode.Ambiguous);
    }

    [Fact]
    public void Two_settings_with_a_free_minus_are_told_and_contradict_nothing()
    {
        var need = Families.Find(Thermostat)!.ReadNeed(new("CUT-OUT - 10 F CUT-IN - 5 F", [], []));
        need.Nameplate!.Fields.ShouldBeEmpty();
        need.Contradictions.ShouldBeEmpty();
        need.Nameplate.Complaints.Count.ShouldBe(2);
    }

    [Theory]
    [InlineData("CUT-OUT - 10 F CUT-IN + 5 F", "cutOut=-10 °F; cutIn=5 °F")]
    [InlineData("CLOSES + 35 F OPENS - 5 F", "cutOut=-5 °F; cutIn=35 °F")]
    [InlineData("CUT-OUT: - 18 C CUT-IN: + 2 C", "cutOut=-18 °C; cutIn=2 °C")]
    [InlineData("RANGE - 30 TO 90 F CUT-IN + 2 F", "range=-30 to 90 °F; cutIn=2 °F")]
    public void It_is_a_sign_where_another_figure_has_a_free_plus(string plate, string read) => ReadPlate.Whole(Thermostat, plate).ShouldBe(read);

    [Theory]
    [InlineData(Thermostat, "CUT-OUT - 35 F CUT-IN - 39 F DIFF - 4 F", "differential=4 °F; cutOut=35 °F; cutIn=39 °F")]
    [InlineData(Thermostat, "CUT-OUT - 35 F FLA - 16 A", "cutOut=35 °F; fullLoadAmps=16 A")]
    [InlineData(PressureControl, "CUT-OUT - 400 PSI CUT-IN - 300 PSI", "cutOut=400 psi; cutIn=300 psi")]
    [InlineData("motor", "HP - 1/4 RPM - 1075 AMB - 40 C", "power=1/4 hp; speed=1075 rpm; ambientMost=40 °C")]
    [InlineData("defrostTimer", "RES - 15 A", "resistiveAmps=15 A")]
    public void It_is_a_dash_before_what_cannot_be_below_zero_and_where_the_plate_has_such_dashes(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);
}
