using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers;
using UnitsNet;

namespace PartsMatch.Demo.DefrostTimers;

/// <summary>A line of defrost timers: what is alike in it, and how much of the catalogue it fills.</summary>
/// <param name="Title">What a counter calls them.</param>
/// <param name="Share">How many parts the catalogue has of them.</param>
/// <param name="Price">What one costs, roughly.</param>
/// <param name="Draw">Draws one.</param>
public sealed record DefrostTimerLine(string Title, int Share, double Price, Func<Draw, DefrostTimerSpec> Draw);

/// <summary>The lines: programmes, spans and contact ratings are such as the trade has, from memory, unchecked; terminal marks and box patterns are invented; pilot duties are the published designations.</summary>
public static class DefrostTimerLines
{
    private const string OneLetter = "common 2, clock 1, heater 3, fans 4, release X";
    private const string OtherWay = "common N, clock 6, heater 4, fans 5, release 7";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<DefrostTimerLine> All { get; } =
    [
        new("Defrost timer, 24-hour", 34, 96, OfTheDay),
        new("Defrost timer mechanism, 24-hour", 20, 74, draw => OfTheDay(draw) with { Body = TimerBody.Mechanism }),
        new("Defrost timer, running time", 26, 28, OfRunningTime),
        new("Defrost timer, two-pole", 18, 148, OfTwoPoles),
        new("Defrost timer, pressure-ended", 8, 122, OfPressure),
        new("Defrost timer, 50 Hz", 14, 104, draw => OfTheDay(draw) with { ClockVolts = Volts("220-240 V"), ClockFrequency = Hertz(draw.Of(("50 Hz", 7), ("50/60 Hz", 3))), ReleaseVolts = Volts("220-240 V"), ReleaseFrequency = Hertz("50/60 Hz") }),
    ];

    private static DefrostTimerSpec OfTheDay(Draw draw)
    {
        var (volts, terminals, pattern) = draw.Of((("208-240 V", OneLetter, "DX"), 6), (("120 V", OneLetter, "DX"), 3), (("120/240 V", OtherWay, "PL"), 2), (("208-240 V", OtherWay, "PL"), 3));
        var (starts, span) = draw.Of((("1 to 6 a day", "4 to 110 min"), 6), (("1 to 8 a day", "2 to 60 min"), 2), (("2 to 12 a day", "4 to 60 min"), 2));
        return Rated(draw) with
        {
            ClockVolts = Volts(volts),
            ClockFrequency = Hertz("60 Hz"),
            Clock = ClockKind.TimeOfDay,
            Starts = TradeText.Read<StartsADay>(starts),
            FailSafe = TradeText.Read<MinutesSpan>(span),
            EndedBy = draw.Of((new Choices<DefrostEnd>(DefrostEnd.Time, DefrostEnd.Temperature), 8), (new Choices<DefrostEnd>(DefrostEnd.Temperature), 2)),
            ReleaseVolts = Volts(volts),
            ReleaseFrequency = Hertz("60 Hz"),
            ContactsFor = draw.Of((new Choices<TimerContact>(TimerContact.Heater, TimerContact.Fans), 7), (new Choices<TimerContact>(TimerContact.Heater, TimerContact.Fans, TimerContact.FanDelay), 3)),
            Poles = 1,
            Terminals = TradeText.Read<TerminalMap>(terminals),
            Body = TimerBody.Boxed,
            BoxPattern = pattern,
        };
    }

    /// <summary>Those of reach-ins: a motor that turns while the compressor runs, and a cam of one length.</summary>
    private static DefrostTimerSpec OfRunningTime(Draw draw)
    {
        var volts = draw.Of(("120 V", 7), ("208-240 V", 3));
        var (starts, minutes) = draw.Of((("4 a day", "21 min"), 3), (("3 a day", "25 min"), 3), (("2 a day", "30 min"), 2), (("4 a day", "30 min"), 2));
        return new()
        {
            ClockVolts = Volts(volts),
            ClockFrequency = Hertz("60 Hz"),
            Clock = ClockKind.RunningTime,
            Starts = TradeText.Read<StartsADay>(starts),
            FailSafe = TradeText.Read<MinutesSpan>(minutes),
            EndedBy = new(DefrostEnd.Time),
            ContactsFor = new(TimerContact.Heater, TimerContact.Compressor),
            Poles = 1,
            RatedVolts = TradeText.Read<Figures<ElectricPotential>>("120/240 V"),
            ResistiveAmps = Amps("15 A"),
            FullLoadAmps = Amps("10/5 A"),
            LockedRotorAmps = Amps("60/30 A"),
            PilotDuty = new(draw.Of(("B300", 4), ("C300", 6))),
            Contacts = draw.Of((ContactEnclosure.Open, 9), (ContactEnclosure.Sealed, 1)),
            Terminals = TradeText.Read<TerminalMap>(draw.Of(("common 3, clock 1, heater 2, compressor 4", 7), ("common 1, clock 3, heater 4, compressor 2", 3))),
            Body = TimerBody.Mechanism,
            BoxPattern = draw.Of(("RC", 6), ("RT", 4)),
        };
    }

    private static DefrostTimerSpec OfTwoPoles(Draw draw) => OfTheDay(draw) with
    {
        Starts = TradeText.Read<StartsADay>(draw.Of(("1 to 12 a day", 6), ("2 to 24 a day", 4))),
        FailSafe = TradeText.Read<MinutesSpan>(draw.Of(("2 to 110 min", 5), ("6 to 180 min", 5))),
        ContactsFor = new(TimerContact.Heater, TimerContact.Fans, TimerContact.Compressor, TimerContact.FanDelay, TimerContact.PumpDown),
        Poles = 2,
        Terminals = TradeText.Read<TerminalMap>("common 1, clock N, heater 3, fans 5, compressor 4, release X"),
        BoxPattern = "WT",
    };

    private static DefrostTimerSpec OfPressure(Draw draw) => OfTheDay(draw) with
    {
        EndedBy = draw.Of((new Choices<DefrostEnd>(DefrostEnd.Time, DefrostEnd.Pressure), 5), (new Choices<DefrostEnd>(DefrostEnd.Pressure), 5)),
        ReleaseVolts = null,
        ReleaseFrequency = null,
        Terminals = TradeText.Read<TerminalMap>("common 2, clock 1, heater 3, fans 4"),
        BoxPattern = "DP",
    };

    private static DefrostTimerSpec Rated(Draw draw)
    {
        var (resistive, full, locked) = draw.Of((("40 A", "20/12 A", "120/72 A"), 5), (("30 A", "16/10 A", "96/60 A"), 4), (("40 A", "24 A", "144 A"), 1));
        return new()
        {
            RatedVolts = TradeText.Read<Figures<ElectricPotential>>("120/240 V"),
            ResistiveAmps = Amps(resistive),
            FullLoadAmps = Amps(full),
            LockedRotorAmps = Amps(locked),
            PilotDuty = new(draw.Of(("A300", 7), ("B300", 3))),
            Contacts = ContactEnclosure.Open,
        };
    }

    private static Figures<Spread<ElectricPotential>> Volts(string text) => TradeText.Read<Figures<Spread<ElectricPotential>>>(text);

    private static Figures<Frequency> Hertz(string text) => TradeText.Read<Figures<Frequency>>(text);

    private static Figures<ElectricCurrent> Amps(string text) => TradeText.Read<Figures<ElectricCurrent>>(text);
}
