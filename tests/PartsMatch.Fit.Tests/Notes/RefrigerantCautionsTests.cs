namespace PartsMatch.Fit.Tests.Notes;

/// <summary>What is said of a refrigerant, whatever the part: classes of ASHRAE 34 (from memory): R-404A A1, R-123 B1, R-717 B2L, R-744 A1; the rest practice.</summary>
public sealed class RefrigerantCautionsTests
{
    public static TheoryData<string> ThatOpen => ["solenoidValve", "expansionValve", "condensingPressureValve", "pressureControl"];

    public static TheoryData<string> ThatDoNot => ["contactor", "thermostat", "defrostTimer"];

    [Theory]
    [MemberData(nameof(ThatOpen))]
    public void A_toxic_one_is_opened_by_nobody_alone(string kind)
    {
        CautionsOf(kind, "R-717").ShouldContain("R-717 is toxic (class B2L)");
        CautionsOf(kind, "R-717").ShouldContain("Nothing with R-717 in it is opened by one alone");
        CautionsOf(kind, "R-717").ShouldContain("R-717 burns (class B2L): recover it");
        CautionsOf(kind, "R-123").ShouldContain("R-123 is toxic (class B1)");
        CautionsOf(kind, "R-123").ShouldNotContain("burns");
    }

    [Theory]
    [MemberData(nameof(ThatDoNot))]
    public void Beside_a_toxic_one_it_is_said_when_to_leave(string kind)
    {
        CautionsOf(kind, "R-717").ShouldContain("R-717 is toxic (class B2L)");
        CautionsOf(kind, "R-717").ShouldNotContain("opened by one alone");
    }

    [Theory]
    [MemberData(nameof(ThatOpen))]
    public void Carbon_dioxide_suffocates_stands_high_and_freezes(string kind)
    {
        CautionsOf(kind, "R-744").ShouldContain("R-744 suffocates without a smell");
        CautionsOf(kind, "R-744").ShouldContain("920 psi (63 bar)");
        CautionsOf(kind, "R-744").ShouldContain("dry ice");
    }

    [Theory]
    [MemberData(nameof(ThatDoNot))]
    public void Where_it_is_not_opened_it_suffocates_all_the_same(string kind)
    {
        CautionsOf(kind, "R-744").ShouldContain("R-744 suffocates without a smell");
        CautionsOf(kind, "R-744").ShouldNotContain("dry ice");
    }

    [Theory]
    [MemberData(nameof(ThatOpen))]
    [MemberData(nameof(ThatDoNot))]
    public void Of_others_nothing_of_the_kind_is_said(string kind)
    {
        CautionsOf(kind, "R-404A").ShouldNotContain("toxic");
        CautionsOf(kind, "R-404A").ShouldNotContain("R-744");
        CautionsOf(kind, "").ShouldNotContain("toxic");
    }

    /// <summary>Classes of ASHRAE 34, from memory: R-290 and R-600a A3, R-32 A2L.</summary>
    [Theory]
    [InlineData("solenoidValve")]
    [InlineData("expansionValve")]
    [InlineData("condensingPressureValve")]
    public void Of_one_that_was_not_read_it_is_said_where_all_that_the_old_valve_lists_are_of_its_class(string kind)
    {
        Cautions(kind, "refrigerants=R-290, R-600a", string.Empty).ShouldContain("R-600a burns (class A3): recover it");
        Cautions(kind, "refrigerants=R-290, R-600a", "refrigerant=R-290").ShouldNotContain("R-600a");
        Cautions(kind, "refrigerants=R-290, R-32", string.Empty).ShouldNotContain("R-290");
    }

    private static string Cautions(string kind, string plate, string site) => string.Join(" ", NotesCases.Of(kind, plate, site, string.Empty).Notes.Cautions.Select(caution => caution.Words));

    private static string CautionsOf(string kind, string refrigerant) =>
        string.Join(" ", NotesCases.Of(kind, string.Empty, refrigerant.Length == 0 ? string.Empty : $"refrigerant={refrigerant}", string.Empty).Notes.Cautions.Select(caution => caution.Words));
}
