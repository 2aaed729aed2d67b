using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Valves.SolenoidValves;

namespace PartsMatch.Fit.Tests.Valves.SolenoidValves;

/// <summary>Solenoid valves before they are condemned and after the swap. Limits: UFGS 15652A for the coil's volts; the others are practice.</summary>
[Trait("Source", "reading.valveCoilOhms")]
[Trait("Source", "reading.valveDropWhenOpen")]
[Trait("Source", "reading.valveSigns")]
[Trait("Source", "reading.valvePassesGas")]
[Trait("Source", "reading.valveCoilVolts")]
[Trait("Source", "reading.contactDrop")]
public sealed class SolenoidValveProofTests
{
    private const string Plate = "normalState=NC; coilVolts=120 V; coilFrequency=60 Hz";

    [Theory]
    [InlineData("", Conclusion.ReadNext, "coilVolts")]
    [InlineData("circuitCalls=no", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("circuitCalls=yes; coilVolts=0 V", Conclusion.NotThePart, null)]
    [InlineData("coilVolts=101 V", Conclusion.NotThePart, null)] // under 102 V, 85 % of 120 V
    [InlineData("coilVolts=102 V", Conclusion.ReadNext, "magnetPulls")]
    [InlineData("coilVolts=133 V", Conclusion.ReadNext, "magnetPulls")]
    [InlineData("coilVolts=133 V; magnetPulls=yes; temperatureBefore=95 °F; temperatureBehind=95 °F", Conclusion.NotThePart, null)]
    [InlineData("coilVolts=120 V; magnetPulls=no", Conclusion.PartHasFailed, null)]
    [InlineData("coilVolts=120 V; magnetPulls=yes", Conclusion.ReadNext, "temperatureBefore")]
    [InlineData("coilVolts=120 V; magnetPulls=yes; temperatureBefore=95 °F; temperatureBehind=94 °F", Conclusion.NothingWrongFound, null)]
    [InlineData("coilVolts=120 V; magnetPulls=yes; temperatureBefore=95 °F; temperatureBehind=92.1 °F", Conclusion.NothingWrongFound, null)]
    [InlineData("coilVolts=120 V; magnetPulls=yes; temperatureBefore=95 °F; temperatureBehind=92 °F", Conclusion.PartHasFailed, null)]
    [InlineData("coilOhms=open", Conclusion.PartHasFailed, null)]
    [InlineData("coilOhms=0.9 Ω", Conclusion.PartHasFailed, null)]
    [InlineData("coilOhms=1 Ω; coilVolts=120 V", Conclusion.ReadNext, "magnetPulls")]
    [InlineData("coilVolts=120 V; magnetPulls=yes; passesWhenShut=yes", Conclusion.PartHasFailed, null)]
    [InlineData("leaksOutward=yes", Conclusion.PartHasFailed, null)]
    public void Readings_tell_whether_it_is_the_valve(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose(Plate, readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    [Theory]
    [InlineData("94 °F", "The pipe is 1 °F (0.6 K) colder behind it: it is open.")]
    [InlineData("95 °F", "The pipe is as warm behind it as before it: it is open.")]
    [InlineData("96 °F", "The pipe is 1 °F (0.6 K) warmer behind it: it is open.")]
    [InlineData("97.9 °F", "The pipe is 2.9 °F (1.6 K) warmer behind it: it is open.")]
    [InlineData("98 °F", "The pipe is 3 °F (1.7 K) warmer behind it, and liquid that flows gets no warmer: nothing flows, or the clamps are swapped.")]
    public void A_pipe_is_never_colder_by_less_than_nothing(string behind, string sentence) =>
        Diagnose(Plate, $"coilVolts=120 V; magnetPulls=yes; temperatureBefore=95 °F; temperatureBehind={behind}").Checks.Single(check => check.Title == "Pipe before and behind it").Sentence.ShouldBe(sentence);

    /// <summary>Liquid that flows gets no warmer: from 3 °F (practice) on nothing flows, as behind a valve that sticks or in a line that is dead, or the clamps are swapped and it throttles.</summary>
    [Theory]
    [InlineData("NC", "circuitCalls=yes; coilVolts=120 V; magnetPulls=yes", Conclusion.ReadNext, "passesWhenOpen")]
    [InlineData("NC", "circuitCalls=yes; coilVolts=120 V; magnetPulls=yes; passesWhenOpen=no", Conclusion.PartHasFailed, null)]
    [InlineData("NC", "circuitCalls=yes; coilVolts=120 V; magnetPulls=yes; passesWhenOpen=yes", Conclusion.ReadNext, "temperatureBehind")] // then the clamps are swapped
    [InlineData("NC", "circuitCalls=yes; coilVolts=120 V", Conclusion.ReadNext, "magnetPulls")]
    [InlineData("NC", "circuitCalls=no; coilVolts=0 V", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("NC", "circuitCalls=yes; coilVolts=80 V; magnetPulls=yes", Conclusion.NotThePart, null)]
    [InlineData("NO", "circuitCalls=no; coilVolts=0 V", Conclusion.ReadNext, "passesWhenOpen")]
    [InlineData("NO", "circuitCalls=yes; coilVolts=0 V", Conclusion.ReadNext, "passesWhenOpen")] // a dead circuit excuses nothing of what needs no power
    [InlineData("NO", "circuitCalls=yes; coilVolts=0 V; passesWhenOpen=no", Conclusion.PartHasFailed, null)]
    [InlineData("NO", "circuitCalls=yes; coilVolts=120 V; magnetPulls=yes", Conclusion.ReadNext, "circuitCalls")] // power shuts it
    [InlineData(null, "circuitCalls=yes; coilVolts=120 V; magnetPulls=yes", Conclusion.ReadNext, "passesWhenOpen")]
    [InlineData(null, "circuitCalls=yes; coilVolts=120 V; magnetPulls=yes; passesWhenOpen=no", Conclusion.ReadNext, "normalState")]
    public void A_pipe_that_is_warmer_behind_shows_no_valve_open(string? state, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose($"coilVolts=120 V; coilFrequency=60 Hz{(state is null ? "" : $"; normalState={state}")}", $"{readings}; temperatureBefore=60 °F; temperatureBehind=75 °F");
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
        diagnosis.Checks.Single(check => check.Title == "Pipe before and behind it").Verdict.ShouldBe(ReadingVerdict.CantTell);
    }

    [Fact]
    public void A_pipe_that_is_warmer_behind_proves_no_new_valve()
    {
        var need = SolenoidValveFamily.SolenoidValve.ReadNeed(new(null, Named.Texts(Plate), Named.Texts("line=liquid"))).Need;
        var report = SolenoidValveFamily.SolenoidValve.AfterSwap(need, Named.Record<SolenoidValveSpec>(Plate), Named.Record<SolenoidValveReadings>("circuitCalls=yes; coilVolts=120 V; magnetPulls=yes; temperatureBefore=60 °F; temperatureBehind=75 °F"));
        report.Readings.Single(check => check.Title == "Pipe before and behind it").Verdict.ShouldBe(ReadingVerdict.CantTell);
    }

    /// <summary>Power opens a normally closed valve and shuts a normally open one: a pipe that is colder behind tells of a throttle only where it is open.</summary>
    [Theory]
    [InlineData("normalState=NC; ", Conclusion.PartHasFailed, null)]
    [InlineData("normalState=NO; ", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("", Conclusion.ReadNext, "normalState")]
    public void A_pipe_colder_behind_condemns_only_a_valve_that_is_open_with_power(string state, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose($"{state}coilVolts=120 V; coilFrequency=60 Hz", "circuitCalls=yes; coilVolts=120 V; magnetPulls=yes; temperatureBefore=95 °F; temperatureBehind=85 °F");
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Without power a normally open valve is to pass: 3 °F (practice) colder behind condemn it then, whatever its circuit lacks. Under a tenth of 120 V there is no power (practice), and a magnet that does not pull shuts nothing.</summary>
    [Theory]
    [InlineData("circuitCalls=no; coilVolts=0 V", "80 °F", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no; coilVolts=0 V; magnetPulls=yes", "80 °F", Conclusion.PartHasFailed, null)] // it pulled while it was called for
    [InlineData("circuitCalls=no; coilVolts=0 V; magnetPulls=no", "92 °F", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no; coilVolts=0 V", "92.1 °F", Conclusion.ReadNext, "circuitCalls")] // it passes, and whether it shuts is seen with a call
    [InlineData("circuitCalls=no; coilVolts=11.9 V", "80 °F", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no; coilVolts=12 V", "80 °F", Conclusion.ReadNext, "coilVolts")]
    [InlineData("circuitCalls=no; coilVolts=12 V; magnetPulls=no", "80 °F", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no; magnetPulls=no", "80 °F", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no", "80 °F", Conclusion.ReadNext, "coilVolts")]
    [InlineData("circuitCalls=no; coilVolts=120 V; magnetPulls=yes", "80 °F", Conclusion.ReadNext, "coilVolts")] // something feeds it without a call
    [InlineData("circuitCalls=yes; coilVolts=0 V", "80 °F", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=yes; coilVolts=101 V; magnetPulls=yes", "80 °F", Conclusion.ReadNext, "circuitCalls")] // too few volts excuse nothing of what needs none
    [InlineData("circuitCalls=yes; coilVolts=120 V; magnetPulls=yes", "80 °F", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("coilVolts=120 V; magnetPulls=yes", "80 °F", Conclusion.ReadNext, "circuitCalls")]
    public void A_normally_open_one_that_does_not_pass_without_power_has_failed(string readings, string behind, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("normalState=NO; coilVolts=120 V; coilFrequency=60 Hz", $"{readings}; temperatureBefore=95 °F; temperatureBehind={behind}");
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
        if (conclusion == Conclusion.ReadNext && behind == "80 °F") diagnosis.Sentence.ShouldContain("without power a normally open valve is to pass");
    }

    [Fact]
    public void A_pipe_colder_behind_condemns_no_normally_closed_one_that_is_not_called_for() =>
        Diagnose(Plate, "circuitCalls=no; coilVolts=0 V; magnetPulls=yes; temperatureBefore=95 °F; temperatureBehind=80 °F").Next!.Field.ShouldBe("circuitCalls");

    /// <summary>In suction and hot-gas lines no pipe is colder behind: whether gas passes is looked at there, and tells only where the coil leaves the valve open (practice).</summary>
    [Theory]
    [InlineData("NC", "hot gas", "coilVolts=120 V; magnetPulls=yes", Conclusion.ReadNext, "passesWhenOpen")]
    [InlineData("NC", "suction", "coilVolts=120 V; magnetPulls=yes", Conclusion.ReadNext, "passesWhenOpen")]
    [InlineData("NC", "suction", "coilVolts=120 V; magnetPulls=yes; passesWhenOpen=yes", Conclusion.NothingWrongFound, null)]
    [InlineData("NC", "suction", "coilVolts=120 V; magnetPulls=yes; passesWhenOpen=no", Conclusion.PartHasFailed, null)]
    [InlineData("NC", "hot gas", "coilVolts=120 V; magnetPulls=yes; passesWhenOpen=no", Conclusion.PartHasFailed, null)]
    [InlineData("NC", "hot gas", "coilVolts=120 V; passesWhenOpen=no", Conclusion.ReadNext, "magnetPulls")]
    [InlineData("NC", "hot gas", "passesWhenOpen=no", Conclusion.ReadNext, "coilVolts")]
    [InlineData("NC", "hot gas", "coilVolts=101 V; magnetPulls=yes; passesWhenOpen=no", Conclusion.NotThePart, null)] // under 102 V: too few to open it
    [InlineData("NC", "hot gas", "circuitCalls=no; magnetPulls=yes; passesWhenOpen=no", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("NO", "hot gas", "coilVolts=120 V; magnetPulls=yes; passesWhenOpen=no", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("NO", "hot gas", "circuitCalls=yes; coilVolts=0 V; passesWhenOpen=no", Conclusion.PartHasFailed, null)]
    [InlineData("NO", "hot gas", "circuitCalls=no; coilVolts=0 V; passesWhenOpen=no", Conclusion.PartHasFailed, null)]
    [InlineData("NO", "hot gas", "circuitCalls=no; coilVolts=120 V; passesWhenOpen=no", Conclusion.ReadNext, "coilVolts")] // something feeds it without a call
    [InlineData(null, "hot gas", "coilVolts=120 V; magnetPulls=yes; passesWhenOpen=no", Conclusion.ReadNext, "normalState")]
    [InlineData(null, "suction", "circuitCalls=no; coilVolts=0 V; passesWhenOpen=no", Conclusion.ReadNext, "circuitCalls")]
    [InlineData(null, "hot gas", "coilVolts=120 V; magnetPulls=yes", Conclusion.ReadNext, "normalState")] // power may shut it
    [InlineData(null, "hot gas", "coilVolts=120 V; magnetPulls=yes; passesWhenShut=no", Conclusion.NothingWrongFound, null)]
    public void Gas_that_does_not_pass_condemns_it_only_where_its_coil_leaves_it_open(string? state, string line, string readings, Conclusion conclusion, string? next)
    {
        var need = SolenoidValveFamily.SolenoidValve.ReadNeed(new(null, Named.Texts($"coilVolts=120 V; coilFrequency=60 Hz{(state is null ? "" : $"; normalState={state}")}"), Named.Texts($"line={line}"))).Need;
        var diagnosis = SolenoidValveFamily.SolenoidValve.BeforeCondemning(need, Named.Record<SolenoidValveReadings>(readings));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Low volts pull a screwdriver and do not lift the valve: under 102 V of 120 V (85 %, UFGS 15652A) nothing that does not pass is its fault, and volts that nobody measured may be low.</summary>
    [Theory]
    [InlineData("liquid", "magnetPulls=yes; temperatureBefore=95 °F; temperatureBehind=85 °F", Conclusion.ReadNext, "coilVolts")]
    [InlineData("liquid", "magnetPulls=yes; coilVolts=80 V; temperatureBefore=95 °F; temperatureBehind=85 °F", Conclusion.NotThePart, null)]
    [InlineData("liquid", "magnetPulls=yes; coilVolts=102 V; temperatureBefore=95 °F; temperatureBehind=85 °F", Conclusion.PartHasFailed, null)]
    [InlineData("liquid", "magnetPulls=yes; coilVolts=133 V; temperatureBefore=95 °F; temperatureBehind=85 °F", Conclusion.PartHasFailed, null)] // too many lift it the better
    [InlineData("suction", "magnetPulls=yes; passesWhenOpen=no", Conclusion.ReadNext, "coilVolts")]
    [InlineData("suction", "circuitCalls=yes; magnetPulls=yes; passesWhenOpen=no", Conclusion.ReadNext, "coilVolts")]
    [InlineData("suction", "magnetPulls=yes; coilVolts=80 V; passesWhenOpen=no", Conclusion.NotThePart, null)]
    [InlineData("suction", "magnetPulls=yes; coilVolts=102 V; passesWhenOpen=no", Conclusion.PartHasFailed, null)]
    public void A_magnet_that_pulls_opens_it_only_at_volts_that_it_works_at(string line, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose(Plate, readings, $"line={line}");
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>A pipe that is colder behind tells of a throttle in a liquid line alone (practice).</summary>
    [Theory]
    [InlineData("NC", "coilVolts=120 V; magnetPulls=yes", Conclusion.ReadNext, "line")]
    [InlineData("NC", "coilVolts=120 V; magnetPulls=yes; temperatureBefore=150 °F; temperatureBehind=140 °F", Conclusion.ReadNext, "line")]
    [InlineData("NC", "coilVolts=120 V; magnetPulls=yes; temperatureBefore=150 °F; temperatureBehind=149 °F", Conclusion.ReadNext, "line")]
    [InlineData("NC", "coilVolts=120 V; magnetPulls=yes; passesWhenOpen=yes", Conclusion.NothingWrongFound, null)]
    [InlineData("NC", "coilVolts=120 V; magnetPulls=yes; passesWhenOpen=no", Conclusion.PartHasFailed, null)]
    [InlineData("NO", "circuitCalls=yes; coilVolts=0 V; temperatureBefore=95 °F; temperatureBehind=80 °F", Conclusion.ReadNext, "line")] // in a liquid line it has failed, whatever its circuit lacks
    [InlineData("NO", "circuitCalls=no; coilVolts=0 V; temperatureBefore=95 °F; temperatureBehind=80 °F", Conclusion.ReadNext, "line")]
    public void A_line_that_is_not_known_is_asked_for_before_its_pipe_tells(string state, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose($"coilVolts=120 V; coilFrequency=60 Hz; normalState={state}", readings, "");
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    [Fact]
    public void Without_the_coil_s_marking_no_volts_are_known_to_lift_it()
    {
        var next = Diagnose("normalState=NC", "coilVolts=16 V; magnetPulls=yes; passesWhenOpen=no", "line=suction").Next;
        (next?.Side, next?.Field).ShouldBe((Side.Plate, "coilVolts"));
    }

    [Theory]
    [InlineData("passesWhenOpen=yes", ReadingVerdict.Good)]
    [InlineData("passesWhenOpen=no", ReadingVerdict.Bad)]
    public void Gas_is_to_pass_a_new_one_as_well(string reading, ReadingVerdict verdict)
    {
        var need = SolenoidValveFamily.SolenoidValve.ReadNeed(new(null, Named.Texts(Plate), Named.Texts("line=hot gas"))).Need;
        var report = SolenoidValveFamily.SolenoidValve.AfterSwap(need, Named.Record<SolenoidValveSpec>(Plate), Named.Record<SolenoidValveReadings>($"coilVolts=120 V; magnetPulls=yes; {reading}"));
        report.Readings.Single(check => check.Title == "When open").Verdict.ShouldBe(verdict);
    }

    /// <summary>Its magnet is to pull within 102 and 132 V, while it is called for (UFGS 15652A, with 10 % over by practice).</summary>
    [Theory]
    [InlineData("coilVolts=102 V; magnetPulls=no", Conclusion.PartHasFailed, null)]
    [InlineData("coilVolts=132 V; magnetPulls=no", Conclusion.PartHasFailed, null)]
    [InlineData("coilVolts=101 V; magnetPulls=no", Conclusion.NotThePart, null)]
    [InlineData("coilVolts=133 V; magnetPulls=no", Conclusion.ReadNext, "coilOhms")] // too many volts excuse no dead magnet
    [InlineData("coilVolts=480 V; magnetPulls=no", Conclusion.ReadNext, "coilOhms")]
    [InlineData("coilVolts=480 V; magnetPulls=no; coilOhms=open", Conclusion.PartHasFailed, null)]
    [InlineData("coilVolts=480 V; magnetPulls=no; coilOhms=300 Ω", Conclusion.PartHasFailed, null)]
    [InlineData("circuitCalls=no; coilVolts=480 V; magnetPulls=no", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("coilVolts=2 V; magnetPulls=no", Conclusion.NotThePart, null)]
    [InlineData("circuitCalls=no; coilVolts=2 V; magnetPulls=no", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("circuitCalls=no; coilVolts=120 V; magnetPulls=no", Conclusion.ReadNext, "circuitCalls")]
    public void A_magnet_is_judged_at_its_own_volts_alone(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose(Plate, readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Alternating current does not pull a coil for direct current as it should, and direct current burns one for alternating current: practice.</summary>
    [Theory]
    [InlineData("coilCurrent=DC", "coilSupplyCurrent=AC", "coilVolts=24 V; magnetPulls=no; coilOhms=60 Ω", Conclusion.NotThePart, "24 V AC at a coil for DC")]
    [InlineData("coilCurrent=DC", "coilSupplyFrequency=60 Hz", "coilVolts=24 V; magnetPulls=no", Conclusion.NotThePart, "24 V AC at a coil for DC")]
    [InlineData("coilCurrent=DC", "coilSupplyCurrent=AC", "coilVolts=120 V; magnetPulls=no; coilOhms=60 Ω", Conclusion.NotThePart, "120 V AC at a coil for DC")]
    [InlineData("coilFrequency=60 Hz", "coilSupplyCurrent=DC", "coilVolts=24 V; magnetPulls=no; coilOhms=60 Ω", Conclusion.NotThePart, "24 V DC at a coil for AC")]
    [InlineData("coilFrequency=60 Hz", "coilSupplyCurrent=DC", "coilVolts=24 V; coilOhms=open", Conclusion.PartHasFailed, "open")]
    [InlineData("coilCurrent=DC", "", "coilVolts=24 V; magnetPulls=no; coilOhms=60 Ω", Conclusion.PartHasFailed, "the coil is dead")]
    public void A_magnet_on_the_other_kind_of_current_is_not_dead_by_not_pulling(string coil, string site, string readings, Conclusion conclusion, string said)
    {
        var diagnosis = Diagnose($"normalState=NC; coilVolts=24 V; {coil}", $"circuitCalls=yes; {readings}", site);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        diagnosis.Sentence.ShouldContain(said);
        diagnosis.MendFirst.Any(mend => mend.Name == "coilVoltsWrong").ShouldBe(site.Length > 0);
    }

    /// <summary>Power holds a normally closed valve open, and a normally open one is shut by it alone: what passes then tells nothing of its seat. Under a tenth of 120 V there is no power (practice), from 102 V (85 %, UFGS 15652A) there is; between them, as electronic switches leak, the magnet tells.</summary>
    [Theory]
    [InlineData("NC", "circuitCalls=no; coilVolts=120 V; passesWhenShut=yes", Conclusion.NotThePart, null)]
    [InlineData("NC", "circuitCalls=no; coilVolts=102 V; passesWhenShut=yes", Conclusion.NotThePart, null)]
    [InlineData("NC", "circuitCalls=no; coilVolts=133 V; passesWhenShut=yes", Conclusion.NotThePart, null)]
    [InlineData("NC", "circuitCalls=no; coilVolts=101 V; passesWhenShut=yes", Conclusion.ReadNext, "magnetPulls")]
    [InlineData("NC", "circuitCalls=no; coilVolts=12 V; passesWhenShut=yes", Conclusion.ReadNext, "magnetPulls")]
    [InlineData("NC", "circuitCalls=no; coilVolts=12 V; magnetPulls=no; passesWhenShut=yes", Conclusion.PartHasFailed, null)]
    [InlineData("NC", "circuitCalls=no; coilVolts=12 V; magnetPulls=yes; passesWhenShut=yes", Conclusion.NotThePart, null)]
    [InlineData("NC", "circuitCalls=no; coilVolts=11.9 V; passesWhenShut=yes", Conclusion.PartHasFailed, null)]
    [InlineData("NC", "circuitCalls=no; coilVolts=0 V; passesWhenShut=yes", Conclusion.PartHasFailed, null)]
    [InlineData("NC", "circuitCalls=no; magnetPulls=yes; passesWhenShut=yes", Conclusion.NotThePart, null)]
    [InlineData("NC", "circuitCalls=no; coilVolts=120 V; magnetPulls=yes; passesWhenShut=yes", Conclusion.NotThePart, null)]
    [InlineData("NC", "circuitCalls=no; coilVolts=120 V; magnetPulls=no; passesWhenShut=yes", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("NC", "circuitCalls=no; coilVolts=0 V; magnetPulls=yes; passesWhenShut=yes", Conclusion.PartHasFailed, null)] // it pulled while it was called for
    [InlineData("NC", "passesWhenShut=yes", Conclusion.PartHasFailed, null)]
    [InlineData("NC", "circuitCalls=yes; coilVolts=0 V; passesWhenShut=yes", Conclusion.PartHasFailed, null)] // its circuit is dead, and its seat passes by itself
    [InlineData("NC", "circuitCalls=yes; coilVolts=101 V; passesWhenShut=yes", Conclusion.PartHasFailed, null)]
    [InlineData("NO", "passesWhenShut=yes", Conclusion.ReadNext, "coilVolts")]
    [InlineData("NO", "circuitCalls=no; passesWhenShut=yes", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("NO", "circuitCalls=no; coilVolts=0 V; passesWhenShut=yes", Conclusion.ReadNext, "circuitCalls")]
    [InlineData("NO", "circuitCalls=yes; coilVolts=0 V; passesWhenShut=yes", Conclusion.NotThePart, null)]
    [InlineData("NO", "circuitCalls=yes; coilVolts=101 V; passesWhenShut=yes", Conclusion.NotThePart, null)]
    [InlineData("NO", "circuitCalls=yes; coilVolts=120 V; passesWhenShut=yes", Conclusion.PartHasFailed, null)]
    [InlineData("NO", "circuitCalls=yes; coilVolts=101 V; magnetPulls=yes; passesWhenShut=yes", Conclusion.NotThePart, null)] // on too few volts a magnet pulls that need not hold against the flow
    [InlineData("NO", "circuitCalls=yes; coilVolts=70 V; magnetPulls=yes; passesWhenShut=yes", Conclusion.NotThePart, null)]
    [InlineData("NO", "circuitCalls=yes; coilVolts=133 V; magnetPulls=yes; passesWhenShut=yes", Conclusion.PartHasFailed, null)] // too many hold it the better
    [InlineData("NO", "magnetPulls=yes; passesWhenShut=yes", Conclusion.ReadNext, "coilVolts")]
    [InlineData("NO", "circuitCalls=yes; magnetPulls=yes; passesWhenShut=yes", Conclusion.ReadNext, "coilVolts")]
    [InlineData("NO", "coilVolts=120 V; magnetPulls=yes; passesWhenShut=yes", Conclusion.PartHasFailed, null)]
    [InlineData(null, "passesWhenShut=yes", Conclusion.ReadNext, "normalState")]
    [InlineData(null, "circuitCalls=no; coilVolts=0 V; passesWhenShut=yes", Conclusion.ReadNext, "normalState")] // a normally open one passes by right
    [InlineData(null, "circuitCalls=yes; coilVolts=120 V; passesWhenShut=yes", Conclusion.ReadNext, "normalState")] // a normally closed one passes by right
    [InlineData(null, "coilVolts=120 V; passesWhenShut=yes", Conclusion.ReadNext, "normalState")]
    [InlineData(null, "circuitCalls=yes; coilVolts=0 V; passesWhenShut=yes", Conclusion.ReadNext, "normalState")] // a normally closed one has failed, whatever its circuit lacks
    [InlineData(null, "circuitCalls=yes; coilVolts=101 V; passesWhenShut=yes", Conclusion.ReadNext, "normalState")]
    [InlineData(null, "magnetPulls=yes; passesWhenShut=yes", Conclusion.ReadNext, "normalState")]
    [InlineData(null, "circuitCalls=no; coilVolts=120 V; passesWhenShut=yes", Conclusion.ReadNext, "normalState")]
    public void What_passes_condemns_it_only_where_its_coil_leaves_it_shut(string? state, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose($"coilVolts=120 V; coilFrequency=60 Hz{(state is null ? "" : $"; normalState={state}")}", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
        diagnosis.MendFirst.Any(mend => mend.Name == "dirtInLine").ShouldBe(conclusion == Conclusion.PartHasFailed);
    }

    [Theory]
    [InlineData("coilVolts=120 V", false)]
    [InlineData("coilVolts=12 V; magnetPulls=yes", false)]
    [InlineData("magnetPulls=yes", true)]
    public void Power_without_a_call_is_looked_up_by_the_contact_that_feeds_it(string readings, bool measured)
    {
        var said = Diagnose(Plate, $"circuitCalls=no; passesWhenShut=yes; {readings}").Sentence;
        said.ShouldContain("ind the contact that feeds it");
        said.Contains("easure the volts", StringComparison.Ordinal).ShouldBe(measured, said); // only where they were not read
    }

    [Theory]
    [InlineData("", ReadingVerdict.CantTell, "magnetPulls")]
    [InlineData("; magnetPulls=yes", ReadingVerdict.Bad, null)]
    [InlineData("; magnetPulls=no", ReadingVerdict.CantTell, "circuitCalls")]
    public void Stray_volts_are_not_told_from_power_without_the_coil_s_marking(string magnet, ReadingVerdict verdict, string? next)
    {
        var diagnosis = Diagnose("normalState=NC", $"circuitCalls=no; coilVolts=9 V; passesWhenShut=yes{magnet}");
        diagnosis.Checks.Single(check => check.Title == "When shut").Verdict.ShouldBe(verdict);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    [Fact]
    public void Without_the_marking_no_magnet_shows_that_a_normally_open_one_is_shut()
    {
        var next = Diagnose("normalState=NO", "circuitCalls=yes; coilVolts=14 V; magnetPulls=yes; passesWhenShut=yes").Next;
        (next?.Side, next?.Field).ShouldBe((Side.Plate, "coilVolts"));
    }

    /// <summary>At most 0.5 V is good, over 1 V is bad: practice.</summary>
    [Theory]
    [InlineData("circuitCalls=yes; contactDropVolts=0.5 V", ReadingVerdict.Good)]
    [InlineData("circuitCalls=yes; contactDropVolts=0.6 V", ReadingVerdict.CantTell)]
    [InlineData("circuitCalls=yes; contactDropVolts=1 V", ReadingVerdict.CantTell)]
    [InlineData("circuitCalls=yes; contactDropVolts=1.1 V", ReadingVerdict.Bad)]
    [InlineData("contactDropVolts=120 V; circuitCalls=no", null)]
    public void A_burnt_contact_is_mended_first_and_condemns_no_valve(string readings, ReadingVerdict? verdict)
    {
        var diagnosis = Diagnose(Plate, $"{readings}; magnetPulls=yes; coilVolts=118 V; temperatureBefore=95 °F; temperatureBehind=95 °F");
        diagnosis.Checks.Where(check => check.Title == "Volts across its contact").Select(check => check.Verdict).ShouldBe(verdict is { } said ? [said] : []);
        diagnosis.MendFirst.Any(mend => mend.Name == "coilContactBurnt").ShouldBe(verdict == ReadingVerdict.Bad);
        diagnosis.Conclusion.ShouldNotBe(Conclusion.PartHasFailed);
    }

    /// <summary>Full supply volts across a contact and none at the coil mean that it is open, as it is to be while nothing calls.</summary>
    [Theory]
    [InlineData("contactDropVolts=24 V; coilVolts=0 V", Conclusion.NotThePart, null)]
    [InlineData("contactDropVolts=24 V; coilVolts=0 V; circuitCalls=yes", Conclusion.NotThePart, null)] // a safety may be open
    [InlineData("contactDropVolts=24 V; coilVolts=2.3 V; circuitCalls=yes", Conclusion.NotThePart, null)] // stray volts, under a tenth of what is marked
    [InlineData("contactDropVolts=24 V; circuitCalls=yes", Conclusion.ReadNext, "coilVolts")]
    [InlineData("contactDropVolts=24 V", Conclusion.ReadNext, "coilVolts")]
    [InlineData("contactDropVolts=1.1 V; coilVolts=23 V", Conclusion.ReadNext, "circuitCalls")]
    public void An_open_contact_is_not_called_burnt(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("normalState=NC; coilVolts=24 V; coilFrequency=60 Hz", readings);
        diagnosis.Checks.Single(check => check.Title == "Volts across its contact").Verdict.ShouldBe(ReadingVerdict.CantTell);
        diagnosis.MendFirst.ShouldNotContain(mend => mend.Name == "coilContactBurnt");
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    [Fact]
    public void A_contact_that_takes_half_of_the_volts_is_burnt() =>
        Diagnose("normalState=NC; coilVolts=24 V; coilFrequency=60 Hz", "circuitCalls=yes; contactDropVolts=12 V; coilVolts=12 V").MendFirst.Select(mend => mend.Name).ShouldContain("coilContactBurnt");

    /// <summary>For two voltages, 60 V are too many on the lower and too few on the higher: how it is connected is not known.</summary>
    [Fact]
    public void Volts_between_the_two_that_a_coil_is_made_for_show_no_dead_magnet() =>
        Diagnose("normalState=NC; coilVolts=24/120 V; coilFrequency=60 Hz", "circuitCalls=yes; coilVolts=60 V; magnetPulls=no").Conclusion.ShouldBe(Conclusion.NotThePart);

    [Fact]
    public void Without_the_marking_no_magnet_condemns_it()
    {
        var diagnosis = Diagnose("normalState=NC", "coilVolts=90 V; magnetPulls=no");
        diagnosis.Conclusion.ShouldBe(Conclusion.ReadNext);
        (diagnosis.Next!.Field, diagnosis.Next.Side).ShouldBe(("coilVolts", Side.Plate));
        diagnosis.Checks.Single(check => check.Title == "Magnet").Verdict.ShouldBe(ReadingVerdict.CantTell);
    }

    [Fact]
    public void Without_the_marking_volts_do_not_condemn()
    {
        var diagnosis = Diagnose("normalState=NC", "coilVolts=90 V");
        diagnosis.Conclusion.ShouldBe(Conclusion.ReadNext);
        diagnosis.Next!.Side.ShouldBe(Side.Plate);
    }

    [Fact]
    public void What_killed_it_is_mended_first()
    {
        Diagnose(Plate, "coilVolts=480 V; magnetPulls=no").MendFirst.Single().Name.ShouldBe("coilVoltsWrong");
        Diagnose(Plate, "coilVolts=140 V; coilOhms=open").MendFirst.Single().Name.ShouldBe("coilVoltsWrong");
        Diagnose(Plate, "coilVolts=120 V; magnetPulls=yes; passesWhenShut=yes").MendFirst.Single().Name.ShouldBe("dirtInLine");
    }

    [Fact]
    public void A_new_one_is_held_to_its_own_coil_and_never_condemned()
    {
        var need = SolenoidValveFamily.SolenoidValve.ReadNeed(new(null, Named.Texts(Plate), Named.Texts("line=liquid"))).Need;
        var report = SolenoidValveFamily.SolenoidValve.AfterSwap(need, Named.Record<SolenoidValveSpec>("normalState=NC; coilVolts=24 V; coilFrequency=60 Hz; furtherCoils=120 V 60 Hz = QC-120"), Named.Record<SolenoidValveReadings>("coilVolts=118 V; magnetPulls=yes; temperatureBefore=95 °F; temperatureBehind=90 °F"));
        report.Readings.Select(check => (check.Title, check.Verdict)).ShouldBe([("Volts at the coil", ReadingVerdict.Good), ("Magnet", ReadingVerdict.Good), ("Pipe before and behind it", ReadingVerdict.Bad)]);
    }

    private static Diagnosis Diagnose(string plate, string readings, string site = "line=liquid")
    {
        var need = SolenoidValveFamily.SolenoidValve.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        need.Complaints.ShouldBeEmpty();
        return SolenoidValveFamily.SolenoidValve.BeforeCondemning(need.Need, Named.Record<SolenoidValveReadings>(readings));
    }
}
