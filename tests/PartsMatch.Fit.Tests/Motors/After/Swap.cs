using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.After;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Tests.Motors.Before;

namespace PartsMatch.Fit.Tests.Motors.After;

/// <summary>Proves a new motor from named texts, so that a case is one line.</summary>
internal static class Swap
{
    public static AfterSwapReport Report(string readings, string part = Asked.Psc, string site = "", string plate = "")
    {
        var need = MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        need.Complaints.ShouldBeEmpty();
        return MotorFamily.Motor.AfterSwap(need.Need, Named.Record<MotorSpec>(part), Named.Record<MotorReadings>(readings));
    }

    /// <summary>What one rule's check says; null when it says nothing.</summary>
    public static ReadingCheck? Check<TRule>(string readings, string part = Asked.Psc, string site = "", string plate = "")
        where TRule : ReadingRule<SwapCase> => Report(readings, part, site, plate).Readings.SingleOrDefault(check => check.Title == MotorAfter.Rules.OfType<TRule>().Single().Title);

    public static ReadingVerdict? Verdict<TRule>(string readings, string part = Asked.Psc, string site = "", string plate = "")
        where TRule : ReadingRule<SwapCase> => Check<TRule>(readings, part, site, plate)?.Verdict;
}
