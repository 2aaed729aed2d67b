using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>NFPA 70 tables 430.248, 430.250 and 430.52 (published), next standard size up and 430.6's exceptions (from memory), 125 % as the least (practice). Worked by hand.</summary>
[Trait("Source", "motor.branchFuse")]
public sealed class BranchFuseTests : MotorAspectTests<BranchFuse>
{
    private const string Psc = "type=PSC; voltage=230 V; phase=1; speed=1075 rpm; speeds=1; power=3/4 hp; frequency=60 Hz; fullLoadAmps=8 A";

    [Theory]

    // The plate's 8 A count: less than 8 fails, 1.25 × 8 = 10 A is the least without a check, 300 % = 24 A gives 25 A as the most.
    [InlineData("7.9 A", "Fails")]
    [InlineData("8 A", "MeetsWithChanges")]
    [InlineData("9.9 A", "MeetsWithChanges")]
    [InlineData("10 A", "Meets")]
    [InlineData("25 A", "Meets")]
    [InlineData("30 A", "MeetsWithChanges")]
    public void A_fuse_lies_between_125_percent_and_what_the_code_allows(string fuse, string verdict)
    {
        var finding = Judge(site: $"volts=230 V; fuse={fuse}", part: Psc);
        finding.Verdict.ToString().ShouldBe(verdict, finding.Sentence);
        finding.Changes.ShouldAllBe(change => change.Kind == CircuitChanges.CheckFuse);
    }

    /// <summary>460 V between lines suit neither tap of 230/400 V; half of them, from a neutral that nobody measured, would suit the one that takes 5.4 A. Whether there is one decides nothing about a 5 A fuse: without it the motor stands on no tap at all.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("; neutralVolts=207 V")]
    public void Amps_that_only_a_neutral_nobody_measured_would_bring_do_not_fail_a_fuse(string neutral) =>
        Judge(site: $"volts=460/467/450 V; fuse=5 A{neutral}", part: "type=PSC; voltage=230/400 V; phase=1; power=1/2 hp; fullLoadAmps=5.4/2.8 A").Verdict.ShouldNotBe(Verdict.Fails);

    [Fact]
    public void A_small_motor_may_stand_behind_a_15_ampere_breaker()
    {
        // 300 % of 1 A is 3 A, but 15 A is the smallest breaker.
        const string part = "type=shaded pole; voltage=115 V; phase=1; fullLoadAmps=1 A";
        Meets(site: "volts=115 V; fuse=15 A", part: part).Sentence.ShouldBe("It takes 1 A: a fuse of 1.25 to 15 A suits, and 15 A is there.");
        MeetsWith([CircuitChanges.CheckFuse], site: "volts=115 V; fuse=20 A", part: part).Changes[0].Text.ShouldContain("15 A is the most");
    }

    [Fact]
    public void A_fuse_that_was_as_large_for_the_old_motor_is_let_be()
    {
        Meets("voltage=230 V; phase=1; fullLoadAmps=8.4 A", "volts=230 V; fuse=30 A", Psc);
        MeetsWith([CircuitChanges.CheckFuse], "voltage=230 V; phase=1; fullLoadAmps=8.5 A", "volts=230 V; fuse=30 A", Psc);
    }

    [Fact]
    public void Other_motors_on_the_contact_add_to_it()
    {
        Meets(site: "volts=230 V; fuse=15 A; otherFullLoadAmps=5 A", part: Psc);
        MeetsWith([CircuitChanges.CheckFuse], site: "volts=230 V; fuse=15 A; otherFullLoadAmps=5.1 A", part: Psc);
        Fails(site: "volts=230 V; fuse=15 A; otherFullLoadAmps=7.1 A", part: Psc);
    }

    [Theory]

    // Table 430.250, 5 hp at 230 V: 15.2 A instead of the plate's 13 A, so 19 A is the least; 300 % = 45.6 A gives 50 A.
    [InlineData("type=three-phase induction; speed=1750 rpm; speeds=1", "By the code's table it counts as 15.2 A: a fuse of 19 to 50 A suits, and 40 A is there.")]

    // Slow and two-speed motors, and types of which nothing is known, go by the plate: 16.25 A; 39 A gives 40 A.
    [InlineData("type=three-phase induction; speed=1160 rpm; speeds=1", "It takes 13 A: a fuse of 16.25 to 40 A suits, and 40 A is there.")]
    [InlineData("type=three-phase induction; speed=1750 rpm; speeds=2", "It takes 13 A: a fuse of 16.25 to 40 A suits, and 40 A is there.")]
    [InlineData("speed=1750 rpm; speeds=1", "It takes 13 A: a fuse of 16.25 to 40 A suits, and 40 A is there.")]
    public void The_codes_table_counts_for_fast_ordinary_motors(string kind, string sentence) =>
        Meets(site: "volts=230 V; fuse=40 A", part: $"{kind}; power=5 hp; voltage=230 V; phase=3; frequency=60 Hz; fullLoadAmps=13 A").Sentence.ShouldBe(sentence);

    [Fact]
    public void With_no_fuse_named_a_motor_that_takes_no_more_than_the_old_one_meets()
    {
        // 1.05 × 7.62 = 8.001 A.
        Meets("voltage=230 V; phase=1; fullLoadAmps=7.62 A", part: Psc);
        Unknown(Side.Site, "fuse", "voltage=230 V; phase=1; fullLoadAmps=7.61 A", part: Psc);
        Unknown(Side.Site, "fuse", part: Psc);
    }

    [Fact]
    public void A_part_without_amps_is_unknown() => Unknown(Side.Part, "fullLoadAmps", site: "fuse=15 A", part: "voltage=230 V; phase=1");
}
