using System.Globalization;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>The new motor's own µF and at least its volts: practice.</summary>
[Trait("Source", "motor.runCapacitor")]
public sealed class RunCapacitorTests : BodyAspectTests<RunCapacitor, CapacitorFacet>
{
    [Theory]
    [InlineData("5 µF 370 V", "5 µF 370 V", "Meets")]
    [InlineData("5 µF 440 V", "5 µF 370 V", "Meets")]
    [InlineData("5 µF 370 V", "5 µF 440 V", "MeetsWithChanges fitCapacitor")]
    [InlineData("5 µF 370 V", "5 µF 370.1 V", "MeetsWithChanges fitCapacitor")]
    [InlineData("5 µF 370 V", "7.5 µF 370 V", "MeetsWithChanges fitCapacitor")]
    [InlineData("5.01 µF 370 V", "5 µF 370 V", "MeetsWithChanges fitCapacitor")]
    [InlineData("5 µF", "5 µF 370 V", "MeetsWithChanges fitCapacitor")]
    [InlineData("5 µF 370 V", "5 µF", "Unknown Part runCapacitor")]
    [InlineData("7.5 µF 370 V", "5 µF", "MeetsWithChanges fitCapacitor")]
    [InlineData("none", "5 µF 370 V", "MeetsWithChanges fitCapacitor")]
    [InlineData("none", "none", "Meets")]
    [InlineData("5 µF 370 V", "none", "MeetsWithChanges removeCapacitor")]
    [InlineData("45+5 µF 440 V", "5 µF 370 V", "Meets")]
    [InlineData("5+45 µF 440 V", "5 µF 370 V", "Meets")]
    [InlineData("45+5 µF 440 V", "45+5 µF 370 V", "Meets")]
    [InlineData("5+45 µF 440 V", "7.5 µF 440 V", "MeetsWithChanges fitCapacitor leaveSectionUnused")]
    [InlineData("45+5 µF 440 V", "7.5 µF 440 V", "MeetsWithChanges fitCapacitor leaveSectionUnused")]
    [InlineData("45+5 µF 370 V", "5 µF 440 V", "MeetsWithChanges fitCapacitor leaveSectionUnused")]
    [InlineData("45+5 µF 440 V", "none", "MeetsWithChanges leaveSectionUnused")]
    public void The_capacitor_there_serves_or_another_is_fitted(string there, string asked, string answer) =>
        Answer("", $"capacitorThere={there}", $"runCapacitor={asked}").ShouldBe(answer);

    [Theory]
    [InlineData("runCapacitor=5 µF 370 V", "", "runCapacitor=5 µF 370 V", "Meets")]
    [InlineData("runCapacitor=5 µF 370 V", "capacitorThere=7.5 µF 370 V", "runCapacitor=5 µF 370 V", "MeetsWithChanges fitCapacitor")]
    [InlineData("", "", "runCapacitor=5 µF 370 V", "MeetsWithChanges fitCapacitor")]
    [InlineData("", "", "runCapacitor=none", "MeetsWithChanges removeCapacitor")]
    [InlineData("runCapacitor=5 µF 370 V", "", "", "Unknown Part runCapacitor")]
    [InlineData("runCapacitor=5 µF 370 V", "", "type=permanent split capacitor", "Unknown Part runCapacitor")]
    public void What_is_there_stands_before_the_old_plate(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    // Follows from the type: only split-capacitor kinds keep a capacitor in circuit.
    [Theory]
    [InlineData("shaded pole")]
    [InlineData("split phase")]
    [InlineData("capacitor start")]
    [InlineData("three-phase induction")]
    [InlineData("electronically commutated")]
    public void Some_types_have_none_by_their_kind(string type)
    {
        Answer("", "capacitorThere=5 µF 370 V", $"type={type}").ShouldBe("MeetsWithChanges removeCapacitor");
        Answer($"type={type}", "", $"type={type}").ShouldBe("Meets");
    }

    // Follows from the phases: a run capacitor makes the second phase of a motor that has but one.
    [Fact]
    public void A_three_phase_motor_of_unknown_type_has_none()
    {
        Answer("phase=3", "", "phase=3").ShouldBe("Meets");
        Answer("phase=3", "", "type=ECM").ShouldBe("Meets");
        Answer("phase=3", "", "runCapacitor=5 µF 370 V").ShouldBe("MeetsWithChanges fitCapacitor");
        Answer("phase=3", "capacitorThere=5 µF 370 V", "phase=3").ShouldBe("MeetsWithChanges removeCapacitor");
    }

    [Fact]
    public void The_new_capacitor_and_the_unused_section_are_named_on_a_German_machine_too()
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
        try
        {
            Judge("", "capacitorThere=5+45 µF 440 V", "runCapacitor=7.5 µF 440 V").Changes.Select(change => change.Text).ShouldBe(
                ["fit a separate run capacitor of 7.5 µF, 440 V or more", "leave the 5 µF section of the shared capacitor unused, its terminal covered"]);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
