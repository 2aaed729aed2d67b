using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Does it turn freely by hand with the power off?</summary>
/// <remarks>A blade that rubs on its ring binds a good motor as well, so the bearings are condemned only where it is known to be clear.</remarks>
public sealed class ShaftByHand() : ReadingRule<MotorCase>("Turning by hand", MotorReadingSources.Binds)
{
    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one) => one.Readings.SpinsFreely switch
    {
        true => Ruling.Good($"It turns freely by hand.", $"turns without dragging or grinding"),
        false when one.Readings.BladeClear == false => Ruling.Bad($"It binds by hand, but the blade touches its ring or guard: set the blade free first, then try the shaft again.", $"turns without dragging or grinding").NotThePart(),
        false when one.Readings.BladeClear is null => Ruling.Bad($"It binds by hand with the power off: its bearings have failed, or something drags on the blade.", $"turns without dragging or grinding")
            .ThenRead("bladeClear", "It binds by hand. Look at the blade all round: does it clear its ring and guard, and does nothing else drag on it? Only then it is the bearings."),
        false => Ruling.Bad($"It binds by hand with the power off, and its blade is clear: its bearings have failed.", $"turns without dragging or grinding").ThePartHasFailed(),
        null when one is { HasVolts: true, IsStalled: true, HasLegWithoutCurrent: false } =>
            Ruling.Read("spinsFreely", $"It has current and stands still. Power off and locked out, turn it by hand: if it binds, it is the bearings; if it spins free, {(one.IsElectronic ? "its command and its electronics come" : one.HasCapacitor == false ? "the windings come" : "the capacitor comes")} next."),
        null when one is { HasVolts: false, Readings.Control: CircuitState.HighPressureTripped } =>
            Ruling.Read("spinsFreely", "The high-pressure control tripped, and a seized condenser fan trips it. Power off and locked out, turn the fan by hand."),
        null => null,
    };
}
