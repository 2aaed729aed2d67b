using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Switches.DefrostTimers;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers;

/// <summary>What follows from a defrost timer's plate and place, what contradicts, how it is written and drawn: worked by hand.</summary>
public sealed class DefrostTimerRulesTests
{
    /// <summary>Where the clock has volts of its own, those beside the hertz are the contacts'.</summary>
    [Theory]
    [InlineData("TIMER 240 V 60 HZ RES 40 A", "clockVolts=240 V; clockFrequency=60 Hz; resistiveAmps=40 A")]
    [InlineData("TIMER CLOCK 120 V RES 40 A 240 V 60 HZ", "clockVolts=120 V; clockFrequency=60 Hz; ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData("TIMER RES 40 A AT 240 V 60 HZ", "clockFrequency=60 Hz; ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData("TIMER 60 HZ 240 V RES 40 A", "clockFrequency=60 Hz; ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData("TIMER 240 V, 60 HZ", "clockFrequency=60 Hz; ratedVolts=240 V")] // a comma parts them
    [InlineData("TIMER 40 A RES 120 V CLOCK 60 HZ", "clockVolts=120 V; clockFrequency=60 Hz; resistiveAmps=40 A")]
    [InlineData("TIMER RES 40 A 120 V CLOCK 4 STARTS PER DAY", "clockVolts=120 V; starts=4 a day; resistiveAmps=40 A")]
    [InlineData("TIMER 40A RES 240V 60 HZ CLOCK 4 PER DAY", "clockVolts=240 V; clockFrequency=60 Hz; starts=4 a day; resistiveAmps=40 A")]
    [InlineData("TIMER RES 40 A 240 V CLOCK 120 V", "clockVolts=120 V; ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData("TIMER RES 40 A 240 V CLOCK 4 PER DAY 120 V 60 HZ", "clockVolts=120 V; clockFrequency=60 Hz; starts=4 a day; ratedVolts=240 V; resistiveAmps=40 A")]
    [InlineData("TIMER RES 40 A 240 V CLOCK MOTOR 120 V 60 HZ", "clockVolts=120 V; clockFrequency=60 Hz; ratedVolts=240 V; resistiveAmps=40 A")]
    public void Volts_right_before_the_hertz_are_the_clocks(string plate, string read) => Reads(plate).ShouldBe(read);

    /// <summary>Hours are no minutes, and every 6 hours is 4 a day: worked by hand.</summary>
    [Theory]
    [InlineData("2 HOUR", "failSafe=2 h")]
    [InlineData("FAIL SAFE 1.5 HR", "failSafe=1.5 h")]
    [InlineData("FAIL SAFE 90", "failSafe=90 min")]
    [InlineData("8 HRS", "")] // no fail-safe is so long
    [InlineData("EVERY 6 H", "starts=4 a day")]
    [InlineData("EVERY 6", "starts=4 a day")]
    [InlineData("EVERY 5 HRS", "")] // it is no whole number a day
    public void Hours_are_no_minutes(string plate, string read) => Reads(plate).ShouldBe(read);

    [Theory]
    [InlineData("clockVolts=240 V; clockFrequency=60 Hz; endedBy=temperature", "releaseFrequency=60 Hz")] // its volts only mostly follow
    [InlineData("clockVolts=240 V; clockFrequency=60 Hz; endedBy=time", "")]
    [InlineData("clockVolts=120/240 V; clockFrequency=60 Hz; endedBy=temperature", "releaseFrequency=60 Hz")]
    [InlineData("releaseVolts=24 V", "")]
    [InlineData("resistiveAmps=40 A; fullLoadAmps=20 A", "")]
    [InlineData("clockVolts=208-240 V; resistiveAmps=40 A", "")]
    [InlineData("ratedVolts=240 V; singlePhaseHorsepower=2 hp", "fullLoadAmps=12 A")] // NFPA 70 table 430.248
    public void What_a_plate_does_not_print_follows(string plate, string deduced) =>
        string.Join("; ", DefrostTimerFamily.DefrostTimer.Deduce(Named.Record<DefrostTimerSpec>(plate)).Deductions.Select(one => $"{one.Field}={one.Text}")).ShouldBe(deduced);

    /// <summary>6000 / 240 = 25; × 204 / 240 = 21.25. 30 × (240 / 204)² = 41.52.</summary>
    [Theory]
    [InlineData("heaterPower=6 kW; heaterOwnVolts=240 V; loadVolts=240 V; loadPhase=single-phase", "heaterAmps=25 A")]
    [InlineData("heaterPower=6 kW; heaterOwnVolts=240 V; loadVolts=204 V; loadPhase=single-phase", "heaterAmps=21.25 A")]
    [InlineData("heaterPower=6 kW; heaterOwnVolts=240 V; loadVolts=240 V; loadPhase=three-phase", "heaterAmps=14.43 A")]
    [InlineData("heaterPower=6 kW; loadVolts=240 V; loadPhase=single-phase", "heaterOwnVolts=240 V; heaterAmps=25 A")]
    [InlineData("heaterPower=6 kW; minutesAtHeaterVolts=30 min; loadVolts=204 V; loadPhase=single-phase", "heaterOwnVolts=204 V; heaterAmps=29.41 A")] // minutes rest on no such taking
    [InlineData("minutesAtHeaterVolts=30 min; heaterOwnVolts=240 V; loadVolts=204 V", "minutesNeeded=41.5 min")]
    [InlineData("minutesAtHeaterVolts=30 min; heaterOwnVolts=240 V; loadVolts=240 V", "minutesNeeded=30 min")]
    public void Amps_go_with_the_volts_and_minutes_against_their_square(string site, string deduced) => OfSite("", site).ShouldBe(deduced);

    [Theory]
    [InlineData("clockVolts=230 V; clockFrequency=60 Hz; endedBy=time; starts=4 a day", "clockSupplyVolts=230 V; clockSupplyFrequency=60 Hz; endedThereBy=time; startsNeeded=4")]
    [InlineData("clockVolts=208-240 V; clockFrequency=50/60 Hz; endedBy=time, temperature; starts=1 to 6 a day; contactsFor=heater, fans", "")] // whether all of its contacts are wired nobody said
    public void What_the_old_one_leaves_no_choice_about_is_there(string plate, string deduced) => OfSite(plate, "").ShouldBe(deduced);

    /// <summary>Watts are the heat at the site: 6 kW × (204 / 240)² = 4.335 kW, so that 30 minutes' worth of heat takes 30 × 6 / 4.335 = 41.5.</summary>
    [Fact]
    public void The_minutes_scaled_carry_the_same_heat()
    {
        var site = (DefrostTimerSite)Read("", "minutesAtHeaterVolts=30 min; heaterOwnVolts=240 V; loadVolts=204 V").Need.Site;
        (site.MinutesNeeded!.Value.Value.Minutes * 4.335).ShouldBe(30 * 6, 0.25);
    }

    [Theory]
    [InlineData("releaseVolts=240 V; endedBy=time", "", "releaseVolts, endedBy", "temperature is not among")]
    [InlineData("fullLoadAmps=20 A; lockedRotorAmps=10 A", "", "fullLoadAmps, lockedRotorAmps", "less than the full-load")]
    [InlineData("clockVolts=230 V", "clockSupplyVolts=206.9 V", "clockVolts", "206.9 V are there")]
    [InlineData("clockFrequency=60 Hz", "clockSupplyFrequency=50 Hz", "clockFrequency", "50 Hz are there")]
    [InlineData("releaseVolts=240 V; releaseFrequency=60 Hz", "clockSupplyFrequency=50 Hz", "releaseFrequency", "old release solenoid was for 60 Hz")]
    [InlineData("endedBy=time", "endedThereBy=temperature", "endedBy", "temperature is said to end it there")]
    [InlineData("starts=1 to 4 a day", "startsNeeded=6", "starts", "6 are said to be needed")]
    [InlineData("failSafe=4 to 40 min", "minutesNeeded=41.5 min", "failSafe", "may never have cleared the coil")]
    [InlineData("", "minutesAtHeaterVolts=30 min; heaterOwnVolts=240 V; loadVolts=204 V; minutesNeeded=30 min", "", "41.5 min at the volts there")]
    [InlineData("ratedVolts=120 V; resistiveAmps=20 A", "heaterAmps=25 A; loadVolts=120 V", "resistiveAmps", "it was too small")]
    [InlineData("ratedVolts=120 V", "fanVolts=240 V", "ratedVolts", "240 V are switched")]
    public void What_disagrees_is_told(string plate, string site, string fields, string says)
    {
        var found = Read(plate, site).Contradictions.ShouldHaveSingleItem();
        string.Join(", ", found.Fields).ShouldBe(fields);
        found.Sentence.ShouldContain(says);
    }

    [Theory]
    [InlineData("clockVolts=230 V", "clockSupplyVolts=207 V")]
    [InlineData("clockVolts=230 V", "clockSupplyVolts=253 V")]
    [InlineData("endedBy=temperature; releaseVolts=240 V", "endedThereBy=time")]
    [InlineData("failSafe=4 to 110 min; starts=1 to 6 a day", "minutesNeeded=110 min; startsNeeded=6")]
    [InlineData("", "minutesAtHeaterVolts=30 min; heaterOwnVolts=240 V; loadVolts=204 V; minutesNeeded=45 min")]
    [InlineData("contactsFor=heater, fans", "contactsNeeded=heater")]
    [InlineData("clockVolts=120 V; resistiveAmps=40 A", "loadVolts=240 V")]
    [InlineData("", "heaterPower=6 kW; minutesAtHeaterVolts=30 min; loadVolts=204 V; minutesNeeded=45 min")]
    public void What_agrees_is_not(string plate, string site) => Read(plate, site).Contradictions.ShouldBeEmpty();

    [Theory]
    [InlineData("4 to 110 min", "4 to 110 min")]
    [InlineData("4-110 MINUTES", "4 to 110 min")]
    [InlineData("0.5 to 2 h", "0.5 to 2 h")]
    [InlineData("30 min", "30 min")]
    [InlineData("30", "30 min")]
    public void Times_are_read_from_one_to_another(string text, string written)
    {
        MinutesSpan.Form.Write(MinutesSpan.Form.Read(text).Value!).ShouldBe(written);
        MinutesSpan.Form.Read(written).Value.ShouldBe(MinutesSpan.Form.Read(text).Value);
    }

    [Theory]
    [InlineData("110 to 4 min", "stands first")]
    [InlineData("4 to 110 psi", "is not times")]
    [InlineData("min", "is not times")]
    [InlineData("", "nothing is written")]
    public void What_is_no_time_is_refused(string text, string wrong) => MinutesSpan.Form.Read(text).Wrong!.ShouldContain(wrong);

    [Theory]
    [InlineData("1 to 6 a day", "1 to 6 a day")]
    [InlineData("1-6 per day", "1 to 6 a day")]
    [InlineData("4", "4 a day")]
    [InlineData("2-12 /day", "2 to 12 a day")]
    [InlineData("every 6 h", "4 a day")] // 24 / 6
    [InlineData("8 hrs", "3 a day")]
    [InlineData("every 24 hours", "1 a day")]
    public void Starts_are_read_from_one_to_another(string text, string written) => StartsADay.Form.Write(StartsADay.Form.Read(text).Value!).ShouldBe(written);

    [Theory]
    [InlineData("6 to 1 a day", "the fewest stand first")]
    [InlineData("0 a day", "is not how many starts")]
    [InlineData("97 a day", "is not how many starts")]
    [InlineData("1 to 2 to 3 a day", "is not how many starts")]
    [InlineData("often", "is not how many starts")]
    [InlineData("every 5 h", "is no whole number of starts a day")]
    [InlineData("every 0 h", "is not how many starts")]
    [InlineData("every", "is not how many starts")]
    [InlineData("", "nothing is written")]
    public void What_is_no_number_of_starts_is_refused(string text, string wrong) => StartsADay.Form.Read(text).Wrong!.ShouldContain(wrong);

    [Theory]
    [InlineData("fans 4; common 2, HEATER 3", "common 2, heater 3, fans 4")]
    [InlineData("release x", "release X")]
    [InlineData("fan 4", "fans 4")]
    public void Terminals_are_read_by_function(string text, string written) => TerminalMap.Form.Write(TerminalMap.Form.Read(text).Value!).ShouldBe(written);

    [Theory]
    [InlineData("common 2, common 3", "is given twice")]
    [InlineData("lamp 2", "is no function with its terminal")]
    [InlineData("common", "is no function with its terminal")]
    [InlineData("common 12345", "is no function with its terminal")]
    [InlineData("", "nothing is written")]
    public void What_is_no_terminal_is_refused(string text, string wrong) => TerminalMap.Form.Read(text).Wrong!.ShouldContain(wrong);

    [Fact]
    public void The_minutes_needed_are_drawn_in_the_span()
    {
        var need = Read("failSafe=4 to 40 min", "minutesAtHeaterVolts=30 min; heaterOwnVolts=240 V; loadVolts=204 V").Need;
        var scale = (Scale)DefrostTimerFamily.DefrostTimer.Drawings(need, Named.Record<DefrostTimerSpec>("failSafe=4 to 40 min")).ShouldHaveSingleItem();
        scale.Zones.Single(zone => zone.Role == Role.Good).Span.ShouldBe(new(4, 40));
        scale.Marks.Select(mark => mark.Label).ShouldBe(["needed: 41.5 min", "at the heaters' own volts: 30 min"]);
        scale.Words.ShouldContain("not within it");
        DefrostTimerFamily.DefrostTimer.Drawings(need, Named.Record<DefrostTimerSpec>("")).ShouldBeEmpty();
    }

    [Fact]
    public void Else_the_old_ones_span_is_drawn()
    {
        var scale = (Scale)DefrostTimerFamily.DefrostTimer.Drawings(Read("failSafe=10 to 60 min", "").Need, Named.Record<DefrostTimerSpec>("failSafe=4 to 110 min")).ShouldHaveSingleItem();
        scale.Marks.ShouldHaveSingleItem().At.ShouldBe(new(10, 60));
    }

    private static string OfSite(string plate, string site) => string.Join("; ", Read(plate, site).Deductions.Where(one => one.Side == Side.Site).Select(one => $"{one.Field}={one.Text}"));

    private static NeedReading Read(string plate, string site) => DefrostTimerFamily.DefrostTimer.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));

    private static string Reads(string plate) => string.Join("; ", DefrostTimerFamily.DefrostTimer.ReadNameplate(plate).Fields.Select(field => $"{field.Field.Name}={field.Text}"));
}
