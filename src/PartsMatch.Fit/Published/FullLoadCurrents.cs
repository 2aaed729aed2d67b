using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Published;

/// <summary>A full-load current of the National Electrical Code.</summary>
/// <param name="Phases">Phases of the motor.</param>
/// <param name="Power">Its horsepower.</param>
/// <param name="Volts">Its marked volts.</param>
/// <param name="Amps">The current.</param>
/// <param name="Source">The table.</param>
public sealed record FullLoadCurrent(Phases Phases, Power Power, ElectricPotential Volts, ElectricCurrent Amps, Source Source);

/// <summary>NFPA 70 tables 430.248 (single-phase) and 430.250 (three-phase): what sizes wire and fuse. For fan motors of low or several speeds the marked current counts instead (430.6).</summary>
public static class FullLoadCurrents
{
    /// <summary>All cells of both tables.</summary>
    public static IReadOnlyList<FullLoadCurrent> All { get; } =
    [
        .. Cells("nec-430-248", Phases.Single, 115, 200, 208, 230),
        .. Cells("nec-430-250", Phases.Three, 200, 208, 230, 460, 575),
    ];

    private static IEnumerable<FullLoadCurrent> Cells(string table, Phases phases, params int[] volts) =>
        from row in PublishedTable.Read(table)
        from volt in volts
        select new FullLoadCurrent(
            phases,
            QuantityForms.Power.Read(row.Text("hp") + " hp").Value,
            ElectricPotential.FromVolts(volt),
            ElectricCurrent.FromAmperes(row.Needed(FormattableString.Invariant($"amps_{volt}V"))),
            row.Source);
}
