using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Tests.Judging;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Quantities;

/// <summary>An inch is divided into halves, quarters and so on to sixty-fourths: the rule's own marks (practice).</summary>
public sealed class InchFractionsTests
{
    [Theory]
    [InlineData("50/60 in")]
    [InlineData("1/3 in")]
    [InlineData("2-5/12 in")]
    [InlineData("1/128 in")]
    [InlineData("⅓ in")]
    public void A_fraction_of_other_parts_is_refused_by_name(string text)
    {
        var wrong = QuantityForms.Length.Read(text).Wrong.ShouldNotBeNull();
        wrong.ShouldContain($"“{text}” is no length");
        wrong.ShouldContain("2, 4, 8, 16, 32 or 64");
    }

    [Theory]
    [InlineData("1/2 in", 0.5)]
    [InlineData("1-63/64 in", 1.984375)]
    [InlineData("9/8 in", 1.125)]
    [InlineData("¾ in", 0.75)]
    public void Halves_to_sixty_fourths_are_lengths(string text, double inches) => QuantityForms.Length.Read(text).Value.Inches.ShouldBe(inches);

    [Theory]
    [InlineData("0.2 in", "0.2 in")]
    [InlineData("0.8333333333333334 in", "0.833333 in")]
    [InlineData("0.015625 in", "1/64 in")]
    public void A_length_is_written_as_a_rule_is_divided_or_in_six_decimals(string text, string written) =>
        QuantityForms.Length.Write(QuantityForms.Length.Read(text).Value).ShouldBe(written);

    // 95.3 mm less 6.35 mm is 88.95 mm: by hand.
    [Theory]
    [InlineData("95.3 mm", "88.95 mm")]
    [InlineData("70.1 mm", "63.75 mm")]
    public void A_length_that_follows_from_another_is_not_shown_with_sixteen_digits(string shaft, string needed) =>
        MotorFamily.Motor.ReadNeed(new(null, Named.Texts($"shaftLength={shaft}"), [])).Deductions.Single(deduction => deduction.Field == "shaftLengthNeeded").Text.ShouldBe(needed);

    [Fact]
    public void Horsepower_keeps_its_own_fractions() => QuantityForms.Power.Write(QuantityForms.Power.Read("1/3 hp").Value).ShouldBe("1/3 hp");

    [Fact]
    public void A_third_of_an_inch_that_was_worked_out_is_written_in_decimals() => QuantityForms.Length.Write(Length.FromInches(1.0 / 3)).ShouldBe("0.333333 in");
}
