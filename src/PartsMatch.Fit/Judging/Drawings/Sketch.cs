namespace PartsMatch.Fit.Judging.Drawings;

/// <summary>A drawing of a thing, made of plain shapes; lengths in a unit of its own, a letter being about 12 high.</summary>
/// <param name="Name">Its name at every edge, in camel case.</param>
/// <param name="Title">A few words for it.</param>
/// <param name="Words">What it shows, with its figures.</param>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
/// <param name="Pieces">What it is made of, from the back to the front.</param>
public sealed record Sketch(string Name, string Title, string Words, double Width, double Height, IReadOnlyList<Piece> Pieces) : Drawing(Name, Title, Words);

/// <summary>A piece of a sketch.</summary>
/// <param name="Role">What it stands for.</param>
public abstract record Piece(Role Role);

/// <summary>A circle.</summary>
/// <param name="Role">What it stands for.</param>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">Its radius.</param>
public sealed record Circle(Role Role, Point Centre, double Radius) : Piece(Role);

/// <summary>A straight line.</summary>
/// <param name="Role">What it stands for.</param>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
public sealed record Line(Role Role, Point From, Point To) : Piece(Role);

/// <summary>A closed outline of straight edges; a rectangle has four.</summary>
/// <param name="Role">What it stands for.</param>
/// <param name="Corners">Its corners, in order.</param>
public sealed record Outline(Role Role, IReadOnlyList<Point> Corners) : Piece(Role);

/// <summary>A part of a circle with an arrow head at its end: a turn.</summary>
/// <param name="Role">What it stands for.</param>
/// <param name="Centre">The circle's centre.</param>
/// <param name="Radius">Its radius.</param>
/// <param name="FromDegrees">Where it begins, in degrees clockwise from the top.</param>
/// <param name="SweepDegrees">How far it goes: clockwise above 0, counterclockwise below.</param>
public sealed record TurnArrow(Role Role, Point Centre, double Radius, double FromDegrees, double SweepDegrees) : Piece(Role);

/// <summary>A text.</summary>
/// <param name="Role">What it stands for.</param>
/// <param name="Middle">The middle of its baseline.</param>
/// <param name="Text">The text.</param>
public sealed record Caption(Role Role, Point Middle, string Text) : Piece(Role);
