using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What is marked of change-over contacts that have one temperature, °C, and a differential, K: of which of their sides is not said, and two that are marked alike do the same on either.</summary>
/// <param name="CutOut">Where they open; null when not known.</param>
/// <param name="CutIn">Where they close; null when not known.</param>
/// <param name="Least">The least differential; null when not known.</param>
/// <param name="Most">The greatest; null when not known.</param>
public readonly record struct MarkedOfEitherSide(double? CutOut, double? CutIn, double? Least, double? Most)
{
    /// <summary>What it is of a thermostat; null of one whose contacts do not change over, or which has three wires.</summary>
    internal static MarkedOfEitherSide? Of(ThermostatSpec spec) => spec is { Action: ThermostatAction.ChangeOver, Function: not ThermostatFunction.FanDelayAndDefrostEnd }
        ? new(Degrees.In(spec.CutOut), Degrees.In(spec.CutIn), spec.Differential?.Kelvins.Low, spec.Differential?.Kelvins.High)
        : null;

    /// <summary>The one temperature; null where none or both are known.</summary>
    internal double? Only => CutOut is null ? CutIn : CutIn is null ? CutOut : null;

    /// <summary>Whether these move where old ones do, on whichever side, with nothing to be set.</summary>
    internal bool AreAs(MarkedOfEitherSide old) => Only is not null && Equals(CutOut, old.CutOut) && Equals(CutIn, old.CutIn) && CanDifferAs(old);

    /// <summary>Whether the differential can be as the old ones', or 2 °F off.</summary>
    internal bool CanDifferAs(MarkedOfEitherSide old) => Least is { } least && Most is { } most && old is { Least: { } low, Most: { } high }
        && Within.AtLeast(low, least - Degrees.NearDifferential) && Within.AtMost(high, most + Degrees.NearDifferential);
}
