namespace PartsMatch.Ranking.Engine;

/// <summary>Where a part stands. The default is a part that a snapshot does not know.</summary>
internal enum Standing : byte
{
    /// <summary>Not in the catalogue.</summary>
    Absent,

    /// <summary>Its number resolves, and it is never offered.</summary>
    Retired,

    /// <summary>Made no more: it can be had only where one is at hand.</summary>
    Discontinued,

    /// <summary>Made.</summary>
    Made,
}

/// <summary>What a snapshot knows of a part beside its facets: one word a part.</summary>
internal readonly record struct PartState
{
    private const int StandingBits = 2;

    private readonly int packed;

    /// <summary>Says it.</summary>
    /// <param name="standing">Where it stands.</param>
    /// <param name="place">Its row; any other row of the same part is out of date. −1 when it has none, because it is not offered. Under 2²⁹.</param>
    public PartState(Standing standing, int place) => packed = (place << StandingBits) | (int)standing;

    /// <summary>Where it stands.</summary>
    public Standing Standing => (Standing)(packed & ((1 << StandingBits) - 1));

    /// <summary>Its row; −1 when it has none. Of an absent part it tells nothing.</summary>
    public int Place => packed >> StandingBits;

    /// <summary>Whether the part is offered.</summary>
    public bool IsOffered => Standing >= Standing.Discontinued;

    /// <summary>The same part in another row.</summary>
    public PartState In(int place) => new(Standing, place);
}
