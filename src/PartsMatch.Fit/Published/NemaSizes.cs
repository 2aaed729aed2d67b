using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Published;

/// <summary>What a size of contactor carries at some volts.</summary>
/// <param name="Size">00, 0, 1, 1P, 2, 3.</param>
/// <param name="Continuous">Amps that it carries all day.</param>
/// <param name="Phases">Phases of the motor.</param>
/// <param name="Volts">The motor's volts.</param>
/// <param name="Power">The most horsepower: full-voltage start, limited plugging and jogging.</param>
/// <param name="Source">The table.</param>
public sealed record NemaSizeRating(string Size, ElectricCurrent Continuous, Phases Phases, ElectricPotential Volts, Power Power, Source Source);

/// <summary>Sizes of contactors: NEMA ICS 2 tables 2-4-1 (three-phase) and 2-4-2 (single-phase).</summary>
public static class NemaSizes
{
    private static readonly EnumForm<Phases> PhasesForm = new();

    /// <summary>All cells.</summary>
    public static IReadOnlyList<NemaSizeRating> All { get; } = [.. PublishedTable.Read("nema-contactor-sizes").Select(row => new NemaSizeRating(
        row.Text("size"),
        ElectricCurrent.FromAmperes(row.Needed("continuous_A")),
        PhasesForm.Read(row.Text("phases")).Value,
        ElectricPotential.FromVolts(row.Needed("volts")),
        QuantityForms.Power.Read(row.Text("hp") + " hp").Value,
        row.Source))];

    /// <summary>The rows of a size at a number of phases, by rising volts; none for a size that the table does not rate so.</summary>
    /// <param name="size">The size, such as 1P.</param>
    /// <param name="phases">Phases of the motor.</param>
    public static IReadOnlyList<NemaSizeRating> Of(string size, Phases phases) => [.. All.Where(row => row.Size == size && row.Phases == phases)];

    /// <summary>Amps that a size carries all day; null for a size that the table lacks.</summary>
    /// <param name="size">The size, such as 1P.</param>
    public static ElectricCurrent? Continuous(string size) => All.FirstOrDefault(row => row.Size == size)?.Continuous;
}
