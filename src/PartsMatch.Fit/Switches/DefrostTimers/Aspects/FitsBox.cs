using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>What the box reads of a timer.</summary>
/// <param name="Body">In its own box, or without; null when not known.</param>
/// <param name="Pattern">The pattern of its box; empty when not known.</param>
public readonly record struct TimerBoxFacet(TimerBody? Body, Sequence<char> Pattern);

/// <summary>Does it go where the old one sits?</summary>
/// <remarks>A mechanism goes into a box of its own pattern; a box is brought for another, and a timer in its own box of another pattern is put up anew: changes.</remarks>
public sealed class FitsBox() : Aspect<DefrostTimerSpec, DefrostTimerSite, TimerBoxFacet>("Box", isDeciding: false, DefrostTimerSources.BoxOfTimer, new(0.2, 0.6, 0.4))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["body", "boxPattern"], []);

    /// <inheritdoc/>
    public override TimerBoxFacet Read(DefrostTimerSpec part) => new(part.Body, PatternOf(part));

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, TimerBoxFacet facet)
    {
        if (facet.Body is not { } body) return Finding.Unknown(Side.Part, "body", $"Whether it comes in a box is not known.");
        var old = need.Once(static need => new OldBox(PatternOf(need.Plate))).Pattern;
        var isSame = old.Count > 0 && old.Equals(facet.Pattern);
        if (isSame) return Finding.Meets($"Its box is of pattern {Text(old)}, as the old one's{(body == TimerBody.Mechanism ? ": the mechanism goes into it" : string.Empty)}.");
        if (body == TimerBody.Boxed) return Finding.MeetsWith([new(DefrostTimerChanges.PutUpBox, $"put up its own box in place of the old one's") { Kit = [new($"screws and conduit connectors for its box")] }], $"It comes in its own box, of another pattern than the old one's or of one that is not known.");
        if (old.Count == 0) return Finding.Unknown(Side.Plate, "boxPattern", $"It is a mechanism without a box; the pattern of the old one's box is not known.");
        return facet.Pattern.Count == 0
            ? Finding.Unknown(Side.Part, "boxPattern", $"It is a mechanism without a box; whether it goes into one of pattern {Text(old)} is not known.")
            : Finding.MeetsWith([new(DefrostTimerChanges.PutUpBox, $"put up a box of pattern {Text(facet.Pattern)} for it: it does not go into the old one's, of pattern {Text(old)}") { Kit = [new($"box of pattern {Text(facet.Pattern)}"), new($"screws and conduit connectors for its box")] }], $"It is a mechanism for boxes of pattern {Text(facet.Pattern)}; the old one's is of pattern {Text(old)}.");
    }

    private static Sequence<char> PatternOf(DefrostTimerSpec spec) => spec.BoxPattern is { } pattern ? [.. pattern.Where(char.IsLetterOrDigit).Select(char.ToUpperInvariant)] : [];

    private static string Text(Sequence<char> pattern) => new([.. pattern]);

    private sealed record OldBox(Sequence<char> Pattern);
}
