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
    public void What_follows_from_the_plate_is_named(string plate, string deduced) =>
        ExpansionValveFamily.ExpansionValve.Deduce(Named.Record<ExpansionValveSpec>(plate)).Deductions.Select(one => $"{one.Field}={one.Text}").ShouldBe(deduced.Length == 0 ? [] : [deduced]);

    [Theory]
    [InlineData("evaporatingLeast=50 °F; evaporatingMost=-40 °F", "", "evaporatingLeast evaporatingMost")]
    [InlineData("limitsAt=35 °F; charge=cross charge", "", "limitsAt charge")]
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
