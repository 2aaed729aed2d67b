using PartsMatch.Fit.Physics;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>Gauge readings: against the air of the altitude, in any unit, with glide.</summary>
public sealed class RefrigerantGaugeTests
{
    // A psi is 0.06894757293 bar (published, NIST SP 811).
    [Fact]
    public void Psi_and_bar_of_the_same_reading_give_the_same_temperatures()
    {
        var refrigerant = Refrigerants.Find("R-407C")!;
        var psi = refrigerant.SaturationAtGauge(Pressure.FromPoundsForcePerSquareInch(250), Length.Zero)!.Value;
        var bar = refrigerant.SaturationAtGauge(Pressure.FromBars(250 * 0.06894757293), Length.Zero)!.Value;
        bar.Bubble.Kelvins.ShouldBe(psi.Bubble.Kelvins, 1e-6);
        bar.Dew.Kelvins.ShouldBe(psi.Dew.Kelvins, 1e-6);
    }

    // Published: ISO 2533: at 1500 m the air is 84.556 kPa, so 0 psig is that, and R-134a boils there where its curve has 84.556 kPa (−29.96 to −29.9 °C by the check table's 84.378 kPa at −30 °C).
    [Fact]
    public void High_up_the_same_reading_means_a_lower_temperature()
    {
        var refrigerant = Refrigerants.Find("R-134a")!;
        var high = refrigerant.SaturationAtGauge(Pressure.Zero, Length.FromMeters(1500))!.Value;
        refrigerant.BubblePressure(high.Bubble)!.Value.Kilopascals.ShouldBe(84.556, 0.005);
        high.Bubble.DegreesCelsius.ShouldBeInRange(-30, -29.9);
        refrigerant.SaturationAtGauge(Pressure.Zero, Length.FromFeet(1500 / 0.3048))!.Value.Bubble.Kelvins.ShouldBe(high.Bubble.Kelvins, 1e-9);
    }

    [Fact]
    public void A_vacuum_reading_is_a_temperature_under_the_boiling_point() =>
        Refrigerants.Find("R-134a")!.SaturationAtGauge(Pressure.FromPoundsForcePerSquareInch(-7.27), Length.Zero)!.Value.Bubble.DegreesCelsius.ShouldBe(-40, 0.02); // check point: −40 °C

    // Published: R-404A, R-507A and R-410A glide under 1 K, R-407C, R-448A and R-449A 4 to 7 K; a pure substance does not (definition).
    [Theory]
    [InlineData("R-134a", 0, 0)]
    [InlineData("R-290", 0, 0)]
    [InlineData("R-404A", 0, 1)]
    [InlineData("R-507A", 0, 1)]
    [InlineData("R-410A", 0, 1)]
    [InlineData("R-407C", 4, 7)]
    [InlineData("R-448A", 4, 7)]
    [InlineData("R-449A", 4, 7)]
    public void Glide_is_that_of_the_blend_and_the_mean_lies_half_way(string name, double least, double most)
    {
        var saturation = Refrigerants.Find(name)!.SaturationAtGauge(Pressure.FromPoundsForcePerSquareInch(150), Length.Zero)!.Value;
        saturation.Glide.Kelvins.ShouldBeInRange(least - 1e-9, most);
        (saturation.Mean.Kelvins - saturation.Bubble.Kelvins).ShouldBe(saturation.Dew.Kelvins - saturation.Mean.Kelvins, 1e-9);
    }

    [Fact]
    public void What_cannot_be_answered_is_not()
    {
        var known = Refrigerants.Find("R-404A")!;
        known.SaturationAtGauge(Pressure.FromBars(60), Length.Zero).ShouldBeNull();
        known.SaturationAtGauge(Pressure.FromBars(-1.02), Length.Zero).ShouldBeNull();
        known.SaturationAtGauge(Pressure.FromBars(10), Length.FromMeters(20_000)).ShouldBeNull();
        Refrigerants.Find("R-744")!.SaturationAtGauge(Pressure.FromBars(10), Length.Zero).ShouldBeNull();
    }

    // At the top of the range bubble and dew end at different pressures: where only one is known the pair is not.
    [Fact]
    public void Between_the_ends_of_the_two_curves_there_is_no_pair()
    {
        var blend = Refrigerants.Find("R-448A")!;
        var between = Pressure.FromBars(31.5);
        blend.BubbleTemperature(between).ShouldNotBeNull();
        blend.DewTemperature(between).ShouldBeNull();
        blend.SaturationAtGauge(Pressure.FromBars(31.5 - 1.01325), Length.Zero).ShouldBeNull();
    }
}
