using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Pages.Drawings;

namespace PartsMatch.Service.Tests.Pages.Drawings;

/// <summary>Where things lie in a picture: worked by hand.</summary>
public sealed class LayoutTests
{
    private static readonly Chart Crossing = new(
        "crossing",
        "Crossing",
        "Two lines cross.",
        new("Speed", "rpm", new(0, 100)),
        new("Torque", "%", new(0, 10)),
        [],
        [new("up", Role.Load, [new(0, 0), new(100, 10)]), new("down", Role.Old, [new(0, 10), new(100, 0)]), new("also down", Role.New, [new(0, 10), new(100, 0)])],
        [new("old: 50 rpm", Role.Old, new(50, 5), new(40, 60), new(4, 6)), new("new: 50 rpm", Role.New, new(50, 5), new(40, 60), new(4, 6))]);

    [Fact]
    public void A_chart_s_corners_are_its_plot_s()
    {
        var layout = new ChartLayout(Crossing);
        var plot = layout.Plot;
        layout.Curves[0].Path.ShouldBe($"M{new Px(plot.Left)} {new Px(plot.Bottom)}L{new Px(plot.Right)} {new Px(plot.Top)}");
        layout.Marks[0].At.ShouldBe(Place.At((plot.Left + plot.Right) / 2, (plot.Top + plot.Bottom) / 2));
        layout.Marks[0].Doubt.Width.Value.ShouldBe(0.2 * plot.Width.Value, 1e-9);
        layout.Marks.Select(mark => mark.IsDiamond).ShouldBe([false, true]);
    }

    [Fact]
    public void Labels_of_curves_overlap_neither_one_another_nor_a_mark_and_stay_in_the_plot()
    {
        var layout = new ChartLayout(Crossing);
        layout.Labels.Select(label => label.Text).ShouldBe(["up", "down", "also down"]);
        var boxes = layout.Labels.Select(label => Box.Between(label.At.X.Value, label.At.Y.Value - 10, label.At.X.Value + Lettering.WidthOf(label.Text), label.At.Y.Value + 3)).ToList();
        boxes.ShouldAllBe(box => layout.Plot.Holds(box) && !layout.Marks.Any(mark => mark.Doubt.Meets(box)));
        boxes.SelectMany((box, index) => boxes.Skip(index + 1).Select(other => box.Meets(other))).ShouldAllBe(meets => !meets);
    }

    // The steep line has two points only, and a label would fit between them.
    [Fact]
    public void A_label_is_not_put_on_a_steep_line_between_its_points()
    {
        var layout = new ChartLayout(Crossing with { Curves = [new("steep", Role.New, [new(8, 10), new(12, 0)]), new("level", Role.Load, [new(0, 2), new(50, 2), new(100, 2)])], Marks = [] });
        var label = layout.Labels[1];
        var (left, right) = (label.At.X.Value, label.At.X.Value + Lettering.WidthOf(label.Text));
        var steep = layout.Plot.Left + (0.1 * layout.Plot.Width.Value);
        (right < steep || left > steep).ShouldBeTrue($"{left} to {right}, the line at {steep}");
    }

    [Fact]
    public void A_legend_has_a_row_for_each_mark_and_area_within_the_picture()
    {
        const string Long = "an area whose label is a good deal longer than a line of a picture on a phone";
        var layout = new ChartLayout(Crossing with { Bands = [new(Long, Role.Load, [new(0, 0), new(100, 9)], [new(0, 1), new(100, 10)])] });
        layout.Legend.Count.ShouldBe(3);
        layout.Legend[^1].Lines.Count.ShouldBe(2);
        string.Join(' ', layout.Legend[^1].Lines.Select(line => line.Text)).ShouldBe(Long);
        var baselines = layout.Legend.SelectMany(row => row.Lines).Select(line => line.At.Y.Value).ToList();
        baselines.Zip(baselines.Skip(1)).ShouldAllBe(pair => pair.Second - pair.First >= Lettering.LineHeight);
        layout.Height.Value.ShouldBeGreaterThan(baselines[^1]);
    }

    [Fact]
    public void Letters_of_a_scale_s_figures_do_not_lie_on_one_another()
    {
        var layout = new ScaleLayout(new("s", "S", "Words.", "µF", new(0, 10), [new("good", Role.Good, new(0, 10))], [.. Enumerable.Range(0, 3).Select(index => new ScaleMark($"{index}", Role.New, Band.Exactly(5 + (0.1 * index))))]));
        layout.Figures.Select(figure => figure.Letter.Text).ShouldBe(["A", "B", "C"]);
        var badges = layout.Figures.Select(figure => (figure.Badge.X.Value, figure.Badge.Y.Value)).ToList();
        badges.SelectMany((one, index) => badges.Skip(index + 1).Select(other => Math.Sqrt(Math.Pow(one.Item1 - other.Item1, 2) + Math.Pow(one.Item2 - other.Item2, 2)))).ShouldAllBe(apart => apart >= 18);
        layout.Figures.ShouldAllBe(figure => figure.Badge.Y.Value >= 9);
    }

    [Fact]
    public void A_zone_s_label_keeps_clear_of_the_figures_and_a_narrow_zone_has_none()
    {
        var layout = new ScaleLayout(new("s", "S", "Words.", "°F", new(0, 100), [new("good", Role.Good, new(0, 99)), new("too much", Role.Bad, new(99, 100))], [new("there", Role.New, Band.Exactly(49.5))]));
        var label = layout.Zones[0].Label!.Value;
        Math.Abs(label.At.X.Value - layout.Figures[0].To.X.Value).ShouldBeGreaterThan(Lettering.WidthOf("good") / 2);
        layout.Zones[1].Label.ShouldBeNull();
    }

    // Clockwise over the top of a circle of 50 round (100, 100): from 110° left of the top to 110° right of it; SVG's sweep flag is 1 clockwise, its y goes down.
    [Theory]
    [InlineData(-110, 220, 1)]
    [InlineData(110, -220, 0)]
    public void A_turn_s_head_points_the_way_it_goes(double from, double sweep, int flag)
    {
        var drawn = SketchLayout.Of(new TurnArrow(Role.Strong, new(100, 100), 50, from, sweep));
        drawn.Arc.ShouldContain($"A50 50 0 1 {flag} ");
        var (tipX, tipY) = (100 + (50 * Math.Sin((from + sweep) * Math.PI / 180)), 100 - (50 * Math.Cos((from + sweep) * Math.PI / 180)));
        drawn.Head.ShouldStartWith($"M{new Px(tipX)} {new Px(tipY)}L");

        // Over the top and down: the tip lies below the head's foot, on the right for a clockwise turn.
        var foot = drawn.Head[(drawn.Head.IndexOf('L', StringComparison.Ordinal) + 1)..].Split('L')[0].Split(' ');
        double.Parse(foot[1], System.Globalization.CultureInfo.InvariantCulture).ShouldBeLessThan(tipY);
        (tipX > 100).ShouldBe(sweep > 0);
    }

    [Theory]
    [InlineData("", 0)]
    [InlineData("a few words", 1)]
    [InlineData("aVeryLongWordThatIsLongerThanAnyLineOfAPictureCouldBeOnAnyPhone more", 2)]
    public void Text_is_broken_between_words(string text, int lines) => Lettering.Wrap(text, 200).Count.ShouldBe(lines);

    [Theory]
    [InlineData(-0.001, "0")]
    [InlineData(12.346, "12.35")]
    [InlineData(1e6, "1000000")]
    public void Lengths_are_written_plainly(double value, string text) => new Px(value).ToString().ShouldBe(text);
}
