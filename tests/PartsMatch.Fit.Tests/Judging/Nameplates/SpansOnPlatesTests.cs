namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Spans of which a family keeps each end by itself, and the signs that make one. Expected values are worked by hand.</summary>
public sealed class SpansOnPlatesTests
{
    private const string CondensingPressureValve = "condensingPressureValve";
    private const string ExpansionValve = "expansionValve";
    private const string Thermostat = "thermostat";
    private const string Motor = "motor";

    [Theory]
    [InlineData(CondensingPressureValve, "RANGE 100-225 PSI", "settingLeast=100 psi; settingMost=225 psi")]
    [InlineData(CondensingPressureValve, "RANGE/ADJ 100 TO 225 PSI", "settingLeast=100 psi; settingMost=225 psi")]
    [InlineData(CondensingPressureValve, "ADJ. 65/225 PSIG R404A", "refrigerants=R-404A; settingLeast=65 psi; settingMost=225 psi")]
    [InlineData(CondensingPressureValve, "65 - 225 PSI RANGE SET 180 PSI", "setting=180 psi; settingLeast=65 psi; settingMost=225 psi")]
    [InlineData(CondensingPressureValve, "SETTING 100-225", "settingLeast=100 psi; settingMost=225 psi")]
    [InlineData(CondensingPressureValve, "RANGE 7 BAR TO 15 BAR", "settingLeast=7 bar; settingMost=15 bar")]
    [InlineData(CondensingPressureValve, "RANGE 7...15 BAR PS 31 BAR", "settingLeast=7 bar; settingMost=15 bar; workingPressure=31 bar")]
    [InlineData(ExpansionValve, "EVAP RANGE -40...+10 °C", "evaporatingLeast=-40 °C; evaporatingMost=10 °C")]
    [InlineData(ExpansionValve, "AT EVAP 20F RANGE -40 F TO 50 F", "ratedEvaporatingAt=20 °F; evaporatingLeast=-40 °F; evaporatingMost=50 °F")]
    [InlineData(Motor, "AMB -20...+40 °C", "ambientMost=40 °C; ambientLeast=-20 °C")]
    [InlineData(Motor, "-20 TO +40 C AMB", "ambientMost=40 °C; ambientLeast=-20 °C")]
    public void Each_end_of_a_span_goes_to_its_own_field(string kind, string plate, string read) => ReadPlate.Whole(kind, plate).ShouldBe(read);

    [Theory]
    [InlineData(CondensingPressureValve, "RANGE 225-100 PSI")]
    [InlineData(CondensingPressureValve, "RANGE 100 PSI")]
    [InlineData(ExpansionValve, "RANGE 10 F")]
    public void What_falls_or_has_one_end_is_no_range(string kind, string plate)
    {
        ReadPlate.Fields(kind, plate).ShouldBeEmpty();
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldHaveSingleItem().Text.ShouldBe(plate);
    }

    /// <summary>Dots are a span on European plates (IEC style; practice); two will do where a sign or a unit shows that they are no decimal point typed twice.</summary>
    [Theory]
    [InlineData("-30°C...+15°C", "-30 to 15 °C")]
    [InlineData("-30°C..+15°C", "-30 to 15 °C")]
    [InlineData("-30..+15 °C", "-30 to 15 °C")]
    [InlineData("-30°C…-10°C", "-30 to -10 °C")]
    [InlineData("-30°C...-10°C", "-30 to -10 °C")]
    [InlineData("-30°C..-10°C", "-30 to -10 °C")]
    [InlineData("5°C..35°C", "5 to 35 °C")]
    public void Dots_join_figures_that_have_their_unit_each(string typed, string range) => ReadPlate.Whole(Thermostat, $"RANGE {typed} DIFF 2 K").ShouldBe($"range={range}; differential=2 K");

    [Theory]
    [InlineData(Motor, "FLA 2..15 A")]
    [InlineData(Motor, "1..25 HP")]
    [InlineData(Thermostat, "RANGE 1..5 °C")]
    public void Two_dots_alone_may_be_a_decimal_point_typed_twice(string kind, string plate) => ReadPlate.Fields(kind, plate).ShouldBeEmpty();
}
