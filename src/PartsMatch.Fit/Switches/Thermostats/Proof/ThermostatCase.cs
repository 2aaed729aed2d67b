using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Proof;

/// <summary>A thermostat and what was read at it.</summary>
/// <param name="Need">The old one and its place.</param>
/// <param name="Readings">The readings.</param>
/// <param name="New">The new one; null before the swap.</param>
public sealed record ThermostatCase(ThermostatNeed Need, ThermostatReadings Readings, ThermostatSpec? New = null)
{
    /// <summary>The one the readings were taken at.</summary>
    public ThermostatSpec Measured => New ?? Need.Plate;

    /// <summary>Where its contacts are to move: an old one as it was set, a new one as it is needed.</summary>
    internal Points Main => New is null ? Either(Points.Of(Action, Need.Plate.CutOut, Need.Plate.CutIn), WantedPoints.Of(Need).Main) : WantedPoints.Of(Need).Main;

    /// <summary>The same of the fans' contacts of a switch with three wires.</summary>
    internal Points Fans => New is null ? Either(Points.Of(ThermostatAction.OpensOnRise, Need.Plate.FanCutOut, Need.Plate.FanCutIn), WantedPoints.Of(Need).Fans) : WantedPoints.Of(Need).Fans;

    /// <summary>What the contacts do that are measured: with three wires those that end the defrost, which close on rise, as does the side of change-over contacts that is measured; null when not known.</summary>
    internal bool? OpensOnRise => Action switch
    {
        null => null,
        ThermostatAction.OpensOnRise => true,
        _ => false,
    };

    /// <summary>Whether fans wait for a cold coil by it.</summary>
    internal bool DelaysFans => Need.Plate.Function is ThermostatFunction.FanDelay or ThermostatFunction.FanDelayAndDefrostEnd;

    /// <summary>Whether it ends a defrost.</summary>
    internal bool EndsDefrost => Need.Plate.Function is ThermostatFunction.DefrostEnd or ThermostatFunction.FanDelayAndDefrostEnd;

    /// <summary>Whether it is reset by hand.</summary>
    internal bool IsManual => Measured.Reset == ContactReset.Manual;

    /// <summary>Whether box and coil are said to be warm still.</summary>
    internal bool IsWarm => Readings.BoxIsCold == false;

    /// <summary>The temperature at its bulb, °C; null when not read.</summary>
    internal double? There => Degrees.In(Readings.BulbTemperature);

    /// <summary>Of change-over contacts that took the place of single ones, the side is used that does as those did. Where nothing is marked, and nothing tells a box thermostat for cold from one for heat, none is condemned by what most do, nor by temperatures that go against its function.</summary>
    private ThermostatAction? Action => Measured.Action is null or ThermostatAction.ChangeOver ? Need.Plate.Action ?? Taken ?? Measured.Action : Measured.Action;

    /// <summary>An old one goes the way of its own two temperatures, whatever is needed now.</summary>
    private ThermostatAction? Taken => New is null && TakenOfTheOldOne.ByTemperatures(Need.Plate.Function, Need.Plate.CutOut, Need.Plate.CutIn) is { } own
        ? TakenOfTheOldOne.IsAgainst(Need.Plate.Function, own) ? null : own
        : WantedPoints.Of(Need) is { IsTaken: false, IsAgainstItsFunction: false } wanted ? wanted.Action : null;

    private static Points Either(Points one, Points other) => new(one.OnRise ?? other.OnRise, one.OnFall ?? other.OnFall);
}
