namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>A vacuum on plates of pressure controls. Expected values are worked by hand: 5 inches of vacuum are 5 inches of mercury under the air, as gauges count them (practice).</summary>
public sealed class VacuumOnPlatesTests
{
    private const string PressureControl = "pressureControl";

    [Theory]
    [InlineData("LOW PRESSURE CUT-OUT 5 IN VAC CUT-IN 10 PSIG", "function=low pressure; cutOut=5 inHg; cutIn=10 psi")]
    [InlineData("RANGE 12 IN VAC TO 80 PSIG", "range=12 inHg to 80 psi")]
    [InlineData("RANGE 12 IN. VAC. TO 80 LB", "range=12 inHg to 80 psi")]
    [InlineData("RANGE 12 INCHES VACUUM TO 80 LBS", "range=12 inHg to 80 psi")]
    [InlineData("RANGE 12 INCHES OF VACUUM TO 80 PSI", "range=12 inHg to 80 psi")]
    [InlineData("RANGE 12\" HG TO 80 PSI DIFF 10", "range=12 inHg to 80 psi; differential=10 psi")]
    [InlineData("RANGE 12\"HG TO 80 PSI", "range=12 inHg to 80 psi")]
    [InlineData("RANGE 12\" VAC TO 80 PSI", "range=12 inHg to 80 psi")]
    [InlineData("RANGE 12\" VAC. - 80 PSI DIFF 10", "range=12 inHg to 80 psi; differential=10 psi")]
    [InlineData("RANGE 12 IN. HG. TO 80 PSI", "range=12 inHg to 80 psi")]
    [InlineData("RANGE 12 IN HG - 80 PSI", "range=12 inHg to 80 psi")]
    [InlineData("5 IN VAC CUT-OUT\n10 PSI CUT-IN", "cutOut=5 inHg; cutIn=10 psi")]
    [InlineData("CUT-OUT 5 LBS CUT-IN 10 LBS", "cutOut=5 psi; cutIn=10 psi")]
    [InlineData("CUT-OUT 5 IN. VAC. CUT-IN 10 DIFF 12", "differential=12 psi; cutOut=5 inHg; cutIn=10 psi")]
    public void Inches_of_vacuum_are_below_the_air_however_they_are_spelt(string plate, string read) => ReadPlate.Whole(PressureControl, plate).ShouldBe(read);

    [Theory]
    [InlineData("CUT-OUT 5 IN CUT-IN 10 PSI", "cutIn=10 psi", "CUT-OUT 5 IN")]
    [InlineData("CUT-OUT 5\" CUT-IN 10 PSI", "cutIn=10 psi", "CUT-OUT 5\"")]
    [InlineData("CUT-OUT 5 INCHES CUT-IN 10 PSI", "cutIn=10 psi", "CUT-OUT 5 INCHES")]
    [InlineData("RANGE 12 IN TO 80 PSI DIFF 10 PSI", "differential=10 psi", "RANGE 12 IN TO 80 PSI")]
    [InlineData("CUT-OUT 5 IN. W.C. CUT-IN 10 PSI", "cutIn=10 psi", "CUT-OUT 5 IN. W.C.")]
    public void Inches_of_nobody_knows_what_are_no_pounds(string plate, string read, string left)
    {
        ReadPlate.Fields(PressureControl, plate).ShouldBe(read);
        Families.Find(PressureControl)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }
}
