using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.After;

/// <summary>What the readings give as evidence, each with the sentence that says so. What was not read is no evidence, neither for nor against.</summary>
internal static class EvidenceFound
{
    /// <summary>20 °F in K: more subcooling than condensers are built for (practice).</summary>
    private const double MuchSubcoolingKelvin = 20 / 1.8;

    /// <summary>5 °F in K: standing pressure over the refrigerant's at air temperature (practice).</summary>
    private const double StandingKelvin = 5 / 1.8;

    private static readonly IReadOnlyList<(Evidence Evidence, Func<SwapCase, string?> Find)> All =
    [
        (Evidence.SplitOver, one => Bad(new CondensingSplit().Judge(one))),
        (Evidence.AmpsOver, one => one.AsMotor.TakesNoCurrent == false ? Bad(new AmpsUnderLoad().Judge(one)) : null),
        (Evidence.FanStands, one => one.StandsStill == true ? "This one stands still." : one.Readings is { FansRunning: { } running, FansOnCoil: { } all } && running < all ? FormattableString.Invariant($"{running} of {all} fans run.") : null),
        (Evidence.Backwards, one => Bad(new TurnOfFan().Judge(one))),
        (Evidence.FansRight, one => one.Readings is { FansRunning: { } running, FansOnCoil: { } all } && running >= all && new TurnOfFan().Judge(one).Verdict == ReadingVerdict.Good ? "All fans run, and this one the right way." : null),
        (Evidence.Slow, one => Bad(new SpeedUnderLoad().Judge(one))),
        (Evidence.CoilDirty, one => one.Readings.CoilDirty == true ? "The coil is dirty." : null),
        (Evidence.CoilClean, one => one.Readings.CoilDirty == false ? "The coil is clean." : null),
        (Evidence.AirComesBack, one => one.Readings.AirRecirculates == true ? "Leaving air comes back to the coil." : null),
        (Evidence.AirStaysAway, one => one.Readings.AirRecirculates == false ? "No leaving air comes back to the coil." : null),
        (Evidence.BypassWarm, one => one.Readings.BypassWarm == true ? "The by-pass line is warm." : null),
        (Evidence.BypassCold, one => one.Readings.BypassWarm == false ? "The by-pass line is not warm." : null),
        (Evidence.StandingHigh, one => Standing(one, tooHigh: true)),
        (Evidence.StandingRight, one => Standing(one, tooHigh: false)),
        (Evidence.MuchSubcooling, Subcooling),
        (Evidence.BoxWarm, one => EvaporatorAfter.IsWarm(one.Readings) ? $"The box has {Degrees.Of(one.Readings.BoxTemperature!.Value)} and is set to {Degrees.Of(one.Readings.BoxSetpoint!.Value)}." : null),
        (Evidence.SuctionHigh, one => EvaporatorAfter.SuctionIsHigh(one)
            ? $"The suction evaporates at {Degrees.Of(one.At(one.Readings.SuctionPressure)!.Value.Dew)}; the design is {Degrees.Of(one.Readings.DesignEvaporating!.Value)}." : null),
        (Evidence.VoltsOff, one => Bad(new VoltsUnderLoad().Judge(one)) ?? Bad(new DropUnderLoad().Judge(one))),
        (Evidence.VoltsUnlike, one => new BalanceUnderLoad().Judge(one) is { Limit: not null, Verdict: not ReadingVerdict.Good } unlike ? unlike.Sentence : null),
        (Evidence.SinglePhase, one => one.AsMotor.IsThreePhase == false ? "It is a single-phase motor." : null),
        (Evidence.BladeTouches, one => Bad(new BladeInRing().Judge(one))),
        (Evidence.CapacitorOff, one => Bad(new CapacitorAfter().Judge(one))),
        (Evidence.CapacitorRight, one => new CapacitorAfter().Judge(one) is { Verdict: ReadingVerdict.Good } good ? good.Sentence : null),
        (Evidence.NoCapacitor, one => one.AsMotor.HasCapacitor == false ? "It has no run capacitor." : null),
    ];

    /// <summary>All evidence that a case gives.</summary>
    public static IReadOnlyDictionary<Evidence, string> Of(SwapCase one) =>
        All.Select(each => (each.Evidence, Sentence: each.Find(one))).Where(pair => pair.Sentence is not null).ToDictionary(pair => pair.Evidence, pair => pair.Sentence!);

    private static string? Bad(Ruling? ruling) => ruling is { Verdict: ReadingVerdict.Bad } bad ? bad.Sentence : null;

    /// <summary>Liquid at rest has the temperature of the air, and its bubble pressure; gas that does not condense adds its own.</summary>
    private static string? Standing(SwapCase one, bool tooHigh)
    {
        if (one.At(one.Readings.StandingPressure) is not { } standing || one.Readings.EnteringAir is not { } air) return null;
        var over = standing.Bubble.Kelvins - air.Kelvins;
        return !Within.AtMost(over, StandingKelvin) != tooHigh ? null
            : tooHigh ? $"At rest the pressure is that of {Degrees.Of(standing.Bubble)}, more than {Degrees.Apart(StandingKelvin)} over the air."
            : $"At rest the pressure is that of {Degrees.Of(standing.Bubble)}, as the air's {Degrees.Of(air)} ask for.";
    }

    private static string? Subcooling(SwapCase one)
    {
        if (one.At(one.Readings.CondensingPressure) is not { } saturation || one.Readings.LiquidTemperature is not { } liquid) return null;
        var subcooling = saturation.Bubble.Kelvins - liquid.Kelvins;
        return Within.AtMost(subcooling, MuchSubcoolingKelvin) ? null : $"The liquid is {Degrees.Apart(subcooling)} colder than it condenses (bubble), over {Degrees.Apart(MuchSubcoolingKelvin)}.";
    }
}
