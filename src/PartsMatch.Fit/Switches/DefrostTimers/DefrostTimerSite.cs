using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>What a defrost timer will meet where it is put in. The volts switched are those of the heaters; fans and coils hang on contacts of their own. Null is unknown.</summary>
public sealed record DefrostTimerSite : ContactSite
{
    private const string Feeds = "What feeds it";
    private const string Defrost = "Defrost there";
    private const string Others = "On its other contacts";

    /// <summary>Volts at the clock.</summary>
    [Field("Volts at the clock", "Measured at its clock terminals.", Group = Feeds, Tool = Tool.Meter, Example = "232 V")]
    public ElectricPotential? ClockSupplyVolts { get; init; }

    /// <summary>Frequency there.</summary>
    [Field("Frequency there", "Of the mains.", Group = Feeds, Example = "60 Hz")]
    public Frequency? ClockSupplyFrequency { get; init; }

    /// <summary>Volts of the release circuit.</summary>
    [Field("Release circuit's volts", "What the temperature switch feeds to the release terminal.", Group = Feeds, Tool = Tool.Meter, Example = "232 V")]
    public ElectricPotential? ReleaseSupplyVolts { get; init; }

    /// <summary>Starts needed.</summary>
    [Field("Starts needed", "Defrosts a day that this coil needs.", Group = Defrost, Example = "4")]
    public int? StartsNeeded { get; init; }

    /// <summary>Minutes at the heaters' own volts.</summary>
    [Field("Minutes at the heaters' volts", "How long this coil takes with its heaters at the volts on their plate.", Group = Defrost, Example = "30 min")]
    public DefrostMinutes? MinutesAtHeaterVolts { get; init; }

    /// <summary>Minutes needed.</summary>
    [Field("Minutes needed", "How long the longest defrost takes there, with the volts there are.", Group = Defrost, Example = "45 min")]
    public DefrostMinutes? MinutesNeeded { get; init; }

    /// <summary>How it is ended there.</summary>
    [Field("Ended there by", "Time alone, a temperature switch on the coil wired to the release terminal, or pressure.", Group = Defrost)]
    public DefrostEnd? EndedThereBy { get; init; }

    /// <summary>What its contacts are needed for.</summary>
    [Field("Contacts needed for", "Heaters, fans, compressor, fan delay, pump-down: what is wired to it.", Group = Others)]
    public Choices<TimerContact>? ContactsNeeded { get; init; }

    /// <summary>Volts of the fans.</summary>
    [Field("Fans' volts", "What its fan or compressor contact switches.", Group = Others, Tool = Tool.Meter, Example = "208 V")]
    public ElectricPotential? FanVolts { get; init; }

    /// <summary>Volts of coils on its contacts.</summary>
    [Field("Coils' volts", "Of the contactors' and solenoid valves' coils that its contacts switch.", Group = Others, Tool = Tool.Meter, Example = "24 V")]
    public ElectricPotential? CoilVolts { get; init; }

    /// <inheritdoc/>
    public override SwitchedVolts VoltsOf(ContactLoad load) => load switch
    {
        ContactLoad.Motor or ContactLoad.Compressor => new("fanVolts", FanVolts),
        ContactLoad.Coil => new("coilVolts", CoilVolts),
        _ => base.VoltsOf(load),
    };

    /// <inheritdoc/>
    public override bool? IsWiredFor(ContactLoad load) => load switch
    {
        ContactLoad.Heater => ContactsNeeded?.Contains(TimerContact.Heater),
        ContactLoad.Motor => ContactsNeeded?.Contains(TimerContact.Fans),
        ContactLoad.Compressor => ContactsNeeded?.Contains(TimerContact.Compressor),
        _ => ContactsNeeded?.Contains(TimerContact.PumpDown),
    };
}
