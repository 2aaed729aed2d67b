using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Coils;

/// <summary>Where the rules for all coils come from.</summary>
internal static class CoilSources
{
    /// <summary>What a transformer carries.</summary>
    public static Source Transformer { get; } = new("The VA of all coils on a transformer stay within its own; a coil for 100 V or more hangs on the line where no transformer is named", SourceStatus.Practice);
}
