using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>What is read at a defrost timer: the old one before it is condemned, the new one after the swap. Null was not read.</summary>
public sealed record DefrostTimerReadings : Readings
{
    private const string Clockwork = "Clock";
    private const string ByHand = "Advanced by hand into defrost";
    private const string Running = "Through a defrost";

    /// <summary>Volts at the clock.</summary>
    [Field("Volts at the clock", "At its clock terminals.", Group = Clockwork, Tool = Tool.Meter, Example = "232 V")]
    public Measured<ElectricPotential>? ClockVoltsThere { get; init; }

    /// <summary>Whether the clock turns.</summary>
    [Field("Clock turns", "Mark the dial against its pointer, and look again after a quarter of an hour.", Group = Clockwork)]
    public bool? ClockTurns { get; init; }

    /// <summary>Whether the time of day is set.</summary>
    [Field("Time of day set", "Whether the dial shows the time there is.", Group = Clockwork)]
    public bool? TimeOfDaySet { get; init; }

    /// <summary>Starts set.</summary>
    [Field("Starts set", "Defrosts a day that it is now set to.", Group = Clockwork, Example = "4")]
    public int? StartsSet { get; init; }

    /// <summary>Fail-safe set.</summary>
    [Field("Fail-safe set", "Minutes that it is now set to.", Group = Clockwork, Example = "45 min")]
    public DefrostMinutes? FailSafeSet { get; init; }

    /// <summary>Whether the heater contact closes.</summary>
    [Field("Heater contact closes", "By volts at the heater terminal, as it is advanced by hand.", Group = ByHand)]
    public bool? HeaterContactCloses { get; init; }

    /// <summary>Volts before the heater contact.</summary>
    [Field("Volts before the heater contact", "In defrost, at the common that feeds it, against the heaters' other line: with none there its terminal is dead however well it closes.", Group = ByHand, Tool = Tool.Meter, Example = "238 V")]
    public Measured<ElectricPotential>? CommonVolts { get; init; }

    /// <summary>Whether the volts before the heater contact stand under a load.</summary>
    [Field("Heater contact's feed stands under a lamp", "Whether the volts before the heater contact stay with a lamp for the line's volts across them, or a meter of few ohms: stray ones break down, those of a bad feed stay.", Group = ByHand, Tool = Tool.Meter)]
    public bool? CommonVoltsStand { get; init; }

    /// <summary>Whether the fan contact opens.</summary>
    [Field("Fan contact opens", "By no volts at the fan terminal, in defrost.", Group = ByHand)]
    public bool? FanContactOpens { get; init; }

    /// <summary>Whether nothing could throw it back into cooling as it was advanced.</summary>
    [Field("Kept from being released", "Whether nothing could end the defrost as it was advanced and its contacts were read: the coil frosted, well below its end temperature, and without volts at its release terminal; or, where no bellows in it feel the pressure, no wire on that terminal. Power off and proved dead before the wire comes off.", Group = ByHand, Tool = Tool.Meter)]
    public bool? KeptFromRelease { get; init; }

    /// <summary>Volts across closed contacts.</summary>
    [Field("Volts across a closed contact", "From common to the terminal it feeds, under load.", Group = ByHand, Tool = Tool.Meter, Example = "0.1 V")]
    public Measured<ElectricPotential>? DropVolts { get; init; }

    /// <summary>Volts at the release coil.</summary>
    [Field("Volts at the release coil", "With the temperature switch closed, in defrost.", Group = ByHand, Tool = Tool.Meter, Example = "232 V")]
    public Measured<ElectricPotential>? ReleaseVoltsThere { get; init; }

    /// <summary>Whether the release coil pulls.</summary>
    [Field("Release coil pulls", "Whether it ends the defrost as it gets its volts.", Group = ByHand)]
    public bool? ReleasePulls { get; init; }

    /// <summary>Heater amps.</summary>
    [Field("Heater amps", "In a line of the heaters, in defrost.", Group = Running, Tool = Tool.Meter, Example = "21.3 A")]
    public Measured<ElectricCurrent>? HeaterAmpsThere { get; init; }

    /// <summary>How long the defrost took.</summary>
    [Field("Defrost took", "From heaters on to heaters off.", Group = Running, Example = "22 min")]
    public DefrostMinutes? DefrostTook { get; init; }

    /// <summary>Whether the fans stand still in defrost.</summary>
    [Field("Fans off in defrost", "Whether they stand still while the heaters are on.", Group = Running)]
    public bool? FansOff { get; init; }

    /// <summary>Whether the fans start after the delay.</summary>
    [Field("Fans start after the delay", "Not at once: when the coil is cold again.", Group = Running)]
    public bool? FansStartAfterDelay { get; init; }

    /// <summary>Whether the next defrost was seen.</summary>
    [Field("Next defrost seen through", "That it starts by itself, ends by itself, and cools again.", Group = Running)]
    public bool? SeenThrough { get; init; }
}
