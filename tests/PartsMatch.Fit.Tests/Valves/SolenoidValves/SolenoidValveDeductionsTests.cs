using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Valves.SolenoidValves;

namespace PartsMatch.Fit.Tests.Valves.SolenoidValves;

/// <summary>What follows from a plate, and what disagrees.</summary>
public sealed class SolenoidValveDeductionsTests
{
    [Theory]
    [InlineData("lift=direct-acting", "leastDifferential=0 psi")]
    [InlineData("inletSize=3/8 in", "outletSize=3/8 in")]
    [InlineData("coilFrequency=60 Hz", "coilCurrent=AC")]
    [InlineData("inletSize=3/8 in; outletSize=1/2 in", "")]
    public void What_follows_from_the_plate_is_named(string plate, string deduced) =>
        SolenoidValveFamily.SolenoidValve.Deduce(Named.Record<SolenoidValveSpec>(plate)).Deductions.Select(one => $"{one.Field}={one.Text}").ShouldBe(deduced.Length == 0 ? [] : [deduced]);

    [Theory]
    [InlineData("coilVolts=208-240 V", "")] // of all that a coil takes nobody knows what it was fed
    [InlineData("coilVolts=24 V", "")]
    [InlineData("coilFrequency=60 Hz", "coilSupplyFrequency=60 Hz")]
    [InlineData("refrigerants=R-404A", "refrigerant=R-404A")]
    [InlineData("refrigerants=R-404A, R-507A", "")]
    [InlineData("refrigerants=R-290, R-600a", "hazard=A3 refrigerant")] // all of it burns well
    [InlineData("refrigerants=R-290, R-32", "")] // A3 and A2L
    [InlineData("refrigerants=R-404A, R-290", "")]
    public void The_place_is_as_the_old_valve_was(string plate, string deduced) =>
        SolenoidValveDeductions.DeduceSite(Named.Record<SolenoidValveSpec>(plate), new()).Deductions.Select(one => $"{one.Field}={one.Text}").ShouldBe(deduced.Length == 0 ? [] : [deduced]);

    [Theory]
    [InlineData("leastDifferential=25 psi; openingDifferential=25 psi", "", "leastDifferential openingDifferential")]
    [InlineData("leastDifferential=2 psi; openingDifferential=300 psi", "", "")]
    [InlineData("coilCurrent=DC; coilFrequency=60 Hz", "", "coilCurrent coilFrequency")]
    [InlineData("coilVolts=120 V", "coilSupplyVolts=24 V", "coilVolts")]
    [InlineData("coilVolts=120 V", "coilSupplyVolts=102 V", "")]
    [InlineData("coilCurrent=DC", "coilSupplyFrequency=60 Hz", "coilCurrent")]
    [InlineData("normalState=NC", "needsState=NO", "normalState")]
    [InlineData("refrigerants=R-22", "refrigerant=R-404A", "refrigerants")]
    [InlineData("refrigerants=R-22, R-404A", "refrigerant=R-404A", "")]
    public void What_cannot_all_be_true_is_said(string plate, string site, string fields) =>
        string.Join(' ', SolenoidValveFamily.SolenoidValve.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Contradictions.SelectMany(one => one.Fields)).ShouldBe(fields);

    [Theory]
    [InlineData("load=1 ton; leastLoad=1.1 tons", "load leastLoad")]
    [InlineData("load=1 ton; leastLoad=1 ton", "")]
    public void The_least_load_is_no_more_than_the_greatest(string site, string fields) =>
        string.Join(' ', SolenoidValveFamily.SolenoidValve.ReadNeed(new(null, [], Named.Texts(site))).Contradictions.SelectMany(one => one.SiteFields)).ShouldBe(fields);

    [Theory]
    [InlineData("line=suction; evaporatingAt=-10 °C; temperatureThere=-10.1 °C", "temperatureThere evaporatingAt")]
    [InlineData("line=suction; evaporatingAt=-10 °C; temperatureThere=-10 °C", "")]
    [InlineData("line=hot gas; condensingAt=40 °C; temperatureThere=35 °C", "temperatureThere condensingAt")]
    [InlineData("line=liquid; condensingAt=40 °C; temperatureThere=35 °C", "")]
    [InlineData("line=liquid; condensingAt=40 °C; temperatureThere=39.9 °C", "")]
    [InlineData("line=liquid; condensingAt=40 °C; temperatureThere=40 °C", "temperatureThere condensingAt")]
    [InlineData("line=liquid; condensingAt=40 °C; temperatureThere=41 °C", "temperatureThere condensingAt")]
    public void Gas_is_no_colder_than_it_is_saturated_at_and_liquid_is_colder(string site, string fields) =>
        string.Join(' ', SolenoidValveFamily.SolenoidValve.ReadNeed(new(null, [], Named.Texts(site))).Contradictions.SelectMany(one => one.SiteFields)).ShouldBe(fields);
}
