using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Capacitors;

/// <summary>What a capacitor will meet where it is put in. Null is unknown.</summary>
public sealed record CapacitorSite : Site
{
    private const string MotorGroup = "Motor";
    private const string Place = "Place";

    /// <summary>What the motor's plate asks for; outranks the old capacitor, which may have been a wrong one.</summary>
    [Field("Motor's plate asks for", "Capacitor on the plate of the motor it serves, such as 5/370: the old capacitor may have been a wrong one.", Group = MotorGroup)]
    public CapacitorRating? MotorAsksFor { get; init; }

    /// <summary>What the second motor (the fan's) asks for, at a capacitor of two sections.</summary>
    [Field("Second motor asks for", "The same for the second motor, where one can serves two.", Group = MotorGroup)]
    public CapacitorRating? SecondMotorAsksFor { get; init; }

    /// <summary>Supply frequency.</summary>
    [Field("Supply frequency", "60 Hz or 50 Hz.", Group = MotorGroup)]
    public Frequency? SupplyFrequency { get; init; }

    /// <summary>Hottest air round the can.</summary>
    [Field("Hottest air", "The hottest air in the control box.", Group = Place, Tool = Tool.Meter)]
    public Temperature? AirMost { get; init; }

    /// <summary>Can that the strap there holds.</summary>
    [Field("Strap holds", "Round or oval can.", Group = Place)]
    public CanShape? StrapHolds { get; init; }

    /// <summary>Diameter that the strap there holds.</summary>
    [Field("Strap's diameter", "Diameter of the can that the strap holds.", Group = Place, Tool = Tool.Tape)]
    public Length? StrapDiameter { get; init; }

    /// <summary>Room for its height.</summary>
    [Field("Room for height", "Greatest height with terminals and wires.", Group = Place, Tool = Tool.Tape)]
    public Length? HeightRoom { get; init; }
}
