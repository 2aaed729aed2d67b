using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.DefrostTimers.Proof;

/// <summary>Does its clock turn?</summary>
/// <remarks>With volts from 90 to 110 % of its own it must; more burn it.</remarks>
public sealed class ClockTurns() : ReadingRule<DefrostTimerCase>("Clock", DefrostTimerReadingSources.TimerClock)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one)
    {
        if (one.Readings.ClockTurns is null && one.Readings.ClockVoltsThere is null) return null;
        if (one.Readings.ClockTurns == true) return Ruling.Good($"Its clock turns.");
        if (one.Readings.ClockVoltsThere is not { } read) return Ruling.Bad($"Its clock stands still.").ThenRead("clockVoltsThere", "Measure the volts at its clock terminals: without them no clock turns.");
        FormattableString limit = $"from 90 to 110 % of its volts";
        return (DefrostTimerCase.Against(read, one.Measured.ClockVolts, TimerCoils.Clock), one.Readings.ClockTurns) switch
        {
            (null, false) => Ruling.Bad($"Its clock stands still; what it is made for is not known.", limit).ThenRead("clockVolts", "Read the volts of its clock off the plate.", Side.Plate),
            (null, _) => Ruling.CantTell($"What its clock is made for is not known.", limit).ThenRead("clockVolts", "Read the volts of its clock off the plate.", Side.Plate),
            (VoltsAt.None or VoltsAt.Wrong, _) => null,
            (_, null) => Ruling.CantTell($"Its clock has volts enough.", limit).ThenRead("clockTurns", "Mark the dial, and look again after a quarter of an hour: does it turn?"),
            (VoltsAt.Over, _) => Ruling.Bad($"Its clock has more volts than it is made for, and stands still: it is burnt.", limit).ThePartHasFailed(),
            _ => Ruling.Bad($"Its clock has its volts and stands still.", limit).ThePartHasFailed(),
        };
    }
}

/// <summary>Does its heater contact close as it is advanced by hand?</summary>
/// <remarks>Its terminal is dead as well where nothing comes to the contact, so that the line's volts before it alone condemn it: an open wire shows stray ones. They do only where the timer stood in defrost.</remarks>
public sealed class HeaterContactCloses() : ReadingRule<DefrostTimerCase>("Heater contact", DefrostTimerReadingSources.TimerContacts)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one) => (one.Readings.HeaterContactCloses, one.HeaterContactFeed) switch
    {
        (null, _) or (false, VoltsAt.None) => null,
        (false, VoltsAt.Wrong) when one.Readings.CommonVoltsStand == true => null,
        (true, _) => Ruling.Good($"Its heater contact closes in defrost."),
        _ when AdvancedByHand.StoodInDefrost(one) == false => AdvancedByHand.ToBeReadAgain(one, "heaterContactCloses", "its heater terminal has no volts"),
        (_, VoltsAt.Right) when AdvancedByHand.StoodInDefrost(one) is null => AdvancedByHand.OrReleased("its heater terminal has no volts, with volts before the contact: it stays open"),
        (_, VoltsAt.Right) => Ruling.Bad($"Advanced into defrost, its heater contact stays open, with volts before it.").ThePartHasFailed(),
        (_, VoltsAt.Wrong) => Ruling.Bad($"Advanced into defrost, its heater terminal has no volts, and {one.BeforeHeaterContact:0.#} V stand before the contact, under 85 % of the {one.Need.Site.LoadVolts!.Value.Volts:0.#} V there: stray ones, or a bad feed.").ThenRead("commonVoltsStand", HeaterContactIsFed.WhetherTheyStand),
        _ when one.Readings.CommonVolts is null => Ruling.Bad($"Advanced into defrost, its heater terminal has no volts.").ThenRead("commonVolts", "Its heater terminal is dead in defrost: measure the volts at the common that feeds the heater contact. With none there it is a fuse or a contact before it."),
        _ => Ruling.Bad($"Advanced into defrost, its heater terminal has no volts; whether those before the contact are more than stray ones is not known.").ThenRead("loadVolts", HeaterContactIsFed.WhatTheyGet, Side.Site),
    };
}

/// <summary>Does its fan contact open as it is advanced by hand?</summary>
public sealed class FanContactOpens() : ReadingRule<DefrostTimerCase>("Fan contact", DefrostTimerReadingSources.TimerContacts)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one) => (one.Readings.FanContactOpens, AdvancedByHand.StoodInDefrost(one)) switch
    {
        (null, _) => null,
        (true, _) => Ruling.Good($"Its fan contact opens in defrost."),
        (_, null) => AdvancedByHand.OrReleased("its fan contact stays closed: it is welded"),
        (_, false) => AdvancedByHand.ToBeReadAgain(one, "fanContactOpens", "its fan contact stays closed"),
        _ => Ruling.Bad($"Advanced into defrost, its fan contact stays closed: it is welded.").ThePartHasFailed(),
    };
}

/// <summary>Does its release solenoid end a defrost?</summary>
/// <remarks>With volts from 85 to 110 % of its own it must, and more burn it; of no matter where no switch on the coil feeds it.</remarks>
public sealed class ReleasePulls() : ReadingRule<DefrostTimerCase>("Release solenoid", DefrostTimerReadingSources.TimerRelease)
{
    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one)
    {
        if (one.Readings.ReleasePulls is null && one.Readings.ReleaseVoltsThere is null) return null;
        if (one.EndsByTemperature == false) return Ruling.NotApplicable($"No switch on the coil feeds its release.");
        if (one.Readings.ReleasePulls == true) return Ruling.Good($"Its release solenoid ends the defrost.");
        if (one.Readings.ReleaseVoltsThere is not { } read) return Ruling.Bad($"Its release solenoid does not pull.").ThenRead("releaseVoltsThere", "Measure the volts at its release terminal with the switch on the coil closed.");
        FormattableString limit = $"from 85 to 110 % of its volts";
        return (DefrostTimerCase.Against(read, one.ReleaseVolts, TimerCoils.Release), one.Readings.ReleasePulls) switch
        {
            (null, false) => Ruling.Bad($"Its release solenoid does not end the defrost; what it is made for is not known.", limit).ThenRead("releaseVolts", "Read the volts of its release solenoid off the plate.", Side.Plate),
            (null, _) => Ruling.CantTell($"What its release solenoid is made for is not known.", limit).ThenRead("releaseVolts", "Read the volts of its release solenoid off the plate.", Side.Plate),
            (VoltsAt.None or VoltsAt.Wrong, _) => null,
            (_, null) => Ruling.CantTell($"Its release solenoid has volts enough.", limit).ThenRead("releasePulls", "Does it end the defrost?"),
            (VoltsAt.Over, _) => Ruling.Bad($"Its release solenoid has more volts than it is made for, and does not end the defrost: it is burnt.", limit).ThePartHasFailed(),
            _ => Ruling.Bad($"Its release solenoid has its volts and does not end the defrost.", limit).ThePartHasFailed(),
        };
    }
}

/// <summary>Do the heaters take what they should?</summary>
/// <remarks>Within a tenth of watts over volts, at the volts there (practice); edges included.</remarks>
public sealed class HeaterAmps() : ReadingRule<DefrostTimerCase>("Heater amps", DefrostTimerReadingSources.DefrostHeaterAmps)
{
    /// <summary>Amps may be off by this share.</summary>
    internal const double Off = 0.1;

    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one)
    {
        if (one.Readings.HeaterAmpsThere is null) return null;
        if (Of(one) is not { } amps) return Asking(one.Need.Site, Ruling.CantTell($"What the heaters should take is not known."));
        FormattableString limit = $"{amps.Due:0.##} A within a tenth";
        if (Within.Span(amps.Share, 1 - Off, 1 + Off)) return Ruling.Good($"The heaters take {amps.There:0.##} A; {amps.Due:0.##} A are their watts over their volts, at the volts there.", limit);
        return amps.Share < 1
            ? Ruling.Bad($"The heaters take {amps.There:0.##} A; {amps.Due:0.##} A are due: one of them is open or made for higher volts, or a contact before it is open.", limit)
            : Ruling.Bad($"The heaters take {amps.There:0.##} A; {amps.Due:0.##} A are due: more hangs on the contact than was named, or they are made for lower volts.", limit);
    }

    private static Ruling Asking(DefrostTimerSite site, Ruling open) => site switch
    {
        { HeaterPower: null } => open.ThenRead("heaterPower", "Read watts and volts off the heaters' plate, and measure the volts they get.", Side.Site),
        { LoadVolts: null } => open.ThenRead("loadVolts", "Measure the volts that the heaters get: at other volts than their own they take other amps.", Side.Site),
        { LoadPhase: null } => open.ThenRead("loadPhase", "See whether the heaters hang on one phase or on three: that tells the amps of a line.", Side.Site),
        _ => open.ThenRead("heaterAmps", "Find out what the heaters take: on their plate, or in the equipment's papers.", Side.Site),
    };

    /// <summary>Amps there, amps due, and the one over the other; null when one is not known.</summary>
    internal static (double There, double Due, double Share)? Of(DefrostTimerCase one) =>
        one.HeaterAmpsShare is { } ofLine && one.Need.Site.HeaterAmps is { } amps && one.HeatersFedShare is var fed ? (ofLine * amps.Amperes, fed * amps.Amperes, ofLine / fed) : null;
}

/// <summary>Where does one begin?</summary>
public sealed class FirstReading() : ReadingRule<DefrostTimerCase>("First reading", DefrostTimerReadingSources.TimerClock)
{
    /// <summary>Moves it by hand.</summary>
    internal const string Advance = "Advance it by hand into defrost, on a frosted coil where more than its clock ends the defrost: does its heater contact close?";

    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one) => one.Readings switch
    {
        { ClockTurns: null, ClockVoltsThere: null } => Ruling.Read("clockTurns", "Mark the dial against its pointer: does its clock turn?"),
        { HeaterContactCloses: null } => Ruling.Read("heaterContactCloses", Advance),
        { FanContactOpens: null } => Ruling.Read("fanContactOpens", "In defrost: does its fan contact open?"),
        _ => null,
    };
}
