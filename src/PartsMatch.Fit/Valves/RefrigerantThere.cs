using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves;

/// <summary>The refrigerant where a valve goes in: the one that was read; as long as none was, the old valve's list stands for it.</summary>
internal static class RefrigerantThere
{
    /// <summary>
    /// By the refrigerant there. Where it is not known, one that does for every refrigerant of the old valve's list does what that one did, one that does for none of them does not, and one that does for some leaves it open.
    /// So does a list of several safety classes (ASHRAE 34): what else has to be minded hangs on which of them is there.
    /// </summary>
    /// <param name="there">What was read; null where not known.</param>
    /// <param name="old">What the old valve lists; null where not given.</param>
    /// <param name="with">The answer about one refrigerant.</param>
    public static Finding Judge(Refrigerant? there, RefrigerantList? old, Func<Refrigerant, Finding> with)
    {
        if (there is { } known) return with(known);
        if (old is not { Count: > 0 }) return Finding.Unknown(Side.Site, "refrigerant", $"The refrigerant there is not known.");
        var found = OneVerdict.Of(old.Select(with), () => Differs(old, with));
        if (found.Missing is [{ Side: Side.Site }]) return found;
        return found.Verdict == Verdict.Meets && !AreOfOneClass(old)
            ? Finding.Unknown(Side.Site, "refrigerant", $"The old valve lists {Deducing.Text(old)}, which are not of one safety class; which of them is there is not known.")
            : found.Then($"The same holds for all that the old valve lists, {Deducing.Text(old)}; which of them is there was not read.");
    }

    /// <summary>What may be there: what was read, or else all that the old valve lists, where they are of one safety class; none where neither tells.</summary>
    /// <param name="there">What was read; null where not known.</param>
    /// <param name="old">What the old valve lists; null where not given.</param>
    public static IEnumerable<Refrigerant> Possible(Refrigerant? there, RefrigerantList? old) =>
        there is { } known ? [known] : old is { Count: > 0 } && AreOfOneClass(old) ? old : [];

    /// <summary>The old valve lists one refrigerant alone: that is the one there.</summary>
    /// <param name="old">What it lists; null where not given.</param>
    public static IEnumerable<Deduction> Only(RefrigerantList? old)
    {
        if (old is { Count: 1 } only) yield return new(Side.Site, "refrigerant", only[0].Name, "the old valve's", ["refrigerants"], ValveSources.AsTheOld);
    }

    /// <summary>What is there burns, or all that the old valve lists does.</summary>
    /// <param name="there">What was read; null where not known.</param>
    /// <param name="old">What the old valve lists; null where not given.</param>
    public static IEnumerable<Deduction> Hazard(Refrigerant? there, RefrigerantList? old)
    {
        if (there is not null) return BurningRefrigerant.Hazard(there);
        return Possible(there, old).Take(1).SelectMany(BurningRefrigerant.Hazard).Select(one => one with { From = ["refrigerants"] });
    }

    private static bool AreOfOneClass(RefrigerantList old)
    {
        for (var at = 1; at < old.Count; at++)
        {
            if (old[at].SafetyClass != old[0].SafetyClass) return false;
        }

        return true;
    }

    private static Finding Differs(RefrigerantList old, Func<Refrigerant, Finding> with) =>
        Finding.Unknown(Side.Site, "refrigerant", $"The old valve lists {Deducing.Text(old)}, of which {Right(old, with)} known to be right for this one; which of them is there is not known.");

    private static string Right(RefrigerantList old, Func<Refrigerant, Finding> with)
    {
        var right = new RefrigerantList(old.Where(one => with(one).Verdict == Verdict.Meets));
        return right.Count switch
        {
            0 => "none is",
            1 => $"{right[0].Name} alone is",
            _ => $"{Deducing.Text(right)} alone are",
        };
    }
}
