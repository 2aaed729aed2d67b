using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Limits A 105, E 120, B 130, F 155, H 180 °C: IEC 60085, published (facts/07). That a marked ambient tells more than a class is practice.</summary>
[Trait("Source", "motor.insulation")]
public sealed class InsulationTests : MotorAspectTests<Insulation>
{
    [Theory]
    [InlineData("A", "A", 0)]
    [InlineData("A", "E", 15)]
    [InlineData("B", "B", 0)]
    [InlineData("B", "F", 25)]
    [InlineData("F", "H", 25)]
    public void The_same_class_or_a_higher_one_meets(string old, string part, double margin) =>
        Meets($"insulation={old}", part: $"insulation={part}").Margin!.Value.Value.ShouldBe(margin, 1e-9);

    // Shortfall 1 is from H to A, 75 K: 10, 25 and 75 K of it, worked by hand.
    [Theory]
    [InlineData("B", "E", 10 / 75.0)]
    [InlineData("F", "B", 25 / 75.0)]
    [InlineData("H", "A", 1)]
    public void A_lower_class_is_compared_on_the_bench(string old, string part, double shortfall) =>
        MeetsWith([PlaceChanges.CheckInsulation], $"insulation={old}", part: $"insulation={part}").Shortfall.ShouldBe(shortfall, 1e-9);

    [Theory]
    [InlineData("insulation=F; ambientMost=40 °C", "")]
    [InlineData("insulation=F", "airMost=40 °C")]
    public void Where_the_maker_marks_the_ambient_and_the_air_is_known_the_ambient_decides(string plate, string site) =>
        Meets(plate, site, "insulation=B; ambientMost=60 °C").Sentence.ShouldContain("tells more than a class");

    [Fact]
    public void A_marked_ambient_tells_nothing_where_the_air_is_not_known() =>
        MeetsWith([PlaceChanges.CheckInsulation], "insulation=F", part: "insulation=B; ambientMost=60 °C");

    [Fact]
    public void An_unmarked_ambient_tells_nothing_even_where_the_air_is_known() =>
        MeetsWith([PlaceChanges.CheckInsulation], "insulation=F", "airMost=50 °C", "insulation=B");

    [Theory]
    [InlineData("")]
    [InlineData("insulation=A")]
    public void With_the_old_class_not_known_nothing_is_asked(string part) => Meets(part: part);

    [Fact]
    public void A_part_without_a_class_is_asked_for_it() => Unknown(Side.Part, "insulation", "insulation=B");

    [Fact]
    public void The_change_names_both_limits() =>
        Judge("insulation=F", part: "insulation=B").Changes[0].Text.ShouldBe("see that the place is not hot: class B bears 130 °C, the old motor's F 155 °C");
}
