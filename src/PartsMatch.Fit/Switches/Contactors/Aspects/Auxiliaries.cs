using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What auxiliary contacts read of a contactor.</summary>
/// <param name="Open">How many close as it pulls in; null when not known.</param>
/// <param name="Closed">How many open; null when not known.</param>
/// <param name="TakesMore">Whether some can be added; null when not known.</param>
public readonly record struct AuxiliariesFacet(int? Open, int? Closed, bool? TakesMore);

/// <summary>Has the contactor an auxiliary contact for each one in use?</summary>
/// <remarks>Those that lack are added where it takes a block: a change. Where it takes none it fails. Where nobody said which are in use, as many as the old one has are enough; fewer may still be.</remarks>
public sealed class Auxiliaries() : Aspect<ContactorSpec, ContactorSite, AuxiliariesFacet>("Auxiliary contacts", isDeciding: false, ContactorSources.Auxiliaries, new(0.3, 0.5, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["auxiliaries", "takesAuxiliaries"], ["auxiliariesUsed"]);

    /// <inheritdoc/>
    public override AuxiliariesFacet Read(ContactorSpec part) => new(part.Auxiliaries?.Open, part.Auxiliaries?.Closed, part.TakesAuxiliaries);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, AuxiliariesFacet facet)
    {
        if (need.Site.AuxiliariesUsed is not { } used) return AgainstOld(need.Plate.Auxiliaries, facet);
        if (used == AuxiliaryContacts.None) return Finding.Meets($"No auxiliary contact is in use.");
        if (facet is not { Open: { } open, Closed: { } closed }) return Finding.Unknown(Side.Part, "auxiliaries", $"{new Written(used)} are in use; whether it has them is not known.");
        var (lacksOpen, lacksClosed) = (Math.Max(0, used.Open - open), Math.Max(0, used.Closed - closed));
        if (lacksOpen + lacksClosed == 0) return Finding.Meets($"{new Written(used)} are in use; it has {new Written(new(open, closed))}.");
        var lacking = new Written(new(lacksOpen, lacksClosed));
        return facet.TakesMore switch
        {
            true => Finding.MeetsWith([new(ContactorChanges.AddAuxiliaries, $"add an auxiliary block of {lacking}") { Kit = [new($"auxiliary contact block for it, {lacking}")] }], $"{new Written(used)} are in use; it lacks {lacking}, and takes a block."),
            false => Finding.Fails($"{new Written(used)} are in use; it lacks {lacking}, and takes no block."),
            null => Finding.Unknown(Side.Part, "takesAuxiliaries", $"{new Written(used)} are in use; it lacks {lacking}, and whether it takes a block is not known."),
        };
    }

    private static Finding AgainstOld(AuxiliaryContacts? old, AuxiliariesFacet facet)
    {
        if (old is null) return Finding.Unknown(Side.Site, "auxiliariesUsed", $"Which auxiliary contacts are in use is not known.");
        if (old == AuxiliaryContacts.None) return Finding.Meets($"The old one has no auxiliary contact that could be in use.");
        if (facet is not { Open: { } open, Closed: { } closed }) return Finding.Unknown(Side.Part, "auxiliaries", $"The old one has {new Written(old)}; whether this one has them is not known.");
        return open >= old.Open && closed >= old.Closed
            ? Finding.Meets($"The old one has {new Written(old)}, this one {new Written(new(open, closed))}.")
            : Finding.Unknown(Side.Site, "auxiliariesUsed", $"The old one has {new Written(old)}, this one {new Written(new(open, closed))}; which are in use is not known.");
    }

    private readonly record struct Written(AuxiliaryContacts Contacts)
    {
        public override string ToString() => AuxiliaryContacts.Form.Write(Contacts);
    }
}
