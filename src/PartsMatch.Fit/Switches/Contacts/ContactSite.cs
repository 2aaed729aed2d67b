using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What contacts are to switch where they are put in. What stands on one contact adds up, each kind by itself. Null is unknown.</summary>
public abstract record ContactSite : Site
{
    private const string Switched = "On the contact";
    private const string Around = "Round it";

    /// <summary>The kinds of load.</summary>
    [Field("What is on it", "Compressor, motors, heaters, coils: all that the contact switches.", Group = Switched)]
    public Choices<ContactLoad>? Loads { get; init; }

    /// <summary>Volts that it switches.</summary>
    [Field("Volts switched", "Line to line, or line to neutral where one line is switched.", Group = Switched, Tool = Tool.Meter, Example = "240 V")]
    public ElectricPotential? LoadVolts { get; init; }

    /// <summary>Phases of what it switches.</summary>
    [Field("Phases switched", "Single-phase or three-phase.", Group = Switched)]
    public Phases? LoadPhase { get; init; }

    /// <summary>What kind of current it switches.</summary>
    [Field("Current switched", "AC, as nearly everything is; DC of coils and motors behind a rectifier, a battery or an electronic control.", Group = Switched)]
    public CoilCurrent? LoadCurrent { get; init; }

    /// <summary>Amps of the motors.</summary>
    [Field("Motors' amps", "Full-load over locked-rotor amps of each motor's plate, with a plus between: 14/73 + 2 x 1.4/7 A. Sums will do: 16.8/87 A.", Group = Switched)]
    public MotorLoads? Motors { get; init; }

    /// <summary>Horsepower of the motors.</summary>
    [Field("Motors' horsepower", "All motors together, where their plates give horsepower.", Group = Switched, Example = "5 hp")]
    public Power? MotorPower { get; init; }

    /// <summary>Amps of the heaters.</summary>
    [Field("Heaters' amps", "All heaters together, in a line.", Group = Switched, Example = "25 A")]
    public ElectricCurrent? HeaterAmps { get; init; }

    /// <summary>Power of the heaters.</summary>
    [Field("Heaters' power", "All heaters together, where the amps are not known.", Group = Switched, Example = "6 kW")]
    public Power? HeaterPower { get; init; }

    /// <summary>The heaters' own volts.</summary>
    [Field("Heaters' own volts", "On their plate, beside their power: at other volts they take other amps.", Group = Switched, Example = "240 V")]
    public ElectricPotential? HeaterOwnVolts { get; init; }

    /// <summary>VA of the coils.</summary>
    [Field("Coils' VA", "All coils that it switches together, holding (sealed) VA.", Group = Switched, Example = "24 VA")]
    public ElectricApparentPower? CoilsVa { get; init; }

    /// <summary>VA of the coils as they pull in.</summary>
    [Field("Coils' inrush VA", "The same as they pull in; about ten times the holding VA.", Group = Switched, Example = "240 VA")]
    public ElectricApparentPower? CoilsInrushVa { get; init; }

    /// <summary>Refrigerant.</summary>
    [Field("Refrigerant", "On the unit's plate: one that burns allows no contacts that spark.", Group = Around)]
    public Refrigerant? Refrigerant { get; init; }

    /// <summary>Hazard.</summary>
    [Field("Hazard", "Flammable refrigerant in the same space, or a classified area; none where the refrigerant burns, but cannot reach it.", Group = Around)]
    public Hazard? Hazard { get; init; }

    /// <summary>The volts that a kind of load is switched at: one figure for all, unless the kinds hang on contacts of their own.</summary>
    /// <param name="load">The kind of load.</param>
    public virtual SwitchedVolts VoltsOf(ContactLoad load) => new("loadVolts", LoadVolts);

    /// <summary>Whether a kind of load is there though nobody named its amount, by what is known of the wiring: then it is asked for even where the old part was not marked for it.</summary>
    /// <param name="load">The kind of load.</param>
    /// <returns>Null where nothing tells.</returns>
    public virtual bool? IsWiredFor(ContactLoad load) => null;
}

/// <summary>Volts that a contact switches, and where they stand.</summary>
/// <param name="Field">The site's field of them.</param>
/// <param name="Volts">The volts; null when not known.</param>
public readonly record struct SwitchedVolts(string Field, ElectricPotential? Volts)
{
    /// <summary>The volts in V, as facets are held against.</summary>
    internal double? Figure => Rounded.Volts(Volts);
}
