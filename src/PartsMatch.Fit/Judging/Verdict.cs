namespace PartsMatch.Fit.Judging;

/// <summary>One aspect's answer about one part.</summary>
public enum Verdict
{
    /// <summary>The part meets it as it is.</summary>
    Meets,

    /// <summary>The part meets it once something is changed or checked.</summary>
    MeetsWithChanges,

    /// <summary>Something that decides it is not known.</summary>
    Unknown,

    /// <summary>The part does not meet it, and no change would help.</summary>
    Fails,
}

/// <summary>Whether a part does the job, all aspects together.</summary>
public enum PartFit
{
    /// <summary>Nothing need be changed.</summary>
    DropIn,

    /// <summary>It fits once something is changed or checked.</summary>
    FitsWithChanges,

    /// <summary>A deciding aspect is unknown.</summary>
    CantTellYet,

    /// <summary>An aspect fails.</summary>
    DoesntFit,
}

/// <summary>Whose field is missing when an aspect is unknown.</summary>
public enum Side
{
    /// <summary>The old part's plate: a reading to take.</summary>
    Plate,

    /// <summary>The site: a reading to take.</summary>
    Site,

    /// <summary>The candidate: ask the counter.</summary>
    Part,
}
