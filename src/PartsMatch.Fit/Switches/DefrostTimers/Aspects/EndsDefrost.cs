using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>What the end of a defrost reads of a timer.</summary>
/// <param name="Ends">What may end it.</param>
/// <param name="AreAll">Whether nothing else may: not where a release solenoid is all that tells.</param>
public readonly record struct DefrostEndFacet(ChoiceSet<DefrostEnd> Ends, bool AreAll);

/// <summary>Does it end a defrost as it is ended there?</summary>
/// <remarks>
/// Time is what every fail-safe ends by, with nothing wired to the release: a change. Temperature and pressure are among what it takes, or it fails.
/// A pressure element feels the suction pressure whatever is wired: where something else ends the defrost, one that ends by pressure too is a check, and one that has no other end than pressure fails.
/// </remarks>
public sealed class EndsDefrost() : Aspect<DefrostTimerSpec, DefrostTimerSite, DefrostEndFacet>("End of defrost", isDeciding: true, DefrostTimerSources.EndedBy, new(0.3, 0.5, 1.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["endedBy"], ["endedThereBy"]) { Besides = ["releaseVolts"] };

    /// <inheritdoc/>
    public override DefrostEndFacet Read(DefrostTimerSpec part) => new(ChoiceSet<DefrostEnd>.Of(part.KnownEnds), part.EndedBy is not null);

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, DefrostEndFacet facet)
    {
        if (need.Site.EndedThereBy is { } end) return Against(end, facet);
        if (need.Plate.KnownEnds is not { } old) return Finding.Unknown(Side.Site, "endedThereBy", $"What ends a defrost there is not known.");
        if (facet.Ends.IsUnknown) return Finding.Unknown(Side.Part, "endedBy", $"The old one ended by {ChoiceSet<DefrostEnd>.Of(old)}; what ends it with this one is not known.");
        return old.All(facet.Ends.Has)
            ? Ends(old.Contains(DefrostEnd.Pressure), facet, $"It ends by {facet.Ends}, as the old one could.")
            : Finding.Unknown(Side.Site, "endedThereBy", $"It ends by {facet.Ends}, the old one by {ChoiceSet<DefrostEnd>.Of(old)}; which of these is used there is not known.");
    }

    private static Finding Against(DefrostEnd end, DefrostEndFacet facet)
    {
        if (facet.Ends.IsUnknown) return Finding.Unknown(Side.Part, "endedBy", $"A defrost is ended by {new Spelt<DefrostEnd>(end)} there; what ends it with this one is not known.");
        if (facet.Ends.Has(end)) return Ends(end == DefrostEnd.Pressure, facet, $"A defrost is ended by {new Spelt<DefrostEnd>(end)} there; this one ends by {facet.Ends}.");
        if (!facet.AreAll && end == DefrostEnd.Pressure) return Finding.Unknown(Side.Part, "endedBy", $"A defrost is ended by pressure there; this one has a release solenoid, and whether pressure ends it as well is not known.");
        return end == DefrostEnd.Time && !facet.Ends.Has(DefrostEnd.Pressure)
            ? Finding.MeetsWith([new(DefrostTimerChanges.LeaveRelease, $"leave its release without wire: the fail-safe ends each defrost, by time")], $"A defrost is ended by time there; this one ends by {facet.Ends}, and else by its fail-safe.")
            : Finding.Fails($"A defrost is ended by {new Spelt<DefrostEnd>(end)} there; this one ends by {facet.Ends} alone.");
    }

    /// <summary>It ends by what is wanted; one that feels pressure does so unasked.</summary>
    private static Finding Ends(bool isPressureWanted, DefrostEndFacet facet, Reason sentence) => isPressureWanted || !facet.Ends.Has(DefrostEnd.Pressure)
        ? Finding.Meets(sentence)
        : Finding.MeetsWith([new(DefrostTimerChanges.PutOutPressure, $"see by its diagram that its pressure element can be put out of use: it ends a defrost whatever is wired")], sentence);
}
