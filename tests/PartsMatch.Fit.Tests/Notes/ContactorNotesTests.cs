using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Switches.Contactors;

namespace PartsMatch.Fit.Tests.Notes;

/// <summary>Steps of a contactor's job; windows worked by hand as in the coil's tests.</summary>
public sealed class ContactorNotesTests
{
    private const string Old = "poleCount=1P with shunt; coilVolts=24 V; coilFrequency=60 Hz; coilVa=6 VA; auxiliaries=none; mounts=base plate; terminals=quick connects; ratedVolts=240 V; fullLoadAmps=30 A; lockedRotorAmps=150 A; resistiveAmps=40 A";

    [Fact]
    public void A_contactor_of_two_poles_with_another_coil_takes_its_coil_and_the_crankcase_heat_along()
    {
        var part = NotesCases.With(NotesCases.With(Old, "poleCount", "2P"), "coilVolts", "120 V") + "; furtherCoils=24 V 60 Hz = QV-24";
        var notes = NotesCases.Of("contactor", Old, "shuntFeedsHeat=yes; controlVolts=24 V; loadVolts=240 V", part).Notes;
        notes.Single(ContactorChanges.ChangeCoil).Stage.ShouldBe(Stage.Bench);
        notes.Single(ContactorChanges.FeedCrankcaseHeat).Stage.ShouldBe(Stage.Wire);
        notes.Kit.Select(item => item.What).ShouldContain("coil QV-24, 24 V 60 Hz");
        notes.Steps.Select(step => step.Stage).ShouldBeInOrder();
        notes.Steps.ShouldContain(step => step.Words == "call for it, and meter its coil while it is in: 20.4 to 26.4 V are right");
        notes.Steps.ShouldContain(step => step.Words.StartsWith("measure the amps of each leg: at most 30 A", StringComparison.Ordinal));
        notes.Steps.ShouldContain(step => step.Words.Contains("it was on 240 V", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("isInterlocked=yes", true)]
    [InlineData("isInterlocked=no", false)]
    public void An_interlock_is_tried_before_anything_is_live(string site, bool tried) =>
        NotesCases.Of("contactor", NotesCases.With(Old, "poleCount", "3P"), site, NotesCases.With(Old, "poleCount", "3P") + "; hasInterlock=yes").Notes.Steps
            .Any(step => step.Stage < Stage.StartAndCheck && step.Words.Contains("the other must not go in", StringComparison.Ordinal)).ShouldBe(tried);

    [Fact]
    public void An_interlock_is_in_the_kit_where_the_old_one_is_interlocked() =>
        NotesCases.Of("contactor", NotesCases.With(Old, "poleCount", "3P"), "isInterlocked=yes", NotesCases.With(Old, "poleCount", "3P") + "; hasInterlock=yes").Notes.Kit
            .ShouldContain(item => item.What.Contains("mechanical interlock", StringComparison.Ordinal));

    [Fact]
    public void Three_lines_keep_their_order() =>
        NotesCases.Of("contactor", NotesCases.With(Old, "poleCount", "3P"), "", NotesCases.With(Old, "poleCount", "3P")).Notes.Steps
            .ShouldContain(step => step.Words.Contains("the three lines in their order", StringComparison.Ordinal));
}
