using PartsMatch.Fit.Valves.SolenoidValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.SolenoidValves.Aspects;

/// <summary>Listed meets, unlisted is unknown, a class that burns more readily (ASHRAE 34: 1, 2L, 2, 3) and ammonia with brass or copper fail: practice.</summary>
[Trait("Source", "solenoidValve.refrigerantListed")]
public sealed class RefrigerantListedTests : SolenoidAspectTests<RefrigerantListed, ListedFacet>
{
    [Theory]
    [InlineData("", "refrigerant=R-404A", "refrigerants=R-22, R-404A", "Meets")]
    [InlineData("", "refrigerant=R-448A", "refrigerants=R-22, R-404A", "Unknown Part refrigerants")]
    [InlineData("", "refrigerant=R-404A", "", "Unknown Part refrigerants")]
    [InlineData("", "", "refrigerants=R-404A", "Unknown Site refrigerant")]
    [InlineData("refrigerants=R-404A", "", "refrigerants=R-404A, R-507A", "Meets")] // an old valve for one refrigerant alone tells what is there
    [InlineData("refrigerants=R-404A, R-22", "", "refrigerants=R-404A", "Unknown Site refrigerant")]
    [InlineData("", "refrigerant=ammonia", "refrigerants=R-717; body=brass; joint=pipe thread", "Fails")]
    [InlineData("", "refrigerant=ammonia", "refrigerants=R-717; body=steel; joint=ODF", "Fails")]
    [InlineData("", "refrigerant=ammonia", "refrigerants=R-717; body=steel; joint=butt weld", "Meets")]
    [InlineData("", "refrigerant=ammonia", "refrigerants=R-717; joint=butt weld", "Unknown Part body")]
    [InlineData("", "refrigerant=ammonia", "refrigerants=R-717; body=steel", "Unknown Part joint")]
    [InlineData("", "refrigerant=R-290", "refrigerants=R-22, R-404A; body=steel; joint=butt weld", "Fails")]
    [InlineData("", "refrigerant=R-454C", "refrigerants=R-22, R-404A; body=steel; joint=butt weld", "Fails")]
    [InlineData("", "refrigerant=R-290", "refrigerants=R-404A, R-32; body=steel; joint=butt weld", "Fails")] // A2L burns less readily than A3
    [InlineData("", "refrigerant=R-454C", "refrigerants=R-404A, R-32; body=steel; joint=butt weld", "Unknown Part refrigerants")] // one of its class is listed
    [InlineData("", "refrigerant=R-600a", "refrigerants=R-290; body=steel; joint=butt weld", "Unknown Part refrigerants")]
    [InlineData("", "refrigerant=R-404A", "refrigerants=R-290; body=steel; joint=butt weld", "Unknown Part refrigerants")] // one that burns less
    [InlineData("", "refrigerant=R-717", "refrigerants=R-22; body=steel; joint=butt weld", "Fails")]
    [InlineData("", "refrigerant=R-717", "refrigerants=R-22", "Fails")] // whatever body and joints are made of
    [InlineData("", "refrigerant=R-744", "refrigerants=R-744; body=brass; joint=ODF", "Meets")]
    public void A_valve_is_used_with_what_it_lists(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>What a valve that lists them all does is what the old one did; what is unlisted only its maker can say: practice.</summary>
    [Theory]
    [InlineData("refrigerants=R-404A, R-507A", "", "refrigerants=R-404A, R-507A, R-134a", "Meets")]
    [InlineData("refrigerants=R-404A, R-507A", "", "refrigerants=R-404A", "Unknown Site refrigerant")]
    [InlineData("refrigerants=R-404A, R-507A", "", "refrigerants=R-22, R-134a", "Unknown Part refrigerants")] // whichever is there
    [InlineData("refrigerants=R-404A, R-507A", "", "", "Unknown Part refrigerants")]
    [InlineData("refrigerants=R-290, R-600a", "", "refrigerants=R-22", "Fails")] // each burns more readily
    [InlineData("refrigerants=R-404A, R-290", "", "refrigerants=R-404A, R-290", "Unknown Site refrigerant")] // A1 and A3: what has to be minded hangs on it
    [InlineData("refrigerants=R-22, R-717", "", "refrigerants=R-22, R-717; body=brass; joint=ODF", "Unknown Site refrigerant")]
    [InlineData("refrigerants=R-404A, R-507A", "refrigerant=R-507A", "refrigerants=R-507A", "Meets")] // what was read is what counts
    [InlineData("refrigerants=R-404A, R-507A", "refrigerant=R-22", "refrigerants=R-22", "Meets")]
    [InlineData("refrigerants=R-404A, R-507A", "refrigerant=R-22", "refrigerants=R-404A, R-507A", "Unknown Part refrigerants")]
    public void Where_the_refrigerant_was_not_read_the_old_valves_list_stands_for_it(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void Which_of_the_old_valves_refrigerants_it_is_right_for_is_told()
    {
        Judge("refrigerants=R-404A, R-507A, R-22", "", "refrigerants=R-404A").Sentence.ShouldBe("The old valve lists R-22, R-404A, R-507A, of which R-404A alone is known to be right for this one; which of them is there is not known.");
        Judge("refrigerants=R-404A, R-507A, R-22", "", "refrigerants=R-404A, R-22").Sentence.ShouldContain("R-22, R-404A alone are");
        Judge("refrigerants=R-404A, R-507A", "", "refrigerants=R-404A, R-507A").Sentence.ShouldBe("It is listed for R-404A. The same holds for all that the old valve lists, R-404A, R-507A; which of them is there was not read.");
    }
}
