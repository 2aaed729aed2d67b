using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What the hazard reads of a switch.</summary>
/// <param name="Contacts">Open, sealed or none; null when not known.</param>
/// <param name="A2L">Whether it is marked for A2L, or for A3, which burns more readily (ASHRAE 34, from memory).</param>
/// <param name="A3">Whether it is marked for A3.</param>
/// <param name="DivisionTwo">Whether it is marked for class I division 2, or for division 1, which is stricter.</param>
/// <param name="DivisionOne">Whether it is marked for class I division 1.</param>
public readonly record struct IgnitionFacet(ContactEnclosure? Contacts, bool A2L, bool A3, bool DivisionTwo, bool DivisionOne)
{
    /// <summary>What it is for a part.</summary>
    internal static IgnitionFacet Of(ContactSpec part)
    {
        bool Has(HazardMarking marking) => part.Hazards?.Contains(marking) == true;
        return new(
            part.Contacts,
            Has(HazardMarking.A2L) || Has(HazardMarking.A3),
            Has(HazardMarking.A3),
            Has(HazardMarking.ClassOneDivisionTwo) || Has(HazardMarking.ClassOneDivisionOne),
            Has(HazardMarking.ClassOneDivisionOne));
    }

    /// <summary>Whether it is marked for a hazard.</summary>
    internal bool Covers(Hazard hazard) => hazard switch
    {
        Hazard.A2L => A2L,
        Hazard.A3 => A3,
        Hazard.ClassOneDivisionTwo => DivisionTwo,
        Hazard.ClassOneDivisionOne => DivisionOne,
        _ => true,
    };
}

/// <summary>Is the switch no source of ignition where something could burn?</summary>
/// <remarks>
/// Open contacts fail where anything could burn, whatever is marked; a marking for the place meets; sealed contacts, or none, are a check of the listing beside flammable refrigerant, and in a classified area need the marking; what is not marked is unknown. A refrigerant that burns is such a hazard, unless it is said that it cannot reach the switch.
/// Where nobody said anything of a hazard, an old part that was marked or sealed asks for the same again. Beside any other it is taken for an ordinary place, which the finding says:
/// so are nearly all, and a reading nobody took must not leave every part open.
/// </remarks>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
public abstract class HazardAspect<TSpec, TSite>() : Aspect<TSpec, TSite, IgnitionFacet>("Hazard", isDeciding: true, ContactSources.Hazard, new(0.3, 0.5, 1))
    where TSpec : ContactSpec
    where TSite : ContactSite
{
    private static readonly Hazard[] All = [.. Enum.GetValues<Hazard>().Where(hazard => hazard != Hazard.None)];

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["contacts", "hazards"], ["hazard", "refrigerant"]);

    /// <inheritdoc/>
    public override IgnitionFacet Read(TSpec part) => IgnitionFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(Need<TSpec, TSite> need, IgnitionFacet facet) => Strictest(need.Site) switch
    {
        Hazard.None => Finding.Meets($"Nothing there can burn: its contacts may be open."),
        { } hazard => InHazard(facet, hazard),
        null when need.Site.Refrigerant is { IsFlammable: true } burns => AsTheOldOne(IgnitionFacet.Of(need.Plate), facet) with
        {
            CautionWords = $"{burns.Name} burns (class {burns.SafetyClass}): whether its room is a classified area, which allows no open contacts, stands in the building's papers.",
        },
        null => AsTheOldOne(IgnitionFacet.Of(need.Plate), facet),
    };

    /// <summary>A propane unit that somebody calls mildly flammable is one that burns well. That nothing of it can reach the switch is another matter, and whoever says so is believed.</summary>
    private static Hazard? Strictest(TSite site) => ContactAgreement.IsUnderstated(site) ? Hazard.A3 : site.Hazard;

    private static Finding InHazard(IgnitionFacet facet, Hazard hazard) => facet.Contacts switch
    {
        ContactEnclosure.Open => Finding.Fails($"{Place(hazard)} allows no open contacts: they are a source of ignition."),
        _ when facet.Covers(hazard) => Finding.Meets($"{Place(hazard)} needs a part marked for it, and it is."),
        ContactEnclosure.Sealed or ContactEnclosure.SolidState when hazard is Hazard.A2L or Hazard.A3 => Finding.MeetsWith(
            [new(SwitchChanges.CheckListing, $"see by its listing that it is no source of ignition beside {(hazard == Hazard.A3 ? "an A3" : "an A2L")} refrigerant")],
            $"{Place(hazard)} allows {(facet.Contacts == ContactEnclosure.Sealed ? "sealed contacts" : "parts without contacts")}, by their listing."),
        ContactEnclosure.Sealed or ContactEnclosure.SolidState => Finding.Unknown(Side.Part, "hazards", $"{Place(hazard)} needs a part marked for it; how this one is marked is not given."),
        _ => Finding.Unknown(Side.Part, "contacts", $"{Place(hazard)} allows no open contacts; whether this one's are sealed is not known."),
    };

    private static Finding AsTheOldOne(IgnitionFacet old, IgnitionFacet facet)
    {
        if (Array.Exists(All, hazard => old.Covers(hazard) && !facet.Covers(hazard))) return Finding.Unknown(Side.Site, "hazard", $"The old part was marked for a place where something could burn, and this one is not marked for the same.");
        return old.Contacts is ContactEnclosure.Sealed or ContactEnclosure.SolidState && facet.Contacts is not (ContactEnclosure.Sealed or ContactEnclosure.SolidState)
            ? Finding.Unknown(Side.Site, "hazard", $"The old part had no open contacts, and this one's are not known to be sealed: whether something could burn there is not known.")
            : Finding.Meets($"Taken for an ordinary place, since nothing says otherwise: no hazard is named, and the old part was not sealed or marked for one without this one being so, too.");
    }

    private static string Place(Hazard hazard) => hazard switch
    {
        Hazard.A2L => "A mildly flammable refrigerant (A2L)",
        Hazard.A3 => "A flammable refrigerant (A3)",
        Hazard.ClassOneDivisionTwo => "A class I division 2 area",
        _ => "A class I division 1 area",
    };
}
