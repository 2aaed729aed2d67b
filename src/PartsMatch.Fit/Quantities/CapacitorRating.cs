using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>A run capacitor's marking, 5 µF 370 V, one of two sections, 45+5 µF 440 V, or the statement that there is none.</summary>
/// <param name="Capacitance">The only section, or the first of two as written; null when there is no capacitor.</param>
/// <param name="Volts">The marked AC volts; null when not known or when there is none.</param>
/// <param name="SecondSection">The second section of a two-section one, mostly the smaller; null otherwise.</param>
public sealed record CapacitorRating(ElectricCapacitance? Capacitance, ElectricPotential? Volts, ElectricCapacitance? SecondSection = null) : IHaveTextForm<CapacitorRating>
{
    /// <summary>No capacitor: known, not unknown.</summary>
    public static CapacitorRating None { get; } = new(null, null);

    /// <inheritdoc/>
    public static TextForm<CapacitorRating> Form { get; } = new CapacitorRatingForm();

    /// <summary>Whether it says that there is no capacitor.</summary>
    public bool IsNone => Capacitance is null;
}
