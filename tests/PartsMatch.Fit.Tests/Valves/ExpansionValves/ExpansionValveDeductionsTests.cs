using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Valves.ExpansionValves;

namespace PartsMatch.Fit.Tests.Valves.ExpansionValves;

/// <summary>What follows from a plate, and what disagrees.</summary>
public sealed class ExpansionValveDeductionsTests
{
    [Theory]
    [InlineData("limitsAt=35 °F", "charge=pressure-limited charge")]
    [InlineData("refrigerants=R-22; ratedCapacity=1 ton", "ratedWith=R-22")]
    [InlineData("refrigerants=R-404A, R-507A; ratedCapacity=1 ton", "")]
    [InlineData("refrigerants=R-404A, R-507A; limitPressure=50 psi", "charge=pressure-limited charge")]
    [InlineData("limitPressure=50 psi", "charge=pressure-limited charge")]
    public void What_follows_from_the_plate_is_named(string plate, string deduced) =>
        ExpansionValveFamily.ExpansionValve.Deduce(Named.Record<ExpansionValveSpec>(plate)).Deductions.Select(one => $"{one.Field}={one.Text}").ShouldBe(deduced.Length == 0 ? [] : [deduced]);

    [Theory]
    [InlineData("R-134a", "50 psi", "54 °F")]
    [InlineData("R-22", "50 psi", "26 °F")]
    [InlineData("R-404A", "50 psi", "15.8 °F")]
    [InlineData("R-22", "25 psi", "1.2 °F")]
    [InlineData("R-134a", "0 psi", "-14.9 °F")]
    public void The_pressure_of_a_limit_tells_where_it_lies_for_the_one_refrigerant(string refrigerant, string pressure, string limit) // dew temperatures of ../shared/facts/refrigerants-inverse.csv
    {
        var deductions = ExpansionValveFamily.ExpansionValve.Deduce(Named.Record<ExpansionValveSpec>($"refrigerants={refrigerant}; limitPressure={pressure}")).Deductions;
        deductions.Select(one => $"{one.Field}={one.Text}").ShouldBe([$"limitsAt={limit}", "charge=pressure-limited charge"]);
        deductions[0].From.ShouldBe(["limitPressure", "refrigerants"]);
    }

    [Fact]
    public void The_limit_of_a_refrigerant_without_a_curve_stays_a_pressure() =>
        ExpansionValveFamily.ExpansionValve.Deduce(Named.Record<ExpansionValveSpec>($"refrigerants={Refrigerants.All.First(one => !one.HasCurve).Name}; limitPressure=50 psi")).Deductions.ShouldHaveSingleItem().Field.ShouldBe("charge");

    [Theory]
    [InlineData("evaporatingLeast=50 °F; evaporatingMost=-40 °F", "", "evaporatingLeast evaporatingMost")]
    [InlineData("limitsAt=35 °F; charge=cross charge", "", "limitsAt charge")]
    [InlineData("limitPressure=50 psi; charge=cross charge", "", "limitPressure charge")]
    [InlineData("refrigerants=R-134a; limitPressure=50 psi; charge=cross charge", "", "limitPressure charge")]
    [InlineData("refrigerants=R-134a; limitPressure=200 psi", "", "limitPressure refrigerants")] // 130 °F
    [InlineData("refrigerants=R-134a; limitPressure=50 psi; limitsAt=54 °F", "", "")]
    [InlineData("refrigerants=R-134a; limitPressure=50 psi; limitsAt=60 °F", "", "")]
    [InlineData("refrigerants=R-134a; limitPressure=50 psi; limitsAt=26 °F", "", "limitsAt limitPressure refrigerants")]
    [InlineData("refrigerants=R-134a, R-513A; limitPressure=50 psi; limitsAt=26 °F", "", "")]
    [InlineData("refrigerants=R-22", "refrigerant=R-404A", "refrigerants")]
    [InlineData("charge=cross charge", "needsCharge=liquid charge", "charge")]
    [InlineData("equaliser=external", "hasEqualiserTap=no", "equaliser")]
    [InlineData("equaliser=internal", "hasDistributor=yes", "equaliser")]
    [InlineData("equaliser=internal", "hasDistributor=no", "")]
    [InlineData("", "condensingLeast=100 °F; condensingMost=100 °F", "")]
    public void What_cannot_all_be_true_is_said(string plate, string site, string fields) =>
        string.Join(' ', ExpansionValveFamily.ExpansionValve.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Contradictions.SelectMany(one => one.Fields)).ShouldBe(fields);

    [Fact]
    public void Heads_that_are_changed_over_are_said() =>
        ExpansionValveFamily.ExpansionValve.ReadNeed(new(null, [], Named.Texts("condensingLeast=110 °F; condensingMost=100 °F"))).Contradictions.Single().SiteFields.ShouldBe(["condensingLeast", "condensingMost"]);
}
