using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Switches.Thermostats;

/// <summary>What follows from a thermostat's plate, what contradicts, how it is written and drawn: worked by hand, from practice.</summary>
public sealed class ThermostatRulesTests
{
    [Theory]
    [InlineData("function=box thermostat; cutOut=75 °F; cutIn=70 °F", "")] // poles, reset and action of a silent record are open
    [InlineData("function=fan delay", "")]
    [InlineData("function=fan delay and defrost end; cutOut=45 °F; cutIn=55 °F", "action=change-over")]
    [InlineData("function=fan delay and defrost end; cutIn=55 °F; differential=15 °F", "action=change-over; cutOut=40 °F")]
    [InlineData("function=box thermostat; cutOut=35 °F; differential=4 °F", "")]
    [InlineData("action=closes on rise; cutOut=35 °F; differential=4 °F", "cutIn=39 °F")]
    [InlineData("action=closes on rise; cutIn=39 °F; differential=4 °F", "cutOut=35 °F")]
    [InlineData("action=closes on rise; cutIn=4 °C; differential=2 K", "cutOut=2 °C")]
    [InlineData("action=closes on rise; cutIn=4 °C; differential=3.6 °F", "cutOut=2 °C")]
    [InlineData("action=opens on rise; cutIn=25 °F; differential=20 °F", "cutOut=45 °F")]
    [InlineData("action=opens on rise; cutOut=45 °F; differential=20 °F", "cutIn=25 °F")]
    [InlineData("action=change-over; cutOut=45 °F; differential=20 °F", "")] // of either side
    [InlineData("function=high limit; bulb=clip-on disc", "isAdjustable=no")]
    [InlineData("range=20 to 80 °F", "isAdjustable=yes")]
    [InlineData("range=20 °F", "isAdjustable=no")]
    [InlineData("cutIn=39 °F; differential=4 °F", "")]
    public void Nothing_that_only_mostly_holds_is_deduced(string part, string deduced) =>
        string.Join("; ", ThermostatFamily.Thermostat.Deduce(Named.Record<ThermostatSpec>(part)).Deductions.Select(one => $"{one.Field}={one.Text}")).ShouldBe(deduced);

    /// <summary>A disc has nothing to be set by, and is held as another word of its plate says.</summary>
    [Theory]
    [InlineData("HIGH LIMIT DISC OPENS 140F CLOSES 110F", BulbForm.StrapOnDisc)]
    [InlineData("BIMETAL DISC THERMOSTAT OPENS 55F", BulbForm.StrapOnDisc)]
    [InlineData("DISC OPENS 55F CLOSES 35F TUBE CLIP", BulbForm.ClipOnDisc)]
    [InlineData("DEFROST TERMINATION CLIP MOUNT DISC OPENS 55F CLOSES 35F", BulbForm.ClipOnDisc)]
    public void A_disc_is_read_of_a_plate_and_cannot_be_set(string plate, BulbForm bulb)
    {
        var read = ThermostatFamily.Thermostat.ReadNeed(new(plate, [], [])).Need.Plate.ShouldBeOfType<ThermostatSpec>();
        (read.Bulb, read.IsAdjustable).ShouldBe((bulb, false));
    }

    /// <summary>Of an old one the way is taken that one of its function mostly goes, and the deduction says so.</summary>
    [Theory]
    [InlineData("function=box thermostat; cutOut=35 °F; differential=4 °F", "cutOutNeeded=35 °F; cutInNeeded=39 °F")]
    [InlineData("function=box thermostat; cutIn=39 °F; differential=4 °F", "cutInNeeded=39 °F; cutOutNeeded=35 °F")]
    [InlineData("function=box thermostat; action=change-over; cutOut=35 °F; differential=4 °F", "cutOutNeeded=35 °F")] // of either side
    [InlineData("function=fan delay; action=change-over; cutOut=45 °F; differential=20 °F", "cutOutNeeded=45 °F; cutInNeeded=25 °F")]
    [InlineData("function=fan delay; cutOut=45 °F; differential=20 °F", "cutOutNeeded=45 °F; cutInNeeded=25 °F")]
    [InlineData("function=defrost end; cutOut=55 °F; differential=20 °F", "cutOutNeeded=55 °F")] // it may open or close
    public void The_third_temperature_of_an_old_one_follows_from_what_is_taken(string plate, string deduced)
    {
        var found = Read(plate).Deductions.Where(one => one.Side == Side.Site).ToList();
        string.Join("; ", found.Select(one => $"{one.Field}={one.Text}")).ShouldBe(deduced);
        if (found.Count > 1) found[^1].Because.ShouldContain("mostly does");
    }

    /// <summary>A high limit marked to close at 104 °F, 3 °F below where it opens, does not open at 107 °F where it is to close at 185 °F.</summary>
    [Theory]
    [InlineData("function=high limit; cutIn=104 °F; differential=3 °F", "cutInNeeded=185 °F")]
    [InlineData("function=box thermostat; action=change-over; cutOut=35 °F; differential=4 °F", "cutOutNeeded=-10 °F; sidesWired=the one that closes on rise")]
    public void Beside_another_temperature_than_is_marked_no_third_follows(string plate, string site) => Read(plate, site).Deductions.Where(one => one.Side == Side.Site).ShouldBeEmpty();

    [Theory]
    [InlineData("function=box thermostat; action=change-over; cutOut=60 °F; differential=12 °F", "the one that opens on rise", "cutInNeeded=48 °F")]
    [InlineData("function=box thermostat; cutOut=60 °F; differential=12 °F", "the one that opens on rise", "cutInNeeded=48 °F")]
    [InlineData("function=defrost end; action=change-over; cutIn=55 °F; differential=15 °F", "the one that closes on rise", "cutOutNeeded=40 °F")]
    public void The_third_temperature_follows_from_the_side_that_is_wired(string plate, string wired, string deduced)
    {
        var found = Read(plate, $"sidesWired={wired}");
        found.Contradictions.ShouldBeEmpty();
        var third = found.Deductions.Last(one => one.Side == Side.Site);
        $"{third.Field}={third.Text}".ShouldBe(deduced);
        third.Because.ShouldStartWith("the side that is wired, and its cut");
    }

    [Fact]
    public void The_old_temperatures_are_what_is_needed()
    {
        var need = Read("function=fan delay and defrost end; cutOut=40 °F; cutIn=55 °F; fanCutIn=25 °F; fanCutOut=45 °F");
        string.Join("; ", need.Deductions.Where(one => one.Side == Side.Site).Select(one => $"{one.Field}={one.Text}")).ShouldBe("cutOutNeeded=40 °F; cutInNeeded=55 °F; fanCutOutNeeded=45 °F; fanCutInNeeded=25 °F");
    }

    /// <summary>Who wants -10 °F in the box does not want it to start at the 39 °F that are marked. Within 5 °F it does the same (practice).</summary>
    [Theory]
    [InlineData("cutOutNeeded=-10 °F", "fanCutOutNeeded=45 °F; fanCutInNeeded=25 °F")]
    [InlineData("cutInNeeded=50 °F", "fanCutOutNeeded=45 °F; fanCutInNeeded=25 °F")]
    [InlineData("cutOutNeeded=30 °F", "cutInNeeded=39 °F; fanCutOutNeeded=45 °F; fanCutInNeeded=25 °F")]
    [InlineData("cutOutNeeded=29.9 °F", "fanCutOutNeeded=45 °F; fanCutInNeeded=25 °F")]
    [InlineData("fanCutInNeeded=10 °F", "cutOutNeeded=35 °F; cutInNeeded=39 °F")]
    public void One_of_the_old_temperatures_is_needed_no_more_where_the_other_is_to_be_another(string site, string deduced) =>
        string.Join("; ", Read("cutOut=35 °F; cutIn=39 °F; fanCutOut=45 °F; fanCutIn=25 °F", site).Deductions.Where(one => one.Side == Side.Site).Select(one => $"{one.Field}={one.Text}")).ShouldBe(deduced);

    [Theory]
    [InlineData("function=fan delay; action=closes on rise", "", "function, action", "A fan delay does not close on rise")]
    [InlineData("function=low limit; action=opens on rise", "", "function, action", "A low limit does not open on rise")]
    [InlineData("action=opens on rise; cutOut=35 °F; cutIn=55 °F", "", "cutOut, cutIn", "is not above its cut-in")]
    [InlineData("action=closes on rise; cutOut=55 °F; cutIn=35 °F", "", "cutOut, cutIn", "is not below its cut-in")]
    [InlineData("function=box thermostat; cutOut=45 °F; cutIn=40 °F", "", "function, cutOut, cutIn", "unless it is one for heat")]
    [InlineData("function=box thermostat", "cutOutNeeded=39 °F; cutInNeeded=35 °F", "function", "is taken to close on rise, and the cut-out of 39 °F")]
    [InlineData("function=high limit; cutOut=115 °F", "cutInNeeded=140 °F", "function", "is taken to open on rise, and the cut-out of 115 °F")]
    [InlineData("function=high limit; cutOut=115 °F", "cutInNeeded=140 °F; sidesWired=the one that closes on rise", "function", "is taken to open on rise, and the cut-out of 115 °F")]
    [InlineData("function=box thermostat; cutOut=35 °F; cutIn=39 °F", "cutOutNeeded=39 °F; cutInNeeded=35 °F", "function", "is taken to close on rise, and the cut-out of 39 °F")] // near the old ones, but the wrong way round
    [InlineData("function=box thermostat; cutOut=35 °F; cutIn=39 °F", "cutOutNeeded=40 °F", "function", "is taken to close on rise, and the cut-out of 40 °F")]
    [InlineData("fanCutIn=45 °F; fanCutOut=25 °F", "", "fanCutOut, fanCutIn", "is not above the 45 °F")]
    [InlineData("function=fan delay and defrost end; fanCutIn=45 °F", "fanCutOutNeeded=25 °F", "", "25 °F that is needed is not above the 45 °F")]
    [InlineData("cutOut=35 °F; cutIn=55 °F; differential=4 °F", "", "cutOut, cutIn, differential", "another distance")]
    [InlineData("cutOut=-10 °F; range=20 to 80 °F", "", "cutOut, range", "its range of 20 to 80 °F does not hold")]
    [InlineData("cutOut=35 °F", "cutOutNeeded=40.1 °F", "cutOut", "moved at 35 °F, and 40.1 °F")]
    [InlineData("action=opens on rise", "cutOutNeeded=55 °F; cutInNeeded=104 °F", "action", "is not above the cut-in of 104 °F")]
    [InlineData("action=closes on rise", "cutOutNeeded=39 °F; cutInNeeded=35 °F", "action", "is not below the cut-in of 35 °F")]
    [InlineData("function=defrost end; action=opens on rise; cutOut=25 °F", "cutInNeeded=55 °F", "action", "is not above the cut-in of 55 °F")]
    [InlineData("function=box thermostat; action=change-over; cutIn=39 °F; differential=4 °F", "cutOutNeeded=-10 °F", "cutIn, differential", "moved at 39 °F, and by its differential of 4 °F not at the -10 °F")]
    [InlineData("function=fan delay and defrost end; cutOut=55 °F; cutIn=35 °F", "", "cutOut, cutIn", "It closes on rise, and its cut-out of 55 °F is not below")] // of the side that ends the defrost
    [InlineData("function=fan delay and defrost end; cutIn=35 °F", "cutOutNeeded=55 °F", "function", "It is to close on rise, and the cut-out of 55 °F that is needed is not below the cut-in of 35 °F")]
    [InlineData("bulbMost=120 °F", "defrostPeak=130 °F", "bulbMost", "bore 120 °F, and its place comes to 130 °F")]
    [InlineData("fanRatedVolts=120/240 V; fanFullLoadAmps=10/5/2 A", "", "fanRatedVolts, fanFullLoadAmps", "3 figures stand beside 2 rated volts")]
    [InlineData("fanFullLoadAmps=10 A; fanLockedRotorAmps=6 A", "", "fanFullLoadAmps, fanLockedRotorAmps", "less than the full-load amps")]
    [InlineData("function=fan delay and defrost end; ratedVolts=240 V; fanFullLoadAmps=8 A", "fanVolts=480 V", "ratedVolts", "fans' contact is rated up to 240 V, and 480 V are switched")]
    [InlineData("function=fan delay and defrost end; fanRatedVolts=120 V; fanFullLoadAmps=8 A", "fanMotors=9/40 A; fanVolts=120 V", "fanFullLoadAmps", "fans' contact carried 8 A at 120 V, and 9 A are on it")]
    [InlineData("action=opens on rise", "sidesWired=both", "action", "The old contacts: opens on rise; said to be wired: both sides of change-over contacts. One of")]
    [InlineData("function=fan delay", "fanMotors=9/40 A", "function", "has no contacts of their own for fans")]
    public void What_disagrees_is_told(string plate, string site, string fields, string says)
    {
        var found = Read(plate, site).Contradictions.ShouldHaveSingleItem();
        string.Join(", ", found.Fields).ShouldBe(fields);
        found.Sentence.ShouldContain(says);
    }

    [Theory]
    [InlineData("function=box thermostat; range=20 to 80 °F; differential=3.5 to 36 °F; cutOut=35 °F; cutIn=45 °F", "cutOutNeeded=40 °F")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "")]
    [InlineData("function=box thermostat; action=change-over; cutOut=35 °F; cutIn=39 °F", "sidesWired=the one that opens on rise")] // the figures are of the other side
    [InlineData("function=fan delay and defrost end; cutOut=40 °F; cutIn=55 °F; fanCutIn=25 °F; fanCutOut=45 °F", "defrostPeak=90 °F")]
    public void What_agrees_is_not(string plate, string site) => Read(plate, site).Contradictions.ShouldBeEmpty();

    [Theory]
    [InlineData("-30 to 90 °F", "-30 to 90 °F")]
    [InlineData("-30/90 F", "-30 to 90 °F")]
    [InlineData("-30F TO 90F", "-30 to 90 °F")]
    [InlineData("−35 – −10 °C", "-35 to -10 °C")]
    [InlineData("20 °F", "20 °F")]
    public void Temperatures_are_read_from_one_to_another(string text, string written)
    {
        TemperatureSpan.Form.Write(TemperatureSpan.Form.Read(text).Value!).ShouldBe(written);
        TemperatureSpan.Form.Read(written).Value.ShouldBe(TemperatureSpan.Form.Read(text).Value);
    }

    [Theory]
    [InlineData("RANGE 20 F TO 80 F", "20 to 80 °F", "")]
    [InlineData("RANGE 20 F TO", "20 °F", "TO")]
    [InlineData("RANGE 20 F\nTO 80 F", "20 °F", "TO 80 F")]
    public void A_plate_may_end_before_the_upper_end_of_its_range(string plate, string range, string left)
    {
        var reading = ThermostatFamily.Thermostat.ReadNameplate(plate);
        reading.Fields.ShouldHaveSingleItem().Text.ShouldBe(range);
        string.Join(" ", reading.Leftovers.Select(leftover => leftover.Text)).ShouldBe(left);
    }

    [Theory]
    [InlineData("90 to -30 °F", "the lower temperature stands first")]
    [InlineData("20F to 30C", "is not temperatures")]
    [InlineData("20 to 80", "is not temperatures")]
    [InlineData("", "nothing is written")]
    public void What_is_no_range_is_refused(string text, string wrong) => TemperatureSpan.Form.Read(text).Wrong!.ShouldContain(wrong);

    [Theory]
    [InlineData("3.5-36 F", Units.AsGiven, "3.5 to 36 °F")]
    [InlineData("9 °F", Units.Si, "5 K")]
    [InlineData("2 to 15 K", Units.Us, "3.6 to 27 °F")]
    public void Differences_are_no_temperatures(string text, Units units, string written) => TemperatureDifferenceSpan.Form.Write(TemperatureDifferenceSpan.Form.Read(text).Value!, units).ShouldBe(written);

    [Fact]
    public void Old_and_new_temperatures_are_drawn_with_what_does_the_same()
    {
        var need = Read("function=defrost end; cutOut=12.8 °C; cutIn=2 °C").Need;
        var scale = (Scale)ThermostatFamily.Thermostat.Drawings(need, Part("cutOut=15 °C; cutIn=1 °C")).ShouldHaveSingleItem();
        scale.Zones.Single(zone => zone.Role == Role.Good).Span.ShouldSatisfyAllConditions(span => span.Low.ShouldBe(10, 0.01), span => span.High.ShouldBe(15.6, 0.01)); // 12.8 ± 2.8
        scale.Marks.Where(mark => mark.Role == Role.Old).Select(mark => mark.At.Low).ShouldBe([12.8, 2]);
        scale.Marks.Where(mark => mark.Role == Role.New).Select(mark => mark.At.Low).ShouldBe([15, 1]);
        scale.Zones.Zip(scale.Zones.Skip(1)).ShouldAllBe(pair => pair.First.Span.High.Equals(pair.Second.Span.Low));
        ThermostatFamily.Thermostat.Drawings(need, Part("")).ShouldBeEmpty();
        ThermostatFamily.Thermostat.Drawings(Read("").Need, Part("cutOut=15 °C; cutIn=1 °C")).ShouldBeEmpty();
    }

    [Fact]
    public void A_drawing_is_shown_in_the_units_chosen_as_temperatures_and_not_as_differences()
    {
        var scale = (Scale)ThermostatFamily.Thermostat.Drawings(Read("function=fan delay; cutIn=-5 °C; cutOut=5 °C").Need, Part("cutIn=-5 °C; cutOut=5 °C")).ShouldHaveSingleItem().In(Units.Us);
        scale.Unit.ShouldBe("°F");
        scale.Marks[0].At.Low.ShouldBe(23, 0.01); // -5 × 1.8 + 32
    }

    [Fact]
    public void One_that_can_be_set_is_drawn_where_it_will_be_set()
    {
        var scale = (Scale)ThermostatFamily.Thermostat.Drawings(Read("function=box thermostat; cutOut=2 °C; cutIn=4 °C").Need, Part("function=box thermostat; range=-10 to 35 °C; cutOut=20 °C; cutIn=25 °C")).ShouldHaveSingleItem();
        scale.Marks.Where(mark => mark.Role == Role.New).Select(mark => mark.At.Low).ShouldBe([2, 4]);
        scale.Words.ShouldContain("once it is set");
    }

    private static ThermostatSpec Part(string texts) => (ThermostatSpec)ThermostatFamily.Thermostat.Deduce(Named.Record<ThermostatSpec>(texts)).Spec;

    private static NeedReading Read(string plate, string site = "") => ThermostatFamily.Thermostat.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
}
