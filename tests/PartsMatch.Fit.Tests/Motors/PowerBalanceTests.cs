using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>Power in, power out, volts, amps and cos φ of one plate. 230 V × 0.55 A × 0.95 = 120.2 W, √3 × 400 V × 1.05 A × 0.75 = 545.6 W: worked by hand; the types' bands are from memory, plates' rounding of 5 % is practice.</summary>
public sealed class PowerBalanceTests
{
    private const string Line = "; voltage=230 V; fullLoadAmps=0.55 A; powerFactor=0.95; phase=1";

    private static NeedReading Need(string plate) => MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), []));

    private static string? Deduced(string plate, string field) => Need(plate).Deductions.SingleOrDefault(deduction => deduction.Side == Side.Plate && deduction.Field == field)?.Text;

    [Theory]
    [InlineData("power=120 W", "input")]
    [InlineData("power=126 W", "input")] // 5 % over is 126.2
    [InlineData("power=114.3 W", "input")] // 5 % under is 114.2
    [InlineData("power=75 W; type=PSC", "output")] // 62 %, and such a motor has 35 to 70 %
    [InlineData("power=75 W", "output")]
    [InlineData("power=100 W; type=PSC", null)] // 83 %: neither the same nor what it gives
    [InlineData("power=20 W; type=PSC", null)] // 17 %
    [InlineData("power=1/8 hp", "output")] // horsepower is at the shaft
    public void Volts_amps_and_power_factor_tell_watts_in_from_watts_out(string power, string? meaning) => Deduced(power + Line, "powerMeaning").ShouldBe(meaning);

    [Fact]
    public void Nothing_follows_where_the_phases_or_the_power_factor_are_not_known()
    {
        Deduced("power=120 W; voltage=230 V; fullLoadAmps=0.55 A; powerFactor=0.95", "powerMeaning").ShouldBeNull();
        Deduced("power=120 W; voltage=230 V; fullLoadAmps=0.55 A; phase=1", "powerMeaning").ShouldBeNull();
    }

    [Theory]
    [InlineData("power=121 W; powerMeaning=output; voltage=230 V; fullLoadAmps=0.55 A; powerFactor=0.95; phase=1", "120 W")]
    [InlineData("power=126.3 W; powerMeaning=input; voltage=230 V; fullLoadAmps=0.55 A; powerFactor=0.95; phase=1", "120 W")]
    [InlineData("power=0.55 kW; voltage=400 V; fullLoadAmps=1.05 A; powerFactor=0.75; phase=3", "546 W")]
    public void More_watts_than_volts_amps_and_power_factor_come_to_contradict_them(string plate, string says)
    {
        var found = Need(plate).Contradictions.ShouldHaveSingleItem();
        found.Fields.ShouldBe(["power", "voltage", "fullLoadAmps", "powerFactor"]);
        found.Sentence.ShouldContain(says);
        found.Source.ShouldBe(MotorSources.LineWatts);
    }

    [Theory]
    [InlineData("power=126 W; powerMeaning=input; voltage=230 V; fullLoadAmps=0.55 A; powerFactor=0.95; phase=1")]
    [InlineData("power=80 W; powerMeaning=output; voltage=230 V; fullLoadAmps=0.55 A; powerFactor=0.95; phase=1")]
    [InlineData("power=0.37 kW; voltage=230/400 V; fullLoadAmps=1.05 A; powerFactor=0.75; phase=3")] // the amps are those of 400 V
    [InlineData("power=90 W; powerMeaning=output; inputPower=180 W")]
    [InlineData("power=90/60 W; powerMeaning=output; inputPower=180/130 W; speed=1400/900 rpm")]
    [InlineData("power=9 W; powerMeaning=output; inputPower=38 W; type=shaded pole")] // 24 % of 10 to 30 %
    [InlineData("power=90 W; powerMeaning=output; inputPower=180 W; efficiency=51 %")]
    public void Figures_that_can_all_be_true_contradict_nothing(string plate) => Need(plate).Contradictions.ShouldBeEmpty();

    /// <summary>A shaded-pole motor has 10 to 30 %, a permanent split capacitor one 25 to 70 % (from memory), 10 % beyond 9 to 33 and 22.5 to 77 %.</summary>
    [Theory]
    [InlineData("efficiency=6 %", true)]
    [InlineData("type=ECM; efficiency=94 %", true)] // 60 to 85 %, beyond 93.5
    [InlineData("efficiency=9 %", false)]
    [InlineData("efficiency=96 %", false)]
    [InlineData("type=shaded pole; efficiency=34 %", true)]
    [InlineData("type=shaded pole; efficiency=33 %", false)]
    [InlineData("type=PSC; efficiency=22 %", true)]
    [InlineData("type=PSC; efficiency=62 %", false)]
    public void An_efficiency_that_no_motor_of_the_type_has_is_named(string plate, bool isNamed)
    {
        var found = Need(plate).Contradictions;
        found.Count.ShouldBe(isNamed ? 1 : 0);
        if (isNamed) found[0].Fields.ShouldContain("efficiency");
    }

    /// <summary>1/3 hp is 248.7 W, more than 16 W.</summary>
    [Fact]
    public void An_efficiency_that_no_motor_has_is_named_beside_watts_in_and_out_that_contradict_each_other() =>
        Need("power=1/3 hp; inputPower=16 W; efficiency=6 %").Contradictions.Select(one => string.Join(", ", one.Fields)).ShouldBe(["power, inputPower", "efficiency"], ignoreOrder: true);

    /// <summary>Worked by hand: of 370 W an electronically commutated motor leaves 0.60 to 0.85, 222 to 314.5 W; of 400 V × 4.2 A at least 0.9 · 0.60 · 0.35, 317.5 W. Neither 370 nor 966 to 1680 W of V·A·cos φ is the other.</summary>
    [Theory]
    [InlineData("", "type, power, voltage, fullLoadAmps, powerFactor")]
    [InlineData("; powerMeaning=input", "type, power, voltage, fullLoadAmps")]
    public void Watts_that_do_not_go_with_the_amps_at_any_power_factor_are_no_doubt_of_the_one_on_the_plate(string meaning, string fields) =>
        string.Join(", ", Need($"type=ECM; power=370 W; voltage=230/400 V; fullLoadAmps=4.2 A; phase=1; powerFactor=1{meaning}").Contradictions.ShouldHaveSingleItem().Fields).ShouldBe(fields);

    /// <summary>Of 120.2 W from the line a permanent split capacitor motor gives 0.25 to 0.70: 30 to 84 W, and 10 % beyond 27 to 92.5 W.</summary>
    [Theory]
    [InlineData("power=100 W; type=PSC", true)]
    [InlineData("power=93 W; type=PSC", true)]
    [InlineData("power=92 W; type=PSC", false)]
    [InlineData("power=27 W; type=PSC", true)]
    [InlineData("power=27.1 W; type=PSC", false)]
    [InlineData("power=10 W", true)] // under the 0.10 of a shaded-pole motor
    [InlineData("power=100 W", false)] // some type may give them
    public void Watts_that_are_neither_taken_nor_given_are_named(string power, bool isNamed)
    {
        var found = Need(power + Line).Contradictions;
        found.Count.ShouldBe(isNamed ? 1 : 0);
        if (isNamed) found[0].Sentence.ShouldContain("is neither the 120 W");
    }

    /// <summary>62 % of the 120.2 W from the line is what such a motor gives; 97 % of them is more than any single-phase one does, 0.87 and 10 % beyond 0.957.</summary>
    [Theory]
    [InlineData("type=PSC; power=75 W; powerMeaning=input", "75 W from the line is not the 120 W")]
    [InlineData("power=116 W; powerMeaning=output", "116 W at the shaft is not what any type of motor that it may be gives at the shaft of the 120 W")]
    [InlineData("type=PSC; power=75 W; powerMeaning=output", null)]
    [InlineData("power=118 W; powerMeaning=input", null)]
    public void Watts_that_volts_amps_and_power_factor_tell_otherwise_than_the_plate_are_named(string power, string? says)
    {
        var found = Need(power + Line).Contradictions;
        found.Count.ShouldBe(says is null ? 0 : 1);
        if (says is not null) found[0].Sentence.ShouldContain(says);
    }

    [Theory]
    [InlineData("power=180 W; powerMeaning=output; inputPower=90 W", "power, inputPower", "gives less than it takes")]
    [InlineData("power=90 W; powerMeaning=output; inputPower=90 W", "power, inputPower", "gives less than it takes")]
    [InlineData("power=90 W; powerMeaning=output; inputPower=180 W; type=shaded pole", "power, inputPower, type", "an efficiency of 50 %, where a shaded pole motor has 10 to 30 %")]
    [InlineData("power=1/4 hp; inputPower=500 W; efficiency=60 %", "power, inputPower, efficiency", "37 %, but the plate says 60 %")] // 186.5 / 500
    [InlineData("power=90/60 W; powerMeaning=output; inputPower=180/120/90 W; speed=1400/900 rpm", "inputPower, power", "cannot be paired")]
    public void Power_in_and_out_must_go_together(string plate, string fields, string says)
    {
        var found = Need(plate).Contradictions.ShouldHaveSingleItem();
        string.Join(", ", found.Fields).ShouldBe(fields);
        found.Sentence.ShouldContain(says);
    }

    [Theory]
    [InlineData("power=90 W; powerMeaning=output; inputPower=180 W", "50 %")]
    [InlineData("power=1/4 hp; inputPower=290 W", "64.3 %")] // 186.5 / 290
    [InlineData("power=180 W; powerMeaning=output; inputPower=90 W", null)]
    [InlineData("power=90/60 W; powerMeaning=output; inputPower=180/130 W; speed=1400/900 rpm", null)]
    [InlineData("power=90 W; powerMeaning=output", null)]
    public void Efficiency_is_output_over_input(string plate, string? efficiency) => Deduced(plate, "efficiency").ShouldBe(efficiency);

    [Theory]
    [InlineData("power=90 W; inputPower=180 W", "output")]
    [InlineData("power=171.5 W; inputPower=180 W", "input")] // 5 % under is 171.4
    [InlineData("power=171 W; inputPower=180 W", "output")]
    [InlineData("power=180 W; inputPower=90 W", null)]
    public void A_power_beside_what_the_motor_takes_is_what_comes_out_unless_it_is_the_same_figure(string plate, string? meaning) => Deduced(plate, "powerMeaning").ShouldBe(meaning);

    [Theory]
    [InlineData("power=423 W; powerMeaning=input; inputPower=571 W", true)]
    [InlineData("power=560 W; powerMeaning=input; inputPower=571 W", false)] // 2 % under
    public void Two_figures_of_what_a_motor_takes_contradict_each_other_where_they_differ(string plate, bool isNamed) =>
        Need(plate).Contradictions.Select(one => string.Join(", ", one.Fields)).ShouldBe(isNamed ? ["power, powerMeaning, inputPower"] : []);
}
