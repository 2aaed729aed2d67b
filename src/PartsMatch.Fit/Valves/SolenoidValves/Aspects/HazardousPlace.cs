using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a valve as a source of ignition.</summary>
/// <param name="Marks">Its marks, which are those of valve and coil as they come.</param>
/// <param name="Coils">Its coils, without their numbers.</param>
public readonly record struct CoiledIgnitionFacet(IgnitionFacet Marks, CoilFacet Coils);

/// <summary>Is the valve with its coil no source of ignition where something could burn?</summary>
/// <remarks>
/// It has no contacts, and goes by its marks: one for the place meets, for ordinary places alone fails, and where none is given its listing is to be checked beside an A2L or A3 refrigerant.
/// The mark is that of the valve with the coil that comes on it: where another one goes in, it is judged as unmarked, and that one's own is to be seen. Which one that is, is another question, unless its own would fail.
/// </remarks>
public sealed class HazardousPlace() : Aspect<SolenoidValveSpec, SolenoidValveSite, CoiledIgnitionFacet>("Hazard", isDeciding: true, IgnitionSources.Hazard, new(0.3, 0.2, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["hazards"], ["hazard", "refrigerant"])
    {
        Besides = ["furtherCoils", "coilVolts", "coilFrequency", "coilCurrent", "coilSupplyVolts", "coilSupplyFrequency", "coilSupplyCurrent"],
    };

    /// <inheritdoc/>
    public override CoiledIgnitionFacet Read(SolenoidValveSpec part) => new(Marks(part), CoilFacet.Unnumbered(part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils));

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, CoiledIgnitionFacet facet)
    {
        var possible = CoilGoingIn.Possible(facet.Coils, SolenoidCoils.Supply(need), SolenoidCoils.Window);
        var likeliest = With(possible[0]);
        return likeliest.Verdict != Verdict.Fails ? likeliest : OneVerdict.Of(possible.Select(With), () => WhichOne(CoilOnSupply.MissingOf(possible[0].Coil, SolenoidCoils.Supply(need), SolenoidCoils.Window, SolenoidCoils.Names)));

        Finding With(CoilChoice coil)
        {
            var found = IgnitionRule.Judge(Marks(need.Plate), coil.IsOwn ? facet.Marks : Unmarked, need.Site.Hazard, need.Site.Refrigerant);
            return coil.IsOwn || facet.Marks == Unmarked ? found : found.Verdict switch
            {
                Verdict.MeetsWithChanges => found.With([new(IgnitionChanges.CheckListing, $"see that the coil for {coil.Coil[0]} that goes in is marked for the place: the valve's mark is that of the coil that comes on it")]),
                Verdict.Unknown => found.Then($"The coil for {coil.Coil[0]} goes in, and the valve's mark is that of the coil that comes on it."),
                _ => found,
            };
        }
    }

    private static IgnitionFacet Unmarked { get; } = IgnitionFacet.Of(ContactEnclosure.SolidState, null);

    private static Finding WhichOne(Missing missing) => Finding.Unknown(missing.Side, missing.Field, $"Its mark for ordinary places is that of the valve with the coil that comes on it; which of its coils goes in is not known.");

    private static IgnitionFacet Marks(SolenoidValveSpec valve) => IgnitionFacet.Of(ContactEnclosure.SolidState, valve.Hazards);
}
