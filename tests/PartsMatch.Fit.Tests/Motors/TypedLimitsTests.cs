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
    [InlineData("voltage", "9999 V", "a voltage that motors are made for")]
    [InlineData("power", "900 hp", "from 1 W to 200 kW")]
    [InlineData("speed", "99999 rpm", "from 250 to 6000 rpm")]
    [InlineData("shaftDiameter", "40 in", "from 3 to 60 mm")]
    [InlineData("frequency", "999 Hz", "from 45 to 65 Hz")]
    public void An_impossible_figure_is_a_complaint_and_stays_unknown(string field, string text, string right)
    {
        var (spec, complaints) = MotorFamily.Motor.ReadSpec([new(field, text)]);
        var complaint = complaints.ShouldHaveSingleItem();
        (complaint.Code, complaint.Field).ShouldBe((ComplaintCode.Unreadable, field));
        complaint.Message.ShouldContain(right);
        spec.ShouldBe(new MotorSpec());
        MotorFamily.Motor.ReadNeed(new(null, [new(field, text)], [])).Complaints.ShouldContain(complaint);
    }

    [Fact]
    public void All_impossible_figures_are_complained_of_at_once() =>
        MotorFamily.Motor.ReadSpec([new("voltage", "9999 V"), new("power", "900 hp"), new("speed", "99999 rpm"), new("frequency", "999 Hz")]).Complaints
            .Select(complaint => complaint.Field).Order().ShouldBe(["frequency", "power", "speed", "voltage"]);

    [Theory]
    [InlineData("voltage", "5000 V")]
    [InlineData("frequency", "999 Hz")]
    public void A_typed_figure_is_refused_in_the_words_of_a_plate_s(string field, string text)
    {
        var typed = MotorFamily.Motor.ReadSpec([new(field, text)]).Complaints.ShouldHaveSingleItem().Message;
        var plate = MotorFamily.Motor.ReadNameplate($"HP 1/4 {text}").Complaints.ShouldHaveSingleItem().Message;
        plate.ShouldContain(typed[typed.IndexOf(" is not ", StringComparison.Ordinal)..].TrimEnd('.'));
    }

    public static TheoryData<string, string> Fields => [.. Families.All.SelectMany(family => family.SpecShape.Fields.Select(one => (family.Kind, one.Name)))];

    [Theory]
    [MemberData(nameof(Fields))]
    public void The_example_of_every_field_is_possible(string kind, string field)
    {
        var family = Families.Find(kind)!;
        family.ReadSpec([new(field, family.SpecShape.Find(field)!.Example)]).Complaints.ShouldBeEmpty();
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
