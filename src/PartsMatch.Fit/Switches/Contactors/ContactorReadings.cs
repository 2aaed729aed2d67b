using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>What is read at a contactor or relay: the old one before it is condemned, the new one after the swap. Null was not read.</summary>
public sealed record ContactorReadings : Readings
{
    private const string Coil = "Coil";
    private const string Contacts = "Contacts";

    /// <summary>Whether it is called for.</summary>
    [Field("Circuit calls for it", "Whether thermostat, pressure controls and delays call for it.", Group = Coil)]
    public bool? CircuitCalls { get; init; }

    /// <summary>Volts at the coil.</summary>
    [Field("Volts at the coil", "On the coil's own terminals, while it is called for.", Group = Coil, Example = "25.2 V")]
    public Measured<ElectricPotential>? CoilVolts { get; init; }

    /// <summary>Whether it pulls in.</summary>
    [Field("Pulls in", "Whether the armature goes down, all the way.", Group = Coil)]
    public bool? PullsIn { get; init; }

    /// <summary>Whether it hums or chatters.</summary>
    [Field("Hums or chatters", "Whether it hums loudly or chatters while it is called for.", Group = Coil)]
    public bool? Chatters { get; init; }

    /// <summary>Ohms of the coil.</summary>
    [Field("Ohms of the coil", "Power off, wires off the coil.", Group = Coil, Example = "18 Ω")]
    public Ohms? CoilOhms { get; init; }

    /// <summary>Whether a contact is burnt.</summary>
    [Field("Contact or pole burnt", "Power off: a pole or terminal burnt, a contact melted or worn through; insects between them.", Group = Contacts)]
    public bool? IsBurnt { get; init; }

    /// <summary>Whether it stays in without its coil.</summary>
    [Field("Stays in", "Whether contacts stay closed though there are no volts at the coil, as normally closed ones are to.", Group = Contacts)]
    public bool? StaysIn { get; init; }

    /// <summary>Whether its poles follow the armature.</summary>
    [Field("Poles follow by hand", "Power off, wires off: whether each pole opens and closes, by its ohms, as the armature is pressed in by hand and let go. A normally closed one is open while it is pressed in; a shunt, which is always closed, is left out.", Group = Contacts)]
    public bool? PolesFollow { get; init; }

    /// <summary>Volts across each closed pole.</summary>
    [Field("Volts across each pole", "From line side to load side of each closed pole, under load.", Group = Contacts, Example = "0.1/0.2/0.1 V")]
    public Measured<ElectricPotential>? DropVolts { get; init; }

    /// <summary>Amps in each leg.</summary>
    [Field("Amps in each leg", "With a clamp meter, under load.", Group = Contacts, Example = "16.2/16.4/16.1 A")]
    public Measured<ElectricCurrent>? LegAmps { get; init; }

    /// <summary>Temperature of the hottest terminal.</summary>
    [Field("Hottest terminal", "After half an hour under load, with a thermometer.", Group = Contacts, Example = "60 °C")]
    public Temperature? TerminalTemperature { get; init; }

    /// <summary>Air round it.</summary>
    [Field("Air in the box", "In the control box, at the same time.", Group = Contacts, Example = "40 °C")]
    public Temperature? BoxAir { get; init; }
}
