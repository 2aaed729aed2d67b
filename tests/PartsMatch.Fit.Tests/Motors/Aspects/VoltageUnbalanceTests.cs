using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>NEMA MG 1 12.45 and 14.36 (published): 1 % without derating, figure 14-1 up to 5 %, nothing beyond. Percentages worked by hand: largest deviation from the mean, over the mean.</summary>
[Trait("Source", "motor.voltageUnbalance")]
public sealed class VoltageUnbalanceTests : MotorAspectTests<VoltageUnbalance>
{
    [Fact]
    public void The_standards_own_example_of_460_467_and_450_volts_is_1_96_percent_and_derates()
    {
        // Published: mean 459 V, deviation 9 V. Figure 14-1 gives 0.95 at 2 %.
        var finding = Meets(site: "volts=460/467/450 V", part: "phase=3");
        finding.Sentence.ShouldBe("The three voltages are 1.96 % out of balance; up to 1 % costs nothing, 5 % is the limit.");
        finding.Caution!.ShouldStartWith("At 1.96 % unbalance a three-phase motor carries 0.95 of its power");
        finding.Margin!.Value.Value.ShouldBe(5 - (900.0 / 459), 1e-9);
    }

    [Theory]

    // Mean 200 V: a deviation of 2 V is 1 %, of 10 V is 5 %. The tenth of a volt more moves the mean too, and so stays over the limit.
    [InlineData("202/199/199 V", 0, false)]
    [InlineData("201.9/199/199.1 V", 0, false)]
    [InlineData("202.2/199/198.8 V", 0.025, true)]
    [InlineData("209.8/195.2/195 V", 0.975, true)]
    [InlineData("210/195/195 V", 1, true)]
    public void Up_to_1_percent_is_free_and_5_percent_still_meets(string volts, double shortfall, bool cautioned)
    {
        var finding = Meets(site: $"volts={volts}", part: "phase=3");
        finding.Shortfall.ShouldBe(shortfall, 1e-9);
        (finding.Caution is not null).ShouldBe(cautioned);
    }

    [Fact]
    public void At_5_percent_three_quarters_of_the_power_are_left() =>
        Meets(site: "volts=210/195/195 V", part: "phase=3").Caution!.ShouldContain("carries 0.76 of its power, and its windings heat 50 % more");

    [Fact]
    public void Over_5_percent_no_three_phase_motor_fits_until_the_supply_is_mended() =>
        Fails(site: "volts=210.2/195/194.8 V", part: "phase=3").Sentence.ShouldBe("The three voltages are 5.10 % out of balance, and 5 % is the limit: no three-phase motor fits this supply; mend it first.");

    [Fact]
    public void A_dead_line_fails() => Fails(site: "volts=230/115/115 V", part: "phase=3");

    [Theory]
    [InlineData("")]
    [InlineData("volts=230 V")]
    [InlineData("volts=230/228 V")]
    public void Fewer_than_three_readings_are_a_reading_to_take(string site) => Unknown(Side.Site, "volts", site: site, part: "phase=3");

    [Fact]
    public void A_single_phase_motor_does_not_mind() => Meets(site: "volts=230/115/115 V", part: "phase=1").Shortfall.ShouldBe(0);

    [Fact]
    public void A_part_without_phases_is_open_only_where_a_three_phase_one_would_fail()
    {
        Meets(site: "volts=230/230/230 V");
        Unknown(Side.Part, "phase", site: "volts=230/115/115 V");
    }

    [Fact]
    public void The_order_of_the_three_readings_does_not_matter() => Check.One(Config.QuickThrowOnFailure, Prop.ForAll(
        Gen.Choose(2000, 2400).Three().ToArbitrary(),
        three => Shortfall(three.Item1, three.Item2, three.Item3).ShouldBe(Shortfall(three.Item3, three.Item1, three.Item2), 1e-9)));

    private static double Shortfall(int one, int two, int three) => Judge(site: FormattableString.Invariant($"volts={one / 10.0}/{two / 10.0}/{three / 10.0} V"), part: "phase=3").Shortfall;
}
