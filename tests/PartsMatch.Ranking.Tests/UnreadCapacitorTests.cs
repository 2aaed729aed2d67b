using PartsMatch.Fit;

namespace PartsMatch.Ranking.Tests;

/// <summary>A run capacitor of which the deciding figure is not known is never said to fit more likely than not.</summary>
public sealed class UnreadCapacitorTests
{
    private const string Can = "duty=run; isProtected=yes; frequency=60 Hz; temperatureMost=70 °C; can=round; diameter=2 in; height=4 in";

    // Worked by hand from the intercept 3.5. Volts 4: 1 / (1 + e^0.5) = 37.8 %. The old rating unread: µF 1.5, sections 1, volts 4: 1 / (1 + e^3) = 4.7 %.
    // The part's rating not given: 1.5 + 1 + 4: 1 / (1 + e^3) = 4.7 %.
    [Theory]
    [InlineData($"rating=5 µF 370 V; {Can}", $"rating=5 µF 370 V; {Can}", 97)]
    [InlineData($"rating=5 µF; {Can}", $"rating=5 µF 370 V; {Can}", 38)]
    [InlineData($"rating=5 µF 370 V; {Can}", $"rating=5 µF; {Can}", 38)]
    [InlineData(Can, $"rating=5 µF 370 V; {Can}", 5)]
    [InlineData($"rating=5 µF 370 V; {Can}", Can, 5)]
    public void The_likelihood_says_how_little_is_known(string old, string part, int percent)
    {
        var family = Families.Find("capacitor")!;
        var need = family.ReadNeed(new(null, NearestSizeTests.Texts(old), [])).Need;
        Ranker.Explain(family, Weights.HandSet(family), need, NearestSizeTests.Spec(family, part)).Likelihood.ShouldBe(new Likelihood(percent, IsHandSet: true));
    }

    [Fact]
    public void A_capacitor_that_may_be_an_unprotected_start_capacitor_shows_little_over_half()
    {
        var family = Families.Find("capacitor")!;
        var need = family.ReadNeed(new(null, NearestSizeTests.Texts($"rating=5 µF 370 V; {Can}"), [])).Need;
        var part = NearestSizeTests.Spec(family, $"rating=5 µF 370 V; {Can.Replace("duty=run; isProtected=yes; ", string.Empty, StringComparison.Ordinal)}");

        // Worked by hand: 2.5 for the duty and 0.8 for the protection: 1 / (1 + e^-0.2) = 55.0 %.
        Ranker.Explain(family, Weights.HandSet(family), need, part).Likelihood.ShouldBe(new Likelihood(55, IsHandSet: true));
    }
}
