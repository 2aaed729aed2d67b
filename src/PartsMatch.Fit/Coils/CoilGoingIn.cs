using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Coils;

/// <summary>The coil that a part runs with where it is put in: its own, or another one that its body takes.</summary>
internal static class CoilGoingIn
{
    /// <summary>Every coil that may be the one, likeliest first: its own until that is known not to run there, and as long as it is not known to, those of its body that may; its own where none does.</summary>
    /// <remarks>Where none is known to run, its own stays among them: what fails with the others alone would else pass as soon as they are known not to run either.</remarks>
    /// <param name="coils">The part's coils.</param>
    /// <param name="supply">What is there.</param>
    /// <param name="window">How far its volts may be off.</param>
    public static IReadOnlyList<CoilChoice> Possible(CoilFacet coils, CoilSupply supply, CoilWindow window)
    {
        CoilChoice own = new(coils.Own, IsOwn: true);
        var ownRuns = supply.Runs(coils.Own, window);
        if (ownRuns == true) return [own];
        List<CoilChoice> right = [], open = [];
        foreach (var coil in coils.Further)
        {
            var runs = supply.Runs([coil], window);
            if (runs != false) (runs == true ? right : open).Add(new([coil], IsOwn: false));
            if (runs == true) break;
        }

        if (right.Count > 0) return ownRuns is null ? [own, .. right, .. open] : [.. right, .. open];
        return ownRuns is null ? [own, .. open] : [.. open, own];
    }

    /// <summary>What a question about a coil's power comes to, whichever coil it is.</summary>
    /// <param name="facet">What the part's coils take.</param>
    /// <param name="supply">What is there.</param>
    /// <param name="window">How far its volts may be off.</param>
    /// <param name="names">Where its fields stand.</param>
    /// <param name="judge">Judges one: what it is called in a sentence, and the VA that it takes.</param>
    public static Finding Judge(CoilPowerFacet facet, CoilSupply supply, CoilWindow window, CoilNames names, Func<CoilName, double, Finding> judge)
    {
        var possible = Possible(facet.Coils, supply, window);
        return OneVerdict.Of(
            possible.Select(one => one.IsOwn
                ? facet.Va is { } own ? judge(new(null), own) : Finding.Unknown(Side.Part, names.PartVa, $"The VA that its coil takes are not given.")
                : one.Coil[0].Va is { } va ? judge(new(one.Coil[0]), va) : Finding.Unknown(Side.Part, names.PartFurther, $"{new CoilName(one.Coil[0])} would go in; the VA that it takes are not given.")),
            () => WhichOne(CoilOnSupply.MissingOf(possible[0].Coil, supply, window, names)));
    }

    private static Finding WhichOne(Missing missing) => Finding.Unknown(missing.Side, missing.Field, $"Which of its coils goes in is not known, and so not what that takes.");
}

/// <summary>A coil that may go in.</summary>
/// <param name="Coil">Its voltages; empty where they are not given.</param>
/// <param name="IsOwn">Whether it is the one that comes on the part.</param>
internal readonly record struct CoilChoice(Sequence<CoilMade> Coil, bool IsOwn);

/// <summary>A coil at the beginning of a sentence; formed only when it is shown.</summary>
/// <param name="Other">The one that goes in instead of the part's own; null for that.</param>
internal readonly record struct CoilName(CoilMade? Other)
{
    /// <inheritdoc/>
    public override string ToString() => Other is { } coil ? $"Its coil for {coil}" : "Its coil";
}
