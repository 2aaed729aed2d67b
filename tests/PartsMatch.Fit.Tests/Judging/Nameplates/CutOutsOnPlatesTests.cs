namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Pressure controls that are called by what they do, HIGH PRESSURE CUT-OUT. Expected values are worked by hand: they open at the figure behind CUT-OUT.</summary>
public sealed class CutOutsOnPlatesTests
{
    private const string PressureControl = "pressureControl";
    private const string Thermostat = "thermostat";

    [Theory]
    [InlineData("HIGH PRESSURE CUT-OUT 400 PSI AUTO RESET", "function=high pressure; reset=automatic; cutOut=400 psi")]
    [InlineData("HIGH PRESSURE CUTOUT 400 PSI MANUAL RESET", "function=high pressure; reset=manual; cutOut=400 psi")]
    [InlineData("LOW PRESSURE CUT-OUT 10 PSI AUTO RESET", "function=low pressure; reset=automatic; cutOut=10 psi")]
    [InlineData("LOW PRESSURE CUT-OUT 10 PSI CUT-IN 30 PSI AUTO RESET", "function=low pressure; reset=automatic; cutOut=10 psi; cutIn=30 psi")]
    [InlineData("LOW PRESSURE CUT-OUT 10 PSI CUT-IN 30 PSI DIFF 20 PSI AUTO RESET", "function=low pressure; reset=automatic; differential=20 psi; cutOut=10 psi; cutIn=30 psi")]
    [InlineData("HIGH PRESSURE CUT-OUT 400 PSI AUTO RESET 300 PSI", "function=high pressure; reset=automatic; cutOut=400 psi; cutIn=300 psi")]
    [InlineData("HIGH PRESSURE CUT-OUT OPENS 400 PSI CLOSES 300 PSI", "function=high pressure; cutOut=400 psi; cutIn=300 psi")]
    [InlineData("HI PRESS CUT OUT 400 AUTO RESET 300 PSI", "function=high pressure; reset=automatic; cutOut=400 psi; cutIn=300 psi")]
    [InlineData("HP CUT-OUT 400 PSI", "function=high pressure; cutOut=400 psi")]
    [InlineData("HP CUT OUT 400 CUT IN 300 PSI", "function=high pressure; cutOut=400 psi; cutIn=300 psi")]
    [InlineData("CUT-OUT 400 HP CONTROL CUT-IN 300", "function=high pressure; cutOut=400 psi; cutIn=300 psi")]
    [InlineData("LP CUT-OUT 10 PSI CUT-IN 30", "function=low pressure; cutOut=10 psi; cutIn=30 psi")]
    [InlineData("HIGH PRESSURE CUT-OUT RANGE 100-400 PSI", "function=high pressure; range=100 to 400 psi")]
    [InlineData("HP CUT-OUT FLA 16 240 V", "function=high pressure; ratedVolts=240 V; fullLoadAmps=16 A")]
    public void The_figure_behind_CUT_OUT_is_where_it_opens(string plate, string read) => ReadPlate.Whole(PressureControl, plate).ShouldBe(read);

    [Theory]
    [InlineData("HIGH PRESSURE CUT-OUT 400 PSI CUT-IN 300 PSI MAX", "function=high pressure; cutOut=400 psi; cutIn=300 psi")]
    [InlineData("HP CUT-OUT 400 PSI CUT-IN 300 PSI MAX", "function=high pressure; cutOut=400 psi; cutIn=300 psi")]
    [InlineData("HP CUT-OUT [burnt] CUT-IN 300 PSI", "function=high pressure; cutIn=300 psi")]
    [InlineData("LOW PRESSURE CUT-OUT - 0.2 BAR CUT-IN 1.5 BAR", "function=low pressure; cutIn=1.5 bar")]
    public void No_figure_slides_to_the_next_label_and_what_it_does_is_read_where_the_figure_is_not(string plate, string read) => ReadPlate.Fields(PressureControl, plate).ShouldBe(read);

    [Theory]
    [InlineData(PressureControl, "HIGH PRESSURE CUT-OUT, CONTROL 400 PSI AUTO RESET", "function=high pressure; reset=automatic", "400 PSI")]
    [InlineData(Thermostat, "HIGH LIMIT 250 F AUTO RESET", "function=high limit; reset=automatic", "250 F")]
    [InlineData(Thermostat, "HIGH LIMIT 250F AUTO RESET", "function=high limit; reset=automatic", "250F")]
    public void A_figure_before_AUTO_RESET_is_not_where_it_resets(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }
}
