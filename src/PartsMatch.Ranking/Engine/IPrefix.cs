using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>What is known of all parts whose facets begin alike: their fit at best, and how likely any of them may show to be.</summary>
internal interface IPrefix
{
    /// <summary>Takes one more facet onto the first so many.</summary>
    /// <returns>The fit at best; <see cref="PartFit.DoesntFit"/> when no such part fits.</returns>
    PartFit Enter(int depth, int aspect, int code);

    /// <summary>Whether a part that begins with so many facets may still show so many percent: false only when none does.</summary>
    bool MayShow(int depth, int percent);

    /// <summary>The percent that a part with these facets and no further penalty shows.</summary>
    int PercentAt(int depth);
}
