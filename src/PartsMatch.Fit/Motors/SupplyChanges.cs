using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors;

/// <summary>What supply, speed and power may ask to change or check on a motor.</summary>
public static class SupplyChanges
{
    /// <summary>Connect the leads for another tap than the one it ships for.</summary>
    public static ChangeKind SetTap { get; } = new("setTap", 0.3)
    {
        Stage = Stage.Wire,
        HowTo = "Join the leads as the motor's own diagram shows for these volts, and insulate each joint. Colours of leads are makers' custom and tell nothing by themselves.",
    };

    /// <summary>See which tap it is connected for.</summary>
    public static ChangeKind CheckTap { get; } = new("checkTap", 0.1, IsCheck: true)
    {
        Stage = Stage.Wire,
        HowTo = "Compare its leads with the motor's own diagram for these volts; on the wrong tap it burns or will not start.",
    };

    /// <summary>Connect between lines where the old motor was between line and neutral, or the reverse.</summary>
    public static ChangeKind Reconnect { get; } = new("reconnect", 0.5)
    {
        Stage = Stage.Wire,
        HowTo = "Move its supply at the contactor or terminal block, and meter what its leads will get before they are joined. Between lines both wires are live: both go through the switch and the disconnect, and the neutral is capped by itself.",
    };

    /// <summary>Connect a single-phase motor to two of three legs.</summary>
    public static ChangeKind UseTwoLegs { get; } = new("useTwoLegs", 0.4)
    {
        Stage = Stage.Wire,
        HowTo = "Use two legs that the motor's own contact switches; cap and tie back the third where it ends.",
    };

    /// <summary>Cap unused speed leads one by one.</summary>
    public static ChangeKind CapSpeedLeads { get; } = new("capSpeedLeads", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Never join unused speed leads to one another or to a line: they are taps of one live winding.",
    };

    /// <summary>See that a motor two or more sizes larger suits circuit and mount.</summary>
    public static ChangeKind CheckOversize { get; } = new("checkOversize", 0.5, IsCheck: true)
    {
        Stage = Stage.Bench,
        HowTo = "Hold its amps and weight against wire, fuse, contact and bracket before it goes up; on a low tap it hardly slows.",
    };

    /// <summary>See what low speed comes to when a tapped winding takes the place of two windings.</summary>
    public static ChangeKind CheckLowSpeed { get; } = new("checkLowSpeed", 0.3, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "Run it on low and take speed or air: an oversized motor on a tap stays near its high speed.",
    };

    /// <summary>Choose sheaves so that the fan keeps its speed.</summary>
    public static ChangeKind ChangeSheave { get; } = new("changeSheave", 0.8)
    {
        Stage = Stage.Mount,
        HowTo = "The fan's speed is the motor's times motor sheave over fan sheave; line both up and set the belt afterwards.",
    };

    /// <summary>Choose the new blade for the new speed.</summary>
    public static ChangeKind MatchBlade { get; } = new("matchBlade", 0.8)
    {
        Stage = Stage.Bench,
        HowTo = "Power goes with the cube of speed and the fifth power of diameter: choose diameter, blades and pitch by the fan maker's table.",
    };
}
