using PartsMatch.Fit.Switches.DefrostTimers;

namespace PartsMatch.Demo.Tests.DefrostTimers;

public sealed class DefrostTimerTests
{
    private static readonly IReadOnlyList<SeedPart<DefrostTimerSpec>> All = SeedData.Parts<DefrostTimerSpec>("defrostTimers.csv");

    [Fact]
    public void There_are_120_of_six_lines()
    {
        All.Count.ShouldBe(120);
        All.Count(part => part.Spec.Clock == ClockKind.RunningTime).ShouldBe(26);
        All.Count(part => part.Spec.Poles == 2).ShouldBe(18);
        All.Count(part => part.Spec.EndedBy!.Contains(DefrostEnd.Pressure)).ShouldBe(8);
        All.Count(part => part.Row["clockVolts"] == "220-240 V").ShouldBe(14);
        All.Count(part => part.Spec.Body == TimerBody.Mechanism).ShouldBe(46);
    }

    /// <summary>Practice: time and pressure need no solenoid; where temperature ends a defrost, the solenoid is for the clock's volts.</summary>
    [Fact]
    public void Only_those_that_temperature_ends_have_a_release_solenoid_and_a_terminal_for_it()
    {
        foreach (var part in All)
        {
            var ends = part.Spec.EndedBy!.Contains(DefrostEnd.Temperature);
            if (!ends) part.Spec.ReleaseVolts.ShouldBeNull(part.Row.Number);
            if (part.Spec.ReleaseVolts is { } volts) volts.ShouldBe(part.Spec.ClockVolts, part.Row.Number);
            if (ends && part.Spec.Terminals is { } terminals) terminals.ShouldContain(one => one.Function == TerminalFunction.Release, part.Row.Number);
        }
    }

    [Fact]
    public void Each_terminal_bears_a_mark_of_its_own() =>
        All.Where(part => part.Spec.Terminals is not null).ShouldAllBe(part => part.Spec.Terminals!.Select(one => one.Mark).Distinct().Count() == part.Spec.Terminals!.Count);

    [Fact]
    public void A_defrost_lasts_no_longer_than_the_time_between_two_starts() =>
        All.Where(part => part.Spec.FailSafe is not null).ShouldAllBe(part => part.Spec.FailSafe!.Low.Hours * part.Spec.Starts!.Most < 24);

    /// <summary>Locked-rotor amps are six times the full-load amps: from memory.</summary>
    [Fact]
    public void Contacts_carry_six_times_as_much_while_motors_start()
    {
        foreach (var spec in All.Select(part => part.Spec).Where(spec => spec is { FullLoadAmps: not null, LockedRotorAmps: not null }))
        {
            for (var row = 0; row < spec.RatedVolts!.Count; row++) spec.LockedRotorAmps!.Of(row).Amperes.ShouldBe(6 * spec.FullLoadAmps!.Of(row).Amperes, 1e-9);
        }
    }

    [Fact]
    public void One_in_twelve_to_one_in_five_lacks_something() =>
        All.Count(part => part.Spec.LockedRotorAmps is null || part.Spec.Terminals is null || part.Spec.BoxPattern is null || part.Spec.PilotDuty is null || part.Spec.ClockFrequency is null || part.Spec.Contacts is null || part.Spec.FailSafe is null
            || (part.Spec.ReleaseVolts is null && part.Spec.EndedBy!.Contains(DefrostEnd.Temperature))).ShouldBeInRange(10, 24);
}
