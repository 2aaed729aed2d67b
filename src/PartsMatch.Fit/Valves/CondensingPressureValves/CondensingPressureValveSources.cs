using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>Where the rules for condensing-pressure valves come from.</summary>
public static class CondensingPressureValveSources
{
    /// <summary>Arrangement of a condensing-pressure valve.</summary>
    public static Source HeadArrangement { get; } = new("Pipes are laid for one arrangement: a three-way valve, or an inlet regulator with its differential check valve", SourceStatus.Practice);

    /// <summary>Setting of a condensing-pressure valve.</summary>
    public static Source HeadSetting { get; } = new("A head-pressure setting within 10 psi of the old one does the same; lower only while the expansion valves still get their drop", SourceStatus.Practice);

    /// <summary>Capacity of a condensing-pressure valve.</summary>
    public static Source HeadCapacity { get; } = new("The capacity at the least ambient, at the conditions that it was given for, is at least the load", SourceStatus.Practice);

    /// <summary>Room for the flooding charge.</summary>
    public static Source FloodingCharge { get; } = new("A receiver holds the charge that floods the condenser in the cold", SourceStatus.Practice);
}
