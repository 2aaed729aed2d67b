using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>The two temperatures at which one contact moves, °C. Contacts that open on rise open at the upper one and close at the lower one, those that close on rise the other way round, and change-over contacts do both.</summary>
/// <param name="OnRise">Where it moves as it gets warmer; null when not known.</param>
/// <param name="OnFall">Where it moves as it gets colder; null when not known.</param>
public readonly record struct Points(double? OnRise, double? OnFall)
{
    /// <summary>Of where a contact opens and closes. Both figures tell which is which, whatever the contact is said to do: the higher one is on rise. Of one of them the action does, where it is known and one way.</summary>
    internal static Points Of(ThermostatAction? action, Temperature? opens, Temperature? closes) => (action, Degrees.In(opens), Degrees.In(closes)) switch
    {
        (_, { } open, { } close) => new(Math.Max(open, close), Math.Min(open, close)),
        (ThermostatAction.OpensOnRise, var open, var close) => new(open, close),
        (ThermostatAction.ClosesOnRise, var open, var close) => new(close, open),
        _ => default,
    };

    /// <summary>One of the two.</summary>
    internal double? At(Moving moving) => moving == Moving.OnRise ? OnRise : OnFall;
}

/// <summary>Which way the temperature goes as a contact moves.</summary>
internal enum Moving
{
    /// <summary>It gets warmer.</summary>
    OnRise,

    /// <summary>It gets colder.</summary>
    OnFall,
}
