using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Service.Pages.Drawings;

/// <summary>A path with what it stands for.</summary>
internal readonly record struct Drawn(string Path, string Class);

/// <summary>A mark: a dot for the old, a diamond for the new, within the box of what is not known better.</summary>
public readonly record struct DrawnMark(Place At, string Diamond, bool IsDiamond, Box Doubt, string Class);

/// <summary>A row of the legend: a curve's line with its mark's sign, or a patch of an area.</summary>
internal sealed record LegendRow(string Class, Place From, Place To, DrawnMark? Sign, Box? Patch, IReadOnlyList<Written> Lines);

/// <summary>Where everything of a chart lies in its picture.</summary>
internal sealed class ChartLayout
{
    private const double Left = 40;
    private const double Right = Lettering.PictureWidth - 16;
    private const double Top = 24;
    private const double Bottom = 222;
    private const double Sign = 5;
    private const double LegendIndent = 42;
    private const int MostTicks = 6;
    private const double Near = 3;

    private readonly Chart chart;

    public ChartLayout(Chart chart)
    {
        this.chart = chart;
        Curves = [.. chart.Curves.Select(curve => new Drawn(PathOf(curve.Points), RoleClass.Of(curve.Role)))];
        Areas = [.. chart.Bands.Select(area => new Drawn($"{PathOf([.. area.Lower, .. area.Upper.Reverse()])}Z", RoleClass.Of(area.Role)))];
        Marks = [.. chart.Marks.Select(mark => Signed(mark, X(mark.At.X), Y(mark.At.Y)))];
        XTicks = [.. Ticks.Of(chart.X.Range, MostTicks).Select(tick => new Written(Place.At(X(tick.Value), Bottom + 16), tick.Text))];
        YTicks = [.. Ticks.Of(chart.Y.Range, MostTicks).Select(tick => new Written(Place.At(Left - 6, Y(tick.Value)), tick.Text))];
        Labels = CurveLabels.Place(Plot, [.. chart.Curves.Select(curve => (curve.Label, Within(curve.Points)))], [.. Marks.Select(mark => mark.Doubt)]);
        Legend = Rows();
        Height = new((Legend.Count > 0 ? Legend[^1].Lines[^1].At.Y.Value : Bottom + 36) + 8);
    }

    public Px Height { get; }

    /// <summary>What clips curves that leave the plot.</summary>
    public string ClipId => $"drawing-{chart.Name}-plot";

    public Px Width { get; } = new(Lettering.PictureWidth);

    /// <summary>The plot's lower and right edges.</summary>
    public Px Floor { get; } = new(Bottom);

    public Px Side { get; } = new(Right);

    public Box Plot { get; } = Box.Between(Left, Top, Right, Bottom);

    public IReadOnlyList<Drawn> Areas { get; }

    public IReadOnlyList<Drawn> Curves { get; }

    public IReadOnlyList<DrawnMark> Marks { get; }

    public IReadOnlyList<Written> XTicks { get; }

    public IReadOnlyList<Written> YTicks { get; }

    /// <summary>A curve's label, in the order of the curves.</summary>
    public IReadOnlyList<Written> Labels { get; }

    public IReadOnlyList<LegendRow> Legend { get; }

    public Written XTitle => new(Place.At((Left + Right) / 2, Bottom + 34), TitleOf(chart.X));

    public Written YTitle => new(Place.At(2, 12), TitleOf(chart.Y));

    private static string TitleOf(Axis axis) => $"{axis.Title}, {axis.Unit}";

    private double X(double value) => Left + (Part(chart.X.Range, value) * (Right - Left));

    private double Y(double value) => Bottom - (Part(chart.Y.Range, value) * (Bottom - Top));

    private static double Part(Band range, double value) => range.High > range.Low ? (value - range.Low) / (range.High - range.Low) : 0.5;

    /// <summary>A curve as points so near to one another that no label slips between two of them.</summary>
    private List<(double X, double Y)> Within(IReadOnlyList<Point> points) => [.. points.Zip(points.Skip(1)).SelectMany(piece =>
    {
        var (fromX, fromY, toX, toY) = (X(piece.First.X), Y(piece.First.Y), X(piece.Second.X), Y(piece.Second.Y));
        var steps = (int)(Math.Max(Math.Abs(toX - fromX), Math.Abs(toY - fromY)) / Near) + 1;
        return Enumerable.Range(0, steps + 1).Select(step => (fromX + ((toX - fromX) * step / steps), fromY + ((toY - fromY) * step / steps)));
    })];

    private string PathOf(IReadOnlyList<Point> points) => PathText.Through(points.Select(point => Place.At(X(point.X), Y(point.Y))));

    private DrawnMark Signed(Mark mark, double x, double y) => new(
        Place.At(x, y),
        PathText.Closed([Place.At(x, y - Sign - 1), Place.At(x + Sign + 1, y), Place.At(x, y + Sign + 1), Place.At(x - Sign - 1, y)]),
        mark.Role == Role.New,
        Box.Between(X(mark.AcrossX.Low), Y(mark.AcrossY.High), X(mark.AcrossX.High), Y(mark.AcrossY.Low)),
        RoleClass.Of(mark.Role));

    private List<LegendRow> Rows()
    {
        List<LegendRow> rows = [];
        var y = Bottom + 56;
        foreach (var mark in chart.Marks.Where(mark => mark.Label.Length > 0)) Add(mark.Role, mark.Label, at => Signed(mark, 20, at), isPatch: false);
        foreach (var area in chart.Bands) Add(area.Role, area.Label, _ => null, isPatch: true);
        return rows;

        void Add(Role role, string label, Func<double, DrawnMark?> sign, bool isPatch)
        {
            var middle = y - 4;
            var lines = Lettering.Wrap(label, Lettering.PictureWidth - LegendIndent).Select((line, index) => new Written(Place.At(LegendIndent, y + (index * Lettering.LineHeight)), line)).ToList();
            rows.Add(new(RoleClass.Of(role), Place.At(4, middle), Place.At(36, middle), sign(middle), isPatch ? Box.Between(4, middle - 6, 36, middle + 6) : null, lines));
            y += (lines.Count * Lettering.LineHeight) + 3;
        }
    }
}
