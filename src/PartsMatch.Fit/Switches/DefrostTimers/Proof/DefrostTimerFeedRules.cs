using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Proof;

/// <summary>Is there enough before its heater contact to pass on?</summary>
/// <remarks>Without volts there its terminal is dead, closed or not. Too few that stand are mended though it closes: heat goes with the square of the volts. None before a contact whose terminal was seen live are a feed that was lost since, or measured wrong, and any that the heaters' amps are too many for were measured wrong.</remarks>
public sealed class HeaterContactIsFed() : ReadingRule<DefrostTimerCase>("Volts before the heater contact", DefrostTimerReadingSources.TimerContacts)
{
    /// <summary>How it is asked for the volts of the heaters' line.</summary>
    internal const string WhatTheyGet = "Find out what volts the heaters there get: those before the heater contact are told from stray ones, and from a bad feed, by them.";

    /// <summary>How it is asked whether volts are stray ones.</summary>
    internal const string WhetherTheyStand = "Hang a lamp for the line's volts, or a meter of few ohms, on the volts before the heater contact: do they stand? Stray ones break down under a load, those of a bad feed stay.";

    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one) => (one.Readings.HeaterContactCloses, one.HeaterContactFeed, one.FeedStands) switch
    {
        (true, VoltsAt.None or VoltsAt.Wrong, _) when one.TakesMoreThanFed => Ruling.CantTell($"{one.BeforeHeaterContact:0.#} V before its heater contact do not go with the amps of the heaters, which take all that is due.").ThenRead("commonVolts", "The heaters take all the amps that are due, more than the volts read before their contact drive: measure these again in defrost, from the common to the heaters' other line."),
        (false, VoltsAt.None, false) when one.BeforeHeaterContact > 0 => Ruling.Bad($"{one.BeforeHeaterContact:0.#} V before its heater contact break down under a load: they are stray ones, and nothing feeds it. Look up the circuit, a fuse or a contact before it.").NotThePart(),
        (false, VoltsAt.None, _) => Ruling.Bad($"There are no volts before its heater contact: look up the circuit, a fuse or a contact before it.").NotThePart(),
        (false, VoltsAt.Wrong, true) => Ruling.Bad($"{TooFew(one)}: mend its feed, a line that is lost or a bad joint, and see again whether it closes.").NotThePart(),
        (_, VoltsAt.Wrong, true) or (true, VoltsAt.None, true) when one.BeforeHeaterContact > 0 => Ruling.Bad($"{TooFew(one)}: {Heat(one)} Mend its feed, a line that is lost or a bad joint."),
        (true, VoltsAt.None, var stand) => Ruling.Bad($"{one.BeforeHeaterContact:0.#} V before its heater contact {(stand == false && one.BeforeHeaterContact > 0 ? "break down under a load" : "are none to speak of")}, though its terminal was seen live: measure both again in defrost."),
        (true, VoltsAt.Wrong, null) => Ruling.CantTell($"{one.BeforeHeaterContact:0.#} V before its heater contact are under 85 % of the {one.HeaterLine:0.#} V there: stray ones, or a bad feed.").ThenRead("commonVoltsStand", WhetherTheyStand),
        (true, null, _) when one.BeforeHeaterContact is { } before => Ruling.CantTell($"{before:0.#} V before its heater contact; whether they are all that the heaters' line has is not known.").ThenRead("loadVolts", WhatTheyGet, Side.Site),
        _ => null,
    };

    private static string TooFew(DefrostTimerCase one) => FormattableString.Invariant($"{one.BeforeHeaterContact:0.#} V stand before its heater contact under a load, under 85 % of the {one.HeaterLine:0.#} V there");

    /// <summary>What the heaters give, by the square of the volts: of their own where those are known, for that is what their watts are at.</summary>
    private static string Heat(DefrostTimerCase one)
    {
        var made = one.Need.Site.HeaterOwnVolts?.Volts ?? one.HeaterLine!.Value;
        var percent = 100 * Math.Pow(one.BeforeHeaterContact!.Value / made, 2);
        return FormattableString.Invariant($"heaters for {made:0.#} V give {(percent < 1 ? "under 1" : FormattableString.Invariant($"{percent:0}"))} % of their heat so.");
    }
}

/// <summary>Has its clock the volts that it is made for?</summary>
/// <remarks>Under a tenth of them nothing is there, and under 90 % it need not turn; over 110 % they are mended, and excuse no clock that stands still. Wrong ones are told of a clock that turns as well: they stop or burn it later.</remarks>
public sealed class ClockIsFed() : ReadingRule<DefrostTimerCase>("Volts at its clock", DefrostTimerReadingSources.TimerClock)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one)
    {
        if (one.Readings.ClockVoltsThere is not { } read) return null;
        FormattableString limit = $"from 90 to 110 % of its volts";
        return (DefrostTimerCase.Against(read, one.Measured.ClockVolts, TimerCoils.Clock), one.Readings.ClockTurns) switch
        {
            (VoltsAt.None, not true) => Ruling.Bad($"There are no volts at its clock: look up the circuit, a fuse or a contact before it.", limit).NotThePart(),
            (VoltsAt.Wrong, not true) => Wrong().NotThePart(),
            (VoltsAt.Wrong or VoltsAt.Over, _) => Wrong(),
            _ => null,
        };

        Ruling Wrong() => Ruling.Bad($"{read.Legs[0].Volts:0.#} V at a clock for {Deducing.Text(one.Measured.ClockVolts!)}: mend the supply first.", limit);
    }
}

/// <summary>Has its release solenoid the volts that it is made for?</summary>
/// <remarks>Under a tenth of them nothing is there, and under 85 % it need not pull; over 110 % they are mended, and excuse none that does not. Wrong ones are told of one that pulls as well.</remarks>
public sealed class ReleaseIsFed() : ReadingRule<DefrostTimerCase>("Volts at its release", DefrostTimerReadingSources.TimerRelease)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one)
    {
        if (one is not { Readings.ReleaseVoltsThere: { } read, EndsByTemperature: not false }) return null;
        FormattableString limit = $"from 85 to 110 % of its volts";
        return (DefrostTimerCase.Against(read, one.ReleaseVolts, TimerCoils.Release), one.Readings.ReleasePulls) switch
        {
            (VoltsAt.None, not true) => Ruling.Bad($"There are no volts at its release: look up the switch on the coil and its wires.", limit).NotThePart(),
            (VoltsAt.Wrong, not true) => Wrong().NotThePart(),
            (VoltsAt.Wrong or VoltsAt.Over, _) => Wrong(),
            _ => null,
        };

        Ruling Wrong() => Ruling.Bad($"{read.Legs[0].Volts:0.#} V at a release solenoid for {Deducing.Text(one.ReleaseVolts!)}: mend its circuit first.", limit);
    }
}
