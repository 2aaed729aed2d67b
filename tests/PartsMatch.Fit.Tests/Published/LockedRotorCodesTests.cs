using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Tests.Published;

[Trait("Source", "locked-rotor-codes.csv")]
public sealed class LockedRotorCodesTests
{
    // Published: NFPA 70 table 430.7(B), retyped; its upper ends are printed 0.01 lower than where the next letter begins.
    [Theory]
    [InlineData("A", 0, 3.14)]
    [InlineData("F", 5.0, 5.59)]
    [InlineData("G", 5.6, 6.29)]
    [InlineData("K", 8.0, 8.99)]
    [InlineData("U", 20.0, 22.39)]
    public void Ranges_are_those_of_a_second_copy(string letter, double from, double printedTo)
    {
        var code = LockedRotorCodes.Find(letter)!;
        code.From.ShouldBe(from, 1e-9);
        code.Below!.Value.ShouldBe(printedTo + 0.01, 1e-9);
    }

    // Arithmetic: 5 × 5.6 × 1000 / (√3 × 230) = 70.3 A, 5 × 6.3 × 1000 / (√3 × 230) = 79.1 A. Tolerance: the printed digits.
    [Fact]
    public void Code_G_at_five_horsepower_on_230_volts_of_three_phases_is_70_3_to_below_79_1_amps()
    {
        var amps = LockedRotorCodes.Find("g")!.Amps(5, 230, Phases.Three);
        amps.From.ShouldBe(70.3, 0.05);
        amps.Below!.Value.ShouldBe(79.1, 0.05);
    }

    // Arithmetic: 0.5 × 8 × 1000 / 115 = 34.78 A on one phase.
    [Fact]
    public void One_phase_has_no_root_of_three() => LockedRotorCodes.Find("K")!.Amps(0.5, 115, Phases.Single).From.ShouldBe(34.78, 0.005);

    [Fact]
    public void Each_letter_begins_where_the_one_before_ends_and_only_V_is_open()
    {
        foreach (var (one, next) in LockedRotorCodes.All.Zip(LockedRotorCodes.All.Skip(1))) one.Below.ShouldBe(next.From, one.Letter);
        LockedRotorCodes.All[^1].ShouldSatisfyAllConditions(last => last.Letter.ShouldBe("V"), last => last.Below.ShouldBeNull(), last => last.Amps(1, 230, Phases.Three).Below.ShouldBeNull());
        string.Concat(LockedRotorCodes.All.Select(code => code.Letter)).ShouldBe("ABCDEFGHJKLMNPRSTUV");
    }

    [Theory]
    [InlineData("I")]
    [InlineData("O")]
    [InlineData("Q")]
    [InlineData("W")]
    [InlineData("")]
    [InlineData("GG")]
    public void What_is_no_code_letter_has_no_row(string letter) => LockedRotorCodes.Find(letter).ShouldBeNull();

    [Fact]
    public void Figures_that_cannot_be_are_refused()
    {
        var code = LockedRotorCodes.Find("G")!;
        Should.Throw<ArgumentOutOfRangeException>(() => code.Amps(0, 230, Phases.Three));
        Should.Throw<ArgumentOutOfRangeException>(() => code.Amps(5, -230, Phases.Three));
    }
}
