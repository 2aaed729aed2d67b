using PartsMatch.Fit.Capacitors.Aspects;

namespace PartsMatch.Fit.Tests.Capacitors.Aspects;

/// <summary>±6 %: EIA-456-A practice (public articles). Percentages worked by hand.</summary>
[Trait("Source", "capacitor.capacitance")]
public sealed class CapacitanceTests : CapacitorAspectTests<Capacitance, SectionsFacet>
{
    [Theory]
    [InlineData("5 µF", "Meets")]
    [InlineData("5.3 µF", "Meets")] // + 6 %
    [InlineData("5.31 µF", "Fails")]
    [InlineData("4.7 µF", "Meets")] // − 6 %
    [InlineData("4.69 µF", "Fails")]
    [InlineData("7.5 µF", "Fails")]
    [InlineData("45+5 µF", "Meets")]
    [InlineData("5+45 µF", "Meets")]
    [InlineData("45+7.5 µF", "Fails")]
    public void A_capacitor_within_6_percent_of_what_the_motor_asks_for_meets(string marked, string answer) =>
        Answer("", "motorAsksFor=5 µF 370 V", $"rating={marked}").ShouldBe(answer);

    [Theory]
    [InlineData("45+5 µF", "Meets")]
    [InlineData("5+45 µF", "Meets")]
    [InlineData("47.7+5.3 µF", "Meets")]
    [InlineData("47.8+5 µF", "Fails")]
    [InlineData("45+7.5 µF", "Fails")]
    [InlineData("45 µF", "Meets")] // the second is brought besides
    [InlineData("5 µF", "Fails")]
    public void Both_sections_of_a_two_section_one_must_match(string marked, string answer)
    {
        Answer("rating=45+5 µF 440 V", "", $"rating={marked}").ShouldBe(answer);
        Answer("", "motorAsksFor=45 µF 440 V; secondMotorAsksFor=5 µF 370 V", $"rating={marked}").ShouldBe(answer);
    }

    [Theory]
    [InlineData("5 %", "5.25 µF", "Meets")]
    [InlineData("5 %", "5.26 µF", "Fails")]
    [InlineData("10 %", "5.31 µF", "Fails")]
    public void A_closer_tolerance_of_the_old_one_counts_a_wider_one_does_not(string tolerance, string marked, string answer) =>
        Answer($"rating=5 µF 370 V; tolerance={tolerance}", "", $"rating={marked}").ShouldBe(answer);

    [Theory]
    [InlineData("rating=7.5 µF 370 V", "motorAsksFor=5 µF 370 V", "rating=5 µF", "Meets")] // the old one was a wrong one
    [InlineData("", "", "rating=5 µF", "Unknown Plate rating")]
    [InlineData("rating=5 µF", "", "", "Unknown Part rating")]
    [InlineData("rating=5 µF", "motorAsksFor=none", "rating=5 µF", "Fails")]
    public void The_motor_s_plate_stands_before_the_old_capacitor(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void The_shortfall_is_1_at_the_limit()
    {
        Judge("rating=5 µF", "", "rating=5 µF").Shortfall.ShouldBe(0);
        Judge("rating=5 µF", "", "rating=5.15 µF").Shortfall.ShouldBe(0.5, 1e-9);
        var edge = Judge("rating=5 µF", "", "rating=5.3 µF");
        edge.Shortfall.ShouldBe(1, 1e-9);
        edge.Sentence.ShouldBe("The motor asks for 5 µF within 6 %; it has 5.3 µF.");
    }
}
