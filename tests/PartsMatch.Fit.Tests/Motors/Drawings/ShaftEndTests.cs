using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Drawings;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors.Drawings;

/// <summary>The turn from both ends: geometry.</summary>
public sealed class ShaftEndTests
{
    [Theory]
    [InlineData("", "turnNeeded=CW shaft end", true)]
    [InlineData("", "turnNeeded=CCW lead end", true)]
    [InlineData("rotation=CCW shaft end", "", false)]
    [InlineData("rotation=CCW shaft end", "turnNeeded=CW shaft end", true)]
    public void The_turn_is_drawn_one_way_facing_the_shaft_and_the_other_way_facing_the_leads(string plate, string site, bool isClockwise)
    {
        var sketch = Draw(plate, site, "");
        var arrows = sketch.Pieces.OfType<TurnArrow>().OrderBy(arrow => arrow.Centre.X).ToList();
        arrows.Select(arrow => arrow.SweepDegrees > 0).ShouldBe([isClockwise, !isClockwise]);
        Captions(sketch).Where(words => words is "CW" or "CCW").ShouldBe(isClockwise ? ["CW", "CCW"] : ["CCW", "CW"]);
        sketch.Words.ShouldStartWith($"Facing the shaft end the fan turns {(isClockwise ? "clockwise (CW)" : "counterclockwise (CCW)")};");
    }

    // An arrow is read at its head: clockwise over the top, it ends on the right.
    [Fact]
    public void An_arrow_goes_over_the_top_and_ends_on_the_side_that_it_turns_to()
    {
        var arrow = Draw("", "turnNeeded=CW shaft end", "").Pieces.OfType<TurnArrow>().First();
        (arrow.FromDegrees, arrow.FromDegrees + arrow.SweepDegrees).ShouldBe((-110, 110));
    }

    [Theory]
    [InlineData("", "")]
    [InlineData("rotation=CW", "")]
    [InlineData("rotation=CW shaft end", "turnNeeded=CW")]
    public void A_turn_that_is_not_known_has_no_arrow_and_says_so(string plate, string site)
    {
        var sketch = Draw(plate, site, "rotation=CW shaft end");
        sketch.Pieces.OfType<TurnArrow>().ShouldBeEmpty();
        Captions(sketch).Count(words => words == "turn not known").ShouldBe(2);
        sketch.Words.ShouldStartWith("Which way the fan must turn, and seen from which end, is not known");
    }

    [Fact]
    public void A_motor_that_ships_turning_the_other_way_is_drawn_as_the_fan_needs_it_and_it_is_said()
    {
        var sketch = Draw("rotation=CW shaft end", "", "rotation=CCW shaft end; reversing=by leads");
        sketch.Pieces.OfType<TurnArrow>().OrderBy(arrow => arrow.Centre.X).First().SweepDegrees.ShouldBeGreaterThan(0);
        Captions(sketch).ShouldContain("As it ships it turns CCW facing the shaft end.");
        Captions(Draw("rotation=CW shaft end", "", "rotation=CW shaft end")).ShouldNotContain(words => words.StartsWith("As it ships", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("shaftDiameter=1/2 in; shaftLength=5 in; shaftForm=flat", "New motor's shaft: 1/2 in (12.7 mm),", "5 in (127 mm) long, one flat.")]
    [InlineData("shaftForm=keyway", "New motor's shaft: diameter not known,", "length not known, a keyway.")]
    [InlineData("", "New motor's shaft: diameter not known,", "length not known, form not known.")]
    public void Under_it_stands_the_new_motor_s_shaft(string part, string first, string second) => Captions(Draw("", "", part)).TakeLast(2).ShouldBe([first, second]);

    // A flat takes the top off and leaves the rest; two flats take both; a keyway is a notch from the top: nothing reaches out of the circle.
    [Theory]
    [InlineData("flat", -0.7, 1)]
    [InlineData("double flat", -0.7, 0.7)]
    [InlineData("keyway", -1, 1)]
    public void The_shaft_is_drawn_in_its_form(string form, double highest, double lowest)
    {
        var sketch = Draw("", "", $"shaftForm={form}");
        var (outline, centre) = (sketch.Pieces.OfType<Outline>().Single(), sketch.Pieces.OfType<Circle>().First().Centre);
        var radius = sketch.Pieces.OfType<Circle>().Single(circle => circle.Role == Role.Hidden).Radius;
        outline.Corners.ShouldAllBe(corner => Math.Pow(corner.X - centre.X, 2) + Math.Pow(corner.Y - centre.Y, 2) < (radius * radius) + 1e-6);
        outline.Corners.Min(corner => corner.Y).ShouldBe(centre.Y + (highest * radius), 0.05 * radius);
        outline.Corners.Max(corner => corner.Y).ShouldBe(centre.Y + (lowest * radius), 1e-6);
    }

    [Fact]
    public void A_keyway_is_cut_into_the_top_of_the_shaft()
    {
        var sketch = Draw("", "", "shaftForm=keyway");
        var (centre, radius) = (sketch.Pieces.OfType<Circle>().First().Centre, sketch.Pieces.OfType<Circle>().Single(circle => circle.Role == Role.Hidden).Radius);
        sketch.Pieces.OfType<Outline>().Single().Corners.Count(corner => Math.Abs(corner.X - centre.X) < 0.3 * radius && corner.Y < centre.Y && corner.Y > centre.Y - (0.8 * radius)).ShouldBe(2);
    }

    private static IEnumerable<string> Captions(Sketch sketch) => sketch.Pieces.OfType<Caption>().Select(caption => caption.Text);

    private static Sketch Draw(string plate, string site, string part) =>
        ShaftEnd.Of(new(Named.Record<MotorSpec>(plate), Named.Record<MotorSite>(site)), Named.Record<MotorSpec>(part));
}
