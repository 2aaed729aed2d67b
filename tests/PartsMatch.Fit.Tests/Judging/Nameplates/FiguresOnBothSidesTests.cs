namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>A label with a figure on each side, of which a word that no vocabulary knows may announce the first. Expected values are worked by hand.</summary>
public sealed class FiguresOnBothSidesTests
{
    /// <summary>A fan motor's rated-load amps are the amps that it is marked with.</summary>
    [Theory]
    [InlineData("1/4 HP 1075 RPM 230V 60 HZ RLA 1.9 LRA 5 PSC 5/370", "type=permanent split capacitor; power=1/4 hp; speed=1075 rpm; voltage=230 V; frequency=60 Hz; fullLoadAmps=1.9 A; lockedRotorAmps=5 A; runCapacitor=5 µF 370 V")]
    [InlineData("HP 1/4 R.L.A. 1.9 LRA 5", "power=1/4 hp; fullLoadAmps=1.9 A; lockedRotorAmps=5 A")]
    [InlineData("1/4 HP 1.9 RLA 5 LRA", "power=1/4 hp; fullLoadAmps=1.9 A; lockedRotorAmps=5 A")]
    [InlineData("HP 1/4 RATED LOAD AMPS 1.9", "power=1/4 hp; fullLoadAmps=1.9 A")]
    [InlineData("1/4 HP RATED-LOAD AMPS 1.9 LRA 5", "power=1/4 hp; fullLoadAmps=1.9 A; lockedRotorAmps=5 A")]
    public void Rated_load_amps_are_full_load_amps(string plate, string read) => ReadPlate.Whole("motor", plate).ShouldBe(read);

    [Fact]
    public void Rated_load_amps_that_are_not_the_full_load_amps_beside_them_contradict_them() =>
        Families.Find("motor")!.ReadNameplate("HP 1/4 FLA 1.9 RLA 5").Contradictions.ShouldHaveSingleItem();

    [Theory]
    [InlineData("motor", "1/4 HP 230V 60 HZ XQZ 1.9 LRA 5 PSC", "type=permanent split capacitor; power=1/4 hp; voltage=230 V; frequency=60 Hz", "XQZ 1.9 LRA 5")]
    [InlineData("motor", "230V 60 HZ XQZ 1.9 LRA 5 1075 RPM 1/4 HP", "power=1/4 hp; speed=1075 rpm; voltage=230 V; frequency=60 Hz", "XQZ 1.9 LRA 5")]
    [InlineData("motor", "HP 1/4 V 230 XQZ 1.9 FLA 2.1", "power=1/4 hp; voltage=230 V", "XQZ 1.9 FLA 2.1")]
    [InlineData("contactor", "2 POLE XQZ 30 FLA 180 600V", "poleCount=2 poles; ratedVolts=600 V", "XQZ 30 FLA 180")]
    public void Neither_of_two_is_taken_where_a_word_that_nobody_knows_may_announce_the_first(string kind, string plate, string read, string left)
    {
        ReadPlate.Fields(kind, plate).ShouldBe(read);
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(left);
    }

    [Theory]
    [InlineData("1/4 HP 230V XQZ 1.9 FLA 1075 RPM", "power=1/4 hp; speed=1075 rpm; voltage=230 V; fullLoadAmps=1.9 A")]
    [InlineData("1/4 HP 230V XQZ 1.9 FLA 5 LRA", "power=1/4 hp; voltage=230 V; fullLoadAmps=1.9 A; lockedRotorAmps=5 A")]
    [InlineData("230V XQZ 1.9 A 5/370", "voltage=230 V; fullLoadAmps=1.9 A; runCapacitor=5 µF 370 V")]
    [InlineData("230V XQZ 1/4 HP 5", "power=1/4 hp; voltage=230 V")]
    [InlineData("230V XQZ LRA 5", "voltage=230 V; lockedRotorAmps=5 A")]
    [InlineData("1/4 HP XQZ FLA 1.9 LRA 5", "power=1/4 hp; fullLoadAmps=1.9 A; lockedRotorAmps=5 A")]
    public void A_word_that_nobody_knows_takes_no_figure_that_has_a_unit_or_is_the_only_one(string plate, string read) => ReadPlate.Fields("motor", plate).ShouldBe(read);
}
