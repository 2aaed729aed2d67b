using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Above what a device carries fails (the trade's rule); overload percentages of NFPA 70 430.32 (published); 5 % over the old amps as the same is practice. Sums worked by hand.</summary>
[Trait("Source", "motor.runningCurrent")]
public sealed class RunningCurrentTests : MotorAspectTests<RunningCurrent>
{
    private const string Two = "voltage=115/230 V; phase=1; frequency=60 Hz; fullLoadAmps=4.2/2.1 A";

    [Theory]
    [InlineData("volts=115 V; contactFullLoadAmps=4.2 A", Verdict.Meets)]
    [InlineData("volts=115 V; contactFullLoadAmps=4.3 A", Verdict.Meets)]
    [InlineData("volts=115 V; contactFullLoadAmps=4.1 A", Verdict.Fails)]
    [InlineData("volts=230 V; contactFullLoadAmps=2.1 A; supplyArrangement=delta", Verdict.Meets)]
    [InlineData("volts=230 V; contactFullLoadAmps=2 A; supplyArrangement=delta", Verdict.Fails)]
    [InlineData("volts=115 V; cyclingSwitchFullLoadAmps=4.2 A", Verdict.Meets)]
    [InlineData("volts=115 V; cyclingSwitchFullLoadAmps=4.1 A; contactFullLoadAmps=30 A", Verdict.Fails)]

    // 4.2 + 5.8 = 10 A.
    [InlineData("volts=115 V; contactFullLoadAmps=10 A; otherFullLoadAmps=5.8 A", Verdict.Meets)]
    [InlineData("volts=115 V; contactFullLoadAmps=10 A; otherFullLoadAmps=5.9 A", Verdict.Fails)]

    // The cycling switch carries this fan alone.
    [InlineData("volts=115 V; cyclingSwitchFullLoadAmps=5 A; otherFullLoadAmps=5.9 A", Verdict.Meets)]
    public void Contact_and_switch_carry_the_amps_at_the_tap_in_use_edges_included(string site, Verdict verdict)
    {
        var finding = Judge(site: site, part: Two);
        finding.Verdict.ShouldBe(verdict, finding.Sentence);
        (finding.Shortfall > 1 + 1e-9).ShouldBe(verdict == Verdict.Fails);
    }

    [Fact]
    public void The_sentence_names_load_and_limit() =>
        Fails(site: "volts=115 V; contactFullLoadAmps=10 A; otherFullLoadAmps=6 A", part: Two).Sentence.ShouldBe("It takes 4.2 A, 10.2 A with the other motors; the contact carries 10 A.");

    [Fact]
    public void Where_the_tap_is_not_measured_a_contact_fails_only_what_is_too_much_on_every_tap()
    {
        Unknown(Side.Site, "volts", plate: "voltage=115 V", site: "contactFullLoadAmps=3 A", part: Two);
        Fails(plate: "voltage=115 V", site: "contactFullLoadAmps=2 A", part: Two);
        Meets(plate: "voltage=230 V", site: "contactFullLoadAmps=3 A", part: Two);
    }

    [Fact]
    public void Amps_at_a_speed_and_at_the_ends_of_a_span_are_told_apart()
    {
        // The faster speed's 5.4 A count, not 2.8; halfway between 208 and 230 V, 219 V, lie 3.45 A.
        Fails(site: "volts=115 V; contactFullLoadAmps=5.3 A", part: "voltage=115 V; phase=1; power=3/4-1/3 hp; speed=1725/1140 rpm; fullLoadAmps=5.4/2.8 A");
        Meets(site: "volts=219 V; contactFullLoadAmps=3.45 A", part: "voltage=208-230 V; phase=1; fullLoadAmps=3.5-3.4 A");
        Fails(site: "volts=219 V; contactFullLoadAmps=3.44 A", part: "voltage=208-230 V; phase=1; fullLoadAmps=3.5-3.4 A");
        Fails(site: "volts=200 V; contactFullLoadAmps=3.49 A", part: "voltage=208-230 V; phase=1; fullLoadAmps=3.5-3.4 A");
    }

    [Theory]

    // 1.05 × 4 A = 4.2 A.
    [InlineData("4 A", false)]
    [InlineData("4.01 A", false)]
    [InlineData("3.99 A", true)]
    [InlineData("8 A", false)]
    public void More_than_5_percent_over_the_old_amps_is_to_be_checked(string old, bool isChecked)
    {
        var plate = $"voltage=115 V; phase=1; fullLoadAmps={old}";
        if (isChecked) MeetsWith([CircuitChanges.CheckCircuit], plate, part: Two).Changes[0].Text.ShouldBe("see that wire, fuse and contact suit 4.2 A; the old motor took 3.99 A");
        else Meets(plate, part: Two);
    }

    [Fact]
    public void Old_and_new_are_compared_on_the_same_tap_though_nothing_is_measured() => Meets(Two, part: Two).Shortfall.ShouldBe(0);

    [Fact]
    public void The_equipments_plate_speaks_where_the_old_one_is_silent()
    {
        MeetsWith([CircuitChanges.CheckCircuit], site: "volts=115 V; equipmentFanAmps=3 A", part: Two);
        Unknown(Side.Plate, "fullLoadAmps", site: "volts=115 V", part: Two);
    }

    [Theory]

    // Published: 1.8 A at service factor 1.15 gives 2.25 A, at 1.0 gives 2.07 A.
    [InlineData("1.15", "2.25 A", false)]
    [InlineData("1.15", "2.26 A", true)]
    [InlineData("1", "2.07 A", false)]
    [InlineData("1", "2.08 A", true)]
    [InlineData("1.14", "2.08 A", true)]
    [InlineData("1", "1.8 A", false)]
    [InlineData("1", "1.79 A", true)]
    public void An_overload_is_set_between_the_plates_amps_and_what_the_code_allows(string serviceFactor, string setting, bool isSet)
    {
        const string motor = "voltage=460 V; phase=3; fullLoadAmps=1.8 A";
        var (site, part) = ($"volts=460 V; overloadSetting={setting}", $"{motor}; serviceFactor={serviceFactor}");
        if (isSet) MeetsWith([CircuitChanges.SetOverload], motor, site, part).Changes[0].Text.ShouldContain("NFPA 70 430.32");
        else Meets(motor, site, part);
    }

    [Fact]
    public void An_overload_of_unknown_setting_is_set_when_the_amps_change_either_way()
    {
        const string site = "volts=460 V; overloadInCircuit=yes";
        const string part = "voltage=460 V; phase=3; fullLoadAmps=1.8 A; serviceFactor=1.15";
        MeetsWith([CircuitChanges.SetOverload], "voltage=460 V; phase=3; fullLoadAmps=2.2 A", site, part).Changes[0].Text.ShouldBe("set the overload to 1.8 A, 2.25 A at most (NFPA 70 430.32)");
        MeetsWith([CircuitChanges.CheckCircuit, CircuitChanges.SetOverload], "voltage=460 V; phase=3; fullLoadAmps=1.5 A", site, part);
        Meets("voltage=460 V; phase=3; fullLoadAmps=1.8 A", site, part);
    }

    // 1.05 × 2.8 A = 2.94 A.
    [Theory]
    [InlineData("5.4/2.94 A", false)]
    [InlineData("5.4/2.95 A", true)]
    [InlineData("5/2 A", false)]
    public void Amps_of_low_speed_are_held_against_the_old_ones_of_low_speed(string amps, bool isChecked)
    {
        const string plate = "voltage=230 V; phase=1; power=3/4-1/3 hp; speed=1725/1140 rpm; fullLoadAmps=5.4/2.8 A";
        var part = plate.Replace("5.4/2.8 A", amps, StringComparison.Ordinal);
        if (!isChecked) Meets(plate, "volts=230 V; speedsUsed=2", part);
        else MeetsWith([CircuitChanges.CheckCircuit], plate, "volts=230 V; speedsUsed=2", part).Changes[0].Text.ShouldBe("see that what switches low suits 2.95 A; the old motor took 2.8 A");
        Meets(plate, "volts=230 V; speedsUsed=1", part);
    }

    [Fact]
    public void A_part_without_amps_is_unknown() => Unknown(Side.Part, "fullLoadAmps", site: "contactFullLoadAmps=30 A", part: "voltage=115 V; phase=1");

    [Fact]
    public void More_amps_never_lower_the_shortfall() => Check.One(Config.QuickThrowOnFailure, Prop.ForAll(
        Gen.Choose(1, 200).Two().ToArbitrary(),
        two => Shortfall(Math.Max(two.Item1, two.Item2)).ShouldBeGreaterThanOrEqualTo(Shortfall(Math.Min(two.Item1, two.Item2)))));

    // Worked by hand: 4 A at 115 V are as many volt-amperes as 2 A at 230 V. The other way round wire and contact carry the amps, whatever the volts.
    [Theory]
    [InlineData("115 V", "4 A", "230 V", "2.1 A", false)]
    [InlineData("115 V", "4 A", "230 V", "2.2 A", true)]
    [InlineData("230 V", "2 A", "115 V", "4 A", true)]
    [InlineData("208 V", "2 A", "230 V", "2.1 A", false)]
    public void Amps_at_far_fewer_volts_are_compared_by_the_power_they_carried(string oldVolts, string oldAmps, string volts, string amps, bool isChecked)
    {
        var (plate, site, part) = ($"voltage={oldVolts}; phase=1; fullLoadAmps={oldAmps}", $"volts={volts}", $"voltage={volts}; phase=1; fullLoadAmps={amps}");
        if (isChecked) MeetsWith([CircuitChanges.CheckCircuit], plate, site, part);
        else Meets(plate, site, part);
    }

    [Fact]
    public void Both_volts_are_named_where_they_are_far_apart() =>
        Meets("voltage=115 V; phase=1; fullLoadAmps=4 A", "volts=230 V", "voltage=230 V; phase=1; fullLoadAmps=2 A").Sentence
            .ShouldBe("It takes 2 A, and the old motor took 4 A at 115 V, as much as 2 A at 230 V; up to 5 % more counts as the same.");

    private static double Shortfall(int tenths) => Judge("voltage=115 V; phase=1; fullLoadAmps=4 A", "volts=115 V; contactFullLoadAmps=10 A", FormattableString.Invariant($"voltage=115 V; phase=1; fullLoadAmps={tenths / 10.0} A")).Shortfall;
}
