using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.DefrostTimers.Proof;

/// <summary>Does its dial show the time of day?</summary>
public sealed class TimeOfDay() : ReadingRule<DefrostTimerCase>("Time of day", DefrostTimerReadingSources.TimerSet)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one) => (one.Readings.TimeOfDaySet, one.Measured.Clock) switch
    {
        (null, _) => null,
        (_, ClockKind.RunningTime) => Ruling.NotApplicable($"Its clock counts the hours that the compressor runs, and has no time of day."),
        (true, _) => Ruling.Good($"Its dial shows the time of day."),
        _ => Ruling.Bad($"Its dial does not show the time of day: its defrosts fall when the box is busy."),
    };
}

/// <summary>Are its starts set as the coil needs them?</summary>
public sealed class StartsAsNeeded() : ReadingRule<DefrostTimerCase>("Starts a day", DefrostTimerReadingSources.TimerSet)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one)
    {
        if (one.Readings.StartsSet is not { } set) return null;
        if (one.Need.Site.StartsNeeded is not { } needed) return Ruling.CantTell($"{set} starts are set; how many the coil needs is not known.").ThenRead("startsNeeded", "Find out how many defrosts a day the coil needs: as the old one was set, or in the equipment's papers.", Side.Site);
        FormattableString limit = $"{needed} a day";
        return set == needed ? Ruling.Good($"{set} starts are set, as needed.", limit) : Ruling.Bad($"{set} starts are set; {needed} are needed.", limit);
    }
}

/// <summary>Is its fail-safe set long enough?</summary>
/// <remarks>At least the minutes needed, and where a switch on the coil ends the defrost, longer than the defrost took.</remarks>
public sealed class FailSafeAsNeeded() : ReadingRule<DefrostTimerCase>("Fail-safe", DefrostTimerReadingSources.TimerSet)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one)
    {
        if (one.Readings.FailSafeSet is not { Figure: var set }) return null;
        if (one.Need.Site.MinutesNeeded is not { Figure: var needed }) return Ruling.CantTell($"It is set to {set:0.#} min; how long the longest defrost takes is not known.").ThenRead("minutesNeeded", "Time a defrost of the frosted coil.", Side.Site);
        FormattableString limit = $"at least {needed:0.#} min";
        return Within.AtLeast(set, needed) ? Ruling.Good($"It is set to {set:0.#} min; {needed:0.#} min are needed.", limit) : Ruling.Bad($"It is set to {set:0.#} min; {needed:0.#} min are needed: frost stays, and turns to ice.", limit);
    }
}

/// <summary>Did the switch on the coil end the defrost before the fail-safe?</summary>
public sealed class EndedInTime() : ReadingRule<DefrostTimerCase>("End of defrost", DefrostTimerReadingSources.DefrostSeenThrough)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one)
    {
        if (one.Readings is not { DefrostTook.Figure: var took }) return null;
        if (one.Readings.FailSafeSet is not { Figure: var set }) return Ruling.CantTell($"The defrost took {took:0.#} min; what the fail-safe is set to was not read.").ThenRead("failSafeSet", "Read the minutes that the fail-safe is set to.");
        FormattableString limit = $"under {set:0.#} min";
        return (one.EndsByTemperature, took < set) switch
        {
            (false, _) => Ruling.NotApplicable($"Time or pressure ends the defrost: {took:0.#} min of {set:0.#} min.", limit),
            (null, _) => Ruling.CantTell($"The defrost took {took:0.#} min of {set:0.#} min; whether a switch on the coil ends it is not known.", limit).ThenRead("endedThereBy", "See whether a switch on the coil is wired to the release terminal.", Side.Site),
            (_, true) => Ruling.Good($"The defrost took {took:0.#} min: the switch on the coil ended it before the fail-safe of {set:0.#} min.", limit),
            _ => Ruling.Bad($"The defrost took {took:0.#} min, as long as the fail-safe of {set:0.#} min: the switch on the coil did not end it.", limit),
        };
    }
}

/// <summary>Do the fans stand still in defrost, and start after their delay?</summary>
public sealed class FansThrough() : ReadingRule<DefrostTimerCase>("Fans", DefrostTimerReadingSources.DefrostSeenThrough)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one) => (one.Readings.FansOff, one.Readings.FansStartAfterDelay) switch
    {
        (null, null) => null,
        (false, _) => Ruling.Bad($"The fans run in defrost: they blow the heat into the box."),
        (_, false) => Ruling.Bad($"The fans do not start after their delay: look up the fan-delay switch; on a warm coil it is right that they wait."),
        (true, true) => Ruling.Good($"The fans stand still in defrost, and start after their delay."),
        (true, _) => Ruling.CantTell($"The fans stand still in defrost.").ThenRead("fansStartAfterDelay", "After the defrost: do the fans start once the coil is cold?"),
        _ => Ruling.CantTell($"The fans start after their delay.").ThenRead("fansOff", "In defrost: do the fans stand still?"),
    };
}

/// <summary>Was the next defrost seen through?</summary>
public sealed class NextDefrost() : ReadingRule<DefrostTimerCase>("Next defrost", DefrostTimerReadingSources.DefrostSeenThrough)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one) => one.Readings.SeenThrough switch
    {
        null => null,
        true => Ruling.Good($"The next defrost started and ended by itself, and the coil was clear."),
        false => Ruling.CantTell($"The next defrost was not seen through: look in after it is due."),
    };
}
