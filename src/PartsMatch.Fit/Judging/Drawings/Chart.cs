using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging.Drawings;

/// <summary>One figure drawn over another.</summary>
/// <param name="Name">Its name at every edge, in camel case.</param>
/// <param name="Title">A few words for it.</param>
/// <param name="Words">What it shows, with its figures.</param>
/// <param name="X">The horizontal axis.</param>
/// <param name="Y">The vertical axis.</param>
/// <param name="Bands">Areas in which a curve may lie, drawn below everything.</param>
/// <param name="Curves">The curves.</param>
/// <param name="Marks">Points that the drawing is about.</param>
public sealed record Chart(string Name, string Title, string Words, Axis X, Axis Y, IReadOnlyList<Area> Bands, IReadOnlyList<Curve> Curves, IReadOnlyList<Mark> Marks) : Drawing(Name, Title, Words);

/// <summary>An axis of a chart.</summary>
/// <param name="Title">What is drawn along it.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Range">From where to where it goes, in that unit.</param>
public sealed record Axis(string Title, string Unit, Band Range);

/// <summary>A curve of a chart.</summary>
/// <param name="Label">A word or two that stand beside it.</param>
/// <param name="Role">What it stands for.</param>
/// <param name="Points">From left to right.</param>
public sealed record Curve(string Label, Role Role, IReadOnlyList<Point> Points);

/// <summary>An area in which a curve may lie.</summary>
/// <param name="Label">What it comes from.</param>
/// <param name="Role">What its curve stands for.</param>
/// <param name="Lower">Its lower edge, from left to right.</param>
/// <param name="Upper">Its upper edge, from left to right.</param>
public sealed record Area(string Label, Role Role, IReadOnlyList<Point> Lower, IReadOnlyList<Point> Upper);

/// <summary>A point that a chart is about.</summary>
/// <param name="Label">What it says, with its figure; empty for a point of a curve, whose label tells.</param>
/// <param name="Role">What it stands for.</param>
/// <param name="At">Where it most likely lies.</param>
/// <param name="AcrossX">From where to where it may lie along the horizontal axis.</param>
/// <param name="AcrossY">The same along the vertical axis.</param>
public sealed record Mark(string Label, Role Role, Point At, Band AcrossX, Band AcrossY);
