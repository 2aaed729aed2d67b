using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>Named texts in; a record and all complaints out.</summary>
public sealed class ShapeTests
{
    private static readonly Shape<MotorSpec> Motor = Shape<MotorSpec>.Of;

    [Fact]
    public void A_spec_reads_from_named_texts_and_writes_back_the_same_texts_in_the_fields_order()
    {
        NamedText[] texts = [new("power", "1/4 hp"), new("speed", "1075 rpm"), new("voltage", "208-230 V"), new("shaftDiameter", "1/2 in"), new("rotation", "CCW lead end")];
        var (spec, complaints) = Motor.Read(texts.Reverse());
        complaints.ShouldBeEmpty();
        Motor.Write(spec).ShouldBe(texts);
    }

    [Fact]
    public void All_complaints_come_at_once_and_what_could_be_read_is_kept()
    {
        var (spec, complaints) = Motor.Read([new("power", "lots"), new("speed", "1075 rpm"), new("shaft", "1/2 in"), new("speed", "1140 rpm"), new("phase", "2")]);
        spec.Speed.ShouldNotBeNull();
        complaints.Select(complaint => (complaint.Code, complaint.Field)).ShouldBe(
        [
            (ComplaintCode.Unreadable, "power"), (ComplaintCode.UnknownField, "shaft"), (ComplaintCode.GivenTwice, "speed"), (ComplaintCode.Unreadable, "phase"),
        ]);
        complaints[0].Message.ShouldBe("Power: “lots” is not a power with its unit, such as 1/4 hp, or several side by side, such as 3/4-1/3 hp.");
        complaints[1].Message.ShouldContain("shaftDiameter");
        complaints[3].Message.ShouldContain("single-phase, three-phase");
    }

    [Fact]
    public void A_blank_text_is_an_unknown_not_a_complaint()
    {
        var (spec, complaints) = Motor.Read([new("power", " ")]);
        complaints.ShouldBeEmpty();
        spec.ShouldBe(new MotorSpec());
    }

    [Fact]
    public void Records_with_the_same_texts_are_equal()
    {
        NamedText[] texts = [.. Motor.Fields.Select(field => new NamedText(field.Name, field.Form.Example))];
        Motor.Read(texts).Record.ShouldBe(Motor.Read(texts).Record);
        Motor.Read(texts).Complaints.ShouldBeEmpty();
    }

    [Theory]
    [InlineData("power=1/4 hp; shaftLength=4 in; speed=1075 rpm; voltage=230 V", 2)]
    [InlineData("power=186 W; shaftLength=100 mm; speed=1075 rpm", -2)]
    [InlineData("power=1/4 hp; shaftLength=100 mm", 0)]
    [InlineData("speed=1075 rpm; voltage=230 V", 0)]
    [InlineData("", 0)]
    public void A_record_leans_to_the_units_that_most_of_its_figures_are_written_in(string texts, int lean)
    {
        Motor.UnitsLean(Named.Record<MotorSpec>(texts)).ShouldBe(lean);
    }

    [Fact]
    public void A_spec_can_be_shown_in_US_or_SI_units()
    {
        var spec = Motor.Read([new("power", "0.37 kW"), new("shaftDiameter", "1/2 in"), new("ambientMost", "60 °C")]).Record;
        Motor.Write(spec, Units.Us).Select(text => text.Text).ShouldBe(["0.496 hp", "1/2 in", "140 °F"]);
        Motor.Write(spec, Units.Si).Select(text => text.Text).ShouldBe(["370 W", "12.7 mm", "60 °C"]);
    }

    [Fact]
    public void Every_field_of_every_family_has_a_label_a_help_a_group_and_a_name_of_its_own()
    {
        foreach (var family in Families.All)
        {
            var fields = family.SpecShape.Fields.Concat(family.SiteShape.Fields).ToList();
            fields.ShouldAllBe(field => field.Label.Length > 0 && field.Help.EndsWith('.') && field.Group != "General");
            fields.Select(field => field.Name).Except(["supplyFrequency"]).ShouldBeUnique();
        }
    }
}
