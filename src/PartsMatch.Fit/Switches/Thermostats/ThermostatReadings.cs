using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>What ended a defrost.</summary>
public enum DefrostEndedBy
{
    /// <summary>The switch, by the coil's temperature.</summary>
    [Words("temperature")]
    Temperature,

    /// <summary>The timer, by its fail-safe minutes.</summary>
    [Words("time")]
    Time,
}

/// <summary>What is read at a thermostat: the old one before it is condemned, the new one after the swap. Null was not read.</summary>
public sealed record ThermostatReadings : Readings
{
    private const string Now = "As it stands";
    private const string Moving = "With the temperature moving";
    private const string AfterDefrost = "After a defrost";

    /// <summary>Temperature at its bulb.</summary>
    [Field("Temperature at its bulb", "By a thermometer on the bulb or disc itself, once it has settled.", Group = Now, Example = "20 °F")]
    public Temperature? BulbTemperature { get; init; }

    /// <summary>Whether its contacts are closed.</summary>
    [Field("Contacts closed", "By ohms with the power off and a wire off, or no volts across them with it on. Of change-over contacts the side that is wired; where both are, the one that opens on rise of a fan delay or high limit, and else the one that closes on rise.", Group = Now)]
    public bool? IsClosed { get; init; }

    /// <summary>Whether the fans' contacts are closed.</summary>
    [Field("Fans' contacts closed", "With three wires: the same between common and the fans' wire.", Group = Now)]
    public bool? AreFansClosed { get; init; }

    /// <summary>Whether its bulb is in place.</summary>
    [Field("Bulb in place", "Whether bulb or disc sits where it belongs, tight, and in the air or on the tube that it is to feel.", Group = Now)]
    public bool? BulbInPlace { get; init; }

    /// <summary>Whether the box is cold.</summary>
    [Field("Box is cold", "Whether box and coil have come down to their temperature; no on a warm box, or right after a defrost.", Group = Now)]
    public bool? BoxIsCold { get; init; }

    /// <summary>Whether it stays closed once its button was pressed.</summary>
    [Field("Stays in after reset", "With manual reset: whether it stays closed after the button is pressed.", Group = Now)]
    public bool? HoldsAfterReset { get; init; }

    /// <summary>Volts across closed contacts.</summary>
    [Field("Volts across it", "Across its closed contacts, under load.", Group = Now, Example = "0.1 V")]
    public Measured<ElectricPotential>? DropVolts { get; init; }

    /// <summary>Where it opened.</summary>
    [Field("Opened at", "The thermometer at its bulb as it opened, the same contacts.", Group = Moving, Example = "35 °F")]
    public Temperature? OpenedAt { get; init; }

    /// <summary>Where it closed.</summary>
    [Field("Closed at", "The thermometer at its bulb as it closed, the same contacts.", Group = Moving, Example = "39 °F")]
    public Temperature? ClosedAt { get; init; }

    /// <summary>Whether the fans started.</summary>
    [Field("Fans started", "Whether the fans started by themselves after a defrost, once the coil was cold.", Group = AfterDefrost)]
    public bool? FansStarted { get; init; }

    /// <summary>What ended the defrost.</summary>
    [Field("Defrost ended by", "Whether its switch ended the defrost by temperature, or the timer by its time.", Group = AfterDefrost)]
    public DefrostEndedBy? DefrostEnded { get; init; }
}
