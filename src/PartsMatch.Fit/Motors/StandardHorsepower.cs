using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Motors;

/// <summary>The horsepower that motors are made for: NEMA MG 1 10.32, and the subfractional ones of the fan trade (practice).</summary>
internal static class StandardHorsepower
{
    private static readonly double[] All =
    [
        .. from below in (int[])[60, 50, 40, 35, 30, 25, 20, 16, 15, 12, 10, 9, 8, 7, 6, 5, 4, 3, 2] select 1.0 / below,
        0.4, 0.6, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 75, 100, 125, 150, 200,
    ];

    /// <summary>Holds for powers of which each that is given in horsepower is one of them, within a hundredth.</summary>
    public static PlateLimit Limit { get; } = PlateLimit.Of<Figures<Power>>("power", "a horsepower that motors are made for", all => all.All(IsStandard));

    private static bool IsStandard(Power power) =>
        power.Unit != PowerUnit.ElectricalHorsepower || Array.Exists(All, standard => Within.Ratio((double)power.ElectricalHorsepower, standard, 1.01));
}
