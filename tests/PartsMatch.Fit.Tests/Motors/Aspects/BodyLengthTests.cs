using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors.Aspects;

/// <summary>Room is measured; that 1/4 in more than the old body goes where that went is practice.</summary>
[Trait("Source", "motor.bodyLength")]
public sealed class BodyLengthTests : BodyAspectTests<BodyLength, BodyLengthFacet>
{
    [Theory]
    [InlineData("6 in", "5.99 in", "Meets")]
    [InlineData("6 in", "6 in", "Meets")]
    [InlineData("6 in", "152.4 mm", "Meets")]
    [InlineData("6 in", "6.01 in", "Fails")]
    [InlineData("6 in", "152.41 mm", "Fails")]
    [InlineData("6 in", "", "Unknown Part bodyLength")]
    public void A_body_goes_into_the_room_there_is(string room, string length, string answer) => Answer("bodyLength=4 in", $"bodyRoom={room}", Of(length)).ShouldBe(answer);

    [Theory]
    [InlineData("4 in", "Meets")]
    [InlineData("5 in", "Meets")]
    [InlineData("5.24 in", "Meets")]
    [InlineData("5.25 in", "Meets")]
    [InlineData("5.26 in", "MeetsWithChanges checkBodyLength")]
    [InlineData("9 in", "MeetsWithChanges checkBodyLength")]
    [InlineData("", "Unknown Part bodyLength")]
    public void With_the_room_not_known_it_is_held_against_the_old_body(string length, string answer) => Answer("bodyLength=5 in", "", Of(length)).ShouldBe(answer);

    // One inch more is a shortfall of 1 (practice).
    [Theory]
    [InlineData("4 in", 0)]
    [InlineData("5.25 in", 0.25)]
    [InlineData("5.5 in", 0.5)]
    [InlineData("7 in", 1)]
    public void The_longer_the_more_it_lacks(string length, double shortfall) => Judge("bodyLength=5 in", "", Of(length)).Shortfall.ShouldBe(shortfall, 1e-6);

    [Fact]
    public void With_neither_room_nor_old_body_known_it_is_held_against_the_place_first() =>
        Judge("", "", "bodyLength=6 in").Caution.ShouldBe("Hold its body of 6 in (152.4 mm) against the room there before the old one comes off.");

    [Fact]
    public void With_nothing_known_at_all_nothing_is_said() => Judge("", "", "").ShouldSatisfyAllConditions(
        finding => finding.Verdict.ToString().ShouldBe("Meets"),
        finding => finding.Caution.ShouldBeNull());

    // Worked by hand: 6 in − 5.5 in = 12.7 mm.
    [Fact]
    public void The_margin_is_the_room_that_is_left() => Judge("", "bodyRoom=6 in", "bodyLength=5.5 in").Margin!.Value.Value.ShouldBe(12.7, 1e-6);

    private static string Of(string length) => length.Length > 0 ? $"bodyLength={length}" : string.Empty;
}
