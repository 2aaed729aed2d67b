using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Proof;

/// <summary>A solenoid valve and what was read at it.</summary>
/// <param name="Need">The old one and its place.</param>
/// <param name="Readings">The readings.</param>
/// <param name="New">The new one; null before the swap.</param>
public sealed record SolenoidValveCase(SolenoidNeed Need, SolenoidValveReadings Readings, SolenoidValveSpec? New = null)
{
    /// <summary>From so many on it tells something that a liquid line is colder or warmer behind its valve, K: 3 °F (practice).</summary>
    private const double TellingKelvins = 3 / 1.8;

    /// <summary>The one the readings were taken at.</summary>
    public SolenoidValveSpec Measured => New ?? Need.Plate;

    /// <summary>Less than this share of what is marked is no supply at all (practice).</summary>
    private const double NoSupply = 0.1;

    /// <summary>Volts read at its coil; null where not read.</summary>
    internal double? Volts => Readings.CoilVolts?.Legs[0].Volts;

    /// <summary>The volts that its coil is marked for, or those that one of a new body's coils has which suits the place; null where not given.</summary>
    internal CoilMade? Coil => (Volts is > 0 ? Volts : Rounded.Volts(Need.Site.CoilSupplyVolts)) is { } there && Coils.Find(coil => CoilOnSupply.Works(coil, there, Need.Site.CoilSupplyCurrent, SolenoidCoils.Window)) is { High: > 0 } right ? right : Coils is [var first, ..] ? first : null;

    /// <summary>Whether its coil has any volts but stray ones; null where they were not read.</summary>
    internal bool? IsSupplied => Volts is { } volts ? volts > 0 && (Coil is not { } coil || Within.AtLeast(volts, coil.Low * NoSupply)) : null;

    /// <summary>Whether it is called for, as far as is known, and its coil has the volts that it works at; null where its volts were not read or are not known.</summary>
    internal bool? IsFed => Volts is not { } volts || Coil is not { } coil ? null : Readings.CircuitCalls != false && CoilOnSupply.Works(coil, volts, Need.Site.CoilSupplyCurrent, SolenoidCoils.Window);

    /// <summary>Whether it is called for, as far as is known, and its coil has more volts than any of those it is marked for takes: they burn it, and move its magnet as long as it is good.</summary>
    internal bool IsFedOver => Volts is { } volts && Readings.CircuitCalls != false && Coils.Count > 0 && !IsOnOtherCurrent && Coils.TrueForAll(coil => !Within.AtMost(volts, SolenoidCoils.Window.Of(coil).High));

    /// <summary>Whether its coil is made for the other kind of current than is there.</summary>
    internal bool IsOnOtherCurrent => Coil?.IsForOtherThan(Need.Site.CoilSupplyCurrent) == true;

    /// <summary>The state in which a coil with power leaves it.</summary>
    internal bool OpensWithPower => State != NormalState.Open;

    /// <summary>The state in which it is without power; null where not known.</summary>
    internal NormalState? State => Measured.NormalState ?? Need.Site.NeedsState;

    /// <summary>Whether its coil leaves it open: a normally closed one that is called for and whose magnet pulls at volts that it works at, for fewer pull a screwdriver and lift nothing; a normally open one without volts, or whose magnet does not pull while nothing calls. Null where that cannot be told, as of one whose state is not known.</summary>
    internal bool? IsLeftOpen => State switch
    {
        NormalState.Closed when HasWorkingVolts == true && Readings is { CircuitCalls: not false, MagnetPulls: true } => true,
        NormalState.Open when IsSupplied == false || Readings is { CircuitCalls: false, MagnetPulls: false } => true,
        _ => null,
    };

    /// <summary>How much colder the line is behind it, K, if that is not one for gas, where it tells nothing; null where it was not read.</summary>
    internal double? KelvinsLost => Need.Site.Line is RefrigerantLine.Suction or RefrigerantLine.HotGas ? null : Readings.TemperatureBefore?.DegreesCelsius - Readings.TemperatureBehind?.DegreesCelsius;

    /// <summary>Whether the line, if it is one for liquid, is so much colder behind it that it throttles: from 3 °F (1.7 K) on (practice).</summary>
    internal bool Throttles => KelvinsLost is { } lost && Within.AtLeast(lost, TellingKelvins);

    /// <summary>Whether the line, if it is one for liquid, is so much warmer behind it that no liquid flows as it was clamped: by as many (practice).</summary>
    internal bool IsWarmerBehind => KelvinsLost is { } lost && Within.AtMost(lost, -TellingKelvins);

    /// <summary>Whether a normally open one was seen not to pass as it should: it is to without power, so that what its coil lacks excuses nothing, and it is not to be called for.</summary>
    internal bool IsSeenShut => State == NormalState.Open && (Throttles || IsWarmerBehind || Readings.PassesWhenOpen == false);

    /// <summary>Whether its coil leaves it shut while nothing is to pass: a normally closed one unless it has power without a call, a normally open one only where volts are sure that hold it against the flow, which a magnet that pulls does not show. Null where that cannot be told, as of one whose state is not known.</summary>
    internal bool? IsLeftShut => State switch
    {
        NormalState.Closed => !IsFedUncalled,
        NormalState.Open when Readings.CircuitCalls != false && (IsFed == true || (HasWorkingVolts == true && Readings.MagnetPulls == true)) => true,
        _ => null,
    };

    /// <summary>Whether its coil has power though nothing calls for it: by its magnet, or by volts that it works at. A few volts, as electronic switches leak, hold nothing where the magnet does not pull; null where it was not felt, or where good volts move no magnet.</summary>
    private bool? IsFedUncalled => Readings.CircuitCalls != false ? false : (IsSupplied, HasWorkingVolts, Readings.MagnetPulls) switch
    {
        (false, _, _) or (null, _, not true) or (true, false, false) => false,
        (_, _, true) or (_, true, null) => true,
        _ => null,
    };

    /// <summary>Whether there are volts at its coil that it works at, or more; null where they were not read, or its own are not known.</summary>
    private bool? HasWorkingVolts => Volts is { } volts && Coil is { } coil ? !IsOnOtherCurrent && Within.AtLeast(volts, coil.Low * SolenoidCoils.Window.Least) : null;

    private List<CoilMade> Coils => CoilFacet.Of(Measured.CoilVolts, Measured.CoilCurrent, Measured.CoilFrequency, New?.FurtherCoils) is var facet ? [.. facet.Own, .. facet.Further] : [];
}
