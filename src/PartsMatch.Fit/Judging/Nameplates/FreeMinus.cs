namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>A minus with a space on both sides between a label and its figure, CUT-OUT - 10 F: a dash on one plate, and the sign of the figure on the next.</summary>
/// <remarks>
/// It is a dash where the figure cannot be below zero, and where the plate puts such a dash before one that cannot; a sign where another labelled figure has a free plus. With neither, or with both, both ways are possible, and neither is taken.
/// </remarks>
internal sealed class FreeMinus(PlateText plate, ValueSearch values, ValueReader reader)
{
    /// <summary>Labels have no more words.</summary>
    private const int LongestLabel = 6;

    private bool? hasDashes;
    private bool? hasSigns;

    /// <summary>The values at a label that begin with a token, as they may be meant.</summary>
    public List<Found> Meant(int at, LabelEntry label, List<Found> found) => IsBefore(at) ? WithMinus(at, label, found) : found;

    private List<Found> WithMinus(int at, LabelEntry label, List<Found> found)
    {
        var isDash = hasDashes ??= Labelled(IsBefore).Any(IsDash);
        var isSign = hasSigns ??= Labelled(figure => Gaps.EndsInFreePlus(plate.Gap(figure))).Any();
        if (isDash && !isSign) return found;
        return [.. found.SelectMany(one => Negative(at, label, one) is { } negative ? isSign && !isDash ? [one with { Text = negative }] : [one, one with { Text = negative }] : (Found[])[one])];
    }

    private bool IsBefore(int at) => plate.Is(at, TokenKind.Number) && Gaps.EndsInFreeMinus(plate.Gap(at));

    /// <summary>Labels of which the figure stands behind some gap.</summary>
    private IEnumerable<(Match Label, int Figure)> Labelled(Func<int, bool> isGap) =>
        from figure in Enumerable.Range(1, plate.Count - 1)
        where plate.Is(figure, TokenKind.Number) && plate.SameLine(figure) && isGap(figure)
        from at in Enumerable.Range(Math.Max(0, figure - LongestLabel), Math.Min(LongestLabel, figure))
        from match in plate.Words[at]
        where match.End == figure && match.Node.Labels.Count > 0
        select (match, figure);

    /// <summary>HP - 1/4: no label there has a figure below zero.</summary>
    private bool IsDash((Match Label, int Figure) one)
    {
        var read = one.Label.Node.Labels.SelectMany(label => values.At(one.Figure, label).Select(found => Negative(one.Figure, label, found))).ToList();
        return read.Count > 0 && read.TrueForAll(negative => negative is null);
    }

    /// <summary>The value with the minus as its sign; null where it cannot have one.</summary>
    private string? Negative(int at, LabelEntry label, Found found)
    {
        var text = $"-{plate.Slice(at, found.To)}";
        if (found.Second is null) return reader.Read(label.Field, text, label.Unit);
        return found.Second.At is null && FigureText.Ends(text) is { } ends ? reader.Read(label.Field, ends.Low, ends.Unit.Length > 0 ? ends.Unit : label.Unit) : null;
    }
}
