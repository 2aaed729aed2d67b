using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a valve's listing.</summary>
/// <param name="IsListed">Whether it is listed for use beside refrigerants that burn; null where not given.</param>
public readonly record struct ListingFacet(bool? IsListed);

/// <summary>May it sit beside a refrigerant that burns?</summary>
/// <remarks>A solenoid valve has no contacts: with an A2L or A3 refrigerant one that is listed meets, of one that does not say the listing is to be checked, one that is said not to be fails.</remarks>
public sealed class BesideFlammable() : Aspect<SolenoidValveSpec, SolenoidValveSite, ListingFacet>("Flammable refrigerant", isDeciding: false, SolenoidValveSources.Flammable, new(0, 0.2, 0.2))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["listedForFlammable"], ["refrigerant"]);

    /// <inheritdoc/>
    public override ListingFacet Read(SolenoidValveSpec part) => new(part.ListedForFlammable);

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, ListingFacet facet) => (need.Site.Refrigerant, facet.IsListed) switch
    {
        (null, true) => Finding.Meets($"It is listed for refrigerants that burn."),
        (null, _) => Finding.Meets($"What may burn there is told by the refrigerant, which is asked for by itself."),
        ({ IsFlammable: false } calm, _) => Finding.Meets($"{calm.Name} is of class {calm.SafetyClass} and does not burn."),
        ({ } burns, false) => Finding.Fails($"{burns.Name} is of class {burns.SafetyClass} and burns; it is not listed for such a refrigerant."),
        ({ } burns, true) => Minding(Finding.Meets($"{burns.Name} is of class {burns.SafetyClass} and burns; it is listed for such a refrigerant."), burns),
        ({ } burns, null) => Minding(Finding.MeetsWith([new(SolenoidValveChanges.CheckListing, $"see that valve and coil are listed for {burns.Name}, class {burns.SafetyClass}")], $"{burns.Name} is of class {burns.SafetyClass} and burns; the valve has no contacts, but its coil has to be listed for it, and that is not given."), burns),
    };

    private static Finding Minding(Finding finding, Physics.Refrigerant burns) => finding with
    {
        CautionWords = SafeSteps.BurnsWords(burns),
        CautionAt = Stage.MakeSafe,
    };
}
