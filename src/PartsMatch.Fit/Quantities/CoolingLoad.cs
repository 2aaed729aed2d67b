using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Quantities;

/// <summary>Heat that a refrigerant takes up in an evaporator; one ton is 12 000 Btu/h, 3516.85 W.</summary>
/// <param name="Value">The load, as it was given.</param>
public readonly record struct CoolingLoad(Power Value) : IHaveTextForm<CoolingLoad>
{
    /// <inheritdoc/>
    public static TextForm<CoolingLoad> Form { get; } = new OwnQuantityForm<CoolingLoad, Power>(
        new(
            "a cooling load", "3 tons", 0.01, 10_000,
            us: new(PowerUnit.TonOfRefrigeration, "tons", 3, Fractions: true, "ton", "TR", "T.R.", "RT", "t"),
            si: new(PowerUnit.Kilowatt, "kW", 2),
            new UnitText(PowerUnit.BritishThermalUnitPerHour, "Btu/h", 0, false, "BTUH", "BTU/HR", "BTU"),
            new UnitText(PowerUnit.Watt, "W", 0)),
        power => new(power),
        load => load.Value);

    /// <summary>The load in W.</summary>
    public double Watts => (double)Value.Watts;
}
