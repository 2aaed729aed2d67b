using PartsMatch.Fit.Judging.Drawings;

namespace PartsMatch.Service.Pages.Drawings;

/// <summary>A zone: the better it is the higher it is drawn, so that it is told apart without colours.</summary>
internal readonly record struct DrawnZone(Box Box, string Class, Written? Label);

/// <summary>A figure on a scale: a stroke across it, or a bar where it is a band, and a letter above that the legend explains.</summary>
internal readonly record struct DrawnFigure(Box Bar, Place From, Place To, Place Badge, Written Letter, string Class);

/// <summary>A row of a scale's legend.</summary>
internal sealed record FigureRow(Place Badge, Written Letter, string Class, IReadOnlyList<Written> Lines);

/// <summary>Where everything of a scale lies in its picture.</summary>
internal sealed class ScaleLayout
{
    private const double Left = 14;
    private const double Right = Lettering.PictureWidth - 14;
    private const double TallestZone = 17;
    private const double BadgeRadius = 9;
    private const double LegendIndent = 28;

    private const double BadgeStep = (2 * BadgeRadius) + 1;

    private readonly Scale scale;
    private readonly double middle;

    public ScaleLayout(Scale scale)
    {
        this.scale = scale;
        var levels = Levels();
        middle = TallestZone + 18 + BadgeRadius + (BadgeStep * levels.DefaultIfEmpty(0).Max());
        Zones = [.. scale.Zones.Select(Zoned)];
        XTicks = [.. Ticks.Of(scale.Range, 7).Select(tick => new Written(Place.At(X(tick.Value), middle + TallestZone + 18), tick.Text))];
        Figures = [.. scale.Marks.Select((mark, index) => Lettered(mark, index, levels[index]))];
        var y = middle + TallestZone + 58;
        List<FigureRow> legend = [];
        foreach (var (mark, figure) in scale.Marks.Zip(Figures))
        {
            var lines = Lettering.Wrap(mark.Label, Lettering.PictureWidth - LegendIndent).Select((line, index) => new Written(Place.At(LegendIndent, y + (index * Lettering.LineHeight)), line)).ToList();
            legend.Add(new(Place.At(Left, y - 4), new(Place.At(Left, y), figure.Letter.Text), figure.Class, lines));
            y += (lines.Count * Lettering.LineHeight) + 6;
        }

        (Legend, Height) = (legend, new(y - 10));
    }

    public Px Height { get; }

    public Px Width { get; } = new(Lettering.PictureWidth);

    public Px TickFrom => new(middle + TallestZone);

    public Px TickTo => new(middle + TallestZone + 5);

    public IReadOnlyList<DrawnZone> Zones { get; }

    public IReadOnlyList<DrawnFigure> Figures { get; }

    public IReadOnlyList<Written> XTicks { get; }

    public Written XTitle => new(Place.At((Left + Right) / 2, middle + TallestZone + 36), scale.Unit);

    public IReadOnlyList<FigureRow> Legend { get; }

    private double X(double value) => scale.Range is { Low: var low, High: var high } && high > low ? Left + (Math.Clamp((value - low) / (high - low), 0, 1) * (Right - Left)) : (Left + Right) / 2;

    private DrawnZone Zoned(Zone zone)
    {
        var half = zone.Role switch { Role.Good => TallestZone, Role.Open => 13, _ => 9 };
        var (left, right) = (X(zone.Span.Low), X(zone.Span.High));
        return new(Box.Between(left, middle - half, right, middle + half), RoleClass.Of(zone.Role), Lettered(zone.Label, left, right));
    }

    /// <summary>The label in the middle of its zone, or at an end of it, where no figure's stroke goes through it; none where it does not fit.</summary>
    private Written? Lettered(string label, double left, double right)
    {
        var half = (Lettering.WidthOf(label) / 2) + 3;
        if (2 * half > right - left) return null;
        double[] centres = [(left + right) / 2, left + half, right - half];
        var free = centres.Where(centre => !scale.Marks.Any(mark => Math.Abs(X(mark.At.Middle) - centre) < half));
        return new(Place.At(free.Append(centres[0]).First(), middle + 4), label);
    }

    /// <summary>Letters that would lie on one another are put one above the other: how high each of them stands.</summary>
    private List<int> Levels()
    {
        List<(double X, int Level)> placed = [];
        foreach (var x in scale.Marks.Select(mark => X(mark.At.Middle)))
        {
            var level = 0;
            while (placed.Exists(one => one.Level == level && Math.Abs(one.X - x) < BadgeStep + 1)) level++;
            placed.Add((x, level));
        }

        return [.. placed.Select(one => one.Level)];
    }

    private DrawnFigure Lettered(ScaleMark mark, int index, int level)
    {
        var (x, y) = (X(mark.At.Middle), middle - TallestZone - 16 - (BadgeStep * level));
        var isBand = mark.At.Low < mark.At.High;
        return new(
            Box.Between(X(mark.At.Low), middle - TallestZone - 4, X(mark.At.High), middle - TallestZone - 1),
            Place.At(x, y + BadgeRadius),
            Place.At(x, isBand ? middle - TallestZone - 1 : middle + TallestZone + 3),
            Place.At(x, y),
            new(Place.At(x, y + 4), ((char)('A' + index)).ToString()),
            RoleClass.Of(mark.Role));
    }
}
