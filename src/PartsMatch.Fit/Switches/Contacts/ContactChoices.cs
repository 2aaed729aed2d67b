using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What is on a contact. Each kind has a rating of its own.</summary>
public enum ContactLoad
{
    /// <summary>A hermetic compressor: AC-8a or AC-8b, or full-load and locked-rotor amps.</summary>
    [Words("compressor")]
    Compressor,

    /// <summary>Fan and pump motors: AC-3, or full-load and locked-rotor amps.</summary>
    [Words("motor", "fan motor", "pump motor", "motors")]
    Motor,

    /// <summary>Heaters: AC-1, resistive amps.</summary>
    [Words("heater", "heaters", "resistance")]
    Heater,

    /// <summary>Coils of contactors, relays and solenoid valves: pilot duty.</summary>
    [Words("coil", "coils")]
    Coil,
}

/// <summary>Whether the arc of a contact can reach the air round it.</summary>
public enum ContactEnclosure
{
    /// <summary>It can.</summary>
    [Words("open contacts", "open")]
    Open,

    /// <summary>It cannot: hermetically sealed.</summary>
    [Words("sealed contacts", "sealed", "hermetically sealed", "HERMETICALLY SEALED CONTACTS")]
    Sealed,

    /// <summary>There is no contact: solid state.</summary>
    [Words("solid state", "no contacts", "solid-state")]
    SolidState,
}

/// <summary>How it closes again.</summary>
public enum ContactReset
{
    /// <summary>By itself, at its cut-in.</summary>
    [Words("automatic", "auto reset", "automatic reset", "auto")]
    Automatic,

    /// <summary>By a hand, once what opened it is over.</summary>
    [Words("manual", "manual reset", "man reset", "hand reset")]
    Manual,
}

/// <summary>Which sides of change-over contacts are wired that move by a temperature or a pressure.</summary>
public enum SidesWired
{
    /// <summary>The one that opens on rise.</summary>
    [Words("the one that opens on rise", "opens on rise", "closes on fall")]
    OpensOnRise,

    /// <summary>The one that closes on rise.</summary>
    [Words("the one that closes on rise", "closes on rise", "opens on fall")]
    ClosesOnRise,

    /// <summary>Both.</summary>
    [Words("both")]
    Both,
}
