using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Coils;

/// <summary>What is there to drive a coil: what was measured, or else what the old one was made for, of which one is there.</summary>
/// <param name="Volts">Volts; null where not measured.</param>
/// <param name="Hertz">Frequency; null where not known, and for direct current.</param>
/// <param name="Current">What kind; null where not known.</param>
/// <param name="Old">The voltages of the old one's coil; empty where they are not known.</param>
internal readonly record struct CoilSupply(double? Volts, double? Hertz, CoilCurrent? Current, Sequence<CoilMade> Old)
{
    /// <summary>Whether the volts are those that the old one is marked for, by which they may have been taken.</summary>
    public bool AreAsMarked { get; init; }

    /// <summary>The mains of the world, Hz: a coil for both takes any.</summary>
    private static readonly double[] Mains = [50, 60];

    /// <summary>Whether a coil of one or several voltages takes the volts; null where that is not known.</summary>
    /// <remarks>By the old one's marking it does where it takes whatever that was marked for, and does not where it takes nothing that could be fed to it.</remarks>
    public bool? Feeds(Sequence<CoilMade> coil, CoilWindow window)
    {
        if (coil.Count == 0) return null;
        if (Volts is { } volts) return coil.Any(one => window.Of(one).Holds(volts));
        if (Old.Count == 0) return null;
        if (Old.All(old => coil.Any(one => window.Of(one).Holds(old.Low) && window.Of(one).Holds(old.High)))) return true;
        return Old.Any(old => coil.Any(one => window.Of(one).Shared(window.Of(old)) is not null)) ? null : false;
    }

    /// <summary>Whether a coil is made for the current, and for its frequency; null where that is not known. One for any mains is so only where it is known that no direct current is there.</summary>
    public bool? Suits(CoilMade coil, CoilWindow window)
    {
        if (coil.IsForOtherThan(Current)) return false;
        if (coil.Current == CoilCurrent.Direct) return Current is null ? null : true;
        if (Current == CoilCurrent.Direct || coil.Hertz.Count == 0) return null;
        if (Hertz is { } hertz) return IsFor(coil, hertz, window);
        if (Current == CoilCurrent.Alternating && TakesAnyMains(coil, window)) return true;
        if (Old.Count == 0 || Old[0].Hertz.Count == 0) return null;
        if (Old[0].Hertz.All(old => IsFor(coil, old, window))) return true;
        return Old[0].Hertz.Any(old => IsFor(coil, old, window)) ? null : false;
    }

    /// <summary>Whether a coil is for any mains, so that of alternating current no frequency has to be known.</summary>
    public static bool TakesAnyMains(CoilMade coil, CoilWindow window) => Array.TrueForAll(Mains, mains => IsFor(coil, mains, window));

    /// <summary>Both: whether a coil runs there; null where that is not known.</summary>
    public bool? Runs(Sequence<CoilMade> coil, CoilWindow window) => (Feeds(coil, window), coil.Count == 0 ? null : Suits(coil[0], window)) switch
    {
        (false, _) or (_, false) => false,
        (true, true) => true,
        _ => null,
    };

    private static bool IsFor(CoilMade coil, double hertz, CoilWindow window)
    {
        foreach (var made in coil.Hertz.AsSpan())
        {
            if (Within.AtMost(Math.Abs(made - hertz) / made, window.HertzOff)) return true;
        }

        return false;
    }
}
