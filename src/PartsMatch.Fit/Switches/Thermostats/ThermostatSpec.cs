using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>
/// What a thermostat, fan-delay or defrost-end switch is: a plate, or a catalogue entry. One set of contact ratings stands for all its contacts, unless the fans' contacts of a switch with three wires have their own. Null is unknown.
/// </summary>
public sealed record ThermostatSpec : ContactSpec
{
    private const string Does = "What it does";
    private const string Setting = "Setting";
    private const string Body = "Bulb and body";
    private const string FansRatings = "Ratings of the fans' contacts";

    /// <summary>Its function.</summary>
    [Field("Function", "Box thermostat, fan delay, defrost end, both of these in one switch with three wires, or a limit.", Group = Does)]
    public ThermostatFunction? Function { get; init; }

    /// <summary>What its contacts do.</summary>
    [Field("Contacts do", "Open on rise, close on rise, or change over.", Group = Does)]
    public ThermostatAction? Action { get; init; }

    /// <summary>Reset.</summary>
    [Field("Reset", "Automatic, or manual with a button.", Group = Does)]
    public ContactReset? Reset { get; init; }

    /// <summary>Poles.</summary>
    [Field("Poles", "Contacts that move together.", Group = Does, Example = "1")]
    public int? Poles { get; init; }

    /// <summary>What is common.</summary>
    [Field("Common", "The terminal or lead that is common to both sides of change-over contacts.", Group = Does)]
    public CommonMark? Common { get; init; }

    /// <summary>Whether it can be set.</summary>
    [Field("Can be set", "Whether it has a knob or a setting screw; a disc has none.", Group = Setting)]
    public bool? IsAdjustable { get; init; }

    /// <summary>Temperatures that it can be set to.</summary>
    [Field("Range", "From the lowest to the highest setting.", Group = Setting)]
    public TemperatureSpan? Range { get; init; }

    /// <summary>Differentials that it can be set to.</summary>
    [Field("Differential", "Between opening and closing: from the least to the greatest, or the only one.", Group = Setting)]
    public TemperatureDifferenceSpan? Differential { get; init; }

    /// <summary>Where it opens.</summary>
    [Field("Opens at (cut-out)", "Where its contacts open, as set or as shipped; with three wires those that end the defrost.", Group = Setting, Example = "35 °F")]
    public Temperature? CutOut { get; init; }

    /// <summary>Where it closes.</summary>
    [Field("Closes at (cut-in)", "Where they close, as set or as shipped; with three wires those that end the defrost.", Group = Setting, Example = "39 °F")]
    public Temperature? CutIn { get; init; }

    /// <summary>Where the fans' contacts open.</summary>
    [Field("Fans open at", "With three wires: where the fans' contacts open as the coil warms.", Group = Setting, Example = "45 °F")]
    public Temperature? FanCutOut { get; init; }

    /// <summary>Where the fans' contacts close.</summary>
    [Field("Fans close at", "With three wires: where the fans' contacts close as the coil gets cold.", Group = Setting, Example = "25 °F")]
    public Temperature? FanCutIn { get; init; }

    /// <summary>What feels the temperature.</summary>
    [Field("Bulb", "Straight or coiled bulb, averaging capillary, or a disc that is strapped or clipped on.", Group = Body)]
    public BulbForm? Bulb { get; init; }

    /// <summary>Length of its bulb.</summary>
    [Field("Bulb length", "How long the bulb itself is, without its capillary; discs and averaging capillaries have none.", Group = Body, Tool = Tool.Tape, Example = "4 in")]
    public Length? BulbLength { get; init; }

    /// <summary>Length of its capillary.</summary>
    [Field("Capillary", "How long its capillary is, to the bulb.", Group = Body, Tool = Tool.Tape, Example = "72 in")]
    public Length? Capillary { get; init; }

    /// <summary>Highest temperature that its bulb bears.</summary>
    [Field("Highest at the bulb", "Highest temperature that its bulb or disc bears.", Group = Body, Example = "140 °F")]
    public Temperature? BulbMost { get; init; }

    /// <summary>How its wires go on.</summary>
    [Field("Terminals", "Leads, quick-connects, or screws.", Group = Body)]
    public ThermostatEnds? Terminals { get; init; }

    /// <summary>Volts that the fans' contacts are rated at.</summary>
    [Field("Fans' rated volts", "With three wires: volts that the fans' contacts are rated at, where they have ratings of their own.", Group = FansRatings, Example = "120 V")]
    public Figures<ElectricPotential>? FanRatedVolts { get; init; }

    /// <summary>Full-load amps of the fans' contacts at those volts.</summary>
    [Field("Fans' full-load amps", "With three wires: FLA of the fans' contacts, where they are not those of the other.", Group = FansRatings, Example = "10 A")]
    public Figures<ElectricCurrent>? FanFullLoadAmps { get; init; }

    /// <summary>Locked-rotor amps of the fans' contacts at those volts.</summary>
    [Field("Fans' locked-rotor amps", "With three wires: LRA of the fans' contacts, where they are not those of the other.", Group = FansRatings, Example = "60 A")]
    public Figures<ElectricCurrent>? FanLockedRotorAmps { get; init; }

    /// <summary>Resistive amps of the fans' contacts at those volts.</summary>
    [Field("Fans' resistive amps", "With three wires: of the fans' contacts, for a heater that runs with the fans; they are no motor amps.", Group = FansRatings, Example = "10 A")]
    public Figures<ElectricCurrent>? FanResistiveAmps { get; init; }

    /// <summary>Pilot duty of the fans' contacts.</summary>
    [Field("Fans' pilot duty", "With three wires: of the fans' contacts, for a fan contactor's coil.", Group = FansRatings)]
    public PilotDuty? FanPilotDuty { get; init; }

    /// <summary>Which way the contacts go whose temperatures are marked: of three wires those that end the defrost, which close on rise; null where it is not known, and where either side of change-over contacts may be meant.</summary>
    internal ThermostatAction? MarkedWay => (Function, Action) switch
    {
        (ThermostatFunction.FanDelayAndDefrostEnd, _) => ThermostatAction.ClosesOnRise,
        (_, ThermostatAction.ChangeOver) => null,
        (_, var action) => action,
    };

    /// <summary>Its fans' contacts as a switch of their own; null where they have no ratings of their own, so that one set stands for both. Contacts that are not alike share no rating for direct current, which is given once.</summary>
    internal ThermostatSpec? FansContact => this is { FanRatedVolts: null, FanFullLoadAmps: null, FanLockedRotorAmps: null, FanResistiveAmps: null, FanPilotDuty: null }
        ? null
        : this with
        {
            RatedVolts = FanRatedVolts ?? RatedVolts,
            FullLoadAmps = FanFullLoadAmps,
            LockedRotorAmps = FanLockedRotorAmps,
            PilotDuty = FanPilotDuty,
            ResistiveAmps = FanResistiveAmps,
            SinglePhaseHorsepower = null,
            ThreePhaseHorsepower = null,
            DirectVolts = null,
            DirectAmps = null,
        };
}
