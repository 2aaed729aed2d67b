using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.DefrostTimers.Proof;

/// <summary>Is it the defrost timer, and is the new one right?</summary>
public static class DefrostTimerProof
{
    private const string BurnsOrStops = "Mend the supply before a new timer goes in: too many volts burn that one as well, and too few stop it.";

    private const string IcesUp = "Mend what feeds the heaters: a coil that is heated too little ices up, whatever the timer.";

    /// <summary>The rules before: what condemns it by itself stands before what clears it, and both before what asks. What it is fed stands in rules of its own, for a dead feed clears none of what hangs on another.</summary>
    public static IReadOnlyList<ReadingRule<DefrostTimerCase>> Before { get; } = [new HeaterContactCloses(), new FanContactOpens(), new DropAcrossContact(), new ClockTurns(), new ReleasePulls(), new HeaterContactIsFed(), new ClockIsFed(), new ReleaseIsFed(), new HeaterAmps(), new FirstReading()];

    /// <summary>The rules after, in the order in which the readings are taken.</summary>
    public static IReadOnlyList<ReadingRule<DefrostTimerCase>> After { get; } = [new ClockIsFed(), new ClockTurns(), new TimeOfDay(), new StartsAsNeeded(), new FailSafeAsNeeded(), new HeaterContactIsFed(), new HeaterContactCloses(), new FanContactOpens(), new DropAcrossContact(), new ReleaseIsFed(), new ReleasePulls(), new HeaterAmps(), new EndedInTime(), new FansThrough(), new NextDefrost()];

    /// <summary>Whether the old one has failed.</summary>
    public static Diagnosis Diagnose(DefrostTimerNeed need, DefrostTimerReadings readings)
    {
        var one = new DefrostTimerCase(need, readings);
        return Diagnosis.Of(Before, one, [.. new[] { FedWrong(one, new ClockIsFed(), "clockFedWrong", BurnsOrStops), FedWrong(one, new ReleaseIsFed(), "releaseFedWrong", BurnsOrStops), FedWrong(one, new HeaterContactIsFed(), "heatersFedWrong", IcesUp), OpenHeater(one) }.OfType<MendFirst>()]);
    }

    /// <summary>Whether the new one defrosts as it should.</summary>
    public static AfterSwapReport Report(DefrostTimerNeed need, DefrostTimerSpec part, DefrostTimerReadings readings)
    {
        var one = new DefrostTimerCase(need, readings, part);
        return new([.. After.Select(rule => rule.CheckOf(rule.Judge(one))).OfType<ReadingCheck>()], [], []);
    }

    private static MendFirst? FedWrong(DefrostTimerCase one, ReadingRule<DefrostTimerCase> feed, string name, string mend) => feed.Judge(one) is { Concludes: null, Verdict: ReadingVerdict.Bad } wrong
        ? new(name, wrong.Sentence, mend, feed.Source)
        : null;

    private static MendFirst? OpenHeater(DefrostTimerCase one) => HeaterAmps.Of(one) is { Share: > 0 and < 1 - HeaterAmps.Off and var share }
        ? new("heaterOpen", FormattableString.Invariant($"The heaters take {share * 100:0} % of their amps."), "See on their plates that they are made for the volts there, and find the heater that is open, by ohms with its wires off: a coil that is heated in part ices up, whatever the timer.", DefrostTimerReadingSources.DefrostHeaterAmps)
        : null;
}
