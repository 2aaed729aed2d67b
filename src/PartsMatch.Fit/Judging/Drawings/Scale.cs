using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging.Drawings;

/// <summary>One figure against its limits, on a line.</summary>
/// <param name="Name">Its name at every edge, in camel case.</param>
/// <param name="Title">A few words for it.</param>
/// <param name="Words">What it shows, with its figures.</param>
/// <param name="Unit">The figure's unit.</param>
/// <param name="Range">From where to where the line goes, in that unit.</param>
/// <param name="Zones">Where it is good, open or bad, from left to right; they cover the whole line.</param>
/// <param name="Marks">What is measured, marked or asked for.</param>
public sealed record Scale(string Name, string Title, string Words, string Unit, Band Range, IReadOnlyList<Zone> Zones, IReadOnlyList<ScaleMark> Marks) : Drawing(Name, Title, Words)
{
    /// <inheritdoc/>
    public override Drawing In(Units units) => !ChosenUnits.Change(Unit, units) ? this : this with
    {
        Unit = ChosenUnits.In(1, Unit, units).Unit!,
        Range = ChosenUnits.In(Range, Unit, units),
        Zones = [.. Zones.Select(zone => zone with { Span = ChosenUnits.In(zone.Span, Unit, units) })],
        Marks = [.. Marks.Select(mark => mark with { At = ChosenUnits.In(mark.At, Unit, units) })],
    };
}

/// <summary>A stretch of a scale.</summary>
/// <param name="Label">What it means; a word or two.</param>
/// <param name="Role"><see cref="Role.Good"/>, <see cref="Role.Open"/> or <see cref="Role.Bad"/>.</param>
/// <param name="Span">From where to where.</param>
public sealed record Zone(string Label, Role Role, Band Span);

/// <summary>A figure on a scale.</summary>
/// <param name="Label">What it is, with its figure.</param>
/// <param name="Role">What it stands for.</param>
/// <param name="At">Where it lies; both ends the same for a single figure.</param>
public sealed record ScaleMark(string Label, Role Role, Band At);
