using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>What no motor's plate can say is refused when it is typed field by field, too. Limits are practice.</summary>
public sealed class TypedLimitsTests
{
    [Theory]
    [InlineData("poles", "3", "an even number from 2 to 24")]
    [InlineData("powerFactor", "1.5", "from 0.2 to 1")]
    [InlineData("serviceFactor", "99", "from 0.5 to 2")]
    [InlineData("efficiency", "140 %", "from 5 to 99 %")]
    [InlineData("codeLetter", "banana split", "one of the letters A to V")]
    [InlineData("speeds", "400", "from 1 to 8 speeds")]
    [InlineData("shaftEnds", "7", "1 or 2 shaft ends")]
    public void An_impossible_figure_is_a_complaint_and_stays_unknown(string field, string text, string right)
    {
        var (spec, complaints) = MotorFamily.Motor.ReadSpec([new(field, text)]);
        var complaint = complaints.ShouldHaveSingleItem();
        (complaint.Code, complaint.Field).ShouldBe((ComplaintCode.Unreadable, field));
        complaint.Message.ShouldContain(right);
        spec.ShouldBe(new MotorSpec());
        MotorFamily.Motor.ReadNeed(new(null, [new(field, text)], [])).Complaints.ShouldContain(complaint);
    }

    [Theory]
    [InlineData("efficiency", "140 pct")]
    [InlineData("powerFactor", "1,50")]
    public void A_complaint_quotes_what_was_typed(string field, string text) =>
        MotorFamily.Motor.ReadSpec([new(field, " "), new(field, text)]).Complaints.ShouldHaveSingleItem().Message.ShouldContain($"“{text}”");

    [Theory]
    [InlineData("poles", "6")]
    [InlineData("powerFactor", "1")]
    [InlineData("shaftEnds", "2")]
    [InlineData("codeLetter", "G")]
    public void A_possible_figure_is_not(string field, string text) => MotorFamily.Motor.ReadSpec([new(field, text)]).Complaints.ShouldBeEmpty();
}
