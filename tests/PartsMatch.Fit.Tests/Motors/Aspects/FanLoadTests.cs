using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Motors.Running;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Fan against torque line. The rule of the band (70 to 100 % of the plate) is practice; Kloss's curve and the cube of speed are textbook.</summary>
[Trait("Source", "motor.fanLoad")]
public sealed class FanLoadTests : BodyAspectTests<FanLoad, RunningFacet>
{
    private const string Rest = "powerMeaning=output; poles=6; frequency=60 Hz; voltage=230 V; phase=single-phase; breakdownTorque=150 %";
    private const string Old = $"type=PSC; power=300 W; speed=1075 rpm; {Rest}";
    private const string At230 = "volts=230 V; supplyFrequency=60 Hz";

    private static string Part(double watts, double rpm = 1075, string more = Rest) => FormattableString.Invariant($"type=PSC; power={watts} W; speed={rpm} rpm; {more}");

    [Fact]
    public void The_same_motor_carries_the_same_fan() => Answer(Old, At230, Old).ShouldBe("Meets");

    // 70 to 100 % of 300 W on 250 W: 84 to 120 % before it slows: part of the band lies over the rating.
    [Fact]
    public void A_smaller_motor_may_be_overloaded_and_a_measurement_tells() => Answer(Old, At230, Part(250)).ShouldBe("Unknown Site measuredSpeed");

    // 70 % of 300 W is 210 W: on 150 W it is 140 % at least.
    [Fact]
    public void A_motor_of_half_the_power_is_overloaded_whatever_the_fan_asks() => Answer(Old, At230, Part(150)).ShouldBe("Fails");

    // The slip of 0.075 against 0.1042 at the rated point: by Kloss at 1.5 times, s_b = 0.1042 (1.5 + √1.25) = 0.2727, torque 0.767 of the rated at 1110 rpm; load 0.767 (1075/1110)² = 0.719.
    [Theory]
    [InlineData(220, "Meets")]
    [InlineData(200, "Fails")]
    public void A_measured_speed_shows_that_a_smaller_motor_is_enough_or_not(double watts, string answer) => Answer(Old, $"{At230}; measuredSpeed=1110 rpm", Part(watts)).ShouldBe(answer);

    // The edge: torque 1.05 of the rated. By Kloss the slip there is s_b (b − √(b² − 1.05²)) / 1.05 with b = 1.5; the fan asks 1.05 (1075/n)² at 1075 rpm. Worked in the test.
    [Theory]
    [InlineData(0.998, "Meets")]
    [InlineData(1.002, "Fails")]
    public void Five_percent_over_the_rating_is_the_limit(double times, string answer)
    {
        var breakdownSlip = 125.0 / 1200 * (1.5 + Math.Sqrt((1.5 * 1.5) - 1));
        var slip = breakdownSlip * (1.5 - Math.Sqrt((1.5 * 1.5) - (1.05 * 1.05))) / 1.05;
        var load = 1.05 * Math.Pow(1075 / (1200 * (1 - slip)), 2);
        Answer(Old, $"{At230}; measuredSpeed=1075 rpm", Part(300 / (load * times))).ShouldBe(answer);
    }

    // 1.03 times the old load on the same rating: named, with a caution, and not passed over. Old 300 W at its full load (measured 1075 rpm), part 300 / 1.03 = 291.3 W.
    [Fact]
    public void A_load_a_little_over_the_rating_is_said_and_minded()
    {
        var finding = Judge(Old, $"{At230}; measuredSpeed=1075 rpm", Part(291.3));
        finding.Verdict.ShouldBe(Verdict.Meets);
        finding.Sentence.ShouldEndWith("and 100 % is its limit: up to 5 % over it cannot be told apart from it (practice).");
        finding.Caution!.ShouldContain("clamp its amps");
        Judge(Old, $"{At230}; measuredSpeed=1075 rpm", Old).Caution.ShouldBeNull();
    }

    // 1140 against 1075 rpm: 1.0605³ = 1.193 times the power (fan laws).
    [Fact]
    public void A_faster_motor_of_the_same_power_may_be_overloaded() => Answer(Old, $"{At230}; drive=direct", Part(300, 1140)).ShouldBe("Unknown Site measuredSpeed");

    [Fact]
    public void A_belt_s_sheaves_take_up_another_speed() =>
        Answer(Old, $"{At230}; drive=belt", "type=PSC; power=300 W; speed=1625 rpm; powerMeaning=output; poles=4; frequency=60 Hz; voltage=230 V; phase=single-phase; breakdownTorque=150 %").ShouldBe("Meets");

    // MG 1 14.37: permitted service-factor load assumes rated volts. 300 W on 250 W at 1.25 is within, at 218 V it does not count.
    [Theory]
    [InlineData("volts=230 V", "Meets")]
    [InlineData("volts=226 V", "Meets")]
    [InlineData("volts=225 V", "Unknown Site measuredSpeed")]
    [InlineData("volts=230 V; altitude=1000 m", "Meets")]
    [InlineData("volts=230 V; altitude=1001 m", "Unknown Site measuredSpeed")] // there it makes up for the thin air (MG 1 14.4, from memory)
    [InlineData("", "Unknown Site measuredSpeed")]
    public void The_service_factor_counts_at_rated_volts_only(string volts, string answer) =>
        Answer(Old, $"{volts}; supplyFrequency=60 Hz", Part(250, 1075, $"{Rest}; serviceFactor=1.25")).ShouldBe(answer);

    // Half the power is too little at the plate's volts; lower ones would ask for less, and a belt would make up for a speed: both are asked for before it is refused.
    [Theory]
    [InlineData("supplyFrequency=60 Hz", 150, 1075, "Unknown Site volts")]
    [InlineData(At230, 150, 1140, "Unknown Site drive")]
    [InlineData($"{At230}; drive=direct", 150, 1140, "Fails")]
    public void What_could_save_it_is_asked_for_before_a_motor_is_refused(string site, double watts, double rpm, string answer) => Answer(Old, site, Part(watts, rpm)).ShouldBe(answer);

    // NEMA MG 1 14.36: 226/236/234 V is 2.6 % out of balance and leaves 0.93 of the power or so (figure 14-1, published; read off a curve): what the old motor carried is no measure there.
    [Theory]
    [InlineData("volts=230/230/230 V", "Meets")]
    [InlineData("volts=226/236/234 V", "Unknown Site measuredSpeed")]
    public void Unbalanced_volts_leave_less_of_the_power(string volts, string answer)
    {
        const string motor = "type=three-phase induction; power=2 hp; speed=1725 rpm; poles=4; frequency=60 Hz; voltage=230 V; phase=three-phase; breakdownTorque=200 %; powerMeaning=output";
        Answer(motor, $"{volts}; supplyFrequency=60 Hz", motor).ShouldBe(answer);
    }

    // The fan takes 70 to 100 % of 300 W at 1075 rpm, and (900/1075)³ = 0.587 of that at 900 rpm: 123 to 176 W.
    [Theory]
    [InlineData("300/180 W", "speedsUsed=2", "Meets")]
    [InlineData("300/150 W", "speedsUsed=2", "Unknown Site measuredSpeed")]
    [InlineData("300/90 W", "speedsUsed=2; drive=direct", "Fails")]
    [InlineData("300/90 W", "speedsUsed=1", "Meets")]
    public void The_same_fan_is_judged_on_low_speed_where_it_is_used(string power, string used, string answer)
    {
        const string old = $"type=PSC; power=300/180 W; speed=1075/900 rpm; speeds=2; speedMeans=tapped; {Rest}";
        var part = old.Replace("300/180 W", power, StringComparison.Ordinal);
        Answer(old, $"{At230}; {used}", part).ShouldBe(answer);
        if (answer == "Fails") Judge(old, $"{At230}; {used}", part).Sentence.ShouldStartWith("On low, 900 rpm: the fan would load it over its rating");
    }

    [Theory]
    [InlineData("type=PSC; speed=1075 rpm; poles=6", Rest, "Unknown Plate power")]
    [InlineData("type=PSC; power=300 W; powerMeaning=output", Rest, "Unknown Plate speed")]
    public void What_is_missing_is_named(string plate, string more, string answer) => Answer(plate, At230, Part(300, 1075, more)).ShouldBe(answer);

    [Theory]
    [InlineData("bladeStays=no", "Unknown Site bladeDiameter")]
    [InlineData("bladeStays=no; bladeDiameter=20 in", "Unknown Site newBladeDiameter")]
    [InlineData("bladeStays=no; bladeDiameter=20 in; newBladeDiameter=20 in", "Meets")]
    [InlineData("bladeStays=no; bladeDiameter=20 in; newBladeDiameter=24 in", "Fails")]
    public void A_new_blade_loads_with_the_fifth_power_of_its_diameter(string blade, string answer) => Answer(Old, $"{At230}; {blade}", Old).ShouldBe(answer);

    // At 187.2 V the old motor is pulled down as well: a motor loaded no harder than the old one was is not worse.
    [Fact]
    public void A_motor_no_harder_worked_than_the_old_one_was_meets() => Answer(Old, "volts=253 V; supplyFrequency=60 Hz", Old).ShouldBe("Meets");

    /// <summary>Worked by hand: six poles turn below 1200 rpm at 60 Hz, and 1075 rpm is no speed of any at 50 Hz, where four are faster than 1260 rpm and six slower than 1000.</summary>
    [Theory]
    [InlineData("60 Hz")]
    [InlineData("50/60 Hz")]
    public void A_speed_beside_two_frequencies_is_that_at_the_supplys(string frequency) =>
        Answer($"type=PSC; power=300 W; powerMeaning=output; speed=1075 rpm; frequency={frequency}; voltage=230 V", $"{At230}; drive=direct", Part(150)).ShouldBe("Fails");

    /// <summary>A motor for 230 V does not take 400 V between lines, and 400 / √3 = 231 V to neutral it does: until somebody measured there, nothing is refused.</summary>
    [Theory]
    [InlineData("volts=400 V", "Unknown Site neutralVolts")]
    [InlineData("volts=400 V; neutralVolts=231 V", "Fails")]
    [InlineData("volts=230 V", "Fails")]
    public void Volts_to_neutral_are_asked_for_where_those_between_lines_do_not_suit(string volts, string answer) => Answer(Old, $"{volts}; supplyFrequency=60 Hz; drive=direct", Part(100)).ShouldBe(answer);

    /// <summary>How hard an old motor is worked counts for the part as well as against it, so that one between the ends of what is known may be passed where both ends are refused.</summary>
    [Fact]
    public void A_part_is_refused_beside_a_motor_of_unknown_type_or_poles_only_where_it_is_beside_one_of_each()
    {
        var cases =
            from rpm in Gen.Elements(425, 510, 825, 1075, 1550)
            from volts in Gen.Choose(140, 260)
            from watts in Gen.Choose(60, 400)
            from type in Gen.Elements("PSC", "shaded pole", "capacitor start", "ECM", "split phase")
            from capacitor in Gen.Elements("", "runCapacitor=5 µF 370 V; ", "runCapacitor=none; ")
            from read in Gen.Elements("type=shaded pole", "type=PSC", "type=split phase", "type=capacitor start", "type=CSCR", "type=ECM", "poles=12", "poles=14", "poles=16", "runCapacitor=5 µF 370 V", "runCapacitor=none")
            select (Plate: $"{capacitor}power=200 W; powerMeaning=output; speed={rpm} rpm; voltage=230 V; phase=single-phase", Site: $"volts={volts} V; supplyFrequency=60 Hz; drive=direct", Part: $"type={type}; power={watts} W; powerMeaning=output; speed={rpm} rpm; frequency=60 Hz; voltage=230 V; phase=single-phase", read);

        Check.One(Config.QuickThrowOnFailure.WithMaxTest(5000), Prop.ForAll(cases.ToArbitrary(), one =>
        {
            if (one.read.StartsWith("runCapacitor", StringComparison.Ordinal) && one.Plate.StartsWith("runCapacitor", StringComparison.Ordinal)) return;
            if (Judge(one.Plate, one.Site, one.Part).Verdict != Verdict.Fails) return;
            Judge($"{one.Plate}; {one.read}", one.Site, one.Part).Verdict.ShouldBe(Verdict.Fails, $"{one}");
        }));
    }

    /// <summary>Worked by hand: at 50 Hz six poles turn below 1000 rpm and eight below 750, at 60 Hz eight below 900. Poles that go with the plate's own frequency alone take nothing back.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("; poles=6")]
    [InlineData("; poles=8")]
    public void Poles_that_cannot_have_the_speed_on_the_supply_there_leave_the_answer(string poles) =>
        Answer($"type=PSC; power=300 W; powerMeaning=output; speed=860 rpm; voltage=230 V{poles}", "volts=230 V; supplyFrequency=50 Hz; drive=direct", "type=PSC; power=150 W; powerMeaning=output; speed=860 rpm; frequency=50 Hz; voltage=230 V; phase=single-phase").ShouldBe("Fails");

    // Amps over the plate's bound the load (US DOE, from memory): 1 of 3 A is 100 W of 300 at most, and 150 W carry them. 70 % of 300 W, as fans usually ask, they do not.
    [Theory]
    [InlineData("", "Unknown Plate fullLoadAmps")]
    [InlineData("; fullLoadAmps=3 A", "Meets")]
    [InlineData("; fullLoadAmps=1 A", "Fails")]
    public void Amps_that_were_measured_wait_for_those_of_the_plate(string amps, string answer) => Answer($"{Old}{amps}", $"{At230}; measuredAmps=1 A; drive=direct", Part(150)).ShouldBe(answer);

    // Torque goes with the square of volts: at 1075 rpm on 207 V a motor for 230 V gives 0.81 of its rated torque, 243 W of 300, and one for 208 V nearly all of it.
    [Theory]
    [InlineData("voltage=230 V; ", "Meets")]
    [InlineData("voltage=208 V; ", "Fails")]
    [InlineData("", "Unknown Plate voltage")]
    public void A_speed_that_was_measured_waits_for_the_old_volts(string volts, string answer) =>
        Answer(Old.Replace("voltage=230 V; ", volts, StringComparison.Ordinal), "volts=207 V; supplyFrequency=60 Hz; drive=direct; measuredSpeed=1075 rpm", Part(250, more: Rest.Replace("230 V", "208 V", StringComparison.Ordinal))).ShouldBe(answer);

    // 1075/900 rpm may be one speed at 60 and 50 Hz: beside 1075 rpm the second differs by 19 %, and a belt's sheaves would be changed for it.
    [Theory]
    [InlineData("1075/900 rpm", "Unknown Site drive")]
    [InlineData("1075 rpm", "Fails")]
    public void A_speed_that_may_be_the_old_one_leaves_the_belt_open(string speed, string answer) =>
        Answer($"type=PSC; power=300 W; powerMeaning=output; speed={speed}; poles=6; voltage=230 V; phase=single-phase; breakdownTorque=150 %", At230, Part(100)).ShouldBe(answer);
}
