using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.DefrostTimers.Proof;

/// <summary>A defrost timer and what was read at it.</summary>
/// <param name="Need">The old one and its place.</param>
/// <param name="Readings">The readings.</param>
/// <param name="New">The new one; null before the swap.</param>
public sealed record DefrostTimerCase(DefrostTimerNeed Need, DefrostTimerReadings Readings, DefrostTimerSpec? New = null)
{
    /// <summary>The one the readings were taken at.</summary>
    public DefrostTimerSpec Measured => New ?? Need.Plate;

    /// <summary>Whether a switch on the coil ends the defrost; null when not known.</summary>
    internal bool? EndsByTemperature => Need.Site.EndedThereBy is { } end ? end == DefrostEnd.Temperature : Measured.KnownEnds is { } ends && !ends.Contains(DefrostEnd.Temperature) ? false : null;

    /// <summary>Whether anything but its clock may end a defrost as it is advanced by hand: a switch on the coil that is wired to it, or bellows in it, whatever is wired.</summary>
    internal bool MayBeThrownBack => Need.Site.EndedThereBy switch
    {
        null => Measured.KnownEnds is not [DefrostEnd.Time],
        DefrostEnd.Time => Measured.KnownEnds?.Contains(DefrostEnd.Pressure) == true,
        _ => true,
    };

    /// <summary>What its release solenoid is made for: of the old one as it was fed, of the new one by its marking alone.</summary>
    internal Taps? ReleaseVolts => New is null ? Need.Plate.ReleaseLine : New.ReleaseVolts;

    /// <summary>Volts before its heater contact, V; null when not read.</summary>
    internal double? BeforeHeaterContact => Readings.CommonVolts?.Legs.Min(leg => leg.Volts);

    /// <summary>Volts of the heaters' line, V: those there, else their own; null when neither is known.</summary>
    internal double? HeaterLine => (Need.Site.LoadVolts ?? Need.Site.HeaterOwnVolts)?.Volts;

    /// <summary>Whether the volts before its heater contact stand under a load: by amps, which no stray ones drive, else as it was seen; null when neither tells. What flows though the contact stays open flows some other way.</summary>
    internal bool? FeedStands => Readings.HeaterContactCloses != false && Readings.HeaterAmpsThere?.Legs.Min(leg => leg.Amperes) > 0 ? true : Readings.CommonVoltsStand;

    /// <summary>Amps of the heaters over those due at the line's volts; null when one is not known.</summary>
    internal double? HeaterAmpsShare => Readings.HeaterAmpsThere is { } read && Need.Site.HeaterAmps is { Amperes: > 0 and var due } ? read.Legs.Min(leg => leg.Amperes) / due : null;

    /// <summary>Whether the heaters take all that is due at the line's volts, and more than the volts read before their contact drive: then these are not what they are fed.</summary>
    internal bool TakesMoreThanFed => Readings.HeaterContactCloses != false && HeaterAmpsShare is { } share && Within.AtLeast(share, 1 - HeaterAmps.Off) && (IsThreePhase || !Within.AtMost(share, (1 + HeaterAmps.Off) * ReadShare));

    /// <summary>The share of the line's volts that the heaters are fed; 1 where that was not read under a load, where their amps show another than was read, and of three-phase ones, whose amps no line that is lost takes down alike.</summary>
    internal double HeatersFedShare => FeedStands == true && BeforeHeaterContact > 0 && Need.Site.LoadVolts is not null && !IsThreePhase && !TakesMoreThanFed ? ReadShare : 1;

    /// <summary>Volts before its heater contact against those of the heaters' line: none under a tenth, right from 85 % on; stray ones that break down under a load are none. As long as the line was not measured it is taken for the heaters' own volts; what lies between tells nothing then. Null when not read, or when that cannot be told: the clock's volts tell nothing of the heaters', which may hang on another line.</summary>
    internal VoltsAt? HeaterContactFeed => (BeforeHeaterContact, HeaterLine) switch
    {
        (null, _) => null,
        ( <= 0, _) => VoltsAt.None,
        _ when FeedStands == false => VoltsAt.None,
        (_, null) => null,
        var (there, line) when !Within.AtLeast(there.Value, NoVoltsShare * line.Value) => VoltsAt.None,
        var (there, line) when Within.AtLeast(there.Value, FedShare * line.Value) => VoltsAt.Right,
        _ => Need.Site.LoadVolts is null ? null : VoltsAt.Wrong,
    };

    private bool IsThreePhase => Need.Site.LoadPhase == Phases.Three;

    /// <summary>Volts before its heater contact over those of the heaters' line; 1 when one is not known.</summary>
    private double ReadShare => BeforeHeaterContact / HeaterLine ?? 1;

    /// <summary>Volts against a marking: null when one of the two is not known.</summary>
    internal static VoltsAt? Against(Measured<ElectricPotential>? read, Taps? marked, CoilWindow window)
    {
        if (read is null || marked is null) return null;
        var volts = Rounded.To(read.Legs.Min(leg => leg.Volts), 1);
        var all = TimerCoils.Of(marked, null).Own;
        if (!Within.AtLeast(volts, NoVoltsShare * all.Min(one => one.Low))) return VoltsAt.None;
        if (all.Any(one => CoilOnSupply.FitsVolts(one, volts, window))) return VoltsAt.Right;
        return all.All(one => volts > window.Of(one).High) ? VoltsAt.Over : VoltsAt.Wrong;
    }

    /// <summary>Under this share of the marked volts nothing is there (practice).</summary>
    private const double NoVoltsShare = 0.1;

    /// <summary>From this share of the line's volts on a contact is fed; an open wire may show fewer to a meter of many ohms (practice).</summary>
    private const double FedShare = 0.85;
}

/// <summary>What volts are against a marking.</summary>
internal enum VoltsAt
{
    /// <summary>None to speak of.</summary>
    None,

    /// <summary>Too few, or between two windows.</summary>
    Wrong,

    /// <summary>Within its window.</summary>
    Right,

    /// <summary>More than it takes: they burn it, and move it as long as it is good.</summary>
    Over,
}
