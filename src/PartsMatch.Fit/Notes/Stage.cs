using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Notes;

/// <summary>The stages of a job, in working order.</summary>
public enum Stage
{
    /// <summary>Lock out, prove dead, discharge.</summary>
    [Words("make safe")]
    MakeSafe,

    /// <summary>See that it is the part that failed.</summary>
    [Words("prove that it is the part")]
    ProveThePart,

    /// <summary>Note what is there before it comes off.</summary>
    [Words("note what is there")]
    NoteWhatIsThere,

    /// <summary>Mend what killed the old one.</summary>
    [Words("mend first")]
    MendFirst,

    /// <summary>What is done to the new part before it goes in.</summary>
    [Words("on the bench")]
    Bench,

    /// <summary>Put it in its place.</summary>
    [Words("mount")]
    Mount,

    /// <summary>Connect it.</summary>
    [Words("wire")]
    Wire,

    /// <summary>Start it for a second, before anything is proved on it, and lock out again.</summary>
    [Words("first start")]
    FirstStart,

    /// <summary>Start it, and prove that it runs as it should.</summary>
    [Words("start and check")]
    StartAndCheck,

    /// <summary>Write down what was done.</summary>
    [Words("record")]
    Record,
}
