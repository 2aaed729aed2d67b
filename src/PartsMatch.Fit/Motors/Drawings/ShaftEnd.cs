using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Drawings;

/// <summary>The turn that the fan needs, seen from both ends of the motor: the same turn has opposite names from them. Under it, the new motor's shaft in words.</summary>
public static class ShaftEnd
{
    private const double Width = 340;
    private const double Height = 244;
    private const double Body = 44;
    private const double Shaft = 17;
    private const double Arrow = 59;

    /// <summary>So far round goes the arrow, degrees: from one side over the top to the other.</summary>
    private const double Sweep = 220;

    private static readonly Point Facing = new(86, 76);
    private static readonly Point Behind = new(254, 76);

    /// <summary>The sketch; without an arrow where the turn is not known, and it says so.</summary>
    public static Sketch Of(MotorNeed need, MotorSpec part)
    {
        var turn = Rotation.Needed(need);
        List<string> under = [.. Words(part), .. new[] { Ships(turn, part), part.ShaftEnds == 2 ? "Two shaft ends: facing the one with the fan." : null }.OfType<string>()];
        return new(
            "shaftEnd",
            "The turn that the fan needs",
            string.Join(' ', new[] { Seen(turn) }.Concat(under)),
            Width,
            Height + (16 * (under.Count - 2)),
            [
                new Circle(Role.Soft, Facing, Body),
                ShaftSection.Of(part.ShaftForm, Facing, Shaft),
                new Circle(Role.Soft, Behind, Body),
                new Circle(Role.Hidden, Behind, Shaft),
                .. Leads(),
                .. turn is { } known ? Arrows(known) : [],
                .. Captions(Facing.X, turn, "facing the shaft end"),
                .. Captions(Behind.X, turn is { } same ? Turn.Opposite(same) : null, "facing the lead end"),
                .. under.Select((line, index) => new Caption(Role.Ink, new(Width / 2, 216 + (16 * index)), line)),
            ]);
    }

    private static string Seen(Direction? turn) =>
        turn is { } known
            ? $"Facing the shaft end the fan turns {Name(known)}; facing the lead end the same turn is {Name(Turn.Opposite(known))}."
            : "Which way the fan must turn, and seen from which end, is not known, so no arrow is drawn.";

    private static string Name(Direction turn) => turn == Direction.Clockwise ? "clockwise (CW)" : "counterclockwise (CCW)";

    /// <summary>How the new motor turns as it ships, where that is another way.</summary>
    private static string? Ships(Direction? needed, MotorSpec part) =>
        needed is { } turn && TurnFacet.Of(part).Ships is { } ships && ships != turn ? $"As it ships it turns {new Spelt<Direction>(ships)} facing the shaft end." : null;

    private static IEnumerable<string> Words(MotorSpec part) =>
    [
        $"New motor's shaft: {(Rounded.Millimetres(part.ShaftDiameter) is { } across ? $"{new Shown(across)}" : "diameter not known")},",
        $"{(Rounded.Millimetres(part.ShaftLength) is { } along ? $"{new Shown(along)} long" : "length not known")}, {ShaftSection.Words(part.ShaftForm)}.",
    ];

    private static IEnumerable<TurnArrow> Arrows(Direction turn)
    {
        var clockwise = turn == Direction.Clockwise ? Sweep : -Sweep;
        return [new(Role.Strong, Facing, Arrow, -clockwise / 2, clockwise), new(Role.Strong, Behind, Arrow, clockwise / 2, -clockwise)];
    }

    private static IEnumerable<Caption> Captions(double middle, Direction? turn, string end) =>
    [
        turn is { } known ? new(Role.Strong, new(middle, 164), $"{new Spelt<Direction>(known)}") : new(Role.Ink, new(middle, 164), "turn not known"),
        new(Role.Ink, new(middle, 184), end),
    ];

    /// <summary>Three leads hang from the lead end, so that it is known for one.</summary>
    private static IEnumerable<Line> Leads() =>
        new[] { -8.0, 0, 8 }.Select(side => new Line(Role.Ink, new(Behind.X + (side / 2), Behind.Y + 28), new(Behind.X + side, Behind.Y + 66)));
}
