namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Sizes with an X between. Expected values are worked by hand; that makers put the three ports of a valve in different orders is practice.</summary>
public sealed class JoinedSizesTests
{
    private static string Fields(string kind, string plate) => string.Join("; ", Families.Find(kind)!.ReadNameplate(plate).Fields.Select(field => $"{field.Field.Name}={field.Text}"));

    [Theory]
    [InlineData("3-WAY 7/8 X 5/8 X 7/8 ODF", "7/8 X 5/8 X 7/8")]
    [InlineData("3-WAY 7/8 X 7/8 X 5/8 ODF", "7/8 X 7/8 X 5/8")]
    [InlineData("3-WAY 7/8 IN X 5/8 IN X 7/8 IN ODF", "7/8 IN X 5/8 IN X 7/8 IN")]
    [InlineData("3-WAY 1-1/8 BY 1-1/8 BY 7/8 ODF", "1-1/8 BY 1-1/8 BY 7/8")]
    [InlineData("3-WAY CONN 7/8 X 5/8 X 7/8", "CONN 7/8 X 5/8 X 7/8")]
    [InlineData("3-WAY CONDENSER 7/8 X 5/8 X 7/8 R404A", "CONDENSER 7/8 X 5/8 X 7/8")]
    public void Three_sizes_are_the_ports_of_a_valve_in_an_order_that_is_not_known(string plate, string left)
    {
        var reading = Families.Find("condensingPressureValve")!.ReadNameplate(plate);
        reading.Fields.ShouldNotContain(field => field.Field.Name.EndsWith("Port", StringComparison.Ordinal));
        reading.Fields.Select(field => $"{field.Field.Name}={field.Text}").ShouldContain(plate.Contains("ODF", StringComparison.Ordinal) ? "joint=solder" : "arrangement=three-way");
        string.Concat(reading.Leftovers.Select(leftover => leftover.Text.Replace(" ", string.Empty, StringComparison.Ordinal))).ShouldBe(left.Replace(" ", string.Empty, StringComparison.Ordinal));
    }

    [Fact]
    public void The_pipes_of_a_valve_with_three_sizes_are_not_deduced_from_them() =>
        Families.Find("condensingPressureValve")!.ReadNeed(new("3-WAY 7/8 X 5/8 X 7/8 ODF", [], [])).Deductions.ShouldNotContain(deduction => deduction.Field.EndsWith("Pipe", StringComparison.Ordinal));

    [Theory]
    [InlineData("condensingPressureValve", "7/8 X 5/8 ODF", "joint=solder; condenserPort=7/8 in; receiverPort=5/8 in")]
    [InlineData("solenoidValve", "1/2 X 1/2 X 3/8", "")]
    [InlineData("solenoidValve", "CONN 3/8 X 1/2", "inletSize=3/8 in; outletSize=1/2 in")]
    [InlineData("expansionValve", "INLET 3/8 X 1/2 X 1/4", "")]
    [InlineData("motor", "SHAFT 1/2 X 4 FLAT 3", "shaftDiameter=1/2 in; shaftLength=4 in; flatLength=3 in")]
    [InlineData("motor", "3x400 V", "voltage=400 V; phase=three-phase")]
    [InlineData("capacitor", "2 X 3 X 4 OVAL", "can=oval")]
    public void Two_are_read_of_every_part_and_three_of_none(string kind, string plate, string read) => Fields(kind, plate).ShouldBe(read);

    /// <summary>Expansion valves are sized inlet by outlet by equaliser, which is 1/4 in (from memory).</summary>
    [Theory]
    [InlineData("3/8 X 1/2 X 1/4 ODF", "equaliser=external; joint=solder; inletSize=3/8 in; outletSize=1/2 in")]
    [InlineData("3/8 IN X 1/2 IN X 1/4 IN ODF", "equaliser=external; joint=solder; inletSize=3/8 in; outletSize=1/2 in")]
    [InlineData("R404A 5/8 X 1-1/8 X 1/4 SAE", "refrigerants=R-404A; equaliser=external; joint=flare; inletSize=5/8 in; outletSize=1-1/8 in")]
    [InlineData("3/8 X 1/2 ODF", "joint=solder; inletSize=3/8 in; outletSize=1/2 in")]
    public void Three_of_an_expansion_valve_are_read_where_the_third_can_be_its_equalisers(string plate, string read)
    {
        Fields("expansionValve", plate).ShouldBe(read);
        Families.Find("expansionValve")!.ReadNameplate(plate).Leftovers.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("expansionValve", "1/4 X 3/8 X 1/2 ODF")]
    [InlineData("expansionValve", "3/8 X 1/2 X 1/4 X 1/4 ODF")]
    [InlineData("solenoidValve", "1/2 X 1/2 X 1/4 ODF")]
    public void Three_that_are_not_in_that_order_are_not(string kind, string plate) => Fields(kind, plate).ShouldBe("joint=solder");

    /// <summary>Each size with its joint, as plates print them as well.</summary>
    [Theory]
    [InlineData("expansionValve", "3/8 ODF X 1/2 ODF", "joint=solder; inletSize=3/8 in; outletSize=1/2 in")]
    [InlineData("expansionValve", "3/8 IN SAE X 1/2 IN SAE", "joint=flare; inletSize=3/8 in; outletSize=1/2 in")]
    [InlineData("expansionValve", "3/8 ODF X 1/2 ODF X 1/4 ODF", "equaliser=external; joint=solder; inletSize=3/8 in; outletSize=1/2 in")]
    [InlineData("solenoidValve", "3/8\" ODF x 3/8\" ODF", "joint=solder; inletSize=3/8 in; outletSize=3/8 in")]
    [InlineData("condensingPressureValve", "7/8 ODF X 5/8 ODF", "joint=solder; condenserPort=7/8 in; receiverPort=5/8 in")]
    public void A_joint_may_stand_behind_each_size(string kind, string plate, string read)
    {
        Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldBeEmpty();
    }

    [Fact]
    public void Sizes_with_two_kinds_of_joint_are_told_and_not_taken() => Fields("expansionValve", "3/8 SAE X 1/2 ODF").ShouldBe(string.Empty);

    /// <summary>An inch sign behind each size, with blanks or without.</summary>
    [Theory]
    [InlineData("solenoidValve", "3/8\" X 1/2\" ODF", "joint=solder; inletSize=3/8 in; outletSize=1/2 in")]
    [InlineData("solenoidValve", "3/8\"x1/2\"ODF", "joint=solder; inletSize=3/8 in; outletSize=1/2 in")]
    [InlineData("expansionValve", "3/8\" X 1/2\" X 1/4\" ODF", "equaliser=external; joint=solder; inletSize=3/8 in; outletSize=1/2 in")]
    [InlineData("condensingPressureValve", "7/8\" X 5/8\" ODF", "joint=solder; condenserPort=7/8 in; receiverPort=5/8 in")]
    [InlineData("motor", "SHAFT 1/2\"X6\"", "shaftDiameter=1/2 in; shaftLength=6 in")]
    [InlineData("motor", "1/2\" X 6\" SHAFT", "shaftDiameter=1/2 in; shaftLength=6 in")]
    [InlineData("capacitor", "2\" X 4\" OVAL", "diameter=2 in; height=4 in")]
    public void The_sign_of_inches_does_not_part_two_sizes(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);
}
