using PartsMatch.Fit.Judging.Drawings;

namespace PartsMatch.Fit.Motors.Drawings;

/// <summary>A shaft as it is seen from its tip.</summary>
internal static class ShaftSection
{
    /// <summary>How far from the middle a flat lies, of the radius; and how wide and deep half a keyway is, about as on the shafts of small motors.</summary>
    private const double Flat = 0.7;

    private const double HalfKeyway = 0.25;

    private const int Steps = 72;

    /// <summary>Its outline; a round shaft and one of unknown form are circles.</summary>
    public static Piece Of(ShaftForm? form, Point centre, double radius) => form switch
    {
        ShaftForm.Flat => Cut(centre, radius, -Flat * radius, radius),
        ShaftForm.DoubleFlat => Cut(centre, radius, -Flat * radius, Flat * radius),
        ShaftForm.Keyway => Keyway(centre, radius),
        _ => new Circle(Role.Ink, centre, radius),
    };

    /// <summary>What is said of it.</summary>
    public static string Words(ShaftForm? form) => form switch
    {
        ShaftForm.Round => "round",
        ShaftForm.Flat => "one flat",
        ShaftForm.DoubleFlat => "two flats",
        ShaftForm.Keyway => "a keyway",
        _ => "form not known",
    };

    private static Outline Cut(Point centre, double radius, double highest, double lowest) =>
        new(Role.Ink, [.. Round(radius).Select(point => new Point(centre.X + point.X, centre.Y + Math.Clamp(point.Y, highest, lowest)))]);

    private static Outline Keyway(Point centre, double radius)
    {
        var half = HalfKeyway * radius;
        var edge = Math.Sqrt((radius * radius) - (half * half));
        IEnumerable<Point> notch = [new(half, -edge), new(half, -edge + half), new(-half, -edge + half), new(-half, -edge)];

        // Clockwise from the top: the notch's edge towards the right comes last.
        var round = Round(radius).Where(point => Math.Abs(point.X) > half || point.Y > 0);
        return new(Role.Ink, [.. round.Concat(notch.Reverse()).Select(point => new Point(centre.X + point.X, centre.Y + point.Y))]);
    }

    private static IEnumerable<Point> Round(double radius) =>
        Enumerable.Range(0, Steps).Select(step => double.Tau * step / Steps).Select(angle => new Point(radius * Math.Sin(angle), -radius * Math.Cos(angle)));
}
