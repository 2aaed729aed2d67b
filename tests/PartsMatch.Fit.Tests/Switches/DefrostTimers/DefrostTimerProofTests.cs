using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.DefrostTimers;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Tests.Notes;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers;

/// <summary>
/// Defrost timers before they are condemned, and after the swap. A tenth of volts and of amps, 0.5 and 1 V: practice. 0.9 × 240 = 216, 0.1 × 240 = 24, 0.85 × 240 = 204, 1.1 × 240 = 264;
/// 6000 W / 240 V = 25 A, of which 0.9 are 22.5 and 1.1 are 27.5: worked by hand.
/// </summary>
[Trait("Source", "reading.timerClock")]
[Trait("Source", "reading.timerContacts")]
[Trait("Source", "reading.timerRelease")]
[Trait("Source", "reading.defrostHeaterAmps")]
[Trait("Source", "reading.timerSet")]
[Trait("Source", "reading.defrostSeenThrough")]
public sealed class DefrostTimerProofTests
{
    private const string Plate = "clockVolts=240 V; clockFrequency=60 Hz; endedBy=temperature; failSafe=4 to 110 min";
    private const string Heaters = "heaterPower=6 kW; heaterOwnVolts=240 V; loadVolts=240 V; loadPhase=single-phase";

    [Theory]
    [InlineData("", Conclusion.ReadNext, "clockTurns")]
    [InlineData("clockTurns=no", Conclusion.ReadNext, "clockVoltsThere")]
    [InlineData("clockVoltsThere=240 V", Conclusion.ReadNext, "clockTurns")]
    [InlineData("clockTurns=no; clockVoltsThere=240 V", Conclusion.PartHasFailed, null)]
    [InlineData("clockTurns=no; clockVoltsThere=216 V", Conclusion.PartHasFailed, null)]
    [InlineData("clockTurns=no; clockVoltsThere=215.9 V", Conclusion.NotThePart, null)]
    [InlineData("clockTurns=no; clockVoltsThere=264 V", Conclusion.PartHasFailed, null)]
    [InlineData("clockTurns=no; clockVoltsThere=264.1 V", Conclusion.PartHasFailed, null)] // too many volts burn it, and excuse nothing
    [InlineData("clockVoltsThere=480 V", Conclusion.ReadNext, "clockTurns")]
    [InlineData("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; releaseVoltsThere=480 V", Conclusion.ReadNext, "releasePulls")]
    [InlineData("clockTurns=yes; releasePulls=no; releaseVoltsThere=264.1 V", Conclusion.PartHasFailed, null)]
    [InlineData("clockTurns=no; clockVoltsThere=0 V", Conclusion.NotThePart, null)]
    [InlineData("clockTurns=yes", Conclusion.ReadNext, "heaterContactCloses")]
    [InlineData("clockTurns=yes; heaterContactCloses=no", Conclusion.ReadNext, "commonVolts")]
    [InlineData("clockTurns=yes; heaterContactCloses=yes", Conclusion.ReadNext, "fanContactOpens")]
    [InlineData("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=no; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes", Conclusion.NothingWrongFound, null)]
    [InlineData("clockTurns=no; clockVoltsThere=0 V; fanContactOpens=no; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; releasePulls=no", Conclusion.ReadNext, "releaseVoltsThere")]
    [InlineData("clockTurns=yes; releasePulls=no; releaseVoltsThere=204 V", Conclusion.PartHasFailed, null)]
    [InlineData("clockTurns=yes; releasePulls=no; releaseVoltsThere=203.9 V", Conclusion.NotThePart, null)]
    [InlineData("clockTurns=yes; releasePulls=no; releaseVoltsThere=0 V", Conclusion.NotThePart, null)]
    [InlineData("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; dropVolts=0.5 V", Conclusion.NothingWrongFound, null)]
    [InlineData("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; dropVolts=1.01 V", Conclusion.PartHasFailed, null)]
    [InlineData("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; heaterAmpsThere=22.5 A", Conclusion.NothingWrongFound, null)]
    [InlineData("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; heaterAmpsThere=22.4 A", Conclusion.NotThePart, null)]
    [InlineData("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; heaterAmpsThere=27.5 A", Conclusion.NothingWrongFound, null)]
    [InlineData("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; heaterAmpsThere=27.6 A", Conclusion.NotThePart, null)]
    public void Clock_contacts_release_and_amps_decide(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(Plate, Heaters), Named.Record<DefrostTimerReadings>(readings));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>A contact that has nothing to pass on leaves its terminal dead, closed or not: a blown heater fuse looks like one that stays open. Under a tenth of 240 V nothing is there, and from 85 % it is fed: practice. Between the two an open wire may show stray volts to a meter of many ohms.</summary>
    [Theory]
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no", Conclusion.ReadNext, "commonVolts")]
    [InlineData(Heaters, "heaterContactCloses=no", Conclusion.ReadNext, "commonVolts")]
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=0 V", Conclusion.NotThePart, null)]
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=23.9 V", Conclusion.NotThePart, null)]
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=24 V", Conclusion.ReadNext, "commonVoltsStand")]
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=120 V", Conclusion.ReadNext, "commonVoltsStand")]
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=203.9 V", Conclusion.ReadNext, "commonVoltsStand")]
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=150 V; commonVoltsStand=yes", Conclusion.NotThePart, null)] // a bad feed
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=150 V; commonVoltsStand=no", Conclusion.NotThePart, null)] // stray ones
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=238 V; commonVoltsStand=no", Conclusion.NotThePart, null)] // a floating wire may show nearly all of the line's
    [InlineData("", "clockTurns=yes; heaterContactCloses=no; commonVolts=120 V; commonVoltsStand=no", Conclusion.NotThePart, null)]
    [InlineData(Heaters, "clockTurns=no; clockVoltsThere=0 V; heaterContactCloses=no; commonVolts=150 V; commonVoltsStand=yes", Conclusion.NotThePart, null)]
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=238 V; commonVoltsStand=yes; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=204 V; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; fanContactOpens=no; commonVolts=120 V; keptFromRelease=yes", Conclusion.PartHasFailed, null)] // by its fan contact
    [InlineData(Heaters, "clockTurns=yes; heaterContactCloses=no; commonVolts=238 V; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData(Heaters, "clockTurns=no; clockVoltsThere=0 V; heaterContactCloses=no", Conclusion.ReadNext, "commonVolts")]
    [InlineData(Heaters, "clockTurns=no; clockVoltsThere=0 V; heaterContactCloses=no; commonVolts=0 V", Conclusion.NotThePart, null)]
    [InlineData(Heaters, "clockTurns=no; clockVoltsThere=0 V; heaterContactCloses=no; commonVolts=238 V; keptFromRelease=yes", Conclusion.PartHasFailed, null)] // clock and heaters hang on two circuits
    [InlineData(Heaters, "clockTurns=no; clockVoltsThere=240 V; heaterContactCloses=no", Conclusion.PartHasFailed, null)] // by its clock
    [InlineData(Heaters, "clockTurns=yes; commonVolts=0 V; heaterContactCloses=yes; fanContactOpens=yes", Conclusion.NotThePart, null)] // its terminal was seen live, and has nothing now
    [InlineData(Heaters, "clockTurns=yes; commonVolts=20 V; heaterContactCloses=yes; fanContactOpens=yes", Conclusion.NotThePart, null)]
    [InlineData(Heaters, "clockTurns=yes; commonVolts=20 V; commonVoltsStand=yes; heaterContactCloses=yes; fanContactOpens=yes", Conclusion.NotThePart, null)]
    [InlineData(Heaters, "clockTurns=yes; commonVolts=150 V; commonVoltsStand=no; heaterContactCloses=yes; fanContactOpens=yes", Conclusion.NotThePart, null)]
    [InlineData(Heaters, "commonVolts=0 V; heaterContactCloses=yes", Conclusion.ReadNext, "clockTurns")] // it may have failed besides
    [InlineData(Heaters, "clockTurns=yes; commonVolts=150 V; heaterContactCloses=yes; fanContactOpens=yes; heaterAmpsThere=0 A", Conclusion.ReadNext, "commonVoltsStand")]
    [InlineData(Heaters, "clockTurns=yes; commonVolts=150 V; heaterContactCloses=yes; fanContactOpens=yes; heaterAmpsThere=15.6 A", Conclusion.NotThePart, null)] // no stray volts drive amps
    [InlineData(Heaters, "clockTurns=yes; commonVolts=150 V; heaterContactCloses=no; fanContactOpens=yes; heaterAmpsThere=15.6 A", Conclusion.ReadNext, "commonVoltsStand")] // through another contact
    [InlineData(Heaters, "clockTurns=yes; commonVolts=150 V; heaterContactCloses=yes; fanContactOpens=yes", Conclusion.ReadNext, "commonVoltsStand")]
    [InlineData(Heaters, "clockTurns=yes; commonVolts=150 V; commonVoltsStand=yes; heaterContactCloses=yes; fanContactOpens=yes", Conclusion.NotThePart, null)]
    [InlineData(Heaters, "clockTurns=yes; commonVolts=150 V; commonVoltsStand=yes", Conclusion.ReadNext, "heaterContactCloses")]
    [InlineData(Heaters, "commonVolts=150 V; commonVoltsStand=yes; heaterContactCloses=yes", Conclusion.ReadNext, "clockTurns")] // it may have failed besides
    [InlineData(Heaters, "clockTurns=yes; commonVolts=204 V; commonVoltsStand=yes; heaterContactCloses=yes; fanContactOpens=yes", Conclusion.NothingWrongFound, null)]
    [InlineData("heaterPower=6 kW; heaterOwnVolts=240 V", "clockTurns=yes; heaterContactCloses=no; commonVolts=238 V; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData("", "clockTurns=yes; heaterContactCloses=no; commonVolts=238 V", Conclusion.ReadNext, "loadVolts")] // the heaters need not hang on the clock's 240 V
    [InlineData("", "clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; commonVolts=150 V", Conclusion.ReadNext, "loadVolts")] // of 240 V they are a bad feed
    [InlineData("heaterOwnVolts=240 V", "clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; commonVolts=150 V", Conclusion.ReadNext, "loadVolts")]
    [InlineData("heaterOwnVolts=240 V", "clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; commonVolts=208 V", Conclusion.NothingWrongFound, null)]
    [InlineData("", "clockTurns=yes; heaterContactCloses=no; commonVolts=0 V", Conclusion.NotThePart, null)]
    public void A_heater_contact_is_condemned_only_with_volts_before_it(string site, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(Plate, site), Named.Record<DefrostTimerReadings>(readings));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>On a warm coil the switch that ends the defrost is closed, and throws a good timer back into cooling as it is advanced by hand: its heater contact reads open then, and its fan contact closed. What time alone ends is not thrown back.</summary>
    [Theory]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no; commonVolts=238 V", Conclusion.ReadNext, "keptFromRelease")]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no; commonVolts=238 V; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no; commonVolts=238 V; keptFromRelease=no", Conclusion.ReadNext, "heaterContactCloses")]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=yes; fanContactOpens=no", Conclusion.ReadNext, "keptFromRelease")]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=yes; fanContactOpens=no; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=yes; fanContactOpens=no; keptFromRelease=no", Conclusion.ReadNext, "fanContactOpens")]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=yes; fanContactOpens=yes; keptFromRelease=no", Conclusion.NothingWrongFound, null)] // nothing threw it back
    [InlineData("endedBy=time, temperature", Heaters, "heaterContactCloses=no; commonVolts=238 V", Conclusion.ReadNext, "keptFromRelease")]
    [InlineData("endedBy=time, temperature", Heaters, "fanContactOpens=no", Conclusion.ReadNext, "keptFromRelease")]
    [InlineData("releaseVolts=240 V", Heaters, "fanContactOpens=no", Conclusion.ReadNext, "keptFromRelease")]
    [InlineData("", Heaters, "heaterContactCloses=no; commonVolts=238 V", Conclusion.ReadNext, "keptFromRelease")]
    [InlineData("", Heaters, "fanContactOpens=no", Conclusion.ReadNext, "keptFromRelease")]
    [InlineData("", Heaters, "fanContactOpens=no; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData("", "endedThereBy=temperature", "fanContactOpens=no", Conclusion.ReadNext, "keptFromRelease")]
    [InlineData("", "endedThereBy=time", "fanContactOpens=no", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=temperature", "endedThereBy=time", "fanContactOpens=no", Conclusion.PartHasFailed, null)] // no switch is wired to it
    [InlineData("endedBy=time", Heaters, "heaterContactCloses=no; commonVolts=238 V", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=time", Heaters, "fanContactOpens=no", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=time", Heaters, "fanContactOpens=no; keptFromRelease=no", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no", Conclusion.ReadNext, "commonVolts")]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no; keptFromRelease=no", Conclusion.ReadNext, "heaterContactCloses")]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no; commonVolts=120 V; keptFromRelease=no", Conclusion.ReadNext, "heaterContactCloses")]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no; commonVolts=0 V; keptFromRelease=no", Conclusion.NotThePart, null)] // dead before the contact, wherever the timer stands
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no; commonVolts=0 V; fanContactOpens=no", Conclusion.ReadNext, "keptFromRelease")] // its fan contact may be welded besides
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no; commonVolts=238 V; fanContactOpens=no; keptFromRelease=no", Conclusion.ReadNext, "heaterContactCloses")]
    [InlineData("endedBy=temperature", Heaters, "fanContactOpens=no; dropVolts=3 V; commonVolts=238 V", Conclusion.PartHasFailed, null)] // by the volts that it loses
    [InlineData("endedBy=temperature", Heaters, "fanContactOpens=no; dropVolts=3 V; commonVolts=238 V; keptFromRelease=no", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=temperature", "loadVolts=12 V", "heaterContactCloses=yes; dropVolts=12 V", Conclusion.ReadNext, "dropVolts")] // all that the line brings
    [InlineData("endedBy=temperature", Heaters, "dropVolts=238 V", Conclusion.ReadNext, "heaterContactCloses")] // those of an open contact
    [InlineData("endedBy=temperature", Heaters, "dropVolts=238 V; heaterContactCloses=no; commonVolts=238 V", Conclusion.ReadNext, "keptFromRelease")]
    [InlineData("endedBy=temperature", Heaters, "dropVolts=238 V; heaterContactCloses=no; commonVolts=238 V; keptFromRelease=no", Conclusion.ReadNext, "heaterContactCloses")]
    [InlineData("endedBy=temperature", Heaters, "dropVolts=238 V; heaterContactCloses=no; commonVolts=238 V; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=temperature", Heaters, "dropVolts=238 V; heaterContactCloses=yes", Conclusion.ReadNext, "dropVolts")] // of the fan contact, or thrown back since
    [InlineData("endedBy=pressure", Heaters, "heaterContactCloses=no; commonVolts=238 V", Conclusion.ReadNext, "keptFromRelease")] // bellows feel the warm coil as well
    [InlineData("endedBy=pressure", Heaters, "fanContactOpens=no; keptFromRelease=no", Conclusion.ReadNext, "fanContactOpens")]
    [InlineData("endedBy=pressure", Heaters, "fanContactOpens=no; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=time, pressure", Heaters, "fanContactOpens=no", Conclusion.ReadNext, "keptFromRelease")]
    [InlineData("endedBy=time, pressure", "endedThereBy=time", "fanContactOpens=no", Conclusion.ReadNext, "keptFromRelease")] // they end it whatever is wired
    [InlineData("endedBy=temperature", Heaters, "dropVolts=20 V; heaterContactCloses=yes", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=temperature", Heaters, "dropVolts=20.1 V; heaterContactCloses=yes", Conclusion.ReadNext, "dropVolts")]
    [InlineData("endedBy=temperature", Heaters, "dropVolts=20 V; commonVolts=238 V", Conclusion.PartHasFailed, null)]
    [InlineData("endedBy=temperature", Heaters, "dropVolts=20.1 V; commonVolts=238 V", Conclusion.ReadNext, "heaterContactCloses")]
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no; commonVolts=238 V; dropVolts=15 V; keptFromRelease=no", Conclusion.ReadNext, "heaterContactCloses")] // its heaters are open as well
    [InlineData("endedBy=temperature", Heaters, "heaterContactCloses=no; commonVolts=0 V; fanContactOpens=no; keptFromRelease=no", Conclusion.ReadNext, "fanContactOpens")] // may be welded, whatever feeds the other
    public void What_may_have_been_released_is_condemned_by_its_contacts_only_where_it_was_kept_from_it(string plate, string site, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(plate, site), Named.Record<DefrostTimerReadings>($"clockTurns=yes; {readings}"));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Across an open contact stands what comes to it, be it little, and never more.</summary>
    [Theory]
    [InlineData("heaterContactCloses=no; commonVolts=15 V; dropVolts=15 V", Conclusion.NotThePart, null)]
    [InlineData("heaterContactCloses=no; commonVolts=15 V; dropVolts=16.5 V", Conclusion.NotThePart, null)]
    [InlineData("heaterContactCloses=no; commonVolts=15 V; dropVolts=16.6 V", Conclusion.ReadNext, "dropVolts")] // of its other contact, or stray ones
    [InlineData("heaterContactCloses=no; commonVolts=15 V; commonVoltsStand=no; dropVolts=15 V", Conclusion.NotThePart, null)]
    [InlineData("heaterContactCloses=no; dropVolts=15 V", Conclusion.ReadNext, "commonVolts")]
    [InlineData("commonVolts=15 V; dropVolts=15 V", Conclusion.ReadNext, "heaterContactCloses")]
    [InlineData("commonVolts=238 V; dropVolts=15 V", Conclusion.PartHasFailed, null)]
    [InlineData("heaterContactCloses=no; commonVolts=5 V; dropVolts=6 V", Conclusion.ReadNext, "dropVolts")]
    [InlineData("heaterContactCloses=no; commonVolts=14 V; dropVolts=19 V", Conclusion.ReadNext, "dropVolts")]
    [InlineData("heaterContactCloses=no; commonVolts=0 V; dropVolts=8 V", Conclusion.ReadNext, "dropVolts")]
    [InlineData("heaterContactCloses=no; commonVolts=0 V; dropVolts=0.2 V", Conclusion.NotThePart, null)]
    [InlineData("heaterContactCloses=yes; commonVolts=15 V; dropVolts=15 V", Conclusion.ReadNext, "dropVolts")] // of the fan contact, or thrown back since
    [InlineData("heaterContactCloses=yes; commonVolts=238 V; dropVolts=15 V", Conclusion.PartHasFailed, null)]
    [InlineData("heaterContactCloses=yes; dropVolts=15 V", Conclusion.PartHasFailed, null)]
    [InlineData("commonVolts=43 V; dropVolts=19 V", Conclusion.ReadNext, "heaterContactCloses")] // stray ones wander
    [InlineData("dropVolts=3 V", Conclusion.ReadNext, "heaterContactCloses")]
    [InlineData("heaterContactCloses=no; commonVolts=0 V; dropVolts=238 V; keptFromRelease=yes", Conclusion.ReadNext, "commonVolts")]
    [InlineData("heaterContactCloses=no; commonVolts=238 V; dropVolts=238 V; keptFromRelease=yes", Conclusion.PartHasFailed, null)]
    public void Volts_across_an_open_contact_are_held_against_those_before_it(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need("endedBy=time", Heaters), Named.Record<DefrostTimerReadings>($"clockTurns=yes; {readings}"));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>A contact that is to be read again is in doubt still: a dead feed of something else does not clear it.</summary>
    [Theory]
    [InlineData("clockTurns=no; clockVoltsThere=0 V; fanContactOpens=no; keptFromRelease=no", "fanContactOpens")]
    [InlineData("clockTurns=no; clockVoltsThere=0 V; heaterContactCloses=no; commonVolts=238 V; keptFromRelease=no", "heaterContactCloses")]
    [InlineData("clockTurns=no; clockVoltsThere=0 V; heaterContactCloses=yes; fanContactOpens=no; keptFromRelease=no", "fanContactOpens")]
    public void What_is_to_be_read_again_is_not_cleared_by_a_dead_feed_of_something_else(string readings, string next)
    {
        var diagnosis = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need("endedBy=temperature", Heaters), Named.Record<DefrostTimerReadings>(readings));
        diagnosis.Conclusion.ShouldBe(Conclusion.ReadNext, diagnosis.Sentence);
        diagnosis.Next!.Field.ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>A wire comes off a timer only with the power off and proved dead; a frosted coil needs none off.</summary>
    [Theory]
    [InlineData("heaterContactCloses=no; commonVolts=238 V")]
    [InlineData("heaterContactCloses=no; commonVolts=238 V; keptFromRelease=no")]
    [InlineData("heaterContactCloses=yes; fanContactOpens=no")]
    [InlineData("heaterContactCloses=yes; fanContactOpens=no; keptFromRelease=no")]
    public void Who_is_asked_whether_it_was_kept_from_release_is_told_how(string readings)
    {
        var said = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(Plate, Heaters), Named.Record<DefrostTimerReadings>($"clockTurns=yes; {readings}")).Sentence;
        said.ShouldContain("advance it again on a frosted coil, or with the wire off its release terminal");
        said.ShouldContain("power off and proved dead before the wire comes off");
    }

    /// <summary>A dead feed clears what hangs on it alone: whatever else has its volts and does not do its work has failed by itself.</summary>
    [Theory]
    [InlineData("clockTurns=no; clockVoltsThere=240 V; heaterContactCloses=no; commonVolts=0 V", "stands still")]
    [InlineData("clockTurns=yes; heaterContactCloses=no; commonVolts=0 V; fanContactOpens=no; keptFromRelease=yes", "welded")]
    [InlineData("clockTurns=yes; heaterContactCloses=no; commonVolts=0 V; releasePulls=no; releaseVoltsThere=240 V", "does not end the defrost")]
    [InlineData("clockTurns=no; clockVoltsThere=0 V; releasePulls=no; releaseVoltsThere=240 V", "does not end the defrost")]
    [InlineData("clockTurns=no; clockVoltsThere=120 V; releasePulls=no; releaseVoltsThere=240 V", "does not end the defrost")]
    [InlineData("clockTurns=no; clockVoltsThere=240 V; releasePulls=no; releaseVoltsThere=0 V", "stands still")]
    public void What_has_failed_by_itself_is_not_cleared_by_a_dead_feed_of_something_else(string readings, string said)
    {
        var diagnosis = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need($"{Plate}; releaseVolts=240 V", Heaters), Named.Record<DefrostTimerReadings>(readings));
        diagnosis.Conclusion.ShouldBe(Conclusion.PartHasFailed, diagnosis.Sentence);
        diagnosis.Sentence.ShouldContain(said);
    }

    /// <summary>What stands still and waits for its own feed to be read may have failed by itself: a dead feed of something else does not clear it.</summary>
    [Theory]
    [InlineData("endedThereBy=temperature", "clockTurns=no; releaseVoltsThere=0 V", "clockVoltsThere")]
    [InlineData(Heaters, "clockTurns=no; heaterContactCloses=no; commonVolts=0 V", "clockVoltsThere")]
    [InlineData(Heaters, "heaterContactCloses=no; clockVoltsThere=0 V", "commonVolts")]
    [InlineData(Heaters, "heaterContactCloses=no; clockVoltsThere=0 V; commonVolts=120 V", "commonVoltsStand")] // stray ones, or a bad feed
    [InlineData(Heaters, "clockTurns=no; clockVoltsThere=0 V; releasePulls=no", "releaseVoltsThere")]
    [InlineData(Heaters, "releasePulls=no; heaterContactCloses=no; commonVolts=0 V", "releaseVoltsThere")]
    [InlineData(Heaters, "clockTurns=no; clockVoltsThere=0 V; heaterContactCloses=no; commonVolts=0 V; releasePulls=no; releaseVoltsThere=0 V", null)]
    public void What_waits_for_its_own_feed_is_not_cleared_by_a_dead_feed_of_something_else(string site, string readings, string? next)
    {
        var diagnosis = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need($"{Plate}; releaseVolts=240 V", site), Named.Record<DefrostTimerReadings>(readings));
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
        diagnosis.Conclusion.ShouldBe(next is null ? Conclusion.NotThePart : Conclusion.ReadNext, diagnosis.Sentence);
    }

    [Theory]
    [InlineData("", "clockTurns=yes; heaterContactCloses=no; commonVolts=238 V", "loadVolts")]
    [InlineData("clockVolts=120/240 V", "clockTurns=yes; heaterContactCloses=no; commonVolts=238 V", "loadVolts")]
    [InlineData("clockVolts=120 V", "clockTurns=yes; heaterContactCloses=no; commonVolts=110 V", "loadVolts")] // good on 120 V, stray on 240 V
    [InlineData("clockVolts=240 V", "clockTurns=yes; heaterContactCloses=no; commonVolts=120 V", "loadVolts")] // the heaters may hang on another line
    [InlineData("clockVolts=24 V", "clockTurns=yes; heaterContactCloses=no; commonVolts=20 V", "loadVolts")] // no heaters hang on its transformer
    [InlineData("clockVolts=24 V", "clockTurns=yes; heaterContactCloses=no; commonVolts=24 V", "loadVolts")]
    [InlineData("clockVolts=24 V", "clockTurns=yes; heaterContactCloses=no; commonVolts=238 V", "loadVolts")]
    [InlineData("", "clockTurns=no; clockVoltsThere=240 V", "clockVolts")]
    [InlineData("", "clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; releasePulls=no; releaseVoltsThere=240 V", "releaseVolts")]
    [InlineData(Plate, "clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; heaterAmpsThere=20 A", "heaterPower")]
    public void What_is_not_known_is_asked_for(string plate, string readings, string? next) =>
        (DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(plate, ""), Named.Record<DefrostTimerReadings>(readings)).Next?.Field).ShouldBe(next);

    [Theory]
    [InlineData("", "heaterPower")]
    [InlineData("heaterOwnVolts=240 V; loadVolts=240 V; loadPhase=single-phase", "heaterPower")]
    [InlineData("heaterPower=6 kW; heaterOwnVolts=240 V", "loadVolts")]
    [InlineData("heaterPower=6 kW", "loadVolts")]
    [InlineData("heaterPower=6 kW; loadVolts=240 V", "loadPhase")]
    [InlineData("heaterPower=6 kW; loadVolts=240 V; loadPhase=single-phase", null)] // their own volts are taken for those there
    [InlineData("heaterAmps=25 A", null)]
    public void What_is_missing_of_the_heaters_amps_is_asked_for(string site, string? next) =>
        (DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(Plate, site), Named.Record<DefrostTimerReadings>("clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; heaterAmpsThere=25 A")).Next?.Field).ShouldBe(next);

    [Theory]
    [InlineData("clockTurns=no; clockVoltsThere=480 V", "clockFedWrong")]
    [InlineData("clockTurns=yes; releasePulls=no; releaseVoltsThere=480 V", "releaseFedWrong")]
    [InlineData("clockTurns=yes; clockVoltsThere=277 V", "clockFedWrong")]
    [InlineData("clockTurns=yes; clockVoltsThere=200 V", "clockFedWrong")]
    [InlineData("clockTurns=yes; releasePulls=yes; releaseVoltsThere=277 V", "releaseFedWrong")]
    [InlineData("clockTurns=yes; clockVoltsThere=264 V; releasePulls=yes; releaseVoltsThere=264 V", null)]
    [InlineData("clockTurns=no; clockVoltsThere=240 V", null)]
    [InlineData("clockTurns=no; clockVoltsThere=120 V", null)]
    public void Wrong_volts_are_mended_before_a_new_one_burns_or_stops_too(string readings, string? mend) =>
        (DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need($"{Plate}; releaseVolts=240 V", Heaters), Named.Record<DefrostTimerReadings>(readings)).MendFirst.SingleOrDefault()?.Name).ShouldBe(mend);

    /// <summary>A clock runs from 90 to 110 % of its volts, 187.2 to 264 V of 208-240 V, a release from 85 % on: outside them it is mended, though it still does its work.</summary>
    [Theory]
    [InlineData("clockVoltsThere=277 V", ReadingVerdict.Bad)]
    [InlineData("clockVoltsThere=264.1 V", ReadingVerdict.Bad)]
    [InlineData("clockVoltsThere=264 V", null)]
    [InlineData("clockVoltsThere=187.2 V", null)]
    [InlineData("clockVoltsThere=187.1 V", ReadingVerdict.Bad)]
    [InlineData("releasePulls=yes; releaseVoltsThere=277 V", ReadingVerdict.Bad)]
    [InlineData("releasePulls=yes; releaseVoltsThere=203.9 V", ReadingVerdict.Bad)]
    [InlineData("releasePulls=yes; releaseVoltsThere=204 V", null)]
    public void Wrong_volts_are_told_though_clock_and_release_still_work(string readings, ReadingVerdict? verdict)
    {
        const string plate = "clockVolts=208-240 V; clockFrequency=60 Hz; endedBy=temperature; releaseVolts=240 V";
        var all = $"clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; {readings}";
        var diagnosis = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(plate, Heaters), Named.Record<DefrostTimerReadings>(all));
        diagnosis.Conclusion.ShouldBe(verdict is null ? Conclusion.NothingWrongFound : Conclusion.NotThePart, diagnosis.Sentence);
        Fed(diagnosis.Checks).ShouldBe(verdict);
        Fed(After(Need(plate, Heaters), plate, all)).ShouldBe(verdict);

        static ReadingVerdict? Fed(IEnumerable<ReadingCheck> checks) => checks.SingleOrDefault(check => check.Title is "Volts at its clock" or "Volts at its release")?.Verdict;
    }

    /// <summary>Heat goes with the square of the volts (trade): 150 of 240 V are 0.625, squared 0.39, of 208 V 0.721, squared 0.52; 20 of 240 V are 0.083, squared 0.007: worked by hand.</summary>
    [Theory]
    [InlineData(Heaters, "commonVolts=150 V; commonVoltsStand=yes", "150 V stand before its heater contact under a load, under 85 % of the 240 V there: heaters for 240 V give 39 % of their heat so. Mend its feed, a line that is lost or a bad joint.")]
    [InlineData(Heaters, "commonVolts=150 V; heaterAmpsThere=15.6 A", "150 V stand before its heater contact under a load, under 85 % of the 240 V there: heaters for 240 V give 39 % of their heat so. Mend its feed, a line that is lost or a bad joint.")]
    [InlineData("heaterOwnVolts=240 V; loadVolts=208 V", "commonVolts=150 V; commonVoltsStand=yes", "150 V stand before its heater contact under a load, under 85 % of the 208 V there: heaters for 240 V give 39 % of their heat so. Mend its feed, a line that is lost or a bad joint.")]
    [InlineData("loadVolts=208 V", "commonVolts=150 V; commonVoltsStand=yes", "150 V stand before its heater contact under a load, under 85 % of the 208 V there: heaters for 208 V give 52 % of their heat so. Mend its feed, a line that is lost or a bad joint.")]
    [InlineData(Heaters, "commonVolts=20 V; commonVoltsStand=yes", "20 V stand before its heater contact under a load, under 85 % of the 240 V there: heaters for 240 V give under 1 % of their heat so. Mend its feed, a line that is lost or a bad joint.")]
    [InlineData(Heaters, "commonVolts=20 V", "20 V before its heater contact are none to speak of, though its terminal was seen live: measure both again in defrost.")]
    [InlineData(Heaters, "commonVolts=0 V", "0 V before its heater contact are none to speak of, though its terminal was seen live: measure both again in defrost.")]
    [InlineData(Heaters, "commonVolts=150 V; commonVoltsStand=no", "150 V before its heater contact break down under a load, though its terminal was seen live: measure both again in defrost.")]
    public void A_bad_feed_of_the_heaters_is_told_though_the_contact_closes(string site, string feed, string said)
    {
        var readings = $"clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; {feed}";
        var diagnosis = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(Plate, site), Named.Record<DefrostTimerReadings>(readings));
        diagnosis.Sentence.ShouldBe(said);
        var mend = diagnosis.MendFirst.ShouldHaveSingleItem();
        (mend.Name, mend.Cause).ShouldBe(("heatersFedWrong", said));
        After(Need(Plate, site), Plate, readings).Single(check => check.Title == "Volts before the heater contact").Verdict.ShouldBe(ReadingVerdict.Bad);
    }

    /// <summary>Heaters that take all 25 A are fed all 240 V, whatever a meter on the wrong wire shows before their contact; 139 V are those of one of three lines to the neutral. On 200 V they take 20.83 A, of which 1.1 are 22.92: worked by hand.</summary>
    [Theory]
    [InlineData(Heaters, "commonVolts=150 V; heaterAmpsThere=25 A", Conclusion.ReadNext)]
    [InlineData(Heaters, "commonVolts=20 V; heaterAmpsThere=25 A", Conclusion.ReadNext)]
    [InlineData(Heaters, "commonVolts=0 V; heaterAmpsThere=25 A", Conclusion.ReadNext)]
    [InlineData(Heaters, "commonVolts=150 V; commonVoltsStand=no; heaterAmpsThere=25 A", Conclusion.ReadNext)]
    [InlineData("heaterAmps=25 A; loadVolts=240 V; loadPhase=three-phase", "commonVolts=139 V; heaterAmpsThere=25/25/25 A", Conclusion.ReadNext)]
    [InlineData(Heaters, "commonVolts=200 V; heaterAmpsThere=23 A", Conclusion.ReadNext)]
    [InlineData(Heaters, "commonVolts=200 V; heaterAmpsThere=22.9 A", Conclusion.NotThePart)] // as much goes with 200 V
    [InlineData(Heaters, "commonVolts=150 V; heaterAmpsThere=27.6 A", Conclusion.ReadNext)]
    [InlineData(Heaters, "commonVolts=240 V; heaterAmpsThere=25 A", Conclusion.NothingWrongFound)]
    public void Volts_that_do_not_go_with_the_heaters_amps_are_measured_again(string site, string readings, Conclusion conclusion)
    {
        var diagnosis = DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(Plate, site), Named.Record<DefrostTimerReadings>($"clockTurns=yes; heaterContactCloses=yes; fanContactOpens=yes; {readings}"));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(conclusion == Conclusion.ReadNext ? "commonVolts" : null);
        diagnosis.MendFirst.Any(mend => mend.Name == "heatersFedWrong").ShouldBe(conclusion == Conclusion.NotThePart);
    }

    /// <summary>On 150 of 240 V, 25 A are 15.63 A, of which 0.9 are 14.06: worked by hand.</summary>
    [Theory]
    [InlineData("16.7 A", 1)]
    [InlineData("25 A", 0)]
    [InlineData("15.6 A; heaterContactCloses=yes; commonVolts=150 V", 0)]
    [InlineData("15.6 A; commonVolts=150 V", 0)]
    [InlineData("14.1 A; heaterContactCloses=yes; commonVolts=150 V", 0)]
    [InlineData("14 A; heaterContactCloses=yes; commonVolts=150 V", 1)]
    [InlineData("15.6 A; heaterContactCloses=no; commonVolts=150 V", 1)] // they do not flow by the volts there
    public void A_heater_that_is_open_is_mended_first(string amps, int count) =>
        DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(Plate, Heaters), Named.Record<DefrostTimerReadings>($"clockTurns=yes; heaterAmpsThere={amps}")).MendFirst.Count(one => one.Name == "heaterOpen").ShouldBe(count);

    /// <summary>Three heaters in star on two of three lines take 0.87 of their amps whatever stands before the third: worked by hand.</summary>
    [Theory]
    [InlineData(Heaters, "15.63 A are their watts over their volts")]
    [InlineData("heaterAmps=25 A; loadVolts=240 V; loadPhase=three-phase", "25 A are due")]
    public void What_heaters_should_take_goes_with_the_volts_they_are_fed(string site, string said) =>
        DefrostTimerFamily.DefrostTimer.BeforeCondemning(Need(Plate, site), Named.Record<DefrostTimerReadings>("heaterContactCloses=yes; commonVolts=150 V; heaterAmpsThere=15.6 A")).Checks.Single(check => check.Title == "Heater amps").Sentence.ShouldContain(said);

    [Theory]
    [InlineData("timeOfDaySet=yes", "", ReadingVerdict.Good)]
    [InlineData("timeOfDaySet=no", "", ReadingVerdict.Bad)]
    [InlineData("timeOfDaySet=no", "clock=running time", ReadingVerdict.NotApplicable)]
    [InlineData("startsSet=4", "", ReadingVerdict.Good)]
    [InlineData("startsSet=3", "", ReadingVerdict.Bad)]
    [InlineData("failSafeSet=30 min", "", ReadingVerdict.Good)]
    [InlineData("failSafeSet=29.9 min", "", ReadingVerdict.Bad)]
    [InlineData("defrostTook=22 min", "", ReadingVerdict.CantTell)]
    [InlineData("fansOff=yes; fansStartAfterDelay=yes", "", ReadingVerdict.Good)]
    [InlineData("fansOff=no; fansStartAfterDelay=yes", "", ReadingVerdict.Bad)]
    [InlineData("fansOff=yes; fansStartAfterDelay=no", "", ReadingVerdict.Bad)]
    [InlineData("fansOff=yes", "", ReadingVerdict.CantTell)]
    [InlineData("seenThrough=yes", "", ReadingVerdict.Good)]
    [InlineData("seenThrough=no", "", ReadingVerdict.CantTell)]
    [InlineData("heaterContactCloses=no", "", ReadingVerdict.Bad)]
    [InlineData("heaterContactCloses=no; commonVolts=0 V", "", ReadingVerdict.Bad)]
    [InlineData("heaterContactCloses=no; commonVolts=238 V", "", ReadingVerdict.Bad)]
    [InlineData("heaterContactCloses=no; commonVolts=238 V; keptFromRelease=no", "", ReadingVerdict.CantTell)]
    [InlineData("fanContactOpens=no; keptFromRelease=no", "", ReadingVerdict.CantTell)]
    [InlineData("fanContactOpens=no; keptFromRelease=yes", "", ReadingVerdict.Bad)]
    [InlineData("releasePulls=yes", "", ReadingVerdict.Good)]
    public void A_new_one_is_set_and_seen_through(string readings, string part, ReadingVerdict verdict) =>
        After(Need(Plate, "startsNeeded=4; minutesNeeded=30 min"), part, readings).ShouldHaveSingleItem().Verdict.ShouldBe(verdict);

    [Theory]
    [InlineData("temperature", "failSafeSet=45 min; defrostTook=44.9 min", ReadingVerdict.Good)]
    [InlineData("temperature", "failSafeSet=45 min; defrostTook=45 min", ReadingVerdict.Bad)]
    [InlineData("time", "failSafeSet=45 min; defrostTook=45 min", ReadingVerdict.NotApplicable)]
    public void The_switch_on_the_coil_ends_it_before_the_fail_safe(string end, string readings, ReadingVerdict verdict) =>
        After(Need("", $"endedThereBy={end}; minutesNeeded=30 min"), "", readings).Single(check => check.Title == "End of defrost").Verdict.ShouldBe(verdict);

    [Fact]
    public void Notes_set_it_map_it_and_see_it_through()
    {
        const string plate = Plate + "; starts=1 to 6 a day; terminals=common 2, heater 3, fans 4; poles=1";
        var notes = NotesCases.Of("defrostTimer", plate, Heaters + "; startsNeeded=4; minutesNeeded=45 min", Plate + "; starts=1 to 6 a day; terminals=common 1, heater 4, fans 5; poles=1").Notes;
        notes.Single(DefrostTimerChanges.MapTerminals).Words.ShouldBe("map terminals by function: common from 2 to 1, heater from 3 to 4, fans from 4 to 5");
        notes.Steps.ShouldContain(step => step.Words == "set its starts to 4 a day, spread over the day, and its fail-safe to 45 min at least");
        notes.Steps.ShouldContain(step => step.Words == "advance it by hand into defrost: heaters on with 25 A, fans off");
        notes.Cautions.ShouldContain(caution => caution.Words.StartsWith("Clock and heaters may hang on two circuits", StringComparison.Ordinal));
        notes.Steps.Select(step => step.Stage).ShouldBeInOrder();
    }

    private static Need Need(string plate, string site) => DefrostTimerFamily.DefrostTimer.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Need;

    private static IReadOnlyList<ReadingCheck> After(Need need, string part, string readings) =>
        DefrostTimerFamily.DefrostTimer.AfterSwap(need, Named.Record<DefrostTimerSpec>(part), Named.Record<DefrostTimerReadings>(readings)).Readings;
}
