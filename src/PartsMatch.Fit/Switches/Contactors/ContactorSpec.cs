using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>What a contactor or relay is: a plate, or a catalogue entry. Null is unknown.</summary>
public sealed record ContactorSpec : ContactSpec
{
    private const string Poles = "Poles";
    private const string Coil = "Coil";
    private const string Body = "Body";
    private const string Marking = "Size and category";

    /// <summary>Main poles.</summary>
    [Field("Main poles", "Poles that the load goes through; a strap or bar in the place of a pole is a shunt.", Group = Poles)]
    public PoleCount? PoleCount { get; init; }

    /// <summary>What they do.</summary>
    [Field("Contact action", "Normally open contacts close as the coil pulls in. SPDT and DPDT change over; SPNO-SPNC has one of each.", Group = Poles)]
    public ContactAction? ContactAction { get; init; }

    /// <summary>Auxiliary contacts.</summary>
    [Field("Auxiliary contacts", "Small contacts on the side or front: 1 NO + 1 NC, or none.", Group = Poles)]
    public AuxiliaryContacts? Auxiliaries { get; init; }

    /// <summary>Whether auxiliary contacts can be added.</summary>
    [Field("Takes auxiliary blocks", "Whether auxiliary contacts can be snapped or screwed on.", Group = Poles)]
    public bool? TakesAuxiliaries { get; init; }

    /// <summary>Whether it is mechanically interlocked with another.</summary>
    [Field("Mechanical interlock", "Whether a lever keeps it and a second one from being in together, or can be fitted.", Group = Poles)]
    public bool? HasInterlock { get; init; }

    /// <summary>The coil's volts.</summary>
    [Field("Coil volts", "On the coil itself: 24 V, 120 V, 208-240 V. Not the contacts'.", Group = Coil, Example = "24 V")]
    public Taps? CoilVolts { get; init; }

    /// <summary>The coil's frequencies.</summary>
    [Field("Coil frequency", "50/60 Hz, 60 Hz, on the coil.", Group = Coil)]
    public Figures<Frequency>? CoilFrequency { get; init; }

    /// <summary>What drives the coil.</summary>
    [Field("Coil current", "AC or DC; a coil with a frequency is for AC.", Group = Coil)]
    public CoilCurrent? CoilCurrent { get; init; }

    /// <summary>What the coil takes as it holds.</summary>
    [Field("Coil VA", "VA as it holds (sealed), not as it pulls in.", Group = Coil)]
    public ElectricApparentPower? CoilVa { get; init; }

    /// <summary>The coil's resistance.</summary>
    [Field("Coil ohms", "Resistance of the coil, cold.", Group = Coil, Tool = Tool.Meter, Example = "18 Ω")]
    public Ohms? CoilOhms { get; init; }

    /// <summary>Coils that its body takes besides.</summary>
    [Field("Further coils", "Coils for other volts that its body takes, each with the VA that it takes, where they are given, and its part number.", Group = Coil)]
    public CoilOffers? FurtherCoils { get; init; }

    /// <summary>NEMA size.</summary>
    [Field("NEMA size", "00, 0, 1, 1P, 2 or 3.", Group = Marking)]
    public NemaSize? Size { get; init; }

    /// <summary>Amps that it carries all day.</summary>
    [Field("Continuous amps", "Amps that each pole carries all day, of whatever kind (Ith).", Group = Marking, Example = "40 A")]
    public ElectricCurrent? ContinuousAmps { get; init; }

    /// <summary>AC-1 amps at the rated volts.</summary>
    [Field("AC-1 amps", "Behind AC-1: amps of resistance, one for each of the rated volts, or one for all.", Group = Marking, Example = "50 A")]
    public Figures<ElectricCurrent>? AcOneAmps { get; init; }

    /// <summary>AC-3 amps at the rated volts.</summary>
    [Field("AC-3 amps", "Behind AC-3: amps of motors, one for each of the rated volts, or one for all.", Group = Marking, Example = "25 A")]
    public Figures<ElectricCurrent>? AcThreeAmps { get; init; }

    /// <summary>AC-8 amps at the rated volts.</summary>
    [Field("AC-8 amps", "Behind AC-8a or AC-8b: amps of hermetic compressors.", Group = Marking, Example = "30 A")]
    public Figures<ElectricCurrent>? AcEightAmps { get; init; }

    /// <summary>What holds it.</summary>
    [Field("Held by", "Base plate, rail, bracket or socket; several where it takes several.", Group = Body)]
    public Choices<ContactorMount>? Mounts { get; init; }

    /// <summary>What wires go onto.</summary>
    [Field("Terminals", "Of the main poles: screws, lugs, quick connects, pins.", Group = Body)]
    public Choices<TerminalKind>? Terminals { get; init; }

    /// <inheritdoc/>
    /// <remarks>AC-8 amps. Those of AC-3 never stand in for them; marked with locked-rotor amps besides, it is for compressors as well (practice).</remarks>
    internal override Figures<ElectricCurrent>? CompressorAmps => AcEightAmps ?? (AcThreeAmps is not null && LockedRotorAmps is null ? null : FullLoadAmps);

    /// <inheritdoc/>
    /// <remarks>At 480 and 600 V many a contactor bears less than six times its full-load amps (practice): what is not marked, and follows from no category or horsepower, is not known.</remarks>
    internal override bool IsAutomaticControl => false;

    /// <inheritdoc/>
    /// <remarks>A contactor for AC-3 closes on ten times its amps and opens eight times, one by horsepower both of six times those of the code's tables (from memory).</remarks>
    internal override StartedBy? StartsMotors =>
        AcThreeAmps is { } category ? new(category, 8, StartingRating.AcThree)
        : ContactorDeductions.InAmps(this) is { } horsepower ? new(horsepower, 6, StartingRating.Horsepower)
        : null;

    /// <inheritdoc/>
    /// <remarks>A contactor for AC-8 closes on six times its amps and opens them (from memory).</remarks>
    internal override StartedBy? StartsCompressors => AcEightAmps is { } category ? new(category, 6, StartingRating.AcEight) : null;
}
