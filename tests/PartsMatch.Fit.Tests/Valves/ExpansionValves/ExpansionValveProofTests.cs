using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Valves.ExpansionValves;

namespace PartsMatch.Fit.Tests.Valves.ExpansionValves;

/// <summary>Expansion valves before they are condemned and after the swap. Limits are practice; dew temperatures are a second program's table.</summary>
[Trait("Source", "reading.bulbSuperheat")]
[Trait("Source", "reading.starvedCoil")]
[Trait("Source", "reading.bulbTest")]
public sealed class ExpansionValveProofTests
{
    private const string Good = "bulbInPlace=yes; clearLiquid=yes; coilHasAir=yes";

    [Theory]
    [InlineData("", Conclusion.ReadNext, "bulbInPlace")]
    [InlineData("bulbInPlace=no", Conclusion.NotThePart, null)]
    [InlineData("bulbInPlace=yes; clearLiquid=no", Conclusion.NotThePart, null)]
    [InlineData("bulbInPlace=yes; clearLiquid=yes; coilHasAir=no", Conclusion.NotThePart, null)]
    [InlineData(Good, Conclusion.ReadNext, "suctionPressure")]
    [InlineData($"{Good}; superheat=5 °F", Conclusion.NothingWrongFound, null)]
    [InlineData($"{Good}; superheat=15 °F", Conclusion.NothingWrongFound, null)]
    [InlineData($"{Good}; superheat=15.1 °F", Conclusion.ReadNext, "opensWhenWarmed")]
    [InlineData($"{Good}; superheat=4.9 °F", Conclusion.ReadNext, "closesWhenChilled")]
    [InlineData($"{Good}; superheat=25 °F; opensWhenWarmed=no", Conclusion.PartHasFailed, null)]
    [InlineData($"{Good}; superheat=2 °F; closesWhenChilled=no", Conclusion.PartHasFailed, null)]
    [InlineData($"bulbInPlace=no; superheat=2 °F; closesWhenChilled=no", Conclusion.NotThePart, null)] // a loose bulb is mended first
    [InlineData("opensWhenWarmed=no", Conclusion.ReadNext, "bulbInPlace")] // bubbles, ice and a loose bulb look the same
    [InlineData("bulbInPlace=yes; opensWhenWarmed=no", Conclusion.ReadNext, "clearLiquid")]
    [InlineData("bulbInPlace=yes; clearLiquid=yes; opensWhenWarmed=no", Conclusion.ReadNext, "coilHasAir")]
    [InlineData("bulbInPlace=yes; clearLiquid=no; opensWhenWarmed=no", Conclusion.NotThePart, null)]
    [InlineData($"{Good}; opensWhenWarmed=no", Conclusion.PartHasFailed, null)]
    [InlineData("closesWhenChilled=no", Conclusion.ReadNext, "bulbInPlace")]
    [InlineData($"{Good}; closesWhenChilled=no", Conclusion.PartHasFailed, null)]
    public void Readings_tell_whether_it_is_the_valve(string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Diagnose("refrigerant=R-404A", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>Ice water stands at 32 °F: it warms a freezer's bulb, which no valve closes on.</summary>
    [Theory]
    [InlineData("45 °F", "Hold the bulb in ice water, with")]
    [InlineData("44.9 °F", "Hold the bulb in dry ice or cold spray, with gloves on")]
    [InlineData("-10 °F", "Hold the bulb in dry ice or cold spray, with gloves on")]
    public void A_bulb_is_chilled_by_what_is_colder_than_its_pipe(string bulb, string asks)
    {
        var next = Diagnose("refrigerant=R-404A", $"{Good}; superheat=2 °F; bulbTemperature={bulb}").Next!;
        (next.Field, next.Why.StartsWith(asks, StringComparison.Ordinal)).ShouldBe(("closesWhenChilled", true), next.Why);
    }

    /// <summary>R-134a at 25 psig is −1.85 °C (28.67 °F) at sea level, computed by a second program; a pipe of 38.67 °F is 10 °F over it.</summary>
    [Fact]
    public void Superheat_follows_from_pressure_temperature_and_refrigerant() =>
        Diagnose("refrigerant=R-134a", $"{Good}; suctionPressure=25 psi; bulbTemperature=38.67 °F").Checks[^1].Sentence.ShouldStartWith("Superheat is 10 °F (5.6 K)");

    /// <summary>At 1500 m the air is 84.6 kPa instead of 101.3 (ISO 2533): the same gauge shows 17 kPa less of absolute pressure, by which R-134a boils colder and superheat is more.</summary>
    [Fact]
    public void Sea_level_is_said_to_be_taken_where_no_altitude_is_given()
    {
        const string Readings = $"{Good}; suctionPressure=25 psi; bulbTemperature=38.67 °F";
        var taken = Diagnose("refrigerant=R-134a", Readings);
        taken.Checks[^1].Sentence.ShouldBe("Superheat is 10 °F (5.6 K), taken at sea level (higher up it is more).");
        taken.Drawings.Single().Words.ShouldContain("taken at sea level");
        Diagnose("refrigerant=R-134a", $"{Readings}; altitude=1 m").Checks[^1].Sentence.ShouldBe("Superheat is 10 °F (5.6 K).");
        Diagnose("refrigerant=R-134a", $"{Good}; superheat=10 °F").Checks[^1].Sentence.ShouldBe("Superheat is 10 °F (5.6 K).");
        var high = Diagnose("refrigerant=R-134a", $"{Readings}; altitude=1500 m").Checks[^1];
        high.Sentence.ShouldNotContain("sea level");
        double.Parse(high.Sentence.Split(' ')[2], System.Globalization.CultureInfo.InvariantCulture).ShouldBeGreaterThan(12);
    }

    [Theory]
    [InlineData("", "refrigerant")]
    [InlineData("refrigerant=R-744", "refrigerant")]
    public void Without_a_refrigerant_of_known_saturation_no_superheat_is_guessed(string site, string next)
    {
        var diagnosis = Diagnose(site, $"{Good}; suctionPressure=25 psi; bulbTemperature=38 °F");
        diagnosis.Conclusion.ShouldBe(Conclusion.ReadNext);
        diagnosis.Next!.Field.ShouldBe(next);
    }

    /// <summary>Above its critical pressure, 541 psi absolute, R-404A has no saturation (published, as in its curve): the gauge is misread, and the pipe is not asked for again.</summary>
    [Fact]
    public void A_pressure_off_the_saturation_curve_is_read_again() =>
        Diagnose("refrigerant=R-404A", $"{Good}; suctionPressure=600 psi; bulbTemperature=60 °F").Next!.Field.ShouldBe("suctionPressure");

    [Fact]
    public void A_new_one_is_told_what_its_superheat_says()
    {
        var need = ExpansionValveFamily.ExpansionValve.ReadNeed(new(null, [], Named.Texts("refrigerant=R-404A"))).Need;
        var report = ExpansionValveFamily.ExpansionValve.AfterSwap(need, new ExpansionValveSpec(), Named.Record<ExpansionValveReadings>("superheat=20 °F"));
        report.Readings.Single().Verdict.ShouldBe(ReadingVerdict.Bad);
        report.Drawings.Single().Name.ShouldBe("superheat");
    }

    private static Diagnosis Diagnose(string site, string readings)
    {
        var need = ExpansionValveFamily.ExpansionValve.ReadNeed(new(null, [], Named.Texts(site)));
        need.Complaints.ShouldBeEmpty();
        return ExpansionValveFamily.ExpansionValve.BeforeCondemning(need.Need, Named.Record<ExpansionValveReadings>(readings));
    }
}
