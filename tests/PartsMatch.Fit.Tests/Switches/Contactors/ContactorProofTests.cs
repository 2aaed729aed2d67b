using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Switches.Contactors;

/// <summary>Contactors before they are condemned and after the swap. 85 to 110 %: IEC 60947-4-1, from memory; 65 K: IEC 60947-1, from memory; the rest is practice.</summary>
[Trait("Source", "reading.notCalledFor")]
[Trait("Source", "reading.contactorCoilVolts")]
[Trait("Source", "reading.contactorCoilOhms")]
[Trait("Source", "reading.contactorPullsIn")]
[Trait("Source", "reading.contactorChatters")]
[Trait("Source", "reading.contactsLook")]
[Trait("Source", "reading.contactsWelded")]
[Trait("Source", "reading.polesFollow")]
[Trait("Source", "reading.contactDrop")]
[Trait("Source", "reading.contactAmps")]
[Trait("Source", "reading.terminalHeat")]
public sealed class ContactorProofTests
{
    [Theory]
    [InlineData("", Conclusion.ReadNext, "coilVolts")]
    [InlineData("circuitCalls=no", Conclusion.NotThePart, null)]
    [InlineData("coilVolts=0 V", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("coilVolts=0 V; circuitCalls=yes", Conclusion.NotThePart, null)]
    [InlineData("coilVolts=20.4 V", Conclusion.ReadNext, "pullsIn")]
    [InlineData("coilVolts=20.3 V; chatters=yes", Conclusion.NotThePart, null)]
    [InlineData("coilVolts=24 V; chatters=yes; pullsIn=yes", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=yes; coilVolts=18 V; chatters=yes; dropVolts=5/4 V; legAmps=10/10 A", Conclusion.NotThePart, null)] // what is to be closed opens and closes
    [InlineData("circuitCalls=yes; coilVolts=18 V; chatters=yes; dropVolts=5/4 V", Conclusion.NotThePart, null)]
    [InlineData("circuitCalls=yes; chatters=yes; dropVolts=3/0.1 V; legAmps=12/12 A", Conclusion.ReadNext, "coilVolts")]
    [InlineData("circuitCalls=yes; coilVolts=24 V; pullsIn=yes; chatters=no; dropVolts=5/4 V; legAmps=10/10 A", Conclusion.PartHasFailed, null)]
    [InlineData("chatters=yes", Conclusion.ReadNext, "coilVolts")]
    [InlineData("pullsIn=no", Conclusion.ReadNext, "coilVolts")]
    [InlineData("coilVolts=24 V; pullsIn=no", Conclusion.ReadNext, "coilOhms")]
    [InlineData("coilVolts=24 V; pullsIn=no; coilOhms=18 Ω", Conclusion.PartHasFailed, null)]
    [InlineData("coilVolts=24 V; pullsIn=no; coilOhms=OL", Conclusion.PartHasFailed, null)]
    [InlineData("coilVolts=26.5 V", Conclusion.ReadNext, "pullsIn")]
    [InlineData("coilVolts=120 V; pullsIn=no", Conclusion.ReadNext, "coilOhms")] // too many volts excuse no dead coil
    [InlineData("coilVolts=120 V; pullsIn=no; coilOhms=OL", Conclusion.PartHasFailed, null)]
    [InlineData("coilVolts=120 V; pullsIn=no; coilOhms=18 Ω", Conclusion.PartHasFailed, null)]
    [InlineData("coilVolts=120 V; pullsIn=yes; dropVolts=0.1/0.1 V", Conclusion.NotThePart, null)]
    [InlineData("coilVolts=20.3 V; pullsIn=no", Conclusion.NotThePart, null)]
    [InlineData("coilOhms=0.9 Ω", Conclusion.PartHasFailed, null)]
    [InlineData("coilOhms=1 Ω; isBurnt=no", Conclusion.NothingWrongFound, null)]
    [InlineData("isBurnt=yes", Conclusion.PartHasFailed, null)]
    [InlineData("staysIn=yes; coilVolts=0 V", Conclusion.PartHasFailed, null)]
    [InlineData("staysIn=yes; coilVolts=24 V", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("circuitCalls=yes; staysIn=yes; coilVolts=24 V", Conclusion.ReadNext, "circuitCalls")] // the call is turned off
    [InlineData("coilVolts=24 V; pullsIn=yes", Conclusion.ReadNext, "dropVolts")]
    [InlineData("coilVolts=24 V; pullsIn=yes; dropVolts=0.1/0.5 V", Conclusion.NothingWrongFound, null)]
    [InlineData("dropVolts=0.1/0.51 V", Conclusion.ReadNext, "isBurnt")]
    [InlineData("dropVolts=1 V", Conclusion.ReadNext, "isBurnt")]
    [InlineData("dropVolts=1 V; isBurnt=no", Conclusion.NothingWrongFound, null)] // looked at, and not asked for again
    [InlineData("coilVolts=24 V; pullsIn=yes; dropVolts=0.1 V; legAmps=16 A", Conclusion.ReadNext, "fullLoadAmps")]
    [InlineData("dropVolts=1.01 V", Conclusion.ReadNext, "pullsIn")]
    [InlineData("dropVolts=1.01 V; pullsIn=yes", Conclusion.PartHasFailed, null)]
    [InlineData("dropVolts=1.01 V; legAmps=16/16 A", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=yes; coilVolts=0 V; pullsIn=no; dropVolts=240 V", Conclusion.NotThePart, null)]
    [InlineData("circuitCalls=yes; coilVolts=0 V; dropVolts=240 V", Conclusion.NotThePart, null)]
    [InlineData("circuitCalls=no; dropVolts=240 V", Conclusion.NotThePart, null)]
    [InlineData("coilVolts=24 V; pullsIn=no; dropVolts=240 V", Conclusion.ReadNext, "coilOhms")]
    [InlineData("staysIn=yes", Conclusion.PartHasFailed, null)]
    [InlineData("staysIn=no", Conclusion.ReadNext, "coilVolts")] // that it lets go says nothing of whether it pulls in
    [InlineData("circuitCalls=yes; coilVolts=24 V; staysIn=no", Conclusion.ReadNext, "pullsIn")]
    [InlineData("coilVolts=24 V; pullsIn=yes; staysIn=no", Conclusion.ReadNext, "dropVolts")]
    [InlineData("legAmps=16/0 A; coilVolts=24 V; pullsIn=yes", Conclusion.ReadNext, "dropVolts")]
    public void Readings_conclude_or_ask(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("coilVolts=24 V; coilFrequency=60 Hz", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>On one single-phase load an open pole stops all current: line volts across a pole of one that is in are an open contact, where a good one without current shows none to speak of, 1 V at most (practice). Not in, they stand across it by right.</summary>
    [Theory]
    [InlineData("circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=238/0.1 V; legAmps=0/0 A", Conclusion.PartHasFailed, null, ReadingVerdict.Bad, ReadingVerdict.Bad)]
    [InlineData("coilVolts=24 V; pullsIn=yes; dropVolts=1.01/0.1 V; legAmps=0/0 A", Conclusion.PartHasFailed, null, ReadingVerdict.Bad, ReadingVerdict.Bad)]
    [InlineData("coilVolts=24 V; pullsIn=yes; dropVolts=1/0.1 V; legAmps=0/0 A", Conclusion.NotThePart, null, ReadingVerdict.NotApplicable, ReadingVerdict.Bad)] // a fuse, a line, or what hangs on it
    [InlineData("coilVolts=24 V; pullsIn=yes; legAmps=0/0 A", Conclusion.ReadNext, "dropVolts", null, ReadingVerdict.Bad)]
    [InlineData("coilVolts=24 V; pullsIn=yes; legAmps=0 A", Conclusion.ReadNext, "dropVolts", null, ReadingVerdict.Bad)]
    [InlineData("coilVolts=24 V; dropVolts=238/0.1 V; legAmps=0/0 A", Conclusion.ReadNext, "pullsIn", ReadingVerdict.NotApplicable, ReadingVerdict.CantTell)]
    [InlineData("coilVolts=24 V; legAmps=0/0 A", Conclusion.ReadNext, "pullsIn", null, ReadingVerdict.CantTell)]
    [InlineData("coilOhms=18 Ω; legAmps=0/0 A", Conclusion.ReadNext, "pullsIn", null, ReadingVerdict.CantTell)]
    [InlineData("circuitCalls=no; coilVolts=0 V; dropVolts=238/238 V; legAmps=0/0 A", Conclusion.NotThePart, null, ReadingVerdict.NotApplicable, ReadingVerdict.NotApplicable)]
    [InlineData("circuitCalls=no; coilVolts=0 V; pullsIn=yes; staysIn=no; dropVolts=238/238 V; legAmps=0/0 A", Conclusion.NotThePart, null, ReadingVerdict.NotApplicable, ReadingVerdict.NotApplicable)] // it pulled in while it was called for
    [InlineData("circuitCalls=no; coilVolts=0 V; pullsIn=yes; staysIn=no; dropVolts=238/238 V", Conclusion.NotThePart, null, ReadingVerdict.NotApplicable, null)]
    public void A_pole_that_is_open_while_it_is_in_has_failed_though_no_current_flows(string readings, Conclusion conclusion, string? next, ReadingVerdict? drop, ReadingVerdict? amps)
    {
        var diagnosis = Diagnose("coilVolts=24 V; coilFrequency=60 Hz; ratedVolts=240 V; fullLoadAmps=30 A", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
        (diagnosis.Checks.SingleOrDefault(check => check.Title == "Volts across each pole")?.Verdict, diagnosis.Checks.SingleOrDefault(check => check.Title == "Amps of each leg")?.Verdict).ShouldBe((drop, amps));
    }

    [Theory]
    [InlineData("", "", "fullLoadAmps")]
    [InlineData("fullLoadAmps=30 A", "loadVolts=240 V", "ratedVolts")]
    [InlineData("ratedVolts=240/480 V; fullLoadAmps=30/24 A", "", "loadVolts")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=30/24 A", "loadVolts=240 V", "ratedVolts")] // two amps beside one voltage
    [InlineData("acThreeAmps=25 A; ratedVolts=400 V", "loads=compressor; loadVolts=400 V", "acEightAmps")]
    [InlineData("ratedVolts=240 V; fullLoadAmps=30 A", "loadVolts=480 V", null)]
    public void Amps_of_the_legs_ask_for_what_is_missing_of_the_rating(string plate, string site, string? next)
    {
        var need = ContactorFamily.Contactor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Need;
        var asked = ContactorFamily.Contactor.BeforeCondemning(need, Named.Record<ContactorReadings>("pullsIn=yes; dropVolts=0.1 V; isBurnt=no; legAmps=16 A")).Next;
        (asked?.Field).ShouldBe(next);
    }

    [Fact]
    public void What_could_not_be_told_is_not_called_right()
    {
        var said = Diagnose("coilVolts=24 V; coilFrequency=60 Hz", "dropVolts=0.8 V; isBurnt=no").Sentence;
        said.ShouldNotContain("is wrong.");
        said.ShouldContain("Volts across each pole: 0.8 V across the worst pole lie between 0.5 and 1 V.");
    }

    /// <summary>With volts at its coil that may hold it in, 20 % of 24 V AC (IEC 60947-4-1, from memory) or 4.8 V at least, nothing keeps it out: something feeds it that should not. In without them it is welded or stuck.</summary>
    [Theory]
    [InlineData("circuitCalls=no", Conclusion.NotThePart, null, "keeps it out")]
    [InlineData("circuitCalls=no; coilVolts=0 V; pullsIn=no", Conclusion.NotThePart, null, "keeps it out")]
    [InlineData("circuitCalls=no; coilVolts=4.7 V", Conclusion.NotThePart, null, "keeps it out")]
    [InlineData("circuitCalls=no; coilVolts=4.8 V", Conclusion.NotThePart, null, "keeps it out")] // it may hold, and pulls none in
    [InlineData("circuitCalls=no; coilVolts=5 V; pullsIn=no", Conclusion.NotThePart, null, "keeps it out")]
    [InlineData("circuitCalls=no; coilVolts=20.3 V; staysIn=no", Conclusion.NotThePart, null, "keeps it out")]
    [InlineData("circuitCalls=no; coilVolts=20.4 V; staysIn=no", Conclusion.NotThePart, null, "contact that sticks")]
    [InlineData("circuitCalls=no; coilVolts=5 V; legAmps=16/16 A", Conclusion.NotThePart, null, "contact that sticks")]
    [InlineData("circuitCalls=no; coilVolts=24 V; chatters=yes", Conclusion.PartHasFailed, null, "shading ring")]
    [InlineData("circuitCalls=no; coilVolts=12 V; chatters=yes", Conclusion.NotThePart, null, "what feeds it")]
    [InlineData("circuitCalls=no; pullsIn=no; legAmps=16/16 A", Conclusion.ReadNext, "coilVolts", "what feeds it")]
    [InlineData("circuitCalls=no; staysIn=no; legAmps=16/16 A", Conclusion.ReadNext, "coilVolts", "what feeds it")]
    [InlineData("circuitCalls=no; coilVolts=0 V; pullsIn=no; legAmps=16/16 A", Conclusion.ReadNext, "staysIn", "16 A")]
    [InlineData("circuitCalls=no; coilVolts=0 V; staysIn=no; legAmps=16/16 A", Conclusion.ReadNext, "shuntFeedsHeat", "16 A")]
    [InlineData("circuitCalls=no; coilVolts=0 V; legAmps=16/16 A", Conclusion.ReadNext, "staysIn", "16 A")]
    [InlineData("circuitCalls=no; coilVolts=0 V; pullsIn=no; staysIn=yes; legAmps=16/16 A", Conclusion.PartHasFailed, null, "welded")]
    [InlineData("circuitCalls=no; coilVolts=0 V; pullsIn=no; legAmps=0/0 A", Conclusion.NotThePart, null, "keeps it out")]
    [InlineData("circuitCalls=no; coilVolts=4.7 V; staysIn=yes", Conclusion.PartHasFailed, null, "welded")]
    [InlineData("circuitCalls=no; coilVolts=4.8 V; staysIn=yes", Conclusion.NotThePart, null, "what feeds it")]
    [InlineData("circuitCalls=yes; coilVolts=0 V; legAmps=16/16 A", Conclusion.ReadNext, "staysIn", "16 A")]
    [InlineData("coilVolts=3.5 V; legAmps=16/16 A", Conclusion.ReadNext, "staysIn", "16 A")]
    [InlineData("circuitCalls=no; coilVolts=24 V", Conclusion.NotThePart, null, "what feeds it")]
    [InlineData("circuitCalls=no; coilVolts=24 V; pullsIn=yes", Conclusion.NotThePart, null, "what feeds it")]
    [InlineData("circuitCalls=no; coilVolts=24 V; staysIn=yes", Conclusion.NotThePart, null, "what feeds it")]
    [InlineData("circuitCalls=no; coilVolts=24 V; pullsIn=no; staysIn=yes", Conclusion.ReadNext, "coilVolts", "lets go")] // a pole may be welded
    [InlineData("circuitCalls=no; coilVolts=24 V; dropVolts=240 V", Conclusion.NotThePart, null, "what feeds it")]
    [InlineData("circuitCalls=no; coilVolts=12 V; pullsIn=no", Conclusion.NotThePart, null, "what feeds it")]
    [InlineData("circuitCalls=no; coilVolts=24 V; pullsIn=no", Conclusion.ReadNext, "coilOhms", "ohms")]
    [InlineData("circuitCalls=no; coilVolts=120 V; pullsIn=no", Conclusion.ReadNext, "coilOhms", "ohms")]
    [InlineData("circuitCalls=no; coilVolts=24 V; pullsIn=no; coilOhms=18 Ω", Conclusion.PartHasFailed, null, "stuck or broken")]
    [InlineData("circuitCalls=no; pullsIn=yes", Conclusion.ReadNext, "coilVolts", "what feeds it")]
    [InlineData("circuitCalls=no; legAmps=16/16 A", Conclusion.ReadNext, "coilVolts", "what feeds it")]
    [InlineData("circuitCalls=no; coilVolts=0 V; pullsIn=yes", Conclusion.ReadNext, "staysIn", "stay closed")]
    [InlineData("circuitCalls=no; coilVolts=0 V; pullsIn=yes; staysIn=no", Conclusion.NotThePart, null, "keeps it out")]
    [InlineData("circuitCalls=no; coilVolts=0 V; pullsIn=yes; staysIn=yes", Conclusion.PartHasFailed, null, "welded")]
    public void Without_a_call_volts_at_its_coil_tell_what_to_look_for(string readings, Conclusion conclusion, string? next, string said)
    {
        var diagnosis = Diagnose("coilVolts=24 V; coilFrequency=60 Hz", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
        diagnosis.Sentence.ShouldContain(said);
    }

    /// <summary>12 of 24 V pull none in, under 85 %, though they may hold one that is (IEC 60947-4-1, from memory): what flows through one that was seen out may flow through a welded pole, unless its contacts were seen to let go.</summary>
    [Theory]
    [InlineData("", Conclusion.NotThePart, null)]
    [InlineData("legAmps=0/0 A", Conclusion.NotThePart, null)]
    [InlineData("legAmps=10/10 A", Conclusion.ReadNext, "staysIn")]
    [InlineData("legAmps=10/10 A; dropVolts=0.1/0.1 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("legAmps=10/10 A; dropVolts=0.1/0.1 V; staysIn=yes", Conclusion.ReadNext, "circuitCalls")] // the call is turned off
    [InlineData("legAmps=10/10 A; dropVolts=0.1/0.1 V; staysIn=no", Conclusion.NotThePart, null)] // low volts draw it half in
    [InlineData("legAmps=0.3 A; dropVolts=240/240 V; staysIn=no", Conclusion.NotThePart, null)]
    public void Amps_through_one_that_was_seen_out_clear_no_welded_pole(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("coilVolts=24 V; coilFrequency=60 Hz", $"circuitCalls=yes; coilVolts=12 V; pullsIn=no; {readings}");
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>A shorted coil, or one whose armature sticks half in, draws its transformer down, but right volts without it do not show that: a bad joint loses none either while nothing flows. Its ohms tell: practice.</summary>
    [Theory]
    [InlineData("", " With the power off and proved dead take a wire off the coil, and measure again with the power back on: volts that stay low are not drawn down by the coil. Where they are right, measure its ohms as well, and see whether its armature moves freely.")]
    [InlineData("; coilOhms=18 Ω", "")]
    public void Low_volts_are_measured_with_the_coil_off_them_as_well(string further, string advice)
    {
        var diagnosis = Diagnose("coilVolts=24 V; coilFrequency=60 Hz", $"circuitCalls=yes; coilVolts=12 V{further}");
        (diagnosis.Conclusion, diagnosis.Sentence).ShouldBe((Conclusion.NotThePart, $"12 V at the coil are too low; for 24 V 60 Hz it works from 20.4 to 26.4 V: look for a loaded transformer, a bad joint or a long thin wire.{advice}"));
    }

    /// <summary>A shunt round a pole passes a little, by which it heats a crankcase, while every pole is open; anything else that flows then goes past the contactor, or was measured elsewhere.</summary>
    [Theory]
    [InlineData("", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A", Conclusion.ReadNext, "staysIn")]
    [InlineData("", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; staysIn=no", Conclusion.ReadNext, "shuntFeedsHeat")]
    [InlineData("shuntFeedsHeat=yes", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A", Conclusion.ReadNext, "staysIn")] // a pole may be welded beside it
    [InlineData("shuntFeedsHeat=yes", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; dropVolts=240/0 V", Conclusion.ReadNext, "staysIn")] // that its poles are open is as it should be
    [InlineData("", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; dropVolts=240/238 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("", "circuitCalls=yes; coilVolts=0 V; legAmps=0.3 A; dropVolts=240/238 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("shuntFeedsHeat=yes", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; dropVolts=240/0 V; staysIn=no", Conclusion.NotThePart, null)]
    [InlineData("shuntFeedsHeat=yes", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; staysIn=no", Conclusion.NotThePart, null)]
    [InlineData("shuntFeedsHeat=yes", "circuitCalls=no; coilVolts=0 V; legAmps=16/16 A; dropVolts=0.1/0 V; staysIn=no", Conclusion.PartHasFailed, null)] // the pole beside the shunt is closed, too
    [InlineData("shuntFeedsHeat=yes", "circuitCalls=yes; coilVolts=0 V; legAmps=0.3 A; staysIn=no", Conclusion.NotThePart, null)]
    [InlineData("shuntFeedsHeat=yes", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; staysIn=yes", Conclusion.PartHasFailed, null)]
    [InlineData("shuntFeedsHeat=yes", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; legAmps=16 A; staysIn=no; dropVolts=0.1 V", Conclusion.ReadNext, "fullLoadAmps")] // by its coil it is in
    [InlineData("shuntFeedsHeat=no", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; staysIn=no", Conclusion.ReadNext, "dropVolts")]
    [InlineData("shuntFeedsHeat=no", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; staysIn=no; dropVolts=240/238 V", Conclusion.NotThePart, null)]
    [InlineData("shuntFeedsHeat=no", "circuitCalls=no; coilVolts=0 V; pullsIn=yes; legAmps=0.3 A; staysIn=no; dropVolts=240/238 V", Conclusion.NotThePart, null)] // it pulled in while it was called for
    [InlineData("shuntFeedsHeat=no", "circuitCalls=no; coilVolts=0 V; legAmps=16 A; staysIn=no; dropVolts=240/0.1 V", Conclusion.PartHasFailed, null)]
    [InlineData("shuntFeedsHeat=no", "circuitCalls=no; coilVolts=0 V; legAmps=16 A; staysIn=no; dropVolts=1 V", Conclusion.PartHasFailed, null)]
    public void What_a_shunt_passes_is_of_no_welded_pole(string site, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("coilVolts=24 V; coilFrequency=60 Hz", readings, site);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>A normally closed contact is closed without power and open with it: that is what the words mean. Of change-over contacts that is so of the side that is wired.</summary>
    [Theory]
    [InlineData("circuitCalls=no; coilVolts=0 V; legAmps=6 A", Conclusion.ReadNext, "dropVolts")]
    [InlineData("circuitCalls=no; coilVolts=0 V; legAmps=6 A; staysIn=yes", Conclusion.ReadNext, "dropVolts")]
    [InlineData("circuitCalls=no; coilVolts=0 V; legAmps=6 A; staysIn=yes; dropVolts=0.1 V", Conclusion.NothingWrongFound, null)]
    [InlineData("circuitCalls=no; coilVolts=0 V; dropVolts=120 V", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no; coilVolts=0 V; dropVolts=120 V; legAmps=0 A", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no; coilVolts=0 V; legAmps=0 A", Conclusion.ReadNext, "dropVolts")]
    [InlineData("coilVolts=0 V; staysIn=no", Conclusion.ReadNext, "dropVolts")]
    [InlineData("circuitCalls=no", Conclusion.ReadNext, "dropVolts")]
    [InlineData("circuitCalls=no; pullsIn=yes", Conclusion.ReadNext, "coilVolts")]
    [InlineData("circuitCalls=no; coilVolts=0 V; pullsIn=yes", Conclusion.ReadNext, "dropVolts")] // it pulled in while it was called for
    [InlineData("circuitCalls=no; coilVolts=5 V", Conclusion.ReadNext, "dropVolts")] // it pulls none in
    [InlineData("circuitCalls=no; dropVolts=120 V", Conclusion.ReadNext, "coilVolts")] // what sticks may feed it, and opens its poles rightly
    [InlineData("circuitCalls=no; dropVolts=120 V; legAmps=0 A", Conclusion.ReadNext, "coilVolts")]
    [InlineData("circuitCalls=no; pullsIn=yes; dropVolts=120 V", Conclusion.ReadNext, "coilVolts")]
    [InlineData("circuitCalls=no; pullsIn=no; dropVolts=120 V", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no; dropVolts=0.1 V", Conclusion.NothingWrongFound, null)]
    [InlineData("circuitCalls=no; coilVolts=24 V; dropVolts=120 V", Conclusion.NotThePart, null)] // something feeds it
    [InlineData("circuitCalls=yes; coilVolts=24 V; pullsIn=yes", Conclusion.ReadNext, "legAmps")]
    [InlineData("circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=120 V", Conclusion.NothingWrongFound, null)]
    [InlineData("circuitCalls=yes; coilVolts=24 V; pullsIn=yes; legAmps=0 A", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("circuitCalls=yes; coilVolts=24 V; pullsIn=yes; legAmps=6 A", Conclusion.PartHasFailed, null)]
    [InlineData("coilVolts=24 V; pullsIn=yes; legAmps=6 A", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("circuitCalls=yes; pullsIn=yes; legAmps=6 A", Conclusion.ReadNext, "coilVolts")]
    [InlineData("circuitCalls=yes; coilVolts=24 V; pullsIn=no; coilOhms=18 Ω", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=yes; coilVolts=0 V", Conclusion.NotThePart, null)]
    [InlineData("dropVolts=120 V", Conclusion.ReadNext, "coilVolts")]
    [InlineData("coilVolts=24 V; dropVolts=120 V", Conclusion.ReadNext, "pullsIn")]
    [InlineData("coilVolts=24 V; dropVolts=120 V; pullsIn=no", Conclusion.PartHasFailed, null)] // neither armature nor pole does as it is to
    public void Normally_closed_poles_are_closed_without_power_and_open_with_it(string readings, Conclusion conclusion, string? next)
    {
        foreach (var (plate, site) in new[] { ("contactAction=normally closed", ""), ("contactAction=change-over", "sidesWired=normally closed"), ("", "sidesWired=normally closed") })
        {
            var diagnosis = Diagnose($"coilVolts=24 V; coilFrequency=60 Hz; ratedVolts=240 V; fullLoadAmps=30 A; {plate}", readings, site);
            diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
            (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
        }
    }

    /// <summary>A plate that says NC somewhere is not silent: that most poles close (practice) is not taken of it, and condemns and clears none.</summary>
    [Theory]
    [InlineData("RELAY SPNO 10 A RES SPNC 10 A RES 120 V COIL 24 V 60 HZ", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=0.1/120 V")]
    [InlineData("RELAY SPNO 10 A RES SPNC 10 A RES 120 V COIL 24 V 60 HZ", "circuitCalls=no; coilVolts=0 V; staysIn=yes")]
    [InlineData("RELAY DPST 2 NC COIL 24 V 60 HZ", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=120/120 V")]
    [InlineData("RELAY DPST 2 NC COIL 24 V 60 HZ", "circuitCalls=no; coilVolts=0 V; staysIn=yes")]
    [InlineData("RELAY 2 NC COIL 24 V 60 HZ", "circuitCalls=no; coilVolts=0 V; staysIn=yes")]
    [InlineData("RELAY COIL 24 V 60 HZ NC", "circuitCalls=no; coilVolts=0 V; staysIn=yes")]
    [InlineData("CONTACTOR 3 POLE NC 21-22 COIL 24 V 60 HZ", "circuitCalls=no; coilVolts=0 V")]
    [InlineData("CONTACTOR 3 POLE NC INTERLOCK COIL 24 V 60 HZ", "coilVolts=24 V; pullsIn=yes; legAmps=0/0/0 A; dropVolts=240/240/240 V")]
    public void What_a_plate_leaves_in_doubt_is_asked(string plate, string readings)
    {
        var need = ContactorFamily.Contactor.ReadNeed(new(plate, [], []));
        var diagnosis = ContactorFamily.Contactor.BeforeCondemning(need.Need, Named.Record<ContactorReadings>(readings));
        (diagnosis.Conclusion, diagnosis.Next?.Side, diagnosis.Next?.Field).ShouldBe((Conclusion.ReadNext, Side.Plate, "contactAction"), diagnosis.Sentence);
        diagnosis.Checks.ShouldAllBe(check => check.Title != "First reading"); // it checks nothing
        var typed = ContactorFamily.Contactor.ReadNeed(new(plate, Named.Texts("contactAction=normally open"), []));
        (ContactorFamily.Contactor.BeforeCondemning(typed.Need, Named.Record<ContactorReadings>(readings)).Next?.Field).ShouldNotBe("contactAction");
    }

    /// <summary>Of a pole that closes and one that opens neither stands for both: what is wired is asked.</summary>
    [Theory]
    [InlineData("", "staysIn=yes; coilVolts=0 V; circuitCalls=no", Conclusion.ReadNext, "sidesWired")]
    [InlineData("", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=0.1/120 V", Conclusion.ReadNext, "sidesWired")]
    [InlineData("sidesWired=both", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=0.1/120 V", Conclusion.NothingWrongFound, null)]
    [InlineData("sidesWired=NO", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=120 V", Conclusion.PartHasFailed, null)]
    [InlineData("sidesWired=NC", "circuitCalls=no; coilVolts=0 V; dropVolts=120 V", Conclusion.PartHasFailed, null)]
    [InlineData("", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; legAmps=16/0 A", Conclusion.ReadNext, "sidesWired")]
    [InlineData("sidesWired=both", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; legAmps=16/0 A; dropVolts=0.1/120 V", Conclusion.NothingWrongFound, null)] // one of the two is always open
    [InlineData("sidesWired=both", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; legAmps=31/0 A; dropVolts=0.1/120 V", Conclusion.NotThePart, null)]
    [InlineData("sidesWired=NO", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; legAmps=16/0 A", Conclusion.ReadNext, "dropVolts")]
    public void One_of_each_is_judged_by_the_pole_that_is_wired(string site, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("coilVolts=24 V; coilFrequency=60 Hz; ratedVolts=240 V; fullLoadAmps=30 A; contactAction=one of each", readings, site);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Which of two sides is wired tells whether they are to be closed; with both wired one of them always is.</summary>
    [Theory]
    [InlineData("", "staysIn=yes", Conclusion.ReadNext, "sidesWired")]
    [InlineData("", "circuitCalls=no; coilVolts=0 V", Conclusion.ReadNext, "sidesWired")]
    [InlineData("", "circuitCalls=no; coilVolts=0 V; legAmps=6 A", Conclusion.ReadNext, "sidesWired")]
    [InlineData("", "coilVolts=24 V; pullsIn=yes", Conclusion.ReadNext, "sidesWired")]
    [InlineData("", "coilVolts=24 V; pullsIn=yes; dropVolts=120 V", Conclusion.ReadNext, "sidesWired")]
    [InlineData("", "coilVolts=24 V; pullsIn=yes; dropVolts=0.1 V", Conclusion.NothingWrongFound, null)]
    [InlineData("sidesWired=normally open", "staysIn=yes", Conclusion.PartHasFailed, null)]
    [InlineData("sidesWired=normally open", "circuitCalls=no; coilVolts=0 V", Conclusion.NotThePart, null)]
    [InlineData("sidesWired=normally open", "coilVolts=24 V; pullsIn=yes; dropVolts=120 V", Conclusion.PartHasFailed, null)]
    [InlineData("sidesWired=both", "staysIn=yes; coilVolts=0 V; circuitCalls=no", Conclusion.ReadNext, "dropVolts")]
    [InlineData("sidesWired=both", "circuitCalls=no; coilVolts=0 V; legAmps=6 A; dropVolts=0.1 V", Conclusion.NothingWrongFound, null)]
    [InlineData("sidesWired=both", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=120 V", Conclusion.NothingWrongFound, null)] // of the side that is open
    [InlineData("sidesWired=both", "circuitCalls=no; coilVolts=0 V; legAmps=6/0 A; dropVolts=0.1/120 V", Conclusion.NothingWrongFound, null)]
    public void Change_over_contacts_are_judged_by_the_side_that_is_wired(string site, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("coilVolts=24 V; coilFrequency=60 Hz; ratedVolts=240 V; fullLoadAmps=30 A; contactAction=change-over", readings, site);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Across an open pole the line's volts stand, across a welded one hardly any; but hardly any stand across a good one, too, behind which another open pole cuts off the load: practice. So they neither clear it nor condemn it.</summary>
    [Theory]
    [InlineData("", "circuitCalls=no; coilVolts=0 V; dropVolts=0.1/240 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("", "circuitCalls=no; coilVolts=0 V; dropVolts=1/240 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("", "circuitCalls=no; coilVolts=0 V; dropVolts=1.01/240 V", Conclusion.NotThePart, null)]
    [InlineData("", "circuitCalls=no; dropVolts=0.1/240 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("", "circuitCalls=no; coilVolts=0 V; pullsIn=no; dropVolts=0.1/240 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("", "circuitCalls=yes; coilVolts=0 V; dropVolts=0.1/240 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("", "circuitCalls=no; coilVolts=0 V; dropVolts=0.1/240 V; legAmps=0/0 A", Conclusion.ReadNext, "staysIn")] // the other pole stops all of it
    [InlineData("", "circuitCalls=no; coilVolts=0 V; dropVolts=0.1/240 V; staysIn=yes", Conclusion.PartHasFailed, null)]
    [InlineData("", "circuitCalls=no; coilVolts=0 V; dropVolts=0.1/240 V; staysIn=no", Conclusion.NotThePart, null)]
    [InlineData("", "circuitCalls=yes; coilVolts=0 V; dropVolts=0.1/240 V; staysIn=no", Conclusion.NotThePart, null)]
    [InlineData("", "circuitCalls=no; coilVolts=0 V; dropVolts=0.1/240 V; polesFollow=yes", Conclusion.NotThePart, null)] // by ohms each opens
    [InlineData("", "circuitCalls=yes; coilVolts=0 V; dropVolts=0/0 V; polesFollow=yes", Conclusion.NotThePart, null)]
    [InlineData("", "circuitCalls=yes; coilVolts=0 V; dropVolts=0/0 V; polesFollow=no", Conclusion.PartHasFailed, null)]
    [InlineData("", "circuitCalls=yes; coilVolts=12 V; pullsIn=no; dropVolts=0.1/240 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("", "circuitCalls=yes; coilVolts=12 V; pullsIn=no; dropVolts=240/240 V", Conclusion.NotThePart, null)]
    [InlineData("", "circuitCalls=yes; coilVolts=12 V; dropVolts=0.1/240 V", Conclusion.NotThePart, null)] // they may hold it in
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=0.1 V", Conclusion.ReadNext, "legAmps")]
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=16 V; pullsIn=no; dropVolts=120 V", Conclusion.NotThePart, null)] // half in, which opens them
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=16 V; pullsIn=no; chatters=yes; dropVolts=120 V; legAmps=0 A", Conclusion.NotThePart, null)]
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=1 V", Conclusion.ReadNext, "legAmps")]
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=1.01 V", Conclusion.NothingWrongFound, null)]
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=0.1 V; legAmps=6 A", Conclusion.PartHasFailed, null)]
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=0.1 V; legAmps=0 A", Conclusion.ReadNext, "polesFollow")] // what hangs on it may be cut off
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=0/240 V", Conclusion.ReadNext, "legAmps")]
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=0/240 V; legAmps=0/0 A", Conclusion.ReadNext, "polesFollow")] // the other pole stops all of it
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=0/240 V; legAmps=0/0 A; polesFollow=no", Conclusion.PartHasFailed, null)]
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=0/240 V; legAmps=0/0 A; polesFollow=yes", Conclusion.NothingWrongFound, null)]
    [InlineData("contactAction=NC", "circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=240/240 V; legAmps=0/0 A", Conclusion.NothingWrongFound, null)]
    public void Hardly_any_volts_across_a_pole_that_is_to_be_open_clear_no_welded_one(string plate, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose($"coilVolts=24 V; coilFrequency=60 Hz; ratedVolts=240 V; fullLoadAmps=30 A; {plate}", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>A shunt in the place of a pole has no volts across it by right: its pole alone tells.</summary>
    [Theory]
    [InlineData("poleCount=1P with shunt", "", "circuitCalls=no; coilVolts=0 V; dropVolts=240/0 V", Conclusion.NotThePart, null)]
    [InlineData("poleCount=1P with shunt", "", "circuitCalls=yes; coilVolts=0 V; dropVolts=0/240 V", Conclusion.NotThePart, null)]
    [InlineData("", "shuntFeedsHeat=yes", "circuitCalls=no; coilVolts=0 V; dropVolts=240/0 V", Conclusion.NotThePart, null)]
    [InlineData("poleCount=2P", "shuntFeedsHeat=yes", "circuitCalls=no; coilVolts=0 V; dropVolts=240/0 V", Conclusion.NotThePart, null)] // round one of two
    [InlineData("poleCount=1P with shunt", "", "dropVolts=240 V; legAmps=0.3/0.3 A", Conclusion.ReadNext, "pullsIn")] // what the shunt passes shows nothing in
    [InlineData("poleCount=1P with shunt", "", "dropVolts=240/0 V; legAmps=0.3/0.3 A; pullsIn=yes", Conclusion.PartHasFailed, null)]
    [InlineData("poleCount=1P with shunt", "", "circuitCalls=no; coilVolts=0 V; dropVolts=0.1/0 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("poleCount=3P", "shuntFeedsHeat=yes", "circuitCalls=no; coilVolts=0 V; dropVolts=240/0.1/0 V", Conclusion.ReadNext, "staysIn")] // round one of three: the second looks welded
    [InlineData("poleCount=3P", "shuntFeedsHeat=yes", "circuitCalls=no; coilVolts=0 V; dropVolts=240/0/240 V", Conclusion.NotThePart, null)]
    [InlineData("poleCount=4P", "shuntFeedsHeat=yes", "circuitCalls=yes; coilVolts=0 V; dropVolts=0/240/0.1 V", Conclusion.ReadNext, "staysIn")]
    [InlineData("poleCount=1P with shunt", "shuntFeedsHeat=no", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; staysIn=no; dropVolts=240/0 V", Conclusion.NotThePart, null)]
    [InlineData("poleCount=2P", "shuntFeedsHeat=no", "circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; staysIn=no; dropVolts=240/0 V", Conclusion.PartHasFailed, null)]
    public void A_shunt_is_no_welded_pole(string plate, string site, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose($"coilVolts=24 V; coilFrequency=60 Hz; {plate}", readings, site);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>The volts of the pole are told, not those of the shunt beside it, as the least of all.</summary>
    [Theory]
    [InlineData("poleCount=1P with shunt", "dropVolts=240/0 V", "240 V stand across the pole beside its shunt, so that it is open")]
    [InlineData("poleCount=2P", "dropVolts=240/120 V", "120 V at least stand across its poles, so that they are open")]
    public void What_flows_past_open_poles_is_told_with_the_volts_across_them(string plate, string drop, string across)
    {
        var diagnosis = Diagnose($"coilVolts=24 V; coilFrequency=60 Hz; {plate}", $"circuitCalls=no; coilVolts=0 V; legAmps=0.3 A; staysIn=no; {drop}", "shuntFeedsHeat=no");
        (diagnosis.Conclusion, diagnosis.Sentence).ShouldBe((Conclusion.NotThePart, $"0.3 A flow, and {across}: what flows goes past it. Look for what else feeds the load."));
    }

    /// <summary>What its shunt may pass shows none in, nor do they once it was seen out: the volts at its coil are asked for all the same.</summary>
    [Theory]
    [InlineData("poleCount=1P with shunt", "", "", "0.3 A flow: one of its poles is closed, or a shunt passes them.")]
    [InlineData("", "shuntFeedsHeat=yes", "", "0.3 A flow: one of its poles is closed, or a shunt passes them.")]
    [InlineData("", "", "; pullsIn=no", "0.3 A flow: one of its poles is closed, or a shunt passes them.")]
    [InlineData("poleCount=1P with shunt", "", "; pullsIn=yes", "it is in.")]
    [InlineData("", "", "", "it is in.")]
    public void Amps_that_a_shunt_may_pass_are_not_said_to_show_it_in(string plate, string site, string further, string sentence)
    {
        var diagnosis = Diagnose($"coilVolts=24 V; coilFrequency=60 Hz; {plate}", $"circuitCalls=no; legAmps=0.3 A{further}", site);
        diagnosis.Checks.Single(check => check.Title == "Called for").Sentence.ShouldBe($"It is not called for, and {sentence}");
        (diagnosis.Conclusion, diagnosis.Next?.Field).ShouldBe((Conclusion.ReadNext, "coilVolts"), diagnosis.Sentence);
    }

    /// <summary>Contacts that are to be closed without volts at the coil, and were not seen so, are cleared by no few volts while nothing flows: those of a dead line or a load that is cut off are none either. What flows, or ohms, show them closed: practice.</summary>
    [Theory]
    [InlineData("circuitCalls=no; coilVolts=0 V; staysIn=no", Conclusion.ReadNext, "dropVolts")]
    [InlineData("circuitCalls=yes; coilVolts=0 V; staysIn=no", Conclusion.ReadNext, "dropVolts")] // that its circuit is dead clears none that is open without it
    [InlineData("circuitCalls=yes; coilVolts=0 V; staysIn=no; dropVolts=240/0 V", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=yes; coilVolts=0 V; staysIn=no; dropVolts=0/0 V", Conclusion.ReadNext, "legAmps")]
    [InlineData("circuitCalls=yes; coilVolts=0 V; staysIn=no; dropVolts=0.1/0.1 V; legAmps=6/6 A", Conclusion.NotThePart, null)]
    [InlineData("circuitCalls=yes; coilVolts=0 V; staysIn=yes", Conclusion.NotThePart, null)]
    [InlineData("circuitCalls=no; coilVolts=0 V; staysIn=no; dropVolts=0/0 V", Conclusion.ReadNext, "legAmps")]
    [InlineData("circuitCalls=no; coilVolts=0 V; staysIn=no; dropVolts=0.5/0 V", Conclusion.ReadNext, "legAmps")]
    [InlineData("circuitCalls=no; coilVolts=0 V; staysIn=no; dropVolts=1/0 V; isBurnt=no", Conclusion.ReadNext, "legAmps")]
    [InlineData("circuitCalls=no; coilVolts=0 V; staysIn=no; dropVolts=1.01/0 V", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no; coilVolts=0 V; staysIn=no; dropVolts=0/0 V; legAmps=0/0 A", Conclusion.ReadNext, "polesFollow")]
    [InlineData("circuitCalls=no; coilVolts=0 V; staysIn=no; dropVolts=0/0 V; legAmps=0/0 A; polesFollow=no", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no; coilVolts=0 V; staysIn=no; dropVolts=0/0 V; legAmps=0/0 A; polesFollow=yes", Conclusion.NotThePart, null)] // a fuse, a line, or what hangs on it
    [InlineData("circuitCalls=no; coilVolts=0 V; staysIn=no; dropVolts=0.1/0.1 V; legAmps=6/6 A", Conclusion.NothingWrongFound, null)]
    [InlineData("coilVolts=0 V; pullsIn=yes; circuitCalls=no; dropVolts=0/0 V", Conclusion.ReadNext, "legAmps")]
    [InlineData("coilVolts=0 V; pullsIn=yes; circuitCalls=no; dropVolts=0/0 V; legAmps=0/0 A", Conclusion.ReadNext, "polesFollow")]
    public void Few_volts_without_current_clear_no_normally_closed_contacts_that_were_not_seen_closed(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("coilVolts=24 V; coilFrequency=60 Hz; ratedVolts=240 V; fullLoadAmps=30 A; contactAction=NC; poleCount=2P", readings, "loadVolts=240 V");
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    [Fact]
    public void After_the_swap_they_are_told()
    {
        var check = ContactorFamily.Contactor.AfterSwap(ContactorFamily.Contactor.ReadNeed(new(null, [], [])).Need, Named.Record<ContactorSpec>("coilVolts=24 V; coilFrequency=60 Hz"), Named.Record<ContactorReadings>("circuitCalls=no; coilVolts=0 V; dropVolts=0.1/240 V")).Readings.Single(one => one.Title == "Volts across each pole");
        check.Verdict.ShouldBe(ReadingVerdict.CantTell);
        check.Sentence.ShouldBe("0.1 V stand across a pole that is to be open: across an open one the line's volts stand, across a welded one hardly any, or across one behind which the load is cut off.");
    }

    [Theory]
    [InlineData("contactAction=normally closed")]
    [InlineData("contactAction=change-over")] // its other side stays unused
    public void A_new_one_s_normally_closed_poles_are_closed_without_power(string part)
    {
        var need = ContactorFamily.Contactor.ReadNeed(new(null, Named.Texts("contactAction=normally closed"), Named.Texts("loadVolts=240 V"))).Need;
        var spec = Named.Record<ContactorSpec>($"coilVolts=24 V; coilFrequency=60 Hz; ratedVolts=240 V; fullLoadAmps=30 A; {part}");
        Said("circuitCalls=no; coilVolts=0 V; legAmps=6 A; staysIn=yes; dropVolts=0.1 V").ShouldNotContain(ReadingVerdict.Bad);
        Said("circuitCalls=yes; coilVolts=24 V; pullsIn=yes; dropVolts=240 V").ShouldNotContain(ReadingVerdict.Bad);
        Said("circuitCalls=no; coilVolts=0 V; dropVolts=240 V").ShouldContain(ReadingVerdict.Bad);
        Said("circuitCalls=no; dropVolts=240 V").ShouldNotContain(ReadingVerdict.Bad);

        IEnumerable<ReadingVerdict> Said(string readings) => ContactorFamily.Contactor.AfterSwap(need, spec, Named.Record<ContactorReadings>(readings)).Readings.Select(check => check.Verdict);
    }

    [Theory]
    [InlineData("staysIn=yes; coilVolts=24 V")]
    [InlineData("circuitCalls=no; coilVolts=24 V; pullsIn=yes")]
    public void Without_the_coil_s_marking_volts_there_may_be_what_holds_it_in(string readings)
    {
        var diagnosis = Diagnose("", readings);
        diagnosis.Conclusion.ShouldBe(Conclusion.ReadNext, diagnosis.Sentence);
        (diagnosis.Next?.Side, diagnosis.Next?.Field).ShouldBe((Side.Plate, "coilVolts"));
    }

    /// <summary>IEC 60947-4-1, from memory: under 20 % of its volts an alternating-current contactor has let go, and under 10 % one for direct current: 4.8 and 2.4 V of 24 V.</summary>
    [Theory]
    [InlineData("coilCurrent=AC", "", "4.7 V", Conclusion.PartHasFailed, null)]
    [InlineData("coilCurrent=AC", "", "4.8 V", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("coilCurrent=DC", "", "2.3 V", Conclusion.PartHasFailed, null)]
    [InlineData("coilCurrent=DC", "", "2.4 V", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("", "", "2.3 V", Conclusion.PartHasFailed, null)]
    [InlineData("", "", "3.5 V", Conclusion.ReadNext, "coilCurrent")]
    [InlineData("", "controlCurrent=AC", "3.5 V", Conclusion.PartHasFailed, null)]
    [InlineData("", "", "4.8 V", Conclusion.ReadNext, "circuitCalls")]
    public void Stray_volts_hold_no_contactor_in(string coil, string site, string volts, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose($"coilVolts=24 V; {coil}", $"staysIn=yes; coilVolts={volts}", site);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Alternating current does not pull a coil for direct current as it should, and direct current burns one for alternating current: practice.</summary>
    [Theory]
    [InlineData("coilCurrent=DC", "controlCurrent=AC", "coilVolts=24 V; pullsIn=no; coilOhms=60 Ω", Conclusion.NotThePart, "24 V AC at a coil for DC")]
    [InlineData("coilCurrent=DC", "controlFrequency=60 Hz", "coilVolts=24 V; pullsIn=no; coilOhms=60 Ω", Conclusion.NotThePart, "24 V AC at a coil for DC")]
    [InlineData("coilCurrent=DC", "controlCurrent=AC", "coilVolts=120 V; pullsIn=no; coilOhms=60 Ω", Conclusion.NotThePart, "120 V AC at a coil for DC")]
    [InlineData("coilCurrent=DC", "controlCurrent=AC", "coilVolts=24 V; chatters=yes", Conclusion.NotThePart, "24 V AC at a coil for DC")]
    [InlineData("coilFrequency=60 Hz", "controlCurrent=DC", "coilVolts=24 V; pullsIn=no; coilOhms=18 Ω", Conclusion.NotThePart, "24 V DC at a coil for AC")]
    [InlineData("coilFrequency=60 Hz", "controlCurrent=DC", "coilVolts=24 V; pullsIn=no; coilOhms=open", Conclusion.PartHasFailed, "open")]
    [InlineData("coilCurrent=DC", "", "coilVolts=24 V; pullsIn=no; coilOhms=60 Ω", Conclusion.PartHasFailed, "stuck or broken")]
    public void A_coil_on_the_other_kind_of_current_has_not_failed_by_not_pulling(string coil, string site, string readings, Conclusion conclusion, string said)
    {
        var diagnosis = Diagnose($"coilVolts=24 V; {coil}", $"circuitCalls=yes; {readings}", site);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        diagnosis.Sentence.ShouldContain(said);
        diagnosis.MendFirst.Any(mend => mend.Name == "coilFedWrong").ShouldBe(site.Length > 0);
    }

    [Theory]
    [InlineData("coilVolts=12 V", 1)]
    [InlineData("circuitCalls=yes; coilVolts=12 V", 1)]
    [InlineData("circuitCalls=no; coilVolts=12 V", 0)] // nothing is to feed it at all
    [InlineData("circuitCalls=no; coilVolts=3.5 V; staysIn=yes", 0)]
    public void No_control_supply_is_mended_that_is_not_to_feed_it(string readings, int count) =>
        Diagnose("coilVolts=24 V; coilFrequency=60 Hz", readings).MendFirst.Count(mend => mend.Name == "coilFedWrong").ShouldBe(count);

    // A fifth of 18 Ω either way, worked by hand: 14.4 to 21.6 Ω.
    [Theory]
    [InlineData("14.4 Ω", ReadingVerdict.Good)]
    [InlineData("14.3 Ω", ReadingVerdict.Bad)]
    [InlineData("21.6 Ω", ReadingVerdict.Good)]
    [InlineData("21.7 Ω", ReadingVerdict.Bad)]
    public void Marked_ohms_hold_within_a_fifth(string ohms, ReadingVerdict verdict) =>
        Diagnose("coilVolts=24 V; coilOhms=18 Ω", $"coilOhms={ohms}").Checks.Single(check => check.Title == "Ohms of the coil").Verdict.ShouldBe(verdict);

    [Theory]
    [InlineData("coilVolts=26.4 V", ReadingVerdict.Good)]
    [InlineData("coilVolts=26.5 V", ReadingVerdict.Bad)]
    [InlineData("coilVolts=20.4 V", ReadingVerdict.Good)]
    [InlineData("coilVolts=20.3 V", ReadingVerdict.Bad)]
    public void The_coil_of_a_new_one_is_fed_from_85_to_110_percent(string readings, ReadingVerdict verdict) => Checked(readings, "Volts at the coil").ShouldBe(verdict);

    [Theory]
    [InlineData("legAmps=30 A", ReadingVerdict.Good)]
    [InlineData("legAmps=29/30.1 A", ReadingVerdict.Bad)]
    public void The_legs_of_a_new_one_stay_within_its_rating(string readings, ReadingVerdict verdict) => Checked(readings, "Amps of each leg").ShouldBe(verdict);

    [Theory]
    [InlineData("terminalTemperature=105 °C; boxAir=40 °C", ReadingVerdict.Good)]
    [InlineData("terminalTemperature=105.1 °C; boxAir=40 °C", ReadingVerdict.Bad)]
    [InlineData("terminalTemperature=105 °C", ReadingVerdict.CantTell)]
    public void Its_terminals_rise_by_65_K_at_most(string readings, ReadingVerdict verdict) => Checked(readings, "Heat of terminals").ShouldBe(verdict);

    [Theory]
    [InlineData("dropVolts=0.5 V; legAmps=16 A", ReadingVerdict.Good)]
    [InlineData("dropVolts=1.01 V; legAmps=16 A", ReadingVerdict.Bad)]
    [InlineData("dropVolts=240 V; legAmps=0 A", ReadingVerdict.NotApplicable)]
    [InlineData("dropVolts=240 V; legAmps=0 A; pullsIn=yes", ReadingVerdict.Bad)]
    public void What_is_lost_across_a_pole_counts_while_current_flows(string readings, ReadingVerdict verdict) => Checked(readings, "Volts across each pole").ShouldBe(verdict);

    [Fact]
    public void A_coil_that_was_changed_is_judged_by_its_own_volts()
    {
        var need = ContactorFamily.Contactor.ReadNeed(new(null, Named.Texts("coilVolts=24 V; coilFrequency=60 Hz"), Named.Texts("controlVolts=24 V"))).Need;
        var part = Named.Record<ContactorSpec>("coilVolts=120 V; coilFrequency=60 Hz; furtherCoils=24 V 60 Hz = QV-24");
        ContactorFamily.Contactor.AfterSwap(need, part, Named.Record<ContactorReadings>("coilVolts=25 V")).Readings.Single().Verdict.ShouldBe(ReadingVerdict.Good);
    }

    [Fact]
    public void What_killed_it_is_named()
    {
        Diagnose("coilVolts=24 V", "coilVolts=30 V; coilOhms=open").MendFirst.Single().Name.ShouldBe("coilFedWrong");
        Diagnose("ratedVolts=240 V; fullLoadAmps=20 A", "isBurnt=yes", "loadVolts=240 V; motors=14/73 + 7/35 A").MendFirst.Single().Name.ShouldBe("tooMuchOnContact");
        Diagnose("ratedVolts=240 V; fullLoadAmps=21 A", "isBurnt=yes", "loadVolts=240 V; motors=14/73 + 7/35 A").MendFirst.ShouldBeEmpty();
    }

    private static ReadingVerdict Checked(string readings, string title)
    {
        var need = ContactorFamily.Contactor.ReadNeed(new(null, [], Named.Texts("loadVolts=240 V"))).Need;
        var part = Named.Record<ContactorSpec>("coilVolts=24 V; coilFrequency=60 Hz; ratedVolts=240/480 V; fullLoadAmps=30/25 A");
        return ContactorFamily.Contactor.AfterSwap(need, part, Named.Record<ContactorReadings>(readings)).Readings.Single(check => check.Title == title).Verdict;
    }

    private static Diagnosis Diagnose(string plate, string readings, string site = "")
    {
        var need = ContactorFamily.Contactor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        need.Complaints.ShouldBeEmpty();
        return ContactorFamily.Contactor.BeforeCondemning(need.Need, Named.Record<ContactorReadings>(readings));
    }
}
