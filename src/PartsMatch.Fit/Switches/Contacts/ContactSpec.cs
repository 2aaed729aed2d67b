using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What the contacts of a switch are rated for. Volts and amps that run side by side on a plate belong together by position; a single figure stands for every row.</summary>
public abstract record ContactSpec : Spec
{
    private const string Ratings = "Contact ratings";

    /// <summary>Volts that the ratings are for.</summary>
    [Field("Rated volts", "Volts that the contacts are rated at, side by side: 120/240/480 V. Not the coil's.", Group = Ratings, Example = "240 V")]
    public Figures<ElectricPotential>? RatedVolts { get; init; }

    /// <summary>Full-load amps at those volts.</summary>
    [Field("Full-load amps", "FLA, motor amps: one for each of the rated volts, or one for all.", Group = Ratings, Example = "30 A")]
    public Figures<ElectricCurrent>? FullLoadAmps { get; init; }

    /// <summary>Locked-rotor amps at those volts.</summary>
    [Field("Locked-rotor amps", "LRA: one for each of the rated volts, or one for all.", Group = Ratings, Example = "150 A")]
    public Figures<ElectricCurrent>? LockedRotorAmps { get; init; }

    /// <summary>Resistive amps at those volts.</summary>
    [Field("Resistive amps", "RES, heater amps: one for each of the rated volts, or one for all. They are no motor amps.", Group = Ratings, Example = "40 A")]
    public Figures<ElectricCurrent>? ResistiveAmps { get; init; }

    /// <summary>Horsepower of single-phase motors at those volts.</summary>
    [Field("Single-phase horsepower", "One for each of the rated volts.", Group = Ratings, Example = "5 hp")]
    public Figures<Power>? SinglePhaseHorsepower { get; init; }

    /// <summary>Horsepower of three-phase motors at those volts.</summary>
    [Field("Three-phase horsepower", "One for each of the rated volts.", Group = Ratings, Example = "10 hp")]
    public Figures<Power>? ThreePhaseHorsepower { get; init; }

    /// <summary>Pilot duty.</summary>
    [Field("Pilot duty", "A letter and the greatest volts, such as A300: for coils, not for motors.", Group = Ratings)]
    public PilotDuty? PilotDuty { get; init; }

    /// <summary>Volts of direct current that the contacts are rated at.</summary>
    [Field("DC volts", "Volts of direct current that the contacts are rated at, side by side: 28/125 V.", Group = Ratings, Example = "28 V")]
    public Figures<ElectricPotential>? DirectVolts { get; init; }

    /// <summary>Amps of direct current at those volts.</summary>
    [Field("DC amps", "Amps of direct current: one for each of the DC volts, or one for all. AC amps say nothing of them.", Group = Ratings, Example = "10 A")]
    public Figures<ElectricCurrent>? DirectAmps { get; init; }

    /// <summary>Whether the contacts are open to the air.</summary>
    [Field("Contacts sealed", "Open contacts, sealed, or none (solid state).", Group = Ratings)]
    public ContactEnclosure? Contacts { get; init; }

    /// <summary>Marks for places where something could burn.</summary>
    [Field("Hazard marking", "Marks for flammable refrigerants or classified areas.", Group = Ratings)]
    public Choices<HazardMarking>? Hazards { get; init; }

    /// <summary>Whether an old one was made for a kind of load, so that it is asked for though nobody named its amount.</summary>
    /// <param name="load">The kind of load.</param>
    /// <returns>Null where nothing tells.</returns>
    internal virtual bool? IsMadeFor(ContactLoad load) => null;

    /// <summary>Full-load amps of hermetic compressors: those of any motor, unless they are rated by a category of their own; null where it is only known to be for other motors.</summary>
    internal virtual Figures<ElectricCurrent>? CompressorAmps => FullLoadAmps;

    /// <summary>Whether it is an automatic control: where nothing is marked, motors are then taken to start with six times their full-load amps, and its contacts to bear as many times theirs (UL/IEC 60730-1, from memory).</summary>
    internal virtual bool IsAutomaticControl => true;

    /// <summary>The rating by which it starts motors that are no hermetic compressors where no locked-rotor amps are marked; null where none tells.</summary>
    internal virtual StartedBy? StartsMotors => StartedBy.FullLoad(FullLoadAmps);

    /// <summary>The same of hermetic compressors.</summary>
    internal virtual StartedBy? StartsCompressors => StartedBy.FullLoad(CompressorAmps);

    /// <summary>Volts of a line that an old one's contacts are taken to hang on where neither their own nor those there are known; null where nothing on its plate tells.</summary>
    internal virtual ElectricPotential? LineVolts => null;

    /// <summary>Full-load amps that count for some loads: a compressor among them is not switched by the rating of other motors.</summary>
    internal Figures<ElectricCurrent>? AmpsFor(Choices<ContactLoad>? loads) => loads?.Contains(ContactLoad.Compressor) == true ? CompressorAmps : FullLoadAmps;
}
