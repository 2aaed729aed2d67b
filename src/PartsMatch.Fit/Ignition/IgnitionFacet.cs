using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Ignition;

/// <summary>What is read of a part that could set something alight.</summary>
/// <param name="Contacts">Open, sealed or none; null when not known.</param>
/// <param name="IsOrdinary">Whether it is marked for ordinary places alone.</param>
/// <param name="A2L">Whether it is marked for A2L, or for A3, which burns more readily (ASHRAE 34, from memory).</param>
/// <param name="A3">Whether it is marked for A3.</param>
/// <param name="DivisionTwo">Whether it is marked for class I division 2, or for division 1, which is stricter.</param>
/// <param name="DivisionOne">Whether it is marked for class I division 1.</param>
public readonly record struct IgnitionFacet(ContactEnclosure? Contacts, bool IsOrdinary, bool A2L, bool A3, bool DivisionTwo, bool DivisionOne)
{
    /// <summary>What it is for a part.</summary>
    /// <param name="contacts">Its contacts; null when not known.</param>
    /// <param name="marks">Its marks; null when not known.</param>
    internal static IgnitionFacet Of(ContactEnclosure? contacts, Choices<HazardMarking>? marks)
    {
        bool Has(HazardMarking marking) => marks?.Contains(marking) == true;
        return new(
            contacts,
            marks?.All(marking => marking == HazardMarking.Ordinary) == true,
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
