using System.Globalization;
using System.Text.RegularExpressions;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Demo.Outcomes;

/// <summary>A part as somebody with a catalogue in hand sees it: of every field its text, and the first figure in it, in SI units.</summary>
public sealed partial class PartFigures
{
    private readonly string?[] texts;
    private readonly double?[] numbers;

    /// <summary>Reads a part once.</summary>
    public PartFigures(FamilyCatalogue family, DemoPart part)
    {
        Part = part;
        texts = [.. family.Shape.Fields.Select(field => field.TextOf(part.Spec, Units.Si))];
        numbers = [.. texts.Select(text => text is not null && FirstFigure().Match(text) is { Success: true } found ? double.Parse(found.ValueSpan, CultureInfo.InvariantCulture) : (double?)null)];
    }

    /// <summary>The part.</summary>
    public DemoPart Part { get; }

    /// <summary>How many fields there are.</summary>
    public int FieldCount => texts.Length;

    /// <summary>The first figure of a field, by the field's place in the shape; null where it has none.</summary>
    public double? NumberAt(int field) => numbers[field];

    /// <summary>A field's text; null where it is not given.</summary>
    public string? TextAt(int field) => texts[field];

    [GeneratedRegex(@"-?\d+(\.\d+)?", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FirstFigure();
}
