using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using UnitsNet;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Has its run capacitor the µF that the plate asks for?</summary>
/// <remarks>Within 6 % of the plate's, or of the marking of the one that is there where the plate is silent. A motor that spins free and only hums most often lacks it.</remarks>
public sealed class CapacitorUnderLoad() : ReadingRule<MotorCase>("Run capacitor", CapacitorReadingSources.CapacitorUnderLoad)
{
    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        var asked = Asked(one.Need);
        var readings = Measured(one.Readings);
        if (readings.Judge(asked, MeasuredCapacitor.UsualPercent, Hertz(one.Need)) is { } ruling)
        {
            return ruling.Verdict == ReadingVerdict.Bad ? ruling.NotThePart()
                : ruling is { Verdict: ReadingVerdict.CantTell, Asks: null } && asked is null ? ruling.ThenRead("runCapacitor", "Read the µF on the motor's plate: the capacitor is judged by it.", Side.Plate)
                : ruling;
        }

        return one is { HasCapacitor: not false, HasVolts: true, IsElectronic: false, IsStalled: true, Readings.SpinsFreely: true }
            ? Ruling.Read("capacitorMicrofarads", "It stands still with current in it and spins free: power off, discharge its run capacitor through a resistor, and measure its µF. If the motor has none, say so on the plate: none.")
            : null;
    }

    /// <summary>What was read at a motor's run capacitor.</summary>
    internal static MeasuredCapacitor Measured(MotorReadings readings) => new(readings.CapacitorMicrofarads, readings.CapacitorVolts, readings.CapacitorAmps);

    /// <summary>The µF that the motor needs: its plate's; else what the one there is marked with.</summary>
    internal static double? Asked(MotorNeed need) =>
        (FanSection.AskedBy(need.Plate) ?? FanSection.Of(need.Site.CapacitorThere))?.Microfarads;

    /// <summary>The supply's frequency; the plate's where it has only one; null when neither is known.</summary>
    internal static double? Hertz(MotorNeed need) => (need.Site.SupplyFrequency ?? (need.Plate.Frequency is { Count: 1 } one ? one[0] : (Frequency?)null))?.Hertz;
}
