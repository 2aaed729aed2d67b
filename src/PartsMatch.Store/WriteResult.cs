namespace PartsMatch.Store;

/// <summary>How a write ended. Anything but <see cref="Written"/> left the store as it was.</summary>
public abstract record WriteResult
{
    private WriteResult()
    {
    }

    /// <summary>It is on the disk. For a stock line, <paramref name="Part"/> is the part that the line belongs to.</summary>
    public sealed record Written(StoredPart Part) : WriteResult;

    /// <summary>The number is taken; numbers that differ only by dashes, spaces or case are the same.</summary>
    public sealed record AlreadyThere(StoredPart Present) : WriteResult;

    /// <summary>Someone else wrote since the version that this writer had read.</summary>
    public sealed record Conflict(StoredPart Present) : WriteResult;

    /// <summary>The part was retired before.</summary>
    public sealed record AlreadyRetired(StoredPart Present) : WriteResult;

    /// <summary>No part has the number.</summary>
    public sealed record NotThere(string Number) : WriteResult;

    /// <summary>The outcome is on the disk, now or from before.</summary>
    public sealed record Recorded(StoredOutcome Outcome) : WriteResult;

    /// <summary>The outcome's id is that of one that says something else.</summary>
    public sealed record OtherOutcome(StoredOutcome Present) : WriteResult;

    /// <summary>No outcome has the id of the one to be corrected.</summary>
    public sealed record NothingToCorrect(string Id) : WriteResult;

    /// <summary>The outcome to be corrected is of another kind of part.</summary>
    public sealed record OfOtherKind(StoredOutcome Present) : WriteResult;

    /// <summary>The outcome to be corrected was corrected before.</summary>
    public sealed record CorrectedBefore(StoredOutcome Present) : WriteResult;

    /// <summary>The number cannot be kept; <paramref name="Why"/> is a sentence for a person.</summary>
    public sealed record BadNumber(string Why) : WriteResult;
}
