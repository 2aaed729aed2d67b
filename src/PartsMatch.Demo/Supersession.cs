using PartsMatch.Demo.Trade;

namespace PartsMatch.Demo;

/// <summary>Somebody said that one part took another's place.</summary>
/// <param name="Number">The old part.</param>
/// <param name="SupersededBy">The part that took its place.</param>
/// <param name="SaidBy">maker, counter or technician.</param>
/// <param name="On">When it was said.</param>
public sealed record Supersession(string Number, string SupersededBy, string SaidBy, DateOnly On)
{
    /// <summary>Of the discontinued parts; not all of these have a successor in their niche, so about 6 % of all parts are superseded.</summary>
    private const double SupersededShare = 0.6;
    private const int LongestChain = 3;

    private static readonly DateOnly FirstDay = new(2012, 1, 2);
    private static readonly DateOnly LastDay = new(2025, 12, 19);

    /// <summary>Draws who superseded whom among a family's parts. A part is only superseded by one of its niche that came later, so chains end.</summary>
    public static IReadOnlyList<Supersession> Among(IReadOnlyList<DemoPart> parts, Draw draw)
    {
        var order = draw.Some(parts, parts.Count);
        var cameAt = order.Select((part, at) => (part.Number, at)).ToDictionary(pair => pair.Number, pair => pair.at);
        var byNiche = parts.ToLookup(part => part.Niche);
        var chain = new Dictionary<string, int>();
        var saidOn = new Dictionary<string, DateOnly>();
        var all = new List<Supersession>();

        // The last to come first, so that a successor's own chain and date are known.
        foreach (var old in order.Where(part => part.IsDiscontinued).Reverse())
        {
            if (!draw.Chance(SupersededShare)) continue;
            var later = byNiche[old.Niche].Where(part => cameAt[part.Number] > cameAt[old.Number] && chain.GetValueOrDefault(part.Number) < LongestChain).ToList();
            var superseded = later.Where(part => chain.ContainsKey(part.Number)).ToList();
            var ofMaker = later.Where(part => part.Maker == old.Maker).ToList();
            var candidates = superseded.Count > 0 && draw.Chance(0.4) ? superseded : ofMaker.Count > 0 && draw.Chance(0.85) ? ofMaker : later.Where(part => !part.IsDiscontinued).ToList();
            if (candidates.Count == 0) continue;
            var next = draw.Pick(candidates);
            chain[old.Number] = chain.GetValueOrDefault(next.Number) + 1;
            saidOn[old.Number] = draw.Day(FirstDay, saidOn.GetValueOrDefault(next.Number, LastDay));
            all.Add(new(old.Number, next.Number, WhoSaid(old, next, draw), saidOn[old.Number]));
        }

        return all;
    }

    /// <summary>A maker speaks of its own parts; across makers somebody else had to find out.</summary>
    private static string WhoSaid(DemoPart old, DemoPart next, Draw draw) => old.Maker == next.Maker
        ? draw.Of(("maker", 8), ("counter", 1), ("technician", 1))
        : draw.Of(("counter", 6), ("technician", 4));
}
