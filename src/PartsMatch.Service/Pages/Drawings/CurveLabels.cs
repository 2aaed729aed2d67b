namespace PartsMatch.Service.Pages.Drawings;

/// <summary>Puts a label beside each curve, where it is in nobody's way.</summary>
internal static class CurveLabels
{
    private const double Above = 5;
    private const double Height = 13;

    /// <summary>How far along the plot a label may begin.</summary>
    private static readonly double[] Along = [.. Enumerable.Range(0, 18).Select(step => 0.02 + (0.05 * step))];

    /// <summary>Labels in the order of their curves.</summary>
    /// <param name="plot">Where labels may lie.</param>
    /// <param name="curves">Label and points of each curve.</param>
    /// <param name="taken">What no label may lie on.</param>
    public static IReadOnlyList<Written> Place(Box plot, IReadOnlyList<(string Label, List<(double X, double Y)> Points)> curves, IReadOnlyList<Box> taken)
    {
        List<Box> boxes = [.. taken];
        List<Written> labels = [];
        foreach (var (label, points) in curves)
        {
            var best = Along.SelectMany(part => Beside(plot, label, points, plot.Left + (part * plot.Width.Value))).MinBy(box => Cost(plot, box, points, curves, boxes));
            boxes.Add(best);
            labels.Add(new(Drawings.Place.At(best.Left, best.Bottom - 3), label));
        }

        return labels;
    }

    /// <summary>The places above and below a curve, its label beginning at x.</summary>
    private static IEnumerable<Box> Beside(Box plot, string label, List<(double X, double Y)> points, double x)
    {
        var width = Lettering.WidthOf(label);
        var over = points.Where(point => point.X >= x - 4 && point.X <= x + width + 4).Select(point => point.Y).DefaultIfEmpty(plot.Bottom).ToList();
        return [Box.Between(x, over.Min() - Above - Height, x + width, over.Min() - Above), Box.Between(x, over.Max() + Above, x + width, over.Max() + Above + Height)];
    }

    /// <summary>Outside the plot, or on another label, is out of the question; on a curve is bad; far from its own curve, and far from the left, are less good.</summary>
    private static double Cost(Box plot, Box box, List<(double X, double Y)> own, IReadOnlyList<(string Label, List<(double X, double Y)> Points)> curves, List<Box> taken)
    {
        var middle = ((box.Top + box.Bottom) / 2, (box.Left + box.Right) / 2);
        return (plot.Holds(box) ? 0 : 10_000)
            + (taken.Count(box.Meets) * 5_000)
            + (curves.Sum(curve => curve.Points.Count(point => box.Holds(point.X, point.Y))) * 100)
            + (NearerToAnother(own, curves, middle) ? 300 : 0)
            + Distance(own, middle)
            + ((box.Left - plot.Left) / 20);
    }

    private static bool NearerToAnother(List<(double X, double Y)> own, IReadOnlyList<(string Label, List<(double X, double Y)> Points)> curves, (double Y, double X) middle) =>
        curves.Any(curve => curve.Points != own && Distance(curve.Points, middle) < Distance(own, middle) - 1);

    private static double Distance(List<(double X, double Y)> points, (double Y, double X) from) => points.Min(point => Math.Sqrt(Math.Pow(point.X - from.X, 2) + Math.Pow(point.Y - from.Y, 2)));
}
