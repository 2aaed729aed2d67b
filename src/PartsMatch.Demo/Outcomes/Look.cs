namespace PartsMatch.Demo.Outcomes;

/// <summary>How much a field counts when people look for a part like another.</summary>
/// <param name="Weight">How much, where any field counts 1.</param>
/// <param name="Less">How many times as much where the new part's figure is less than the old one's: a shorter shaft is worse than a longer one.</param>
public sealed record Look(double Weight, double Less = 1)
{
    /// <summary>A field of which nothing is said.</summary>
    public static Look Usual { get; } = new(1);
}
