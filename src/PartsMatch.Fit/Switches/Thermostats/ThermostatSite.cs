using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>What a thermostat will meet where it is put in. What is on the contact is, with three wires, on the one that ends the defrost; the fans hang on contacts of their own. Null is unknown.</summary>
public sealed record ThermostatSite : ContactSite
{
    private const string Setting = "Setting there";
    private const string Place = "At the bulb";
    private const string Fans = "On the fans' contacts";

    /// <summary>Where it is to open.</summary>
    [Field("Opens at, needed", "Where its contacts are to open: the temperature that is wanted, where it stops the cooling.", Group = Setting, Example = "35 °F")]
    public Temperature? CutOutNeeded { get; init; }

    /// <summary>Where it is to close.</summary>
    [Field("Closes at, needed", "Where they are to close; of no matter with manual reset.", Group = Setting, Example = "39 °F")]
    public Temperature? CutInNeeded { get; init; }

    /// <summary>Where the fans' contacts are to open.</summary>
    [Field("Fans open at, needed", "With three wires: where the fans' contacts are to open.", Group = Setting, Example = "45 °F")]
    public Temperature? FanCutOutNeeded { get; init; }

    /// <summary>Where the fans' contacts are to close.</summary>
    [Field("Fans close at, needed", "With three wires: where the fans' contacts are to close, so that the fans start.", Group = Setting, Example = "25 °F")]
    public Temperature? FanCutInNeeded { get; init; }

    /// <summary>Which sides are wired.</summary>
    [Field("Sides wired", "Of an old one with change-over contacts: which of its two sides have a wire.", Group = Setting)]
    public SidesWired? SidesWired { get; init; }

    /// <summary>What is wired to the old contacts.</summary>
    internal ThermostatAction? Wired => SidesWired switch
    {
        null => null,
        Contacts.SidesWired.OpensOnRise => ThermostatAction.OpensOnRise,
        Contacts.SidesWired.ClosesOnRise => ThermostatAction.ClosesOnRise,
        _ => ThermostatAction.ChangeOver,
    };

    /// <summary>The side of them that alone is wired; null where both are, or where nobody said.</summary>
    internal ThermostatAction? WiredSide => Wired == ThermostatAction.ChangeOver ? null : Wired;

    /// <summary>Highest temperature at the bulb.</summary>
    [Field("Defrost's peak", "Highest temperature that the bulb's place comes to during a defrost.", Group = Place, Example = "90 °F")]
    public Temperature? DefrostPeak { get; init; }

    /// <summary>Room for a bulb.</summary>
    [Field("Room for the bulb", "How long a bulb may be where it is held: the depth of its well, the straight pipe under its clamps, or the room in its holder.", Group = Place, Tool = Tool.Tape, Example = "5 in")]
    public Length? BulbRoom { get; init; }

    /// <summary>Capillary that is needed.</summary>
    [Field("Reach of the capillary", "Along the way that it is led, from the body to the bulb's place.", Group = Place, Tool = Tool.Tape, Example = "60 in")]
    public Length? CapillaryReach { get; init; }

    /// <summary>Amps of the fans.</summary>
    [Field("Fans' amps", "With three wires: full-load over locked-rotor amps of each fan on the fans' contacts, with a plus between: 2 x 1.4/7 A.", Group = Fans)]
    public MotorLoads? FanMotors { get; init; }

    /// <summary>Volts of the fans.</summary>
    [Field("Fans' volts", "With three wires: what the fans' contacts switch.", Group = Fans, Tool = Tool.Meter, Example = "208 V")]
    public ElectricPotential? FanVolts { get; init; }

    /// <summary>Amps of heaters on the fans' contacts.</summary>
    [Field("Fans' heater amps", "With three wires: of a heater that runs with the fans, such as one at the door.", Group = Fans, Example = "4 A")]
    public ElectricCurrent? FanHeaterAmps { get; init; }

    /// <summary>VA of a fan contactor's coil.</summary>
    [Field("Fan contactor's VA", "With three wires, where a contactor switches the fans: its coil's holding VA.", Group = Fans, Example = "9 VA")]
    public ElectricApparentPower? FanCoilsVa { get; init; }

    /// <summary>The same as it pulls in.</summary>
    [Field("Fan contactor's inrush VA", "The same as it pulls in; about ten times the holding VA.", Group = Fans, Example = "90 VA")]
    public ElectricApparentPower? FanCoilsInrushVa { get; init; }

    /// <summary>What the fans' contacts are to switch, as the site of a switch of their own: what is named of it is all.</summary>
    internal ThermostatSite FansContact
    {
        get
        {
            List<ContactLoad> named =
            [
                .. FanMotors is not null ? (ContactLoad[])[ContactLoad.Motor] : [],
                .. FanHeaterAmps is not null ? (ContactLoad[])[ContactLoad.Heater] : [],
                .. FanCoilsVa is not null || FanCoilsInrushVa is not null ? (ContactLoad[])[ContactLoad.Coil] : [],
            ];
            return this with
            {
                Loads = named.Count > 0 ? new(named) : null,
                LoadVolts = FanVolts,
                LoadPhase = null,
                Motors = FanMotors,
                MotorPower = null,
                HeaterAmps = FanHeaterAmps,
                HeaterPower = null,
                CoilsVa = FanCoilsVa,
                CoilsInrushVa = FanCoilsInrushVa,
            };
        }
    }
}
