using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Tests.Published;

/// <summary>Three rows and more of each table, retyped from the standards' tables as a second page quotes them (published); relations worked by hand.</summary>
[Trait("Source", "nema-contactor-sizes.csv")]
[Trait("Source", "pilot-duty.csv")]
[Trait("Source", "pilot-duty-direct.csv")]
[Trait("Source", "utilization-categories.csv")]
public sealed class SwitchTablesTests
{
    [Theory]
    [InlineData("00", Phases.Three, 460, 2, 9)]
    [InlineData("0", Phases.Three, 230, 3, 18)]
    [InlineData("1", Phases.Three, 460, 10, 27)]
    [InlineData("2", Phases.Three, 230, 15, 45)]
    [InlineData("3", Phases.Three, 460, 50, 90)]
    [InlineData("1P", Phases.Single, 230, 5, 36)]
    [InlineData("2", Phases.Single, 230, 7.5, 45)]
    public void A_size_has_its_horsepower(string size, Phases phases, double volts, double horsepower, double continuous)
    {
        var row = NemaSizes.Of(size, phases).Single(one => one.Volts.Volts.Equals(volts));
        ((double)row.Power.Watts / 746).ShouldBe(horsepower, 1e-9);
        NemaSizes.Continuous(size)!.Value.Amperes.ShouldBe(continuous);
    }

    [Theory]
    [InlineData("A300", 240, 30, 3)]
    [InlineData("A600", 600, 12, 1.2)]
    [InlineData("B300", 120, 30, 3)]
    [InlineData("C600", 480, 3.75, 0.375)]
    [InlineData("D300", 240, 1.8, 0.3)]
    [InlineData("E150", 120, 1.8, 0.3)]
    public void A_pilot_duty_has_its_amps(string designation, double volts, double make, double open)
    {
        var row = PilotDuties.Of(designation).Single(one => one.Volts.Equals(volts));
        (row.MakeAmps, row.BreakAmps).ShouldBe((make, open));
    }

    [Fact]
    public void Va_are_volts_times_amps_and_the_number_is_the_greatest_voltage()
    {
        PilotDuties.All.ShouldAllBe(row => Math.Abs((row.Volts * row.MakeAmps) - row.MakeVa) < 1e-9 && Math.Abs((row.Volts * row.BreakAmps) - row.BreakVa) < 1e-9);
        PilotDuties.Designations.ShouldAllBe(designation => PilotDuties.Of(designation).Max(row => row.Volts) <= new Fit.Switches.Contacts.PilotDuty(designation).MostVolts);
    }

    [Theory]
    [InlineData("N300", 250, 1.1, 275)]
    [InlineData("N600", 600, 0.4, 275)]
    [InlineData("P150", 125, 1.1, 138)]
    [InlineData("Q300", 250, 0.27, 69)]
    [InlineData("R300", 125, 0.22, 28)]
    [InlineData("R300", 250, 0.11, 28)]
    public void A_pilot_duty_for_direct_current_has_its_amps_and_va(string designation, double volts, double amps, double va)
    {
        var row = DirectPilotDuties.Of(designation).Single(one => one.Volts.Equals(volts));
        (row.Amps, row.Va).ShouldBe((amps, va));
    }

    /// <summary>Rounded as printed: 0.27 A × 250 V are 67.5 of 69 VA.</summary>
    [Fact]
    public void Up_to_300_V_va_of_direct_current_are_volts_times_amps_as_they_are_printed()
    {
        DirectPilotDuties.All.Where(row => row.Volts <= 300).ShouldAllBe(row => Math.Abs((row.Volts * row.Amps / row.Va) - 1) < 0.03);
        DirectPilotDuties.Designations.ShouldAllBe(designation => DirectPilotDuties.Of(designation).Max(row => row.Volts) <= new Fit.Switches.Contacts.DirectPilotDuty(designation).MostVolts);
    }

    [Theory]
    [InlineData("AC-1", "resistance heating")]
    [InlineData("AC-3", "squirrel-cage motors")]
    [InlineData("AC-8a", "manual reset")]
    [InlineData("AC-8b", "automatic reset")]
    [InlineData("AC-15", "above 72 VA")]
    public void A_category_is_for_its_loads(string category, string use) => UtilizationCategories.UseOf(category).ShouldContain(use);
}
