using PartsMatch.Fit.Judging.Drawings;

namespace PartsMatch.Fit.Motors.Drawings;

/// <summary>What is drawn of a new motor in the old one's place.</summary>
public static class MotorDrawings
{
    /// <summary>The torque lines, where speeds can be told, and the shaft end.</summary>
    public static IReadOnlyList<Drawing> Of(MotorNeed need, MotorSpec part) => [.. new Drawing?[] { TorqueLines.Of(need, part), ShaftEnd.Of(need, part) }.OfType<Drawing>()];
}
