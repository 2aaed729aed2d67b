using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Where the rules for all contacts come from.</summary>
public static class ContactSources
{
    /// <summary>Full-load amps.</summary>
    public static Source FullLoad { get; } = new("A contact carries the full-load amps it is marked for, all its motors added up, at the volts it is marked for or lower ones; a rating at 240 V says nothing at 480 V; compressors and other motors each within their own rating, whichever of them are the compressors, and all together within the higher", SourceStatus.Practice);

    /// <summary>Locked-rotor amps.</summary>
    public static Source LockedRotor { get; } = new("Locked-rotor amps are a rating of their own, all motors added up, compressors and others together within the lower rating of the two (practice); where only full-load amps are marked they are taken as 6 times those (UL/IEC 60730-1)", SourceStatus.Memory);

    /// <summary>Resistive amps.</summary>
    public static Source Resistive { get; } = new("Heaters need resistive amps (AC-1); those of motors never stand in for them, nor the other way round (IEC 60947-4-1 table 1)", SourceStatus.Published);

    /// <summary>Direct current.</summary>
    public static Source DirectCurrent { get; } = new("Ratings for alternating current are not used for direct current, whose arc burns on", SourceStatus.Practice);

    /// <summary>Pilot duty.</summary>
    public static Source PilotDuty { get; } = new("Coils need pilot duty: NEMA ICS 5 table 1-4-1, IEC 60947-5-1 annex A (make 10 times the holding VA in classes A to C); below 120 V the amps of 120 V hold (from memory)", SourceStatus.Published);

    /// <summary>A horsepower rating in amps.</summary>
    public static Source HorsepowerInAmps { get; } = new("UL 60947-4-1: a horsepower rating stands for the full-load amps of NFPA 70 tables 430.248 and 430.250", SourceStatus.Memory);

    /// <summary>Amps of a heater.</summary>
    public static Source HeaterAmps { get; } = new("Amps of a heater = W / V at its own volts, on three phases W / (√3 · V); at other volts they go with these: amps × V there / own V", SourceStatus.Derived);

    /// <summary>Own volts of a heater.</summary>
    public static Source HeaterVolts { get; } = new("Heaters of which nothing else is said are made for the volts there", SourceStatus.Practice);

    /// <summary>What is named is all.</summary>
    public static Source LoadsNamed { get; } = new("What is named is what is on the contact", SourceStatus.Practice);

    /// <summary>As the old one.</summary>
    public static Source AsTheOldOne { get; } = new("What the old one switched and was fed is there for the new one", SourceStatus.Practice);

    /// <summary>Ratings that do not go together.</summary>
    public static Source Ratings { get; } = new("Figures that stand side by side belong to the volts beside them", SourceStatus.Practice);
}
