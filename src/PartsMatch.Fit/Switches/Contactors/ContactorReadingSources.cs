using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>Where the limits of readings come from of contactors.</summary>
public static class ContactorReadingSources
{
    /// <summary>Not called for.</summary>
    public static Source NotCalledFor { get; } = new("A contactor that is not called for, or has no volts at its coil, is not the part: look up the circuit, and with volts there without a call what feeds it", SourceStatus.Practice);

    /// <summary>Window of a coil.</summary>
    public static Source ContactorCoilVolts { get; } = new("IEC 60947-4-1, NEMA ICS 2: a coil pulls in and holds from 85 to 110 % of its volts", SourceStatus.Memory);

    /// <summary>Ohms of a coil.</summary>
    public static Source ContactorCoilOhms { get; } = new("A coil that is open or under 1 Ω has failed; marked ohms hold within 20 %", SourceStatus.Practice);

    /// <summary>Pulls in.</summary>
    public static Source ContactorPullsIn { get; } = new("With good volts and ohms a coil pulls its armature in, all the way", SourceStatus.Practice);

    /// <summary>Chatters.</summary>
    public static Source ContactorChatters { get; } = new("Low volts make a contactor hum and chatter; with good volts its faces or its shading ring do", SourceStatus.Practice);

    /// <summary>Look of contacts.</summary>
    public static Source ContactsLook { get; } = new("A contactor with a burnt pole is replaced: contacts are not filed", SourceStatus.Practice);

    /// <summary>Welded.</summary>
    public static Source ContactsWelded { get; } = new("IEC 60947-4-1: under 20 % of its volts a contactor for alternating current has let go, under 10 % one for direct current; contacts that stay closed then are welded, or the armature sticks", SourceStatus.Memory);

    /// <summary>Poles follow.</summary>
    public static Source PolesFollow { get; } = new("Each pole opens and closes as the armature is pressed in by hand and let go: one that does not is welded or burnt, or the armature sticks", SourceStatus.Practice);

    /// <summary>Amps of each leg.</summary>
    public static Source ContactAmps { get; } = new("Each leg stays within the full-load amps that a pole is marked for at its volts", SourceStatus.Practice);

    /// <summary>Heat of terminals.</summary>
    public static Source TerminalHeat { get; } = new("IEC 60947-1 table 2: terminals rise at most 65 K over the air round them", SourceStatus.Memory);
}
