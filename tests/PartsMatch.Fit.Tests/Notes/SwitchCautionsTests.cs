namespace PartsMatch.Fit.Tests.Notes;

/// <summary>What is said of every switch's job beside something that burns: trade practice; classes of ASHRAE 34 (published).</summary>
public sealed class SwitchCautionsTests
{
    public static TheoryData<string> Kinds => ["contactor", "pressureControl", "thermostat", "defrostTimer"];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_refrigerant_that_burns_brings_its_caution(string kind)
    {
        CautionsOf(kind, "refrigerant=R-290").ShouldContain("Flammable refrigerant is there");
        CautionsOf(kind, "hazard=A2L").ShouldContain("Flammable refrigerant is there");
        CautionsOf(kind, "hazard=class I division 2").ShouldContain("The area is classified");
        CautionsOf(kind, "refrigerant=R-404A").ShouldNotContain("Flammable");
        CautionsOf(kind, "").ShouldNotContain("Flammable");
    }

    [Fact]
    public void A_job_that_opens_the_circuit_says_what_comes_before_and_not_that_it_stays_closed()
    {
        CautionsOf("pressureControl", "refrigerant=R-290").ShouldContain("R-290 burns (class A3): recover it");
        CautionsOf("pressureControl", "refrigerant=R-290").ShouldNotContain("stays closed");
        CautionsOf("thermostat", "refrigerant=R-290").ShouldContain("The refrigerant circuit stays closed");
    }

    [Fact]
    public void With_three_wires_fans_and_heaters_are_taken_for_two_circuits()
    {
        CautionsOf("thermostat", "fanVolts=120 V").ShouldContain("Fans and heaters may hang on two circuits");
        CautionsOf("thermostat", "").ShouldNotContain("two circuits");
    }

    private static string CautionsOf(string kind, string site) => string.Join(" ", NotesCases.Of(kind, "", site, "").Notes.Cautions.Select(caution => caution.Words));
}
