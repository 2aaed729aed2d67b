using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Quantities;

/// <summary>By how much one pressure is above another; the air round a gauge does not count in it.</summary>
/// <param name="Value">The difference, as it was given.</param>
public readonly record struct PressureDifference(Pressure Value) : IHaveTextForm<PressureDifference>
{
    /// <inheritdoc/>
    public static TextForm<PressureDifference> Form { get; } = new OwnQuantityForm<PressureDifference, Pressure>(
        new(
            "a pressure difference", "300 psi", 0, 20_000,
            us: new(PressureUnit.PoundForcePerSquareInch, "psi", 1, false, "psid", "psig", "lb/in²", "lbf/in²", "lb", "lbs", "#"),
            si: new(PressureUnit.Kilopascal, "kPa", 1),
            new UnitText(PressureUnit.Bar, "bar", 2),
            new UnitText(PressureUnit.Megapascal, "MPa", 3)),
        pressure => new(pressure),
        difference => difference.Value);
}
