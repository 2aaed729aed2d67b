using PartsMatch.Fit.Valves.ExpansionValves;

namespace PartsMatch.Demo.Valves.ExpansionValves;

/// <summary>A charge with the refrigerant it is for, its range, and the conditions that makers print capacities for. The conditions are invented; each entry carries its own.</summary>
/// <param name="Refrigerants">What it is made for.</param>
/// <param name="RatedWith">What it is rated with.</param>
/// <param name="Charge">What the bulb is filled with.</param>
/// <param name="From">Coldest evaporating temperature, °F.</param>
/// <param name="To">Warmest evaporating temperature, °F.</param>
/// <param name="Limit">Pressure limit, °F; null where there is none.</param>
/// <param name="RatedAt">Evaporating temperature of the rating, °F.</param>
/// <param name="RatedDrop">Drop of the rating, psi.</param>
/// <param name="Share">How many entries it gets.</param>
public sealed record ExpansionValveLine(string Refrigerants, string RatedWith, BulbCharge Charge, int From, int To, int? Limit, int RatedAt, int RatedDrop, int Share)
{
    /// <summary>Nominal tons that makers step by.</summary>
    public static IReadOnlyList<double> Tons { get; } = [0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4, 5, 6, 8, 10, 12, 15];

    /// <summary>All lines.</summary>
    public static IReadOnlyList<ExpansionValveLine> All { get; } =
    [
        new("R-404A, R-507A", "R-404A", BulbCharge.Cross, -40, 50, null, 20, 100, 70),
        new("R-404A, R-507A", "R-404A", BulbCharge.PressureLimited, -40, 10, 0, -20, 100, 35),
        new("R-448A, R-449A", "R-448A", BulbCharge.Cross, -40, 50, null, 20, 100, 50),
        new("R-448A, R-449A", "R-448A", BulbCharge.PressureLimited, -40, 10, 5, -20, 100, 20),
        new("R-134a", "R-134a", BulbCharge.Liquid, -10, 50, null, 40, 60, 45),
        new("R-134a", "R-134a", BulbCharge.PressureLimited, 0, 50, 55, 40, 60, 20),
        new("R-22", "R-22", BulbCharge.Cross, -40, 50, null, 40, 100, 35),
        new("R-407C", "R-407C", BulbCharge.Cross, -20, 50, null, 40, 100, 20),
        new("R-410A", "R-410A", BulbCharge.PressureLimited, -10, 50, 60, 40, 160, 40),
        new("R-290", "R-290", BulbCharge.Adsorption, -40, 50, null, 20, 80, 15),
    ];
}
