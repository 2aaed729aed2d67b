using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Valves.SolenoidValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.SolenoidValves.Aspects;

/// <summary>15 % under to 5 % over the marked volts: UFGS 15652A 2.21.3, published; to 10 % over with a caution: practice. Limits worked by hand: 120 V × 0.85 = 102 V, × 1.05 = 126 V, × 1.10 = 132 V.</summary>
[Trait("Source", "solenoidValve.coilSupplied")]
public sealed class CoilSuppliedTests : SolenoidAspectTests<CoilSupplied, CoilFacet>
{
    private const string Coil120 = "coilVolts=120 V; coilFrequency=60 Hz";

    [Theory]
    [InlineData("102 V", "Meets", false)]
    [InlineData("101.9 V", "Fails", false)]
    [InlineData("126 V", "Meets", false)]
    [InlineData("126.1 V", "Meets", true)]
    [InlineData("132 V", "Meets", true)]
    [InlineData("132.1 V", "Fails", false)]
    public void The_volts_stay_in_its_window(string volts, string answer, bool isCautioned)
    {
        var finding = Judge("", $"coilSupplyVolts={volts}; coilSupplyFrequency=60 Hz", Coil120);
        finding.Verdict.ToString().ShouldBe(answer);
        (finding.Caution is not null).ShouldBe(isCautioned);
    }

    [Theory]
    [InlineData("", "coilSupplyVolts=202 V; coilSupplyFrequency=60 Hz", "coilVolts=208-240 V; coilFrequency=50/60 Hz", "Meets")]
    [InlineData("", "coilSupplyVolts=240 V; coilSupplyFrequency=60 Hz", "coilVolts=120/240 V; coilFrequency=60 Hz", "MeetsWithChanges connectValveCoil")]
    [InlineData("", "coilSupplyVolts=120 V; coilSupplyFrequency=50 Hz", Coil120, "Fails")]
    [InlineData("", "coilSupplyVolts=120 V", Coil120, "Unknown Site coilSupplyFrequency")]
    [InlineData("", "coilSupplyVolts=120 V", "coilVolts=120 V; coilFrequency=50/60 Hz", "Unknown Site coilSupplyCurrent")] // for any mains, but for no direct current
    [InlineData("", "coilSupplyVolts=120 V; coilSupplyCurrent=AC", "coilVolts=120 V; coilFrequency=50/60 Hz", "Meets")]
    [InlineData("", "coilSupplyVolts=120 V; coilSupplyFrequency=60 Hz", "coilVolts=120 V; coilFrequency=50/60 Hz", "Meets")]
    [InlineData("coilFrequency=50 Hz; coilVolts=120 V", "coilSupplyVolts=120 V", "coilVolts=120 V; coilFrequency=50/60 Hz", "Meets")] // the old coil's frequency tells
    [InlineData("", "coilSupplyVolts=120 V; coilSupplyCurrent=AC", Coil120, "Unknown Site coilSupplyFrequency")]
    [InlineData("", "coilSupplyVolts=120 V; coilSupplyCurrent=DC", "coilVolts=120 V; coilFrequency=50/60 Hz", "Fails")]
    [InlineData("", "coilSupplyVolts=120 V; coilSupplyFrequency=60 Hz", "coilVolts=120 V", "Unknown Part coilFrequency")]
    [InlineData("", "coilSupplyVolts=24 V; coilSupplyCurrent=DC", "coilVolts=24 V; coilCurrent=DC", "Meets")]
    [InlineData("", "coilSupplyVolts=24 V; coilSupplyCurrent=AC; coilSupplyFrequency=60 Hz", "coilVolts=24 V; coilCurrent=DC", "Fails")]
    [InlineData("", "coilSupplyVolts=24 V; coilSupplyCurrent=DC", "coilVolts=24 V; coilFrequency=60 Hz", "Fails")]
    [InlineData("coilVolts=120 V; coilFrequency=60 Hz", "", Coil120, "Meets")] // as the old coil's, where nobody measured
    [InlineData("coilVolts=120 V; coilFrequency=60 Hz", "coilSupplyVolts=24 V", Coil120, "Fails")] // what is measured outranks it
    [InlineData("", "", Coil120, "Unknown Site coilSupplyVolts")]
    [InlineData("", "coilSupplyVolts=24 V", "", "Unknown Part coilVolts")]
    public void Volts_frequency_and_current_belong_together(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>An old coil for 208-240 V takes 176.8 to 264 V, one for 208 V 176.8 to 228.8 V, one for 200 V 170 to 220 V (UFGS 15652A, with 10 % over by practice): the two take some of what was there, not all of it.</summary>
    [Theory]
    [InlineData("208-240 V", "Meets")]
    [InlineData("220-240 V", "Meets")] // 187 to 264 V hold 208 and 240 V
    [InlineData("208 V", "Unknown Site coilSupplyVolts")]
    [InlineData("200 V", "Unknown Site coilSupplyVolts")]
    [InlineData("120 V", "Fails")]
    public void Where_nobody_measured_the_old_coils_whole_span_stands(string volts, string answer)
    {
        Answer("coilVolts=208-240 V; coilFrequency=60 Hz", "", $"coilVolts={volts}; coilFrequency=60 Hz").ShouldBe(answer);
        Judge("coilVolts=208-240 V; coilFrequency=60 Hz", "", $"coilVolts={volts}; coilFrequency=60 Hz").Sentence.ShouldContain("the old one's", Case.Sensitive, "it says what is taken for the volts there");
    }

    [Fact]
    public void A_body_that_takes_the_right_coil_fits_with_that_coil_in_the_kit()
    {
        var finding = Judge("", "coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", $"{Coil120}; furtherCoils=208-240 V 50/60 Hz = QC-240/x");
        finding.Verdict.ShouldBe(Verdict.Fails);
        Answer("", "coilSupplyVolts=24 V", $"{Coil120}; furtherCoils=24 V 50/60 Hz = QC-24").ShouldBe("Unknown changeCoil Site coilSupplyCurrent");
        finding = Judge("", "coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", $"{Coil120}; furtherCoils=24 V 50/60 Hz = QC-24");
        finding.Verdict.ShouldBe(Verdict.MeetsWithChanges);
        finding.Changes.Single().Kind.Name.ShouldBe("changeCoil");
        finding.Changes.Single().Text.ShouldBe("put on coil QC-24, 24 V 50/60 Hz, in place of the one for 120 V 60 Hz");
        finding.Changes.Single().Kit.Single().What.ShouldContain("QC-24");
    }
}
