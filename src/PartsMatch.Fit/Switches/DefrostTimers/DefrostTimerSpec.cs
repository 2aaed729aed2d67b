using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>What a defrost timer is: a plate, or a catalogue entry. Resistive amps are those of its heater contact, full-load and locked-rotor amps those of its fan or compressor contact. Null is unknown.</summary>
public sealed record DefrostTimerSpec : ContactSpec
{
    private const string Clockwork = "Clock";
    private const string Programme = "Programme";
    private const string Contact = "Contacts";
    private const string Case = "Body";

    /// <summary>Volts of the clock.</summary>
    [Field("Clock volts", "Of the clock motor; one that can be connected for two is 120/240 V.", Group = Clockwork, Example = "208-240 V")]
    public Taps? ClockVolts { get; init; }

    /// <summary>Frequencies of the clock.</summary>
    [Field("Clock frequency", "A clock keeps time at its own frequency alone; 50/60 Hz is made for both.", Group = Clockwork, Example = "60 Hz")]
    public Figures<Frequency>? ClockFrequency { get; init; }

    /// <summary>What the clock counts.</summary>
    [Field("Clock counts", "The hours of the day, or those that the compressor runs.", Group = Clockwork)]
    public ClockKind? Clock { get; init; }

    /// <summary>Starts a day.</summary>
    [Field("Starts a day", "From the fewest to the most defrosts a day that can be set.", Group = Programme)]
    public StartsADay? Starts { get; init; }

    /// <summary>Fail-safe.</summary>
    [Field("Fail-safe", "From the shortest to the longest defrost that the clock allows, whatever else ends it.", Group = Programme)]
    public MinutesSpan? FailSafe { get; init; }

    /// <summary>What ends a defrost.</summary>
    [Field("Ended by", "Time alone, a temperature switch by way of the release solenoid, or pressure; some take several.", Group = Programme)]
    public Choices<DefrostEnd>? EndedBy { get; init; }

    /// <summary>Volts of the release solenoid.</summary>
    [Field("Release volts", "Of the solenoid that ends the defrost.", Group = Programme, Example = "240 V")]
    public Taps? ReleaseVolts { get; init; }

    /// <summary>Frequencies of the release solenoid.</summary>
    [Field("Release frequency", "Of the same solenoid; mostly the clock's.", Group = Programme, Example = "60 Hz")]
    public Figures<Frequency>? ReleaseFrequency { get; init; }

    /// <summary>What its contacts are there for.</summary>
    [Field("Contacts for", "Heaters (closes in defrost), fans and compressor (open in defrost), fan delay, pump-down.", Group = Contact)]
    public Choices<TimerContact>? ContactsFor { get; init; }

    /// <summary>Poles.</summary>
    [Field("Poles", "Lines that its contacts switch.", Group = Contact, Example = "1")]
    public int? Poles { get; init; }

    /// <summary>Terminals.</summary>
    [Field("Terminals", "What each terminal is there for, by the diagram in its cover.", Group = Case)]
    public TerminalMap? Terminals { get; init; }

    /// <summary>What it sits in.</summary>
    [Field("Body", "In a box of its own, or a mechanism for the old one's box.", Group = Case)]
    public TimerBody? Body { get; init; }

    /// <summary>Pattern of its box.</summary>
    [Field("Box pattern", "The letters by which makers tell which boxes and mechanisms go together.", Group = Case, Example = "DX")]
    public string? BoxPattern { get; init; }

    /// <summary>What is known to end a defrost: by its marking, or else the temperature that a release solenoid is there for.</summary>
    internal Choices<DefrostEnd>? KnownEnds => EndedBy ?? (ReleaseVolts is null ? null : new(DefrostEnd.Temperature));

    /// <summary>What fed an old one's release solenoid: by its marking, or else the volts of the clock, as both hang on the same line in most timers. What a clock that is connected for one of two voltages says of it is not known: that may be for one of them alone.</summary>
    internal Taps? ReleaseLine => ReleaseVolts ?? (EndedBy?.Contains(DefrostEnd.Temperature) == true && ClockVolts is { Count: 1 } ? ClockVolts : null);

    /// <inheritdoc/>
    /// <remarks>The clock's, of a span the higher; not of a clock for two voltages.</remarks>
    internal override ElectricPotential? LineVolts => ClockVolts is { Count: 1 } clock ? clock[0].Last : null;

    /// <inheritdoc/>
    /// <remarks>Hardly a defrost timer is without heaters, or without what stops in defrost, so that both are there unless its contacts are said to be for others alone.</remarks>
    internal override bool? IsMadeFor(ContactLoad load) => load switch
    {
        ContactLoad.Heater => ContactsFor?.Contains(TimerContact.Heater) ?? true,
        ContactLoad.Motor => ContactsFor?.Contains(TimerContact.Fans) ?? true,
        ContactLoad.Compressor => ContactsFor?.Contains(TimerContact.Compressor),
        _ => ContactsFor?.Contains(TimerContact.PumpDown),
    };
}
