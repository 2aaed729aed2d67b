using PartsMatch.Fit.Judging;

namespace PartsMatch.Learning;

/// <summary>What became of an installation.</summary>
public enum Result
{
    /// <summary>It went in as foreseen, and stayed.</summary>
    RightFirstTime,

    /// <summary>It stayed, but more had to be changed than was foreseen.</summary>
    Reworked,

    /// <summary>It came back: it did not do the job.</summary>
    CameBack,
}

/// <summary>What happened after a part was put in for a need.</summary>
/// <param name="Id">What tells it from others: outcomes of one day stand in the order of their ids.</param>
/// <param name="On">The day on which that was known.</param>
/// <param name="Place">Where: outcomes of one place are alike, and stand on one side when something is held out.</param>
/// <param name="Need">What was to be replaced, and where.</param>
/// <param name="Old">The number of the part whose place it took; empty where nobody knew it.</param>
/// <param name="PartNumber">The number of the part that was put in.</param>
/// <param name="Part">Its spec.</param>
/// <param name="Result">What became of it.</param>
/// <param name="IsInvented">Whether it is demo data, and happened nowhere.</param>
public sealed record Outcome(string Id, DateOnly On, string Place, Need Need, string Old, string PartNumber, Spec Part, Result Result, bool IsInvented = false);
