using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Published: NEMA MG 1 12.44, the sum of the absolute percentages at most 10 %, the frequency's at most 5 %.</summary>
[Trait("Source", "motor.voltageAndFrequency")]
public sealed class VoltageAndFrequencyTests : MotorAspectTests<VoltageAndFrequency>
{
    private const string Part = "voltage=230 V; frequency=60 Hz; phase=3";

    [Fact]
    public void Minus_5_1_percent_volts_and_plus_1_6_percent_frequency_are_6_7_percent_and_allowed()
    {
        // Published worked example in an article on nameplate tolerances that quotes MG 1. 500 V makes a tenth of a volt a fiftieth of a percent.
        var finding = Meets(site: "volts=474.5 V; supplyFrequency=60.96 Hz", part: "voltage=500 V; frequency=60 Hz; phase=3");
        finding.Sentence.ShouldBe("Volts 5.1 % and frequency 1.6 % off are 6.7 % together; the limit is 10 %.");
    }

    [Theory]
    [InlineData("212.75 V", "61.5 Hz")] // 7.5 % (by 0.1 V: 212.8) and 2.5 %
    [InlineData("218.5 V", "57 Hz")] // 5 % and 5 %: 10 % exactly
    [InlineData("243.8 V", "62.4 Hz")] // 6 % and 4 %: 10 % exactly
    public void Ten_percent_together_meets(string volts, string hertz) => Meets(site: $"volts={volts}; supplyFrequency={hertz}", part: Part);

    [Theory]
    [InlineData("218.3 V", "57 Hz")]
    [InlineData("243.9 V", "62.4 Hz")]
    [InlineData("207 V", "60.6 Hz")]
    public void Just_over_10_percent_together_fails(string volts, string hertz) =>
        Fails(site: $"volts={volts}; supplyFrequency={hertz}", part: Part).Sentence.ShouldContain("the limit is 10 %");

    [Fact]
    public void Inside_a_span_the_volts_are_not_off() =>
        Meets(site: "volts=220 V; supplyFrequency=57 Hz", part: "voltage=208-230 V; frequency=60 Hz; phase=1").Sentence.ShouldContain("Volts 0.0 %");

    [Fact]
    public void A_deviation_beyond_its_own_limit_is_for_its_own_aspect()
    {
        Meets(site: "volts=202 V; supplyFrequency=60 Hz", part: Part);
        Meets(site: "volts=202 V; supplyFrequency=61 Hz", part: Part).Sentence.ShouldContain("decides by itself");
        Meets(site: "volts=230 V; supplyFrequency=50 Hz", part: Part).Sentence.ShouldContain("decides by itself");
    }

    [Fact]
    public void An_iec_plate_hears_of_zone_a()
    {
        // Published: IEC 60034-1 zone A, ±5 % V and ±2 % Hz.
        const string iec = "voltage=400 V; frequency=50 Hz; phase=3; standard=IEC";
        Meets(site: "volts=385 V; supplyFrequency=50.5 Hz", part: iec).Sentence.ShouldContain("in IEC 60034-1 zone A");
        Meets(site: "volts=385 V; supplyFrequency=51.5 Hz", part: iec).Sentence.ShouldContain("outside IEC 60034-1 zone A");
    }

    [Fact]
    public void Only_what_could_change_the_answer_is_asked_for()
    {
        Meets(site: "supplyFrequency=60 Hz", part: Part);
        Meets(site: "volts=225 V", part: Part);
        Unknown(Side.Site, "volts", site: "supplyFrequency=61 Hz", part: Part);
        Unknown(Side.Site, "supplyFrequency", site: "volts=210 V", part: Part).Sentence.ShouldContain("leaves 1.3 %");
        Unknown(Side.Part, "frequency", site: "volts=210 V; supplyFrequency=60 Hz", part: "voltage=230 V; phase=3");
        Unknown(Side.Part, "voltage", site: "volts=210 V; supplyFrequency=61 Hz", part: "frequency=60 Hz; phase=3");
        Unknown(Side.Site, "neutralVolts", site: "volts=400 V; supplyFrequency=61 Hz", part: "frequency=60 Hz; voltage=230 V; phase=1");
    }
}
