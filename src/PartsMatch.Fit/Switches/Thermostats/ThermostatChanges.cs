using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>What may have to be changed about a thermostat. Efforts are practice: 0 a look, 1 about an hour or a part to be made.</summary>
public static class ThermostatChanges
{
    /// <summary>Set it.</summary>
    public static ChangeKind SetThermostat { get; } = new("setThermostat", 0.1)
    {
        Stage = Stage.Bench,
        HowTo = "Scales on thermostats are rough: set it by its scale here, and by a thermometer at its bulb once it is in.",
    };

    /// <summary>See whether its temperature will do.</summary>
    public static ChangeKind CheckTemperature { get; } = new("checkSwitchingTemperature", 0.4, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "Watch one whole cycle with a thermometer at the bulb: the coil must come clear of frost, the fans must not blow warm or wet air, and the box must keep its temperature.",
    };

    /// <summary>See whether its differential will do.</summary>
    public static ChangeKind CheckDifferential { get; } = new("checkThermostatDifferential", 0.3, IsCheck: true)
    {
        Stage = Stage.StartAndCheck,
        HowTo = "Watch a few cycles: a narrow differential makes the compressor start too often, a wide one lets the box swing.",
    };

    /// <summary>Hold another form of bulb.</summary>
    public static ChangeKind MountBulb { get; } = new("mountBulb", 0.3)
    {
        Stage = Stage.Mount,
        HowTo = "Put it exactly where the old one felt, in full touch or in the same air, where no melting water runs over it.",
    };

    /// <summary>See whether another kind of sensing will do.</summary>
    public static ChangeKind CheckBulbPlace { get; } = new("checkBulbPlace", 0.6, IsCheck: true)
    {
        Stage = Stage.NoteWhatIsThere,
        HowTo = "Find a place where it feels what the old one felt, and where it can be held tight; where there is none, it does not go in.",
    };

    /// <summary>Find the common one.</summary>
    public static ChangeKind MapCommon { get; } = new("mapCommon", 0.1)
    {
        Stage = Stage.Wire,
        HowTo = "Tag each wire by what it goes to before it comes off. By ohms the common one makes contact with one of the others at any temperature.",
    };
}
