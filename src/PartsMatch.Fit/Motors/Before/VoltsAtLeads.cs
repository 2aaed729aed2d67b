using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Are there volts at its leads while it is called for?</summary>
public sealed class VoltsAtLeads() : ReadingRule<MotorCase>("Volts at the leads", MotorReadingSources.NoVolts)
{
    private static readonly InsulationToEarth Earth = new();

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one) => (one.HasVolts, one.Readings.CircuitCalls) switch
    {
        (null, _) => Ruling.Read("leadVolts", "Begin at the motor's leads: with the circuit called for, are there volts?"),
        (true, _) => Ruling.Good($"There are volts at its leads: {Shown(one)} V."),
        (false, null) => Ruling.CantTell($"There are no volts at its leads; whether it is called for is not known.").ThenRead("circuitCalls", "There are no volts at its leads. Is the fan called for: thermostat calling, no delay running?"),
        (false, false) => Ruling.CantTell($"There are no volts at its leads, and none are called for.").ThenRead("leadVolts", "Nothing calls for the fan. Make its control call for it, and measure at the leads again."),
        (false, true) => one.Readings.Control is { } control ? Dead(one, control) : Ruling.Bad($"It is called for and has no volts at its leads ({Shown(one)} V): it is not the motor. Look up the circuit.")
            .NotThePart().ThenRead("control", "Look up the circuit for what is open: fan-cycling switch, delay, contactor, fuse, pressure control."),
    };

    /// <summary>What opened may have been opened by the motor: a fuse by its winding, a high-pressure control by its bearings. Then those are read first.</summary>
    private static Ruling Dead(MotorCase one, CircuitState control)
    {
        var where = control switch
        {
            CircuitState.CyclingSwitchOpen => "the fan-cycling switch is open: below its cut-in that is right; above it the switch has failed",
            CircuitState.DelayRunning => "a delay keeps the fan off: wait for its end, and look at the delay if it does not end",
            CircuitState.ContactorOpen => "the contactor is open: look at its coil's volts, and at its contacts",
            CircuitState.FuseBlown => "a fuse or breaker is open: find out what opened it before it is closed again",
            CircuitState.HighPressureTripped => "the high-pressure control tripped: find out why (dirty coil, another fan, overcharge) before it is set back",
            CircuitState.LowPressureOpen => "the low-pressure control is open: look at the charge and the suction side",
            _ => "all controls are said to be closed: look for an open wire, a loose terminal or an open neutral",
        };
        var ruling = Ruling.Bad($"It is called for and has no volts at its leads ({Shown(one)} V): {where}.");
        return control switch
        {
            CircuitState.FuseBlown when !one.IsElectronic && Earth.Judge(one) is not { Verdict: ReadingVerdict.Good } => ruling.ThenRead("insulationToEarth", "A fuse or breaker opened: measure the winding to earth before it is closed again."),
            CircuitState.FuseBlown when !one.IsElectronic && !Windings.AreGood(one) => Windings.Await(one, ruling, "A fuse or breaker opened: measure the windings before it is closed again."),
            CircuitState.HighPressureTripped when one.Readings.SpinsFreely is null => ruling.ThenRead("spinsFreely", "A seized condenser fan trips the high-pressure control: turn it by hand, power off."),
            _ => ruling.NotThePart(),
        };
    }

    private static string Shown(MotorCase one) => string.Join(", ", one.Volts.Select(volts => FormattableString.Invariant($"{volts:0.#}")));
}
