using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>What is read at a pressure control: the old one before it is condemned, the new one after the swap. Null was not read.</summary>
public sealed record PressureControlReadings : Readings
{
    private const string Now = "As it stands";
    private const string Moving = "With the pressure moving";

    /// <summary>Pressure at it.</summary>
    [Field("Pressure at it", "By a gauge on the same side.", Group = Now, Example = "65 psi")]
    public Pressure? PressureThere { get; init; }

    /// <summary>Whether its contacts are closed.</summary>
    [Field("Contacts closed", "By ohms with the power off, or no volts across them with it on. Of change-over contacts the side that is wired; where both are, the one that keeps the equipment running.", Group = Now)]
    public bool? IsClosed { get; init; }

    /// <summary>Whether it stays closed once its button was pressed.</summary>
    [Field("Stays in after reset", "With manual reset: whether it stays closed after the button is pressed.", Group = Now)]
    public bool? HoldsAfterReset { get; init; }

    /// <summary>Volts across closed contacts.</summary>
    [Field("Volts across it", "Across its closed contacts, under load.", Group = Now, Example = "0.1 V")]
    public Measured<ElectricPotential>? DropVolts { get; init; }

    /// <summary>Where it opened.</summary>
    [Field("Opened at", "The gauge as it opened, the same contacts.", Group = Moving, Example = "12 psi")]
    public Pressure? OpenedAt { get; init; }

    /// <summary>Where it closed.</summary>
    [Field("Closed at", "The gauge as it closed again, the same contacts.", Group = Moving, Example = "31 psi")]
    public Pressure? ClosedAt { get; init; }
}
