using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>What supply, speed and power may ask to change or check on a motor.</summary>
public static class SupplyChanges
{
    /// <summary>Connect the leads for another tap than the one it ships for.</summary>
    public static ChangeKind SetTap { get; } = new("setTap", 0.3);

    /// <summary>See which tap it is connected for.</summary>
    public static ChangeKind CheckTap { get; } = new("checkTap", 0.1, IsCheck: true);

    /// <summary>Connect between lines where the old motor was between line and neutral, or the reverse.</summary>
    public static ChangeKind Reconnect { get; } = new("reconnect", 0.5);

    /// <summary>Connect a single-phase motor to two of three legs.</summary>
    public static ChangeKind UseTwoLegs { get; } = new("useTwoLegs", 0.4);

    /// <summary>Cap unused speed leads one by one.</summary>
    public static ChangeKind CapSpeedLeads { get; } = new("capSpeedLeads", 0.1);

    /// <summary>See that a motor two or more sizes larger suits circuit and mount.</summary>
    public static ChangeKind CheckOversize { get; } = new("checkOversize", 0.5, IsCheck: true);

    /// <summary>See what low speed comes to when a tapped winding takes the place of two windings.</summary>
    public static ChangeKind CheckLowSpeed { get; } = new("checkLowSpeed", 0.3, IsCheck: true);

    /// <summary>Choose sheaves so that the fan keeps its speed.</summary>
    public static ChangeKind ChangeSheave { get; } = new("changeSheave", 0.8);

    /// <summary>Choose the new blade for the new speed.</summary>
    public static ChangeKind MatchBlade { get; } = new("matchBlade", 0.8);
}
