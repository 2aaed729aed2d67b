using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>What will be different with a new contactor.</summary>
internal static class ContactorDifferences
{
    /// <summary>What its coil takes; nothing where either coil's is not known, or they are alike.</summary>
    public static IReadOnlyList<Difference> Of(ContactorNeed need, ContactorSpec part) =>
        need.Plate.CoilVa is { } old && part.CoilVa is { } now && !old.Voltamperes.Equals(now.Voltamperes)
            ? [new("coilVa", "Coil VA, holding", "VA", Band.Exactly(old.Voltamperes), Band.Exactly(now.Voltamperes), Band.Exactly(now.Voltamperes / old.Voltamperes), ["the VA marked on both coils, each at its marked volts"])]
            : [];
}
