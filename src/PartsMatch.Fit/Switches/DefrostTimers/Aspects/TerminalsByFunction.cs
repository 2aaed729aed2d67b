using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>A terminal, as facets hold it.</summary>
/// <param name="Function">What it is there for.</param>
/// <param name="Mark">What stands beside it, letter by letter.</param>
public readonly record struct TerminalFigures(TerminalFunction Function, Sequence<char> Mark);

/// <summary>What the terminals read of a timer.</summary>
/// <param name="Terminals">All of them; empty when not known.</param>
public readonly record struct TimerTerminalsFacet(Sequence<TerminalFigures> Terminals);

/// <summary>Do the wires go back to the numbers that they came from?</summary>
/// <remarks>Where every terminal in use bears the same mark, they do; else, and where marks are not known, they are mapped by function: a change.</remarks>
public sealed class TerminalsByFunction() : Aspect<DefrostTimerSpec, DefrostTimerSite, TimerTerminalsFacet>("Terminals", isDeciding: false, DefrostTimerSources.TimerTerminals, new(0.2, 0.5, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["terminals"], []);

    /// <inheritdoc/>
    public override TimerTerminalsFacet Read(DefrostTimerSpec part) => new(part.Terminals is null ? [] : [.. part.Terminals.Select(one => new TerminalFigures(one.Function, [.. one.Mark]))]);

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, TimerTerminalsFacet facet)
    {
        if (need.Plate.Terminals is not { } old || facet.Terminals.Count == 0) return Finding.MeetsWith([Map("common, heater, fans, compressor, release")], $"How the terminals of one of the two are marked is not known.");
        return old.All(one => MarkOf(one.Function, facet) == one.Mark)
            ? Finding.Meets($"Its terminals are marked as the old one's: {TerminalMap.Form.Write(old)}.")
            : Finding.MeetsWith([Map(new Moves(old, facet))], $"Its terminals are marked otherwise than the old one's: {TerminalMap.Form.Write(old)}.");
    }

    private static Change Map(object how) => new(DefrostTimerChanges.MapTerminals, $"map terminals by function: {how}") { Kit = [new($"wire markers")] };

    private static string? MarkOf(TerminalFunction function, TimerTerminalsFacet facet)
    {
        foreach (var one in facet.Terminals.AsSpan())
        {
            if (one.Function == function) return new([.. one.Mark]);
        }

        return null;
    }

    /// <summary>Where each wire goes; formed only when it is shown.</summary>
    private readonly record struct Moves(TerminalMap Old, TimerTerminalsFacet Facet)
    {
        public override string ToString()
        {
            var facet = Facet;
            return string.Join(", ", Old.Select(one => $"{new Spelt<TerminalFunction>(one.Function)} from {one.Mark} to {MarkOf(one.Function, facet) ?? "where its diagram says"}"));
        }
    }
}
