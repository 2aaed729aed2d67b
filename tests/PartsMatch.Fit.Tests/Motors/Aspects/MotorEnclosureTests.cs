using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Open for dry places: NEMA MG 1 1.25, 1.26 (published). Second IP digits: IEC 60034-5 table 3 (published); that 4 stands for enclosed: from memory.</summary>
[Trait("Source", "motor.motorEnclosure")]
public sealed class MotorEnclosureTests : BodyAspectTests<MotorEnclosure, EnclosureFacet>
{
    [Theory]
    [InlineData("dry", "ODP", "Meets")]
    [InlineData("rain", "ODP", "Fails")]
    [InlineData("rain", "OAO", "Fails")]
    [InlineData("wash-down", "ODP", "Fails")]
    [InlineData("condensing cold", "ODP", "Fails")]
    [InlineData("rain", "TENV", "Meets")]
    [InlineData("rain", "TEAO", "Meets")]
    [InlineData("wash-down", "TEFC", "Meets")]
    [InlineData("condensing cold", "TEAO", "Meets")]
    public void Only_dry_places_take_an_open_motor(string place, string enclosure, string answer) =>
        Answer("", $"surroundings={place}", $"enclosure={enclosure}").ShouldBe(answer);

    [Theory]
    [InlineData("ipCode=IP22", "Fails")]
    [InlineData("ipCode=IP23", "Fails")]
    [InlineData("ipCode=IP44", "Meets")]
    [InlineData("ipCode=IP55", "Meets")]
    [InlineData("enclosure=ODP; ipCode=IP44", "Fails")]
    [InlineData("enclosure=TENV; ipCode=IP23", "Fails")]
    [InlineData("enclosure=TENV; ipCode=IP44", "Meets")]
    [InlineData("", "Unknown Part enclosure")]
    public void Rain_takes_a_second_digit_of_4_and_both_markings_must_do(string part, string answer) => Answer("", "surroundings=rain", part).ShouldBe(answer);

    [Theory]
    [InlineData("enclosure=TEAO", "enclosure=TENV", "Meets")]
    [InlineData("enclosure=ODP", "enclosure=ODP", "Meets")]
    [InlineData("enclosure=ODP", "", "Meets")]
    [InlineData("", "enclosure=TENV", "Meets")]
    [InlineData("enclosure=TEAO", "enclosure=ODP", "Unknown Site surroundings")]
    [InlineData("", "enclosure=ODP", "Unknown Site surroundings")]
    [InlineData("enclosure=TEAO", "", "Unknown Part enclosure")]
    public void Without_the_surroundings_a_motor_no_more_open_than_the_old_one_meets(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Theory]
    [InlineData("shaft up", "both ends", "open the drain hole at the lead end, which ends up lowest, and plug any other")]
    [InlineData("shaft down", "both ends", "open the drain hole at the shaft end, which ends up lowest, and plug any other")]
    [InlineData("shaft up", "shaft end", "plug its drain hole, which ends up on top")]
    [InlineData("horizontal", "both ends", "open the drain hole that ends up lowest, and plug the others")]
    public void In_the_wet_the_drain_hole_that_ends_up_lowest_is_opened(string position, string drains, string words)
    {
        var change = Judge("", $"surroundings=rain; shaftPosition={position}", $"enclosure=TEAO; drainHoles={drains}").Changes.ShouldHaveSingleItem();
        change.Kind.Name.ShouldBe("openLowestDrain");
        change.Text.ShouldBe(words);
    }

    [Fact]
    public void Where_it_may_be_wet_the_drain_hole_is_a_caution() =>
        Judge("", "", "enclosure=TEAO; drainHoles=both ends").Caution.ShouldBe("Where it gets wet: open the drain hole that ends up lowest, and plug the others.");

    // IEC 60034-5 table 3 (published): 4 is splashing, 5 is water jets.
    [Theory]
    [InlineData("enclosure=TENV", true)]
    [InlineData("enclosure=TENV; ipCode=IP54", true)]
    [InlineData("enclosure=TENV; ipCode=IP55", false)]
    public void A_hose_is_kept_off_what_is_not_marked_against_jets(string part, bool isCautioned) =>
        (Judge("", "surroundings=wash-down", part).Caution is not null).ShouldBe(isCautioned);
}
