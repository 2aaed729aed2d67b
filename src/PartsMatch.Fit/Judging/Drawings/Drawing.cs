using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging.Drawings;

/// <summary>Something that people would rather see than read: plain data, which a page turns into a picture. No page knows what a family draws.</summary>
/// <param name="Name">Its name at every edge, in camel case: torqueLines. Unique among the drawings of one sheet.</param>
/// <param name="Title">A few words for it.</param>
/// <param name="Words">What it shows, in a sentence or two with its figures, for whoever cannot see it.</param>
public abstract record Drawing(string Name, string Title, string Words)
{
    /// <summary>The same drawing in the units that were chosen; itself where all its units are the same in both systems (rpm, %, µF).</summary>
    /// <param name="units">The units.</param>
    public virtual Drawing In(Units units) => this;
}

/// <summary>What something in a drawing stands for; how that looks is the page's business.</summary>
public enum Role
{
    /// <summary>An outline.</summary>
    Ink,

    /// <summary>Something beside the matter.</summary>
    Soft,

    /// <summary>What the drawing is about.</summary>
    Strong,

    /// <summary>An edge that cannot be seen from there.</summary>
    Hidden,

    /// <summary>The old part.</summary>
    Old,

    /// <summary>The new part.</summary>
    New,

    /// <summary>What the part drives.</summary>
    Load,

    /// <summary>A limit.</summary>
    Limit,

    /// <summary>Where things are as they should be.</summary>
    Good,

    /// <summary>Where it cannot be told.</summary>
    Open,

    /// <summary>Where things are not as they should be.</summary>
    Bad,
}

/// <summary>A point; in a chart in its axes' units, in a sketch to the right and down from its upper left corner.</summary>
/// <param name="X">Along the horizontal.</param>
/// <param name="Y">Along the vertical.</param>
public readonly record struct Point(double X, double Y);
