namespace PartsMatch.Fit.Motors;

/// <summary>What the old motor's rated point and its load may follow from.</summary>
internal static class RatingFields
{
    /// <summary>Names of fields of plate and site.</summary>
    public static IReadOnlyList<string> All { get; } =
    [
        "type", "power", "powerMeaning", "inputPower", "speed", "speeds", "speedMeans", "poles", "serviceFactor", "voltage", "starDelta", "connectedFor", "phase", "frequency",
        "fullLoadAmps", "lockedRotorAmps", "codeLetter", "efficiency", "powerFactor", "runCapacitor", "breakdownTorque",
        "supplyPhase", "supplyFrequency", "volts", "neutralVolts", "supplyArrangement", "drive", "bladeDiameter", "newBladeDiameter", "altitude", "bladeStays", "speedsUsed", "measuredSpeed", "measuredInput", "measuredAmps", "equipmentFanAmps", "equipmentFanPower",
    ];
}
