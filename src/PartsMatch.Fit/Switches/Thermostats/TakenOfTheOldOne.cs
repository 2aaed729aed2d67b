using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>What is taken of an old thermostat whose plate does not say it: what such a one mostly is. Nothing of it is deduced of a catalogue part, which may be another.</summary>
internal static class TakenOfTheOldOne
{
    /// <summary>What its contacts do: by where they open and close, or else what those of its function mostly do. Nothing is taken where the two go against each other.</summary>
    /// <param name="function">Its function; null when not known.</param>
    /// <param name="opens">Where they open; null when not known.</param>
    /// <param name="closes">Where they close; null when not known.</param>
    public static ThermostatAction? Action(ThermostatFunction? function, Temperature? opens, Temperature? closes) =>
        ByTemperatures(function, opens, closes) is not { } told ? ActionOf(function) : IsAgainst(function, told) ? null : told;

    /// <summary>What opens above where it closes opens on rise, whatever its function mostly does: a thermostat may be for heat. Of three wires, or one whose function is not known and may be such, the temperatures tell nothing.</summary>
    public static ThermostatAction? ByTemperatures(ThermostatFunction? function, Temperature? opens, Temperature? closes)
    {
        if (function is null or ThermostatFunction.FanDelayAndDefrostEnd || Degrees.In(opens) is not { } open || Degrees.In(closes) is not { } close || open.Equals(close)) return null;
        return open > close ? ThermostatAction.OpensOnRise : ThermostatAction.ClosesOnRise;
    }

    /// <summary>Whether its function leaves its contacts but one way: those of a box thermostat may be for heat, those of a defrost end go either way.</summary>
    public static bool HasOneWay(ThermostatFunction? function) => function is ThermostatFunction.FanDelay or ThermostatFunction.LowLimit or ThermostatFunction.HighLimit;

    /// <summary>Whether contacts that go one way cannot be those of a function.</summary>
    public static bool IsAgainst(ThermostatFunction? function, ThermostatAction? way) => HasOneWay(function) && way is not (null or ThermostatAction.ChangeOver) && way != ActionOf(function);

    /// <summary>What contacts of a function mostly do; null of a defrost end, which may open or close, and of three wires, which change over.</summary>
    public static ThermostatAction? ActionOf(ThermostatFunction? function) => function switch
    {
        ThermostatFunction.Box or ThermostatFunction.LowLimit => ThermostatAction.ClosesOnRise,
        ThermostatFunction.FanDelay or ThermostatFunction.HighLimit => ThermostatAction.OpensOnRise,
        _ => null,
    };

    /// <summary>Its poles: one.</summary>
    public static int? Poles(ThermostatFunction? function) => function is null ? null : 1;

    /// <summary>How it closes again: by itself, but for limits, of which it is asked.</summary>
    public static ContactReset? Reset(ThermostatFunction? function) => function is null or ThermostatFunction.LowLimit or ThermostatFunction.HighLimit ? null : ContactReset.Automatic;
}
