using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Engine;

/// <summary>What is known of all parts whose facets begin alike: their fit at best, and how likely any of them may show to be.</summary>
internal interface IPrefix
{
    /// <summary>Takes one more facet onto the first so many.</summary>
    /// <returns>The fit at best; <see cref="PartFit.DoesntFit"/> when no such part fits.</returns>
    PartFit Enter(int depth, int aspect, int code);

    /// <summary>Takes what belongs to one part alone onto all its facets, one depth beyond them.</summary>
    /// <param name="depth">How many facets there are.</param>
    /// <param name="place">The part's place.</param>
    /// <returns>The fit at best.</returns>
    PartFit EnterPart(int depth, int place);

    /// <summary>What is known of the first so many facets, to be taken up again.</summary>
    Begun At(int depth);

    /// <summary>Takes up so many facets again; false when what was known does not tell enough, and they must be entered once more.</summary>
    bool TakeUp(int depth, Begun known);

    /// <summary>Whether a part that begins with so many facets may still show so many percent: false only when none does.</summary>
    bool MayShow(int depth, int percent);

    /// <summary>The percent that a part with these facets and no further penalty shows.</summary>
    int PercentAt(int depth);
}

/// <summary>What is known of parts that begin alike, in short.</summary>
/// <param name="Fit">Their fit at best.</param>
/// <param name="Sum">What was taken from their score, where one sum tells it.</param>
/// <param name="Kept">Where <see cref="KeptSums"/> has more of it; null where nothing is kept.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct Begun(PartFit Fit, Score Sum, int? Kept = null);
