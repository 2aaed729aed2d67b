using UnitsNet;

namespace PartsMatch.Fit.Valves.ExpansionValves.Proof;

/// <summary>An expansion valve and what was read at it.</summary>
/// <param name="Need">The old one and its place.</param>
/// <param name="Readings">The readings.</param>
/// <param name="New">The new one; null before the swap.</param>
public sealed record ExpansionValveCase(ExpansionNeed Need, ExpansionValveReadings Readings, ExpansionValveSpec? New = null)
{
    /// <summary>Superheat in K: read as such, or pipe temperature less the dew temperature at the suction pressure; null where it was not read, or the refrigerant has no curve.</summary>
    internal double? Superheat =>
        Readings.Superheat is { } read ? read.Kelvins
        : Readings is { SuctionPressure: { } pressure, BulbTemperature: { } pipe } && Need.Site.Refrigerant?.SaturationAtGauge(pressure, Readings.Altitude ?? Length.Zero) is { } saturation ? pipe.Kelvins - saturation.Dew.Kelvins
        : null;

    /// <summary>Whether its bulb is in place, and it has clear liquid and the coil its air: without these a good valve looks like a bad one.</summary>
    internal bool HasWhatItNeeds => Readings is { BulbInPlace: true, ClearLiquid: true, CoilHasAir: true };

    /// <summary>Whether what a superheat would be worked out from is there but the refrigerant.</summary>
    internal bool LacksRefrigerant => Readings is { Superheat: null, SuctionPressure: not null, BulbTemperature: not null } && Need.Site.Refrigerant is not { HasCurve: true };

    /// <summary>A superheat at it in words, with the altitude that stands in where it was worked out from a gauge and none was given.</summary>
    internal string Words(double kelvins) => FormattableString.Invariant($"{kelvins * 1.8:0.#;−0.#;0} °F ({kelvins:0.#;−0.#;0} K){(Readings is { Superheat: null, Altitude: null } ? ", taken at sea level (higher up it is more)" : string.Empty)}");
}
