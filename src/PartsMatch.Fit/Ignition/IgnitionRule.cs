using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Ignition;

/// <summary>Is a part no source of ignition where something could burn? The one rule for switches, and for valves with coils.</summary>
/// <remarks>
/// Open contacts fail where anything could burn, whatever is marked; a marking for the place meets, one for ordinary places alone fails; sealed contacts, or none, are a check of the listing beside flammable refrigerant, and in a classified area need the marking; what is not marked is unknown.
/// A refrigerant that burns is such a hazard, unless it is said that it cannot reach the part.
/// Where nobody said anything of a hazard, an old part that was marked or sealed asks for the same again; marks for flammable refrigerants are of no matter beside one that does not burn. Beside any other it is taken for an ordinary place, which the finding says:
/// so are nearly all, and a reading nobody took must not leave every part open.
/// </remarks>
internal static class IgnitionRule
{
    private static readonly Hazard[] All = [.. Enum.GetValues<Hazard>().Where(hazard => hazard != Hazard.None)];

    /// <summary>The finding.</summary>
    /// <param name="old">The old part.</param>
    /// <param name="part">The new one.</param>
    /// <param name="said">What was said of the place, or follows from its refrigerant; null for nothing.</param>
    /// <param name="refrigerant">What is there; null when not known.</param>
    public static Finding Judge(IgnitionFacet old, IgnitionFacet part, Hazard? said, Refrigerant? refrigerant) => BurningRefrigerant.Strictest(said, refrigerant) switch
    {
        Hazard.None => Finding.Meets($"Nothing there can burn: it needs no marking, and contacts may be open."),
        { } hazard => InHazard(part, hazard),
        null when refrigerant is { IsFlammable: true } burns => AsTheOldOne(old, part, All) with
        {
            CautionWords = $"{burns.Name} burns (class {burns.SafetyClass}): whether its room is a classified area, which allows no open contacts, stands in the building's papers.",
        },
        null => AsTheOldOne(old, part, refrigerant is null ? All : [Hazard.ClassOneDivisionTwo, Hazard.ClassOneDivisionOne]),
    };

    private static Finding InHazard(IgnitionFacet facet, Hazard hazard) => facet.Contacts switch
    {
        ContactEnclosure.Open => Finding.Fails($"{Place(hazard)} allows no open contacts: they are a source of ignition."),
        _ when facet.IsOrdinary => Finding.Fails($"{Place(hazard)} needs a part marked for it, and this one is marked for ordinary places alone."),
        _ when facet.Covers(hazard) => Finding.Meets($"{Place(hazard)} needs a part marked for it, and it is."),
        ContactEnclosure.Sealed or ContactEnclosure.SolidState when hazard is Hazard.A2L or Hazard.A3 => Finding.MeetsWith(
            [new(IgnitionChanges.CheckListing, $"see by its listing that it is no source of ignition beside {(hazard == Hazard.A3 ? "an A3" : "an A2L")} refrigerant")],
            $"{Place(hazard)} allows {(facet.Contacts == ContactEnclosure.Sealed ? "sealed contacts" : "parts without contacts")}, by their listing."),
        ContactEnclosure.Sealed or ContactEnclosure.SolidState => Finding.Unknown(Side.Part, "hazards", $"{Place(hazard)} needs a part marked for it; how this one is marked is not given."),
        _ => Finding.Unknown(Side.Part, "contacts", $"{Place(hazard)} allows no open contacts; whether this one's are sealed is not known."),
    };

    private static Finding AsTheOldOne(IgnitionFacet old, IgnitionFacet facet, Hazard[] asked)
    {
        if (Array.Exists(asked, hazard => old.Covers(hazard) && !facet.Covers(hazard))) return Finding.Unknown(Side.Site, "hazard", $"The old part was marked for a place where something could burn, and this one is not marked for the same.");
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
