using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Capacitors;

/// <summary>What an old capacitor tells of its place: practice.</summary>
public sealed class CapacitorDeductionsTests
{
    [Fact]
    public void An_old_two_section_capacitor_tells_both_motors_the_supply_and_the_strap()
    {
        var need = CapacitorFamily.Capacitor.ReadNeed(new(null, Named.Texts("rating=45+5 µF 440 V; frequency=60 Hz; can=round; diameter=2 in"), []));
        Shape<CapacitorSite>.Of.Write(need.Need.Site).Select(text => $"{text.Name}={text.Text}").ShouldBe(
            ["motorAsksFor=45+5 µF 440 V", "secondMotorAsksFor=5 µF 440 V", "supplyFrequency=60 Hz", "strapHolds=round", "strapDiameter=2 in"]);
        need.Deductions.Where(deduction => deduction.Side == Side.Site).Select(deduction => deduction.Field).ShouldBe(["motorAsksFor", "secondMotorAsksFor", "supplyFrequency", "strapHolds", "strapDiameter"]);
    }

    // Derived: what is left of the can when the first motor has its section.
    [Theory]
    [InlineData("45+5 µF 440 V", "45 µF 440 V", "5 µF 440 V")]
    [InlineData("5+45 µF 440 V", "45 µF 440 V", "5 µF 440 V")]
    [InlineData("45+5 µF 440 V", "5 µF 370 V", "45 µF 440 V")]
    public void The_second_motor_has_the_section_that_is_not_the_firsts(string rating, string first, string second)
    {
        var need = CapacitorFamily.Capacitor.ReadNeed(new(null, Named.Texts($"rating={rating}"), Named.Texts($"motorAsksFor={first}")));
        Shape<CapacitorSite>.Of.Write(need.Need.Site).Single(text => text.Name == "secondMotorAsksFor").Text.ShouldBe(second);
    }

    [Fact]
    public void What_is_known_of_the_site_stands()
    {
        var need = CapacitorFamily.Capacitor.ReadNeed(new(null, Named.Texts("rating=5 µF 440 V; frequency=50/60 Hz"), Named.Texts("motorAsksFor=7.5 µF 370 V")));
        Shape<CapacitorSite>.Of.Write(need.Need.Site).ShouldBe([new NamedText("motorAsksFor", "7.5 µF 370 V")]);
        need.Deductions.ShouldBeEmpty();
    }
}
