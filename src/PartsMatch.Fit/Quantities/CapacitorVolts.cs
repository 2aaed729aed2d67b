namespace PartsMatch.Fit.Quantities;

/// <summary>The volts that capacitors for motors are marked with.</summary>
internal static class CapacitorVolts
{
    /// <summary>Without a unit a figure from here on is volts, when another stands before it: no can for alternating current is marked with less (practice).</summary>
    public const double Least = 110;

    /// <summary>Start capacitors 110 to 330 V, run capacitors 250 to 660 V (practice, from memory). A figure without its unit is taken for volts only when it is one of these: 440 yes, 1234 no.</summary>
    public static IReadOnlyList<double> Usual { get; } = [110, 115, 125, 165, 220, 230, 250, 275, 300, 320, 330, 370, 400, 420, 425, 440, 450, 470, 475, 480, 500, 525, 540, 550, 600, 630, 660];
}
