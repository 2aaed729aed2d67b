using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Demo.Outcomes;

/// <summary>A part as somebody with a catalogue in hand sees it: of every field its text, and the first figure in it, in SI units.</summary>
public sealed partial class PartFigures
{
    private readonly string?[] texts;
    private readonly double?[] numbers;
    private readonly double[] logarithms;
    private readonly int[] hashes;

    /// <summary>Reads a part once.</summary>
    public PartFigures(FamilyCatalogue family, DemoPart part)
    {
        Part = part;
        texts = [.. family.Shape.Fields.Select(field => field.TextOf(part.Spec, Units.Si))];
        numbers = [.. texts.Select(text => text is not null && FirstFigure().Match(text) is { Success: true } found ? double.Parse(found.ValueSpan, CultureInfo.InvariantCulture) : (double?)null)];
        hashes = [.. texts.Select(text => text is null ? 0 : BitConverter.ToInt32(SHA256.HashData(Encoding.UTF8.GetBytes(text))))];
        logarithms = [.. numbers.Select(number => number is > 0 and var positive ? Math.Log(positive) : double.NaN)];
    }

    /// <summary>The part.</summary>
    public DemoPart Part { get; }

    /// <summary>The first figure of a field, by the field's place in the shape; null where it has none.</summary>
    public double? NumberAt(int field) => numbers[field];

    /// <summary>Whether two parts say the same of a field, or neither says anything: by hashes, since nine million pairs of parts are compared.</summary>
    public bool SaysAs(PartFigures other, int field) => hashes[field] == other.hashes[field];

    /// <summary>The logarithm of that figure, by which parts are compared; not a number where it has none or is not above 0.</summary>
    public double LogarithmAt(int field) => logarithms[field];

    /// <summary>A field's text; null where it is not given.</summary>
    public string? TextAt(int field) => texts[field];

    [GeneratedRegex(@"-?\d+(\.\d+)?", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex FirstFigure();
}
