using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What a contact is asked to switch, as far as it is known: added up by kind, or, where nobody named it, what the old contact was rated for.</summary>
internal sealed record OnTheContact
{
    /// <summary>Locked-rotor amps where only full-load amps are marked (UL/IEC 60730-1, from memory).</summary>
    public const double LockedRotorTimes = 6;

    /// <summary>Inrush of a coil over its holding VA (NEMA ICS 5: 7200 over 720).</summary>
    public const double InrushTimes = 10;

    private readonly ContactSpec plate;
    private readonly ContactSite site;

    private OnTheContact(ContactSpec plate, ContactSite site)
    {
        this.plate = plate;
        this.site = site;
        Loads = site.Loads;
        Volts = Rounded.Volts(site.LoadVolts);
        Phases = site.LoadPhase;
        if (site.Motors is { } motors)
        {
            FullLoad = Rounded.To(motors.FullLoad, 2);
            LeastMotor = Rounded.To(motors.Least, 2);
            IsLockedRotorGiven = motors.AreLockedRotorAmpsGiven;
            LockedRotor = IsLockedRotorGiven || plate.IsAutomaticControl ? Rounded.To(motors.LockedRotor(LockedRotorTimes), 2) : null;
        }

        Heater = site.HeaterAmps is { } amps ? Rounded.To(amps.Amperes, 2) : null;
        CoilsVa = site.CoilsVa is { } holding ? Rounded.To(holding.Voltamperes, 1) : null;
        InrushVa = site.CoilsInrushVa is { } inrush ? Rounded.To(inrush.Voltamperes, 1) : CoilsVa * InrushTimes;
        IsInrushGiven = site.CoilsInrushVa is not null;
        OldFullLoad = Old(plate.FullLoadAmps, ContactLoad.Motor);
        OldCompressor = Old(plate.CompressorAmps, ContactLoad.Motor);
        OldLockedRotor = LockedRotorFacet.Of(plate, amps => Old(amps, ContactLoad.Motor)).Any;
        OldResistive = Old(plate.ResistiveAmps, ContactLoad.Heater);
        OldPilot = PilotDutyFacet.Of(plate);
        OldDirect = RatedAmps.Of(plate.DirectVolts, plate.DirectAmps);
    }

    /// <summary>The kinds of load; null when nobody named any.</summary>
    public Choices<ContactLoad>? Loads { get; }

    /// <summary>Volts that are switched, V.</summary>
    public double? Volts { get; }

    /// <summary>Phases that are switched.</summary>
    public Motors.Phases? Phases { get; }

    /// <summary>Full-load amps of all motors, A.</summary>
    public double? FullLoad { get; }

    /// <summary>Full-load amps of the smallest of several motors, A; 0 where they are not told apart.</summary>
    public double LeastMotor { get; }

    /// <summary>Locked-rotor amps of all motors, A; where a plate does not say six times full load on an automatic control, and null on any other switch.</summary>
    public double? LockedRotor { get; }

    /// <summary>Whether all locked-rotor amps are given.</summary>
    public bool IsLockedRotorGiven { get; }

    /// <summary>Amps of the heaters, A.</summary>
    public double? Heater { get; }

    /// <summary>Holding VA of the coils.</summary>
    public double? CoilsVa { get; }

    /// <summary>VA of the coils as they pull in.</summary>
    public double? InrushVa { get; }

    /// <summary>Whether the inrush is given.</summary>
    public bool IsInrushGiven { get; }

    /// <summary>Whether the old contact's amps stand without volts: then it carried them at those there, or else at those of the line that its plate tells of.</summary>
    public bool AreOldVoltsTaken => plate.RatedVolts is null;

    /// <summary>What the old contact was rated for, at full load.</summary>
    public Sequence<AmpsAt> OldFullLoad { get; }

    /// <summary>The same of hermetic compressors.</summary>
    public Sequence<AmpsAt> OldCompressor { get; }

    /// <summary>Whether the old contact was made for hermetic compressors: by amps of their own, or by locked-rotor amps (practice).</summary>
    public bool WasForCompressors => plate.LockedRotorAmps is not null || (OldCompressor.Count > 0 && !OldCompressor.Equals(OldFullLoad));

    /// <summary>What it bore with the rotor locked.</summary>
    public BorneAmps OldLockedRotor { get; }

    /// <summary>The same for heaters.</summary>
    public Sequence<AmpsAt> OldResistive { get; }

    /// <summary>The same for coils.</summary>
    public PilotDutyFacet OldPilot { get; }

    /// <summary>The same for direct current.</summary>
    public Sequence<AmpsAt> OldDirect { get; }

    /// <summary>Whether what it switches is direct current; nothing is asked about it where nobody said so, and the old contact was marked for alternating current as well, or for neither.</summary>
    public bool IsDirect => site.LoadCurrent == CoilCurrent.Direct;

    /// <summary>Whether direct current is to be asked about: the old contact was marked for nothing else.</summary>
    public bool AsksForDirect => site.LoadCurrent is null && OldDirect.Count > 0 && plate is { FullLoadAmps: null, LockedRotorAmps: null, ResistiveAmps: null, PilotDuty: null };

    /// <summary>Whether a kind of load is on it: as the list has it, or, without a list, because its amount was named; null when nobody said.</summary>
    public bool? Has(ContactLoad load) => Loads?.Contains(load) ?? (IsNamed(load) ? true : null);

    /// <summary>Whether a motor of any kind is on it; null when nobody said.</summary>
    public bool? HasMotor => Loads is null ? Has(ContactLoad.Motor) : Loads.Contains(ContactLoad.Motor) || Loads.Contains(ContactLoad.Compressor);

    /// <summary>Whether a hermetic compressor is among what is on it.</summary>
    public bool HasCompressor => Loads?.Contains(ContactLoad.Compressor) == true;

    /// <summary>Whether other motors are on it beside a hermetic compressor.</summary>
    public bool HasCompressorAndMotor => HasCompressor && Loads!.Contains(ContactLoad.Motor);

    /// <summary>Whether heaters must be known of even where the old contact was not marked for any.</summary>
    public bool AsksForHeaters => IsWiredFor(ContactLoad.Heater) == true;

    /// <summary>The same of motors: where any are wired, or nothing tells and the old contact was marked for nothing. A compressor's contact may feed its contactor's coil alone, which pilot duty answers for, or a coil that was named and is there for nothing else.</summary>
    public bool AsksForMotors => (IsWiredFor(ContactLoad.Motor), IsWiredFor(ContactLoad.Compressor)) switch
    {
        (true, _) => true,
        (_, true) => plate.PilotDuty is null && (AsksForCoils || !IsNamed(ContactLoad.Coil)),
        (null, _) => plate is { ResistiveAmps: null, PilotDuty: null },
        _ => false,
    };

    /// <summary>The same of coils.</summary>
    public bool AsksForCoils => IsWiredFor(ContactLoad.Coil) == true;

    /// <summary>The volts that a kind of load is switched at.</summary>
    public SwitchedVolts At(ContactLoad load) => site.VoltsOf(load);

    /// <summary>What a need's contact is asked to switch.</summary>
    public static OnTheContact Of<TSpec, TSite>(Need<TSpec, TSite> need)
        where TSpec : ContactSpec
        where TSite : ContactSite => need.Once(static need => Of(need.Plate, need.Site));

    /// <summary>What a contact is asked to switch that was as the plate has it.</summary>
    public static OnTheContact Of(ContactSpec plate, ContactSite site) => new(plate, site);

    /// <summary>Amps that the old one was marked with. Several without volts belong to as many voltages that nobody knows.</summary>
    private Sequence<AmpsAt> Old(Figures<ElectricCurrent>? amps, ContactLoad load) =>
        RatedAmps.Of(plate.RatedVolts ?? (amps is { Count: 1 } && (site.VoltsOf(load).Volts ?? plate.LineVolts) is { } line ? new(line) : null), amps);

    /// <summary>By the wiring there, or else by what the old one was made for.</summary>
    private bool? IsWiredFor(ContactLoad load) => site.IsWiredFor(load) ?? plate.IsMadeFor(load);

    private bool IsNamed(ContactLoad load) => load switch
    {
        ContactLoad.Motor => site.Motors is not null,
        ContactLoad.Heater => site.HeaterAmps is not null || site.HeaterPower is not null,
        ContactLoad.Coil => site.CoilsVa is not null || site.CoilsInrushVa is not null,
        _ => false,
    };
}
