using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the hazard reads of a motor.</summary>
/// <param name="IsMarked">Whether it is marked for any place, ordinary ones included.</param>
/// <param name="MildlyFlammable">Whether it is marked for A2L, or for A3, which burns more readily (ASHRAE 34, from memory).</param>
/// <param name="Flammable">Whether it is marked for A3.</param>
/// <param name="DivisionTwo">Whether it is marked for class I division 2, or for division 1, which is stricter (NFPA 70 501, from memory).</param>
/// <param name="DivisionOne">Whether it is marked for class I division 1.</param>
/// <param name="OpenSwitch">Whether a start switch sparks in an open shell.</param>
public readonly record struct HazardFacet(bool IsMarked, bool MildlyFlammable, bool Flammable, bool DivisionTwo, bool DivisionOne, bool OpenSwitch)
{
    /// <summary>Whether it is marked for a hazard.</summary>
    public bool Covers(Hazard hazard) => hazard switch
    {
        Hazard.A2L => MildlyFlammable,
        Hazard.A3 => Flammable,
        Hazard.ClassOneDivisionTwo => DivisionTwo,
        Hazard.ClassOneDivisionOne => DivisionOne,
        _ => true,
    };
}

/// <summary>Is the motor marked for what could burn in its place?</summary>
/// <remarks>
/// Marked for it meets, unmarked is unknown, marked for ordinary places or for something less fails, and so does an open start switch, whatever is marked.
/// Where nobody said anything of a hazard, only an old motor that was marked for one asks for the same again. Beside any other it is taken for an ordinary place, which the finding says:
/// so are nearly all, and a reading nobody took must not leave every part open.
/// </remarks>
public sealed class HazardousPlace() : Aspect<MotorSpec, MotorSite, HazardFacet>("Hazard", isDeciding: true, CircuitSources.Hazard, new(0.5, 0, 1))
{
    private static readonly Hazard[] All = Enum.GetValues<Hazard>();

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["hazards", "enclosure"], ["hazard"]);

    /// <inheritdoc/>
    public override HazardFacet Read(MotorSpec part) => Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, HazardFacet facet) => need.Site.Hazard switch
    {
        Hazard.None => Finding.Meets($"Nothing there can burn: it needs no marking."),
        { } hazard => InHazard(facet, hazard),
        null => AsTheOldOne(need.OnceOfPlate(static plate => Of(plate)), facet),
    };

    private static Finding InHazard(HazardFacet facet, Hazard hazard)
    {
        if (facet.OpenSwitch) return Finding.Fails($"{Place(hazard)} allows nothing that sparks, and this motor's start switch sits in an open shell.");
        if (facet.Covers(hazard)) return Finding.Meets($"{Place(hazard)} needs a motor marked for it, and it is.");
        return facet.IsMarked
            ? Finding.Fails($"{Place(hazard)} needs a motor marked for it, and this one is marked for other places only.")
            : Finding.Unknown(Side.Part, "hazards", $"{Place(hazard)} needs a motor marked for it; how this one is marked is not given.");
    }

    private static Finding AsTheOldOne(HazardFacet old, HazardFacet facet) =>
        Array.Exists(All, hazard => hazard != Hazard.None && old.Covers(hazard) && !facet.Covers(hazard))
            ? Finding.Unknown(Side.Site, "hazard", $"The old motor was marked for a place where something could burn, and this one is not marked for the same.")
            : Finding.Meets($"Taken for an ordinary place, since nothing says otherwise: no hazard is named, and this motor is marked for all that the old one was.");

    private static HazardFacet Of(MotorSpec motor)
    {
        bool Has(HazardMarking marking) => motor.Hazards?.Contains(marking) == true;
        return new(
            motor.Hazards is not null,
            Has(HazardMarking.A2L) || Has(HazardMarking.A3),
            Has(HazardMarking.A3),
            Has(HazardMarking.ClassOneDivisionTwo) || Has(HazardMarking.ClassOneDivisionOne),
            Has(HazardMarking.ClassOneDivisionOne),
            MotorKinds.HasStartSwitch(motor.Type) && motor.Enclosure is (Enclosure.OpenDripProof or Enclosure.OpenAirOver));
    }

    private static string Place(Hazard hazard) => hazard switch
    {
        Hazard.A2L => "A mildly flammable refrigerant (A2L)",
        Hazard.A3 => "A flammable refrigerant (A3)",
        Hazard.ClassOneDivisionTwo => "A class I division 2 area",
        _ => "A class I division 1 area",
    };
}
