using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves;

/// <summary>What is read of a valve's oils.</summary>
/// <param name="IsListed">Whether it lists oils at all.</param>
/// <param name="Listed">Their places among all oils, rising.</param>
public readonly record struct OilFacet(bool IsListed, Sequence<int> Listed)
{
    /// <summary>What it is for a valve.</summary>
    /// <param name="oils">Those that it lists; null where not given.</param>
    internal static OilFacet Of(Choices<Oil>? oils) => new(oils is not null, oils is null ? default : [.. oils.Select(oil => (int)oil)]);
}

/// <summary>Is a valve listed for the oil that goes round with the refrigerant?</summary>
internal static class ValveOil
{
    /// <summary>Listed meets, not listed is unknown, for only its maker can say whether its seals bear it. Where the oil there is not known, one that lists all that the old one lists meets; where nothing was said of oils at all, none is asked for.</summary>
    /// <param name="facet">The part's.</param>
    /// <param name="there">The oil there; null where not known.</param>
    /// <param name="old">The old one's.</param>
    public static Finding Judge(OilFacet facet, Oil? there, OilFacet old)
    {
        if (there is { } oil)
        {
            if (!facet.IsListed) return Finding.Unknown(Side.Part, "oils", $"The oils that it is made for are not given; {new Spelt<Oil>(oil)} is there.");
            return facet.Listed.AsSpan().Contains((int)oil)
                ? Finding.Meets($"It is listed for {new Spelt<Oil>(oil)}.")
                : Finding.Unknown(Side.Part, "oils", $"It is not listed for {new Spelt<Oil>(oil)}: only its maker can say whether its seals bear it.") with { Shortfall = 1 };
        }

        if (!old.IsListed) return Finding.Meets($"Nothing says which oil is there.");
        if (!facet.IsListed) return Finding.Unknown(Side.Part, "oils", $"The oils that it is made for are not given; the old valve's were.");
        return Missing(facet, old) switch
        {
            0 => Finding.Meets($"It is listed for every oil that the old valve was listed for."),
            var missing when missing == old.Listed.Count => Finding.Unknown(Side.Part, "oils", $"It is listed for none of the oils that the old valve was listed for: only its maker can say whether its seals bear them.") with { Shortfall = 1 },
            _ => Finding.Unknown(Side.Site, "oil", $"It is listed for some of the oils that the old valve was listed for; which one is there is not known."),
        };
    }

    private static int Missing(OilFacet facet, OilFacet old)
    {
        var missing = 0;
        foreach (var oil in old.Listed.AsSpan())
        {
            if (!facet.Listed.AsSpan().Contains(oil)) missing++;
        }

        return missing;
    }

    /// <summary>The old valve lists one oil alone: that is the one there.</summary>
    /// <param name="oils">Those that it lists; null where not given.</param>
    public static IEnumerable<Deduction> Only(Choices<Oil>? oils)
    {
        if (oils is { Count: 1 } only) yield return new(Side.Site, "oil", Deducing.Text(only[0]), "the old valve's", ["oils"], ValveSources.AsTheOld);
    }

    /// <summary>An oil that the old valve does not list.</summary>
    /// <param name="oils">Those that it lists; null where not given.</param>
    /// <param name="there">The oil there; null where not known.</param>
    public static IEnumerable<Contradiction> Unlisted(Choices<Oil>? oils, Oil? there)
    {
        if (oils is not null && there is { } oil && !oils.Contains(oil)) yield return new(["oils"], $"The old valve lists {Deducing.Text(oils)}, and {Deducing.Text(oil)} is there: it was the wrong one, or the oil was changed since.", ValveSources.Oil) { SiteFields = ["oil"] };
    }
}
