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
    public static Source HeadCapacity { get; } = new("The capacity at the least ambient is at least the load: a rating holds with its refrigerant, down to the ambient that it was given for, and at less than its drop by the root of that", SourceStatus.Practice);

    /// <summary>Ports of a condensing-pressure valve.</summary>
    public static Source Ports { get; } = new("Each pipe goes onto the port of its function: three-way valves take condenser, hot gas and receiver, inlet regulators no hot gas, differential check valves nothing from the condenser; another size takes reducers, another joint new ends", SourceStatus.Practice);

    /// <summary>Pipes of one size.</summary>
    public static Source OnePortSize { get; } = new("Where an old valve is marked with one size alone, all pipes on it have that", SourceStatus.Practice);

    /// <summary>Inlet of a differential check valve.</summary>
    public static Source InletOfCheck { get; } = new("The first size of a differential check valve is that of its inlet, which takes hot gas", SourceStatus.Practice);

    /// <summary>Room for the flooding charge.</summary>
    public static Source FloodingCharge { get; } = new("A receiver holds the charge that floods the condenser in the cold", SourceStatus.Practice);
}
