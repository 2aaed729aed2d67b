using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>What a speed of the old motor is called; formed only when it is shown.</summary>
/// <param name="Place">Its place among the old motor's speeds, 0 for the highest.</param>
/// <param name="Count">How many speeds the old motor's plate rates.</param>
/// <param name="Rpm">Its full-load speed, rpm; null when unknown.</param>
public readonly record struct SpeedName(int Place, int Count, double? Rpm)
{
    /// <summary>High, medium or low; the second of four is speed 2.</summary>
    public string Word => Place == 0 ? "high" : Place == Count - 1 ? "low" : Count == 3 ? "medium" : FormattableString.Invariant($"speed {Place + 1}");

    /// <summary>The same in the names of figures, as in speedOnLow: Low, Medium, Speed2.</summary>
    public string Name => FormattableString.Invariant($"{char.ToUpperInvariant(Word[0])}{Word[1..].Replace(" ", string.Empty, StringComparison.Ordinal)}");

    /// <summary>"low, 1140 rpm".</summary>
    public override string ToString() => Rpm is { } rpm ? FormattableString.Invariant($"{Word}, {rpm:0} rpm") : Word;
}

/// <summary>What a speed is called, without its rpm: low; formed only when it is shown.</summary>
/// <param name="Name">The name.</param>
internal readonly record struct Called(SpeedName Name)
{
    /// <inheritdoc/>
    public override string ToString() => Name.Word;
}

/// <summary>A speed of the old motor below its highest that the site uses, and the part's speed that serves it.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Old">What the old motor is rated for there.</param>
/// <param name="OldRow">Its place among the old motor's <see cref="LowerSpeeds"/>.</param>
/// <param name="Row">The place among the part's <see cref="LowerSpeeds"/> of the one that serves it; null when the part's plate gives none for it.</param>
public readonly record struct SpeedPair(SpeedName Name, LowerSpeed Old, int OldRow, int? Row);

/// <summary>Which speed of a part serves which speed of the old motor.</summary>
/// <remarks>
/// Highest with highest; then, downwards, the part's speed nearest to the old one, so that a faster one of the part never serves a slower one of the old motor, and each slower speed has one left where there are enough.
/// Where both motors have a winding for each speed, one of the same pole count stands before a nearer one of another (practice); the lower speeds of a tapped winding are high-slip taps, not poles.
/// Without speeds to compare they pair by position.
/// </remarks>
public static class SpeedPairs
{
    /// <summary>A pair for each lower speed in use, fastest first; none while one speed is used, or the plate rates one.</summary>
    /// <param name="need">Plate and site. How many speeds the site uses is deduced from the old motor's rows where nobody said; unknown counts as one.</param>
    /// <param name="part">The part's lower speeds.</param>
    /// <param name="means">How the part has several speeds; null when unknown.</param>
    public static IReadOnlyList<SpeedPair> Of(MotorNeed need, Sequence<LowerSpeed> part, SpeedMeans? means)
    {
        var old = LowerSpeeds.OfOld(need);
        var used = Math.Min(old.Count, (need.Site.SpeedsUsed ?? 1) - 1);
        if (used <= 0) return [];
        var byPoles = means == SpeedMeans.SeparateWindings && need.Plate.SpeedMeans == SpeedMeans.SeparateWindings;
        var hertz = byPoles ? SupplyVolts.HertzOf(need) : null;
        var pairs = new SpeedPair[used];
        var next = 0;
        for (var place = 0; place < used; place++)
        {
            var last = Math.Max(next, part.Count - used + place);
            int? row = next >= part.Count ? null : Nearest(old[place], part, next, Math.Min(last, part.Count - 1), byPoles, hertz);
            pairs[place] = new(new(place + 1, old.Count + 1, old[place].Rpm), old[place], place, row);
            next = (row ?? next) + 1;
        }

        return pairs;
    }

    /// <summary>The part's speed that serves one of the old motor's, among those from one place to another: the first of those that are equally near.</summary>
    private static int Nearest(LowerSpeed old, Sequence<LowerSpeed> part, int from, int to, bool byPoles, double? hertz)
    {
        var (nearest, differsInPoles, off) = (from, true, double.PositiveInfinity);
        for (var row = from; row <= to; row++)
        {
            var (differs, apart) = (byPoles && !SharePoles(old, part[row], hertz), Math.Abs(part[row].Rpm - old.Rpm ?? 0));
            if ((differs && !differsInPoles) || (differs == differsInPoles && apart >= off)) continue;
            (nearest, differsInPoles, off) = (row, differs, apart);
        }

        return nearest;
    }

    private static bool SharePoles(LowerSpeed old, LowerSpeed part, double? hertz) =>
        hertz is { } there && old.Rpm is { } before && part.Rpm is { } now && PoleCounts.CanBeAlike(before, now, there);
}
