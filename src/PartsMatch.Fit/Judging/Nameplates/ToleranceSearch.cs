namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Reads shares that say how far a figure may be off, by themselves or within what else they stand in: 45 ±6 % MFD 440 V.</summary>
internal sealed class ToleranceSearch(PlateText plate, Lexicon lexicon, ValueReader reader)
{
    /// <summary>The share that is a token; null when it is none, or can be none of the field.</summary>
    public Placement? At(int at) => Value(at) is { } value ? new(at, at + 1, LabelStands.Nowhere, 0, value) : null;

    /// <summary>A placement with what the shares in it say. What none can be, or what no field holds, is left over.</summary>
    public Placement Within(Placement placement)
    {
        if (placement.Values is not [var first, ..] || first.Field == lexicon.Tolerance) return placement;
        List<int>? inside = null;
        for (var at = placement.From; at < placement.To; at++)
        {
            if (IsShare(at)) (inside ??= []).Add(at);
        }

        return inside is null ? placement : Without(placement, inside);
    }

    private Placement Without(Placement placement, List<int> inside) =>
        placement with { Values = [.. placement.Values.Select(value => value with { Where = [.. value.Where.SelectMany(stretch => Without(stretch, inside))] }), .. inside.Select(Value).OfType<PlacedValue>()] };

    private bool IsShare(int at) => plate.Is(at, TokenKind.Tolerance) && plate.Slice(at, at + 1)[^1] == '%';

    private PlacedValue? Value(int at)
    {
        if (lexicon.Tolerance is not { } field || !IsShare(at)) return null;
        return reader.Read(field, Tolerances.ShareOf(plate.Slice(at, at + 1)), null) is { } text ? new(field, text, new Stretch(at, at + 1)) : null;
    }

    private static IEnumerable<Stretch> Without(Stretch stretch, List<int> tokens)
    {
        var from = stretch.From;
        foreach (var token in tokens.Where(token => stretch.From <= token && token < stretch.To))
        {
            if (token > from) yield return new(from, token);
            from = token + 1;
        }

        if (from < stretch.To) yield return new(from, stretch.To);
    }
}
