using PartsMatch.Fit.Judging.Drawings;

namespace PartsMatch.Service.Pages.Drawings;

/// <summary>A turn: its arc, and the head at its end.</summary>
internal readonly record struct DrawnTurn(string Arc, string Head);

/// <summary>The pieces of a sketch as SVG reads them.</summary>
internal static class SketchLayout
{
    private const double Degree = Math.PI / 180;
    private const double HeadLength = 18;
    private const double HeadHalfWidth = 9;

    /// <summary>An arc as a path, and a head that points the way it goes.</summary>
    public static DrawnTurn Of(TurnArrow turn)
    {
        var direction = Math.Sign(turn.SweepDegrees);

        // The arc ends in the middle of the head, the head's tip where the turn ends.
        var head = direction * HeadLength / turn.Radius / Degree;
        var (tip, foot) = (turn.FromDegrees + turn.SweepDegrees, turn.FromDegrees + turn.SweepDegrees - head);
        var from = Round(turn, turn.FromDegrees, turn.Radius);
        var to = Round(turn, foot + (head / 4), turn.Radius);
        var isLong = Math.Abs(turn.SweepDegrees) > 180 ? 1 : 0;
        var radius = new Px(turn.Radius);
        return new(
            $"M{from.X} {from.Y}A{radius} {radius} 0 {isLong} {(direction > 0 ? 1 : 0)} {to.X} {to.Y}",
            PathText.Closed([Round(turn, tip, turn.Radius), Round(turn, foot, turn.Radius + HeadHalfWidth), Round(turn, foot, turn.Radius - HeadHalfWidth)]));
    }

    public static string Of(Outline outline) => PathText.Closed(outline.Corners.Select(Of));

    public static Place Of(Point point) => Place.At(point.X, point.Y);

    /// <summary>A place on a circle round the turn's centre, degrees clockwise from the top.</summary>
    private static Place Round(TurnArrow turn, double degrees, double radius) =>
        Place.At(turn.Centre.X + (radius * Math.Sin(degrees * Degree)), turn.Centre.Y - (radius * Math.Cos(degrees * Degree)));
}
