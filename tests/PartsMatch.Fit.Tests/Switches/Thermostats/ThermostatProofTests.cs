using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Tests.Notes;

namespace PartsMatch.Fit.Tests.Switches.Thermostats;

/// <summary>Thermostats before they are condemned, and after the swap. 5 °F about a setting, 0.5 and 1 V, a fan delay on a warm box: practice.</summary>
[Trait("Source", "reading.thermostatContacts")]
[Trait("Source", "reading.thermostatSetting")]
[Trait("Source", "reading.thermostatBulb")]
[Trait("Source", "reading.fanDelayOnWarmBox")]
[Trait("Source", "reading.defrostEnds")]
public sealed class ThermostatProofTests
{
    private const string DefrostEnd = "function=defrost end; cutOut=55 °F; cutIn=35 °F";
    private const string FanDelay = "function=fan delay; cutOut=45 °F; cutIn=25 °F";
    private const string Both = "function=fan delay and defrost end; cutIn=55 °F; cutOut=40 °F; fanCutIn=25 °F; fanCutOut=45 °F";
    private const string Limit = "function=low limit; reset=manual; cutOut=37 °F; cutIn=42 °F";

    [Theory]
    [InlineData(DefrostEnd, "", Conclusion.ReadNext, "isClosed")]
    [InlineData(DefrostEnd, "isClosed=no", Conclusion.ReadNext, "bulbTemperature")]
    [InlineData(DefrostEnd, "isClosed=no; bulbTemperature=29.9 °F", Conclusion.PartHasFailed, null)]
    [InlineData(DefrostEnd, "isClosed=no; bulbTemperature=30 °F", Conclusion.ReadNext, "closedAt")]
    [InlineData(DefrostEnd, "isClosed=no; bulbTemperature=45 °F", Conclusion.ReadNext, "closedAt")]
    [InlineData(DefrostEnd, "isClosed=yes; bulbTemperature=45 °F", Conclusion.ReadNext, "openedAt")]
    [InlineData(DefrostEnd, "isClosed=yes; bulbTemperature=60 °F", Conclusion.ReadNext, "openedAt")]
    [InlineData(DefrostEnd, "isClosed=yes; bulbTemperature=60.1 °F", Conclusion.PartHasFailed, null)]
    [InlineData("function=defrost end; cutOut=13 °C; cutIn=2 °C", "isClosed=yes; bulbTemperature=15.8 °C", Conclusion.ReadNext, "openedAt")]
    [InlineData("function=defrost end; cutOut=13 °C; cutIn=2 °C", "isClosed=yes; bulbTemperature=15.9 °C", Conclusion.PartHasFailed, null)]
    [InlineData(DefrostEnd, "isClosed=no; bulbTemperature=70 °F", Conclusion.NotThePart, null)]
    [InlineData(DefrostEnd, "isClosed=yes; bulbTemperature=20 °F", Conclusion.NothingWrongFound, null)]
    [InlineData("function=defrost end; cutIn=55 °F; cutOut=35 °F", "isClosed=no; bulbTemperature=70 °F", Conclusion.PartHasFailed, null)]
    [InlineData(FanDelay, "isClosed=no; bulbTemperature=10 °F", Conclusion.PartHasFailed, null)]
    [InlineData(FanDelay, "isClosed=no; bulbTemperature=60 °F", Conclusion.NotThePart, null)]
    [InlineData(FanDelay, "isClosed=no; bulbTemperature=60 °F; boxIsCold=no", Conclusion.ReadNext, "boxIsCold")]
    [InlineData(FanDelay, "boxIsCold=no", Conclusion.ReadNext, "boxIsCold")]
    [InlineData(FanDelay, "fansStarted=no; boxIsCold=no", Conclusion.ReadNext, "boxIsCold")]
    [InlineData(FanDelay, "fansStarted=no; boxIsCold=yes", Conclusion.ReadNext, "isClosed")]
    [InlineData(Both, "areFansClosed=no; bulbTemperature=10 °F", Conclusion.PartHasFailed, null)]
    [InlineData(Both, "areFansClosed=yes; bulbTemperature=10 °F", Conclusion.NothingWrongFound, null)]
    [InlineData(Both, "areFansClosed=yes; bulbTemperature=60 °F", Conclusion.PartHasFailed, null)]
    [InlineData(Both, "areFansClosed=yes", Conclusion.ReadNext, "bulbTemperature")]
    [InlineData(Both, "isClosed=no; bulbTemperature=70 °F", Conclusion.PartHasFailed, null)]
    [InlineData(Both, "isClosed=no; bulbTemperature=10 °F", Conclusion.NotThePart, null)]
    [InlineData(Limit, "isClosed=no; bulbTemperature=60 °F", Conclusion.ReadNext, "holdsAfterReset")]
    [InlineData(Limit, "isClosed=no; bulbTemperature=60 °F; holdsAfterReset=yes", Conclusion.NotThePart, null)]
    [InlineData(Limit, "isClosed=no; bulbTemperature=60 °F; holdsAfterReset=no", Conclusion.PartHasFailed, null)]
    [InlineData("function=defrost end", "isClosed=no; bulbTemperature=60 °F", Conclusion.ReadNext, "action")]
    [InlineData(FanDelay, "bulbInPlace=no", Conclusion.NotThePart, null)]
    [InlineData(FanDelay, "bulbInPlace=no; dropVolts=1.5 V; isClosed=yes", Conclusion.PartHasFailed, null)]
    [InlineData("function=box thermostat; cutOut=35 °F", "isClosed=yes; bulbTemperature=20 °F", Conclusion.ReadNext, "action")] // one for heat would be right
    [InlineData("function=box thermostat; cutOut=35 °F; cutIn=39 °F", "isClosed=yes; bulbTemperature=20 °F", Conclusion.PartHasFailed, null)]
    [InlineData("function=box thermostat; action=closes on rise; cutOut=35 °F", "isClosed=yes; bulbTemperature=20 °F", Conclusion.PartHasFailed, null)]
    [InlineData("function=high limit; cutOut=115 °F; cutIn=140 °F", "isClosed=yes; bulbTemperature=160 °F", Conclusion.ReadNext, "action")] // it would close there by its plate, and open by its function
    [InlineData("function=high limit; action=closes on rise; cutOut=115 °F; cutIn=140 °F", "isClosed=yes; bulbTemperature=160 °F", Conclusion.NothingWrongFound, null)]
    [InlineData("function=high limit; action=opens on rise; cutOut=115 °F; cutIn=140 °F", "isClosed=yes; bulbTemperature=130 °F", Conclusion.ReadNext, "openedAt")]
    [InlineData("function=high limit; action=opens on rise; cutOut=115 °F; cutIn=140 °F", "isClosed=yes; bulbTemperature=160 °F", Conclusion.PartHasFailed, null)]
    [InlineData("function=fan delay", "isClosed=no; bulbTemperature=60 °F", Conclusion.ReadNext, "cutOutNeeded")]
    [InlineData("function=fan delay; cutIn=25 °F", "isClosed=no; bulbTemperature=60 °F", Conclusion.ReadNext, "cutOutNeeded")]
    [InlineData("function=fan delay; cutOut=45 °F", "isClosed=no; bulbTemperature=30 °F", Conclusion.ReadNext, "cutInNeeded")]
    [InlineData(DefrostEnd, "dropVolts=0.5 V", Conclusion.NothingWrongFound, null)]
    [InlineData(DefrostEnd, "dropVolts=1.01 V", Conclusion.ReadNext, "isClosed")]
    [InlineData(DefrostEnd, "dropVolts=1.01 V; isClosed=yes; bulbTemperature=20 °F", Conclusion.PartHasFailed, null)]
    [InlineData(DefrostEnd, "defrostEnded=time", Conclusion.ReadNext, "bulbTemperature")]
    public void The_thermometer_at_its_bulb_decides(string plate, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = ThermostatFamily.Thermostat.BeforeCondemning(Need(plate), Named.Record<ThermostatReadings>(readings));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Whatever is needed now, typed the wrong way round or not, an old one moves as its own two temperatures say.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("cutOutNeeded=39 °F; cutInNeeded=35 °F")]
    public void What_is_needed_condemns_no_old_one(string site) =>
        ThermostatFamily.Thermostat.BeforeCondemning(Need("function=box thermostat; cutOut=35 °F; cutIn=39 °F", site), Named.Record<ThermostatReadings>("isClosed=no; bulbTemperature=20 °F")).Conclusion.ShouldNotBe(Conclusion.PartHasFailed);

    /// <summary>A thermostat with a knob is marked as it was shipped: set to what is needed it does as it should by that. It is condemned where it is wrong by both, over 5 °F (practice) beside either.</summary>
    [Theory]
    [InlineData("range=-30 to 90 °F", "isClosed=yes; bulbTemperature=5 °F", Conclusion.NothingWrongFound, null)] // set to -10/-6 °F it is to be closed
    [InlineData("range=-30 to 90 °F", "openedAt=-10 °F; closedAt=-6 °F", Conclusion.NothingWrongFound, null)]
    [InlineData("range=-30 to 90 °F", "isClosed=no; bulbTemperature=20 °F", Conclusion.ReadNext, "closedAt")] // right as it is marked
    [InlineData("range=-30 to 90 °F", "isClosed=no; bulbTemperature=44 °F", Conclusion.ReadNext, "closedAt")]
    [InlineData("range=-30 to 90 °F", "isClosed=no; bulbTemperature=44.1 °F", Conclusion.PartHasFailed, null)]
    [InlineData("range=-30 to 90 °F", "isClosed=yes; bulbTemperature=-15 °F", Conclusion.ReadNext, "openedAt")]
    [InlineData("range=-30 to 90 °F", "isClosed=yes; bulbTemperature=-15.1 °F", Conclusion.PartHasFailed, null)]
    [InlineData("isAdjustable=no", "isClosed=yes; bulbTemperature=5 °F", Conclusion.PartHasFailed, null)]
    [InlineData("isAdjustable=no", "isClosed=yes; bulbTemperature=30 °F", Conclusion.ReadNext, "openedAt")]
    [InlineData("isAdjustable=no", "openedAt=-10 °F", Conclusion.PartHasFailed, null)]
    public void An_old_one_that_can_be_set_is_condemned_by_no_setting_alone(string plate, string readings, Conclusion conclusion, string? next) =>
        Before($"function=box thermostat; action=closes on rise; cutOut=35 °F; cutIn=39 °F; {plate}", "cutOutNeeded=-10 °F; cutInNeeded=-6 °F", readings).ShouldBe((conclusion, next));

    /// <summary>Where it may be set so that it opens at what is needed, where it closes by then is asked first.</summary>
    [Fact]
    public void Where_the_other_temperature_that_is_needed_is_not_known_it_is_asked() =>
        Before("function=box thermostat; action=closes on rise; range=-30 to 90 °F; cutOut=35 °F; cutIn=39 °F", "cutOutNeeded=-10 °F", "isClosed=no; bulbTemperature=60 °F").ShouldBe((Conclusion.ReadNext, "cutInNeeded"));

    /// <summary>Where a limit with a button would close again is of no matter: it is judged by where it trips. Its button holds once its bulb is back: past its cut-in, its differential past its trip, or 50 °F, and 20 °F of a low limit (practice), and 5 °F more.</summary>
    [Theory]
    [InlineData("function=high limit; cutOut=140 °F", "isClosed=no; bulbTemperature=70 °F", Conclusion.ReadNext, "holdsAfterReset")]
    [InlineData("function=high limit; cutOut=140 °F", "isClosed=no; bulbTemperature=70 °F; holdsAfterReset=yes", Conclusion.NotThePart, null)]
    [InlineData("function=high limit; cutOut=140 °F", "isClosed=no; bulbTemperature=70 °F; holdsAfterReset=no", Conclusion.PartHasFailed, null)]
    [InlineData("function=high limit; cutOut=140 °F", "isClosed=no; bulbTemperature=84.9 °F; holdsAfterReset=no", Conclusion.PartHasFailed, null)]
    [InlineData("function=high limit; cutOut=140 °F", "isClosed=no; bulbTemperature=85 °F; holdsAfterReset=no", Conclusion.ReadNext, "bulbTemperature")]
    [InlineData("function=high limit; cutOut=140 °F; differential=30 °F", "isClosed=no; bulbTemperature=104.9 °F; holdsAfterReset=no", Conclusion.PartHasFailed, null)]
    [InlineData("function=high limit; cutOut=140 °F; differential=30 °F", "isClosed=no; bulbTemperature=105 °F; holdsAfterReset=no", Conclusion.ReadNext, "bulbTemperature")]
    [InlineData("function=high limit; cutOut=140 °F; cutIn=110 °F", "isClosed=no; bulbTemperature=120 °F", Conclusion.ReadNext, "holdsAfterReset")]
    [InlineData("function=high limit; cutOut=140 °F; cutIn=110 °F", "isClosed=no; bulbTemperature=120 °F; holdsAfterReset=no", Conclusion.ReadNext, "bulbTemperature")]
    [InlineData("function=high limit; cutOut=140 °F; cutIn=110 °F", "isClosed=yes; bulbTemperature=120 °F", Conclusion.NothingWrongFound, null)]
    [InlineData("function=high limit; cutOut=140 °F", "isClosed=yes; bulbTemperature=140 °F", Conclusion.NothingWrongFound, null)]
    [InlineData("function=high limit; cutOut=140 °F", "isClosed=yes; bulbTemperature=145 °F", Conclusion.ReadNext, "openedAt")]
    [InlineData("function=high limit; cutOut=140 °F", "isClosed=yes; bulbTemperature=145.1 °F", Conclusion.PartHasFailed, null)]
    [InlineData("function=high limit; cutOut=140 °F", "isClosed=no; bulbTemperature=145.1 °F", Conclusion.NotThePart, null)]
    [InlineData("function=low limit; cutOut=36 °F", "isClosed=no; bulbTemperature=60 °F", Conclusion.ReadNext, "holdsAfterReset")]
    [InlineData("function=low limit; cutOut=36 °F", "isClosed=no; bulbTemperature=60 °F; holdsAfterReset=no", Conclusion.ReadNext, "bulbTemperature")]
    [InlineData("function=low limit; cutOut=36 °F", "isClosed=no; bulbTemperature=61 °F; holdsAfterReset=no", Conclusion.ReadNext, "bulbTemperature")]
    [InlineData("function=low limit; cutOut=36 °F", "isClosed=no; bulbTemperature=61.1 °F; holdsAfterReset=no", Conclusion.PartHasFailed, null)]
    [InlineData("function=low limit; cutOut=36 °F; cutIn=42 °F", "isClosed=no; bulbTemperature=60 °F; holdsAfterReset=no", Conclusion.PartHasFailed, null)]
    [InlineData("function=low limit; cutOut=36 °F", "isClosed=yes; bulbTemperature=30.9 °F", Conclusion.PartHasFailed, null)]
    [InlineData("function=low limit; cutOut=36 °F", "isClosed=yes; bulbTemperature=60 °F", Conclusion.NothingWrongFound, null)]
    [InlineData("function=low limit", "isClosed=yes; bulbTemperature=60 °F", Conclusion.ReadNext, "cutOutNeeded")]
    public void A_limit_that_is_reset_by_hand_is_judged_by_where_it_trips(string plate, string readings, Conclusion conclusion, string? next) =>
        Before($"{plate}; reset=manual", "", readings).ShouldBe((conclusion, next));

    /// <summary>Its button holds once its bulb is past where it can be reset as it is marked, too: 5 °F (practice) past its cut-in, or its differential, or 50 °F (practice), past its trip.</summary>
    [Theory]
    [InlineData("function=low limit; range=30 to 60 °F; cutOut=55 °F; cutIn=59 °F", "cutOutNeeded=36 °F; cutInNeeded=40 °F", "bulbTemperature=58 °F", Conclusion.ReadNext, "bulbTemperature")]
    [InlineData("function=low limit; range=30 to 60 °F; cutOut=55 °F; cutIn=59 °F", "cutOutNeeded=36 °F; cutInNeeded=40 °F", "bulbTemperature=64.1 °F", Conclusion.PartHasFailed, null)]
    [InlineData("function=high limit; range=100 to 200 °F; cutOut=140 °F", "cutOutNeeded=170 °F", "bulbTemperature=100 °F", Conclusion.ReadNext, "bulbTemperature")]
    [InlineData("function=high limit; range=100 to 200 °F; cutOut=140 °F", "cutOutNeeded=170 °F", "bulbTemperature=84.9 °F", Conclusion.PartHasFailed, null)]
    public void A_button_that_does_not_hold_is_pressed_again_past_where_it_is_marked(string plate, string site, string readings, Conclusion conclusion, string? next) =>
        Before($"{plate}; reset=manual", site, $"isClosed=no; holdsAfterReset=no; {readings}").ShouldBe((conclusion, next));

    /// <summary>One that cannot be set and opened or closed over 5 °F (practice) beside its setting has failed, whatever else it did rightly: what condemns stands before what clears.</summary>
    [Theory]
    [InlineData("function=high limit; cutOut=155 °F", "openedAt=110 °F; bulbTemperature=180 °F; isClosed=no", Conclusion.PartHasFailed)]
    [InlineData("function=high limit; cutOut=155 °F", "openedAt=150 °F; bulbTemperature=180 °F; isClosed=no", Conclusion.NotThePart)]
    [InlineData("function=high limit; cutOut=155 °F; reset=manual", "openedAt=110 °F; bulbTemperature=70 °F; isClosed=no; holdsAfterReset=yes", Conclusion.PartHasFailed)]
    [InlineData(Both, "closedAt=60 °F; bulbTemperature=60 °F; areFansClosed=no", Conclusion.NotThePart)]
    [InlineData(Both, "closedAt=80 °F; bulbTemperature=60 °F; areFansClosed=no", Conclusion.PartHasFailed)]
    public void One_that_cannot_be_set_and_moves_elsewhere_is_cleared_by_nothing_else(string plate, string readings, Conclusion conclusion) =>
        Before($"isAdjustable=no; {plate}", "", readings).ShouldBe((conclusion, null));

    /// <summary>A setting over 5 °F off (practice) is set anew where it can be, and condemns where it cannot; which of the two is asked, and of a disc it is known.</summary>
    [Theory]
    [InlineData("DEFROST TERMINATION OPENS 55 F CLOSES 35 F", "openedAt=80 °F", Conclusion.ReadNext, "isAdjustable")]
    [InlineData("DEFROST TERMINATION OPENS 55 F CLOSES 35 F", "openedAt=80 °F; isClosed=no; bulbTemperature=90 °F", Conclusion.ReadNext, "isAdjustable")]
    [InlineData("DEFROST TERMINATION OPENS 55 F CLOSES 35 F", "openedAt=60 °F; isClosed=no; bulbTemperature=90 °F", Conclusion.NotThePart, null)]
    [InlineData("DEFROST TERMINATION DISC OPENS 55 F CLOSES 35 F", "openedAt=80 °F", Conclusion.PartHasFailed, null)]
    [InlineData("DEFROST TERMINATION ADJUSTABLE OPENS 55 F CLOSES 35 F", "openedAt=80 °F", Conclusion.NotThePart, null)]
    public void Whether_it_can_be_set_is_asked_before_it_is_set_anew(string plate, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = ThermostatFamily.Thermostat.BeforeCondemning(ThermostatFamily.Thermostat.ReadNeed(new(plate, [], [])).Need, Named.Record<ThermostatReadings>(readings));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Once it was seen where contacts move, that says whether they do where they should; nothing is asked twice.</summary>
    [Theory]
    [InlineData("range=20 to 90 °F", "isClosed=yes; bulbTemperature=44 °F; openedAt=50 °F", Conclusion.NothingWrongFound)]
    [InlineData("range=20 to 90 °F", "isClosed=yes; bulbTemperature=44 °F; openedAt=50 °F; closedAt=54 °F", Conclusion.NothingWrongFound)]
    [InlineData("range=20 to 90 °F", "isClosed=yes; bulbTemperature=44 °F; openedAt=35 °F", Conclusion.NotThePart)] // to be set anew
    [InlineData("isAdjustable=no", "isClosed=yes; bulbTemperature=37 °F; openedAt=35 °F", Conclusion.NothingWrongFound)]
    [InlineData("isAdjustable=no", "isClosed=no; bulbTemperature=37 °F; closedAt=39 °F", Conclusion.NothingWrongFound)]
    public void Where_contacts_moved_is_asked_once(string plate, string readings, Conclusion conclusion) =>
        Before($"function=box thermostat; action=closes on rise; cutOut=35 °F; cutIn=39 °F; {plate}", "cutOutNeeded=50 °F; cutInNeeded=54 °F", readings).ShouldBe((conclusion, null));

    /// <summary>Fans' contacts have no reading of their own for where they moved: they are looked at past where they should have.</summary>
    [Fact]
    public void Where_the_fans_contacts_moved_is_seen_by_their_bulb() => Before(Both, "", "areFansClosed=no; bulbTemperature=35 °F").ShouldBe((Conclusion.ReadNext, "bulbTemperature"));

    [Fact]
    public void Where_the_fans_contacts_are_to_move_is_asked_by_its_own_field() => Before("function=fan delay and defrost end; cutIn=55 °F", "", "areFansClosed=no; bulbTemperature=35 °F").ShouldBe((Conclusion.ReadNext, "fanCutOutNeeded"));

    /// <summary>What cannot be set is not to be set: whether it can is asked first, and of a disc it is known.</summary>
    [Theory]
    [InlineData("", "isAdjustable", "See whether it can be set")]
    [InlineData("isAdjustable=yes", "openedAt", "Set it to what is needed")]
    [InlineData("isAdjustable=no", "openedAt", "Bring its bulb past")]
    [InlineData("bulb=strap-on disc", "openedAt", "Bring its bulb past")]
    public void Whether_it_can_be_set_is_asked_before_it_is_set(string plate, string field, string why)
    {
        var next = ThermostatFamily.Thermostat.BeforeCondemning(Need($"function=high limit; cutOut=140 °F; cutIn=110 °F; {plate}", "cutOutNeeded=120 °F; cutInNeeded=90 °F"), Named.Record<ThermostatReadings>("isClosed=yes; bulbTemperature=130 °F")).Next;
        (next?.Field).ShouldBe(field);
        next!.Why.ShouldStartWith(why);
    }

    /// <summary>Ice water stands at 32 °F, and cools no bulb below; ice with salt goes down to about 0 °F, a hand warms past 80 °F, and hot water to 200 °F, a little under boiling: practice. The fans' contacts are passed by 5 °F.</summary>
    [Theory]
    [InlineData("function=box thermostat; cutOut=-10 °F; cutIn=-5 °F; isAdjustable=no", "isClosed=yes; bulbTemperature=-8 °F", "ice with salt", "a hand")]
    [InlineData("function=fan delay; cutOut=45 °F; cutIn=25 °F; isAdjustable=no", "isClosed=yes; bulbTemperature=44 °F", "ice with salt", "a hand")]
    [InlineData("function=box thermostat; cutOut=34.9 °F; cutIn=40 °F; isAdjustable=no", "isClosed=yes; bulbTemperature=37 °F", "ice with salt", "a hand")]
    [InlineData("function=box thermostat; cutOut=35 °F; cutIn=40 °F; isAdjustable=no", "isClosed=yes; bulbTemperature=37 °F", "ice water", "a hand")]
    [InlineData("function=high limit; cutOut=80 °F; cutIn=60 °F; isAdjustable=no", "isClosed=yes; bulbTemperature=70 °F", "ice water", "a hand")]
    [InlineData("function=high limit; cutOut=81 °F; cutIn=60 °F; isAdjustable=no", "isClosed=yes; bulbTemperature=70 °F", "ice water", "hot water")]
    [InlineData("function=high limit; cutOut=200 °F; cutIn=60 °F; isAdjustable=no", "isClosed=yes; bulbTemperature=70 °F", "ice water", "hot water")]
    [InlineData("function=high limit; cutOut=201 °F; cutIn=60 °F; isAdjustable=no", "isClosed=yes; bulbTemperature=70 °F", "ice water", "a heat gun or hot oil")]
    [InlineData("function=fan delay and defrost end; cutIn=55 °F; cutOut=35 °F; fanCutOut=50 °F; fanCutIn=39.9 °F", "areFansClosed=no; bulbTemperature=45 °F", "ice with salt", "a hand")]
    [InlineData("function=fan delay and defrost end; cutIn=55 °F; cutOut=35 °F; fanCutOut=50 °F; fanCutIn=40.1 °F", "areFansClosed=no; bulbTemperature=45 °F", "ice water", "a hand")]
    public void A_bulb_is_cooled_and_warmed_with_what_reaches_where_it_moves(string plate, string readings, string cold, string warm)
    {
        var why = ThermostatFamily.Thermostat.BeforeCondemning(Need(plate), Named.Record<ThermostatReadings>(readings)).Next!.Why;
        why.ShouldContain(cold);
        why.ShouldContain($"{warm} to warm it");
        (why.Contains("ice water", StringComparison.Ordinal) && why.Contains("ice with salt", StringComparison.Ordinal)).ShouldBeFalse(why);
    }

    [Theory]
    [InlineData("cutOutNeeded=-10 °F; cutInNeeded=-5 °F", "Take ice with salt (down to about 0 °F, −18 °C) or the cold coil or box itself to cool it, a hand to warm it")]
    [InlineData("cutOutNeeded=38 °F; cutInNeeded=42 °F", "Take ice water to cool it, a hand to warm it")]
    [InlineData("", "Take ice water, or under 35 °F")]
    public void A_new_one_is_proved_with_what_reaches_where_it_moves(string site, string words) =>
        NotesCases.Of("thermostat", "function=box thermostat", site, "function=box thermostat; range=-30 to 80 °F; differential=3 °F").Notes.Steps.ShouldContain(step => step.Detail != null && step.Detail.StartsWith(words, StringComparison.Ordinal));

    [Fact]
    public void Fans_that_stand_still_beside_closed_contacts_are_something_else() => Before(FanDelay, "", "fansStarted=no; boxIsCold=yes; isClosed=yes; bulbTemperature=10 °F").ShouldBe((Conclusion.NotThePart, null));

    /// <summary>What was seen of its contacts is not to be measured again.</summary>
    [Theory]
    [InlineData("", ReadingVerdict.Bad, "The fans did not start, though the coil is cold: measure whether its contacts are closed, and whether the fans have volts.")]
    [InlineData("isClosed=yes; bulbTemperature=10 °F", ReadingVerdict.Bad, "The fans did not start, though the coil is cold and its contacts are closed: measure whether the fans have volts.")]
    [InlineData("isClosed=no; bulbTemperature=30 °F", ReadingVerdict.CantTell, "The fans did not start, and its contacts are open: the temperature at its bulb tells whether they should be.")]
    public void Fans_that_did_not_start_are_told_beside_what_its_contacts_did(string readings, ReadingVerdict verdict, string said)
    {
        var check = ThermostatFamily.Thermostat.BeforeCondemning(Need(FanDelay), Named.Record<ThermostatReadings>($"fansStarted=no; boxIsCold=yes; {readings}")).Checks.Single(one => one.Title == "Fans after a defrost");
        (check.Verdict, check.Sentence).ShouldBe((verdict, said));
    }

    [Fact]
    public void A_defrost_that_time_ended_is_asked_for_its_bulb_once() => Before(DefrostEnd, "", "defrostEnded=time; isClosed=yes; bulbTemperature=20 °F").ShouldBe((Conclusion.NothingWrongFound, null));

    [Theory]
    [InlineData("openedAt=60 °F", ReadingVerdict.Good)]
    [InlineData("openedAt=60.1 °F", ReadingVerdict.Bad)]
    [InlineData("openedAt=50 °F", ReadingVerdict.Good)]
    [InlineData("openedAt=49.9 °F", ReadingVerdict.Bad)]
    [InlineData("closedAt=40 °F", ReadingVerdict.Good)]
    [InlineData("closedAt=29.9 °F", ReadingVerdict.Bad)]
    [InlineData("defrostEnded=temperature", ReadingVerdict.Good)]
    [InlineData("defrostEnded=time", ReadingVerdict.CantTell)]
    [InlineData("bulbInPlace=yes", ReadingVerdict.Good)]
    public void A_new_one_moves_within_5_degrees_of_what_is_needed(string readings, ReadingVerdict verdict) =>
        After(DefrostEnd, readings).ShouldHaveSingleItem().Verdict.ShouldBe(verdict);

    [Theory]
    [InlineData("fansStarted=yes", ReadingVerdict.Good)]
    [InlineData("fansStarted=no; boxIsCold=yes", ReadingVerdict.Bad)]
    [InlineData("fansStarted=no", ReadingVerdict.CantTell)]
    [InlineData("fansStarted=no; boxIsCold=no", ReadingVerdict.NotApplicable)]
    public void Fans_start_once_the_coil_is_cold(string readings, ReadingVerdict verdict) => After(FanDelay, readings).ShouldHaveSingleItem().Verdict.ShouldBe(verdict);

    /// <summary>The side that opens on rise is used: it opens at the upper of the two temperatures that are needed, and closes at the lower.</summary>
    [Theory]
    [InlineData("openedAt=45 °F", ReadingVerdict.Good)]
    [InlineData("openedAt=25 °F", ReadingVerdict.Bad)]
    [InlineData("closedAt=25 °F", ReadingVerdict.Good)]
    [InlineData("closedAt=45 °F", ReadingVerdict.Bad)]
    public void Change_over_contacts_in_the_place_of_single_ones_are_judged_by_the_side_that_is_used(string readings, ReadingVerdict verdict) =>
        ThermostatFamily.Thermostat.AfterSwap(
            Need("function=fan delay; action=opens on rise; cutOut=45 °F; cutIn=25 °F"),
            Named.Record<ThermostatSpec>("function=fan delay; action=change-over; cutOut=45 °F; cutIn=25 °F"),
            Named.Record<ThermostatReadings>(readings)).Readings.ShouldHaveSingleItem().Verdict.ShouldBe(verdict);

    /// <summary>The field asks for the side that is wired: in the place of contacts that open on rise the one that does so, which is closed in the cold.</summary>
    [Theory]
    [InlineData("function=defrost end; action=opens on rise", "", "isClosed=yes", ReadingVerdict.Good)]
    [InlineData("function=defrost end; action=opens on rise", "", "isClosed=no", ReadingVerdict.Bad)]
    [InlineData("function=defrost end; action=change-over", "sidesWired=the one that opens on rise", "isClosed=yes", ReadingVerdict.Good)]
    [InlineData("function=defrost end; action=change-over", "sidesWired=the one that opens on rise", "isClosed=no", ReadingVerdict.Bad)]
    [InlineData("function=defrost end; action=change-over", "sidesWired=the one that closes on rise", "isClosed=no", ReadingVerdict.Good)]
    [InlineData("function=defrost end; action=change-over", "sidesWired=both", "isClosed=no", ReadingVerdict.Good)]
    [InlineData("function=defrost end; action=change-over", "", "isClosed=no", ReadingVerdict.CantTell)]
    [InlineData("function=fan delay; action=change-over", "sidesWired=both", "isClosed=yes", ReadingVerdict.Good)]
    [InlineData("function=fan delay and defrost end", "", "isClosed=no", ReadingVerdict.Good)]
    public void Of_new_change_over_contacts_the_side_that_is_wired_is_judged(string plate, string site, string readings, ReadingVerdict verdict) =>
        ThermostatFamily.Thermostat.AfterSwap(
            Need($"{plate}; cutOut=55 °F; cutIn=35 °F", site),
            Named.Record<ThermostatSpec>("action=change-over; cutOut=55 °F; cutIn=35 °F"),
            Named.Record<ThermostatReadings>($"{readings}; bulbTemperature=20 °F")).Readings.ShouldHaveSingleItem().Verdict.ShouldBe(verdict);

    /// <summary>Single contacts in the place of the side that is wired have no other side that was measured: what the sheet takes is what they are judged by, 5 °F (practice). Of those that may change over the temperature may be of the other side.</summary>
    [Theory]
    [InlineData("action=opens on rise", "isClosed=yes; bulbTemperature=90 °F", ReadingVerdict.Bad)]
    [InlineData("action=opens on rise", "openedAt=75 °F", ReadingVerdict.Good)]
    [InlineData("action=opens on rise", "openedAt=80.1 °F", ReadingVerdict.Bad)]
    [InlineData("action=change-over", "isClosed=yes; bulbTemperature=90 °F", ReadingVerdict.CantTell)]
    [InlineData("", "isClosed=yes; bulbTemperature=90 °F", ReadingVerdict.CantTell)]
    public void New_single_contacts_are_judged_by_the_temperature_that_is_taken(string part, string readings, ReadingVerdict verdict) =>
        ThermostatFamily.Thermostat.AfterSwap(
            Need("function=box thermostat; cutOut=75 °F", "sidesWired=the one that opens on rise"),
            Named.Record<ThermostatSpec>($"function=box thermostat; isAdjustable=no; cutOut=75 °F; cutIn=71 °F; {part}"),
            Named.Record<ThermostatReadings>(readings)).Readings.ShouldHaveSingleItem().Verdict.ShouldBe(verdict);

    /// <summary>An old one that is not marked to change over is not said to; whether it does is asked first, as the sheet asks it.</summary>
    [Fact]
    public void Whether_old_contacts_change_over_is_asked_before_which_side_its_temperature_is_of() =>
        Before("function=box thermostat; cutOut=75 °F", "sidesWired=the one that opens on rise", "isClosed=yes; bulbTemperature=90 °F").ShouldBe((Conclusion.ReadNext, "action"));

    /// <summary>Of old ones likewise; which side is wired is asked where it would be guessed.</summary>
    [Theory]
    [InlineData("cutOut=55 °F; cutIn=35 °F", "", Conclusion.ReadNext, "sidesWired")]
    [InlineData("cutOut=55 °F; cutIn=35 °F", "sidesWired=the one that opens on rise", Conclusion.NothingWrongFound, null)]
    [InlineData("cutOut=55 °F; cutIn=35 °F", "sidesWired=the one that closes on rise", Conclusion.PartHasFailed, null)]
    [InlineData("cutOut=55 °F; cutIn=35 °F", "sidesWired=both", Conclusion.PartHasFailed, null)]
    [InlineData("cutIn=35 °F", "sidesWired=the one that opens on rise", Conclusion.ReadNext, "cutOut")] // the other side may close there
    [InlineData("cutOut=55 °F; cutIn=35 °F", "cutOutNeeded=80 °F; sidesWired=the one that opens on rise", Conclusion.ReadNext, "cutInNeeded")] // its own is marked, and is not needed any more
    public void Of_old_change_over_contacts_the_side_that_is_wired_is_judged(string plate, string site, Conclusion conclusion, string? next) =>
        Before($"function=defrost end; action=change-over; {plate}", site, "isClosed=yes; bulbTemperature=20 °F").ShouldBe((conclusion, next));

    /// <summary>Where the plate has one side and another is said to be wired there is no other temperature to be found: one of the two is misread.</summary>
    [Theory]
    [InlineData("opens on rise", "closes on rise")]
    [InlineData("closes on rise", "opens on rise")]
    public void By_a_side_that_old_contacts_do_not_have_nothing_is_judged(string marked, string wired) =>
        Before($"function=box thermostat; action={marked}; cutOut=35 °F", $"sidesWired={wired}", "isClosed=yes; bulbTemperature=80 °F").ShouldBe((Conclusion.ReadNext, "action"));

    [Fact]
    public void A_loose_bulb_is_mended_first() =>
        ThermostatFamily.Thermostat.BeforeCondemning(Need(FanDelay), Named.Record<ThermostatReadings>("bulbInPlace=no")).MendFirst.ShouldHaveSingleItem().Mend.ShouldContain("Put it back");

    [Fact]
    public void Notes_set_it_hold_it_and_prove_it_by_the_thermometer()
    {
        const string plate = "function=box thermostat; cutOut=35 °F; cutIn=39 °F; bulb=straight bulb; terminals=screws";
        var notes = NotesCases.Of("thermostat", plate, "capillaryReach=60 in", "function=box thermostat; range=20 to 80 °F; differential=3 °F; bulb=coiled bulb; capillary=72 in; terminals=quick connects").Notes;
        notes.Single(ThermostatChanges.SetThermostat).Words.ShouldBe("set it so that its contacts move at 35 °F (1.7 °C) on fall");
        notes.Single(ThermostatChanges.MountBulb).Stage.ShouldBe(Stage.Mount);
        notes.Steps.ShouldContain(step => step.Words == "let it move by its own, with a thermometer at its bulb: it is to open at 35 °F, and close at 39 °F, within 5 °F (2.8 K)");
        notes.Steps.Select(step => step.Stage).ShouldBeInOrder();
    }

    private static (Conclusion Conclusion, string? Next) Before(string plate, string site, string readings)
    {
        var diagnosis = ThermostatFamily.Thermostat.BeforeCondemning(Need(plate, site), Named.Record<ThermostatReadings>(readings));
        return (diagnosis.Conclusion, diagnosis.Next?.Field);
    }

    private static Need Need(string plate, string site = "") => ThermostatFamily.Thermostat.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Need;

    private static IReadOnlyList<ReadingCheck> After(string plate, string readings) =>
        ThermostatFamily.Thermostat.AfterSwap(Need(plate), Named.Record<ThermostatSpec>(plate), Named.Record<ThermostatReadings>(readings)).Readings;
}
