using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Before;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors.Before;

/// <summary>Diagnoses an old motor from named texts, so that a case is one line.</summary>
internal static class Asked
{
    /// <summary>A split-capacitor fan motor's plate.</summary>
    public const string Psc = "type=PSC; power=1/4 hp; speed=1075 rpm; voltage=208-230 V; phase=1; frequency=60 Hz; fullLoadAmps=2.1 A; lockedRotorAmps=5 A; runCapacitor=5/370";

    /// <summary>A shaded-pole fan motor's plate.</summary>
    public const string ShadedPole = "type=shaded pole; voltage=115 V; phase=1; frequency=60 Hz; fullLoadAmps=1 A; protection=impedance";

    /// <summary>An electronically commutated fan motor's plate.</summary>
    public const string Electronic = "type=ECM; voltage=115 V; phase=1; frequency=60 Hz; fullLoadAmps=1 A";

    /// <summary>A three-phase fan motor's plate.</summary>
    public const string Three = "type=three-phase induction; power=1 hp; speed=1140 rpm; voltage=460 V; phase=3; frequency=60 Hz; fullLoadAmps=2 A; protection=none";

    public static Diagnosis Of(string readings, string plate = Psc, string site = "")
    {
        var need = MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        need.Complaints.ShouldBeEmpty();
        return MotorFamily.Motor.BeforeCondemning(need.Need, Named.Record<MotorReadings>(readings));
    }

    /// <summary>What one rule's check says; null when it says nothing.</summary>
    public static ReadingVerdict? Verdict<TRule>(string readings, string plate = Psc, string site = "")
        where TRule : ReadingRule<MotorCase> => Of(readings, plate, site).Checks.SingleOrDefault(check => check.Title == Rule<TRule>().Title)?.Verdict;

    public static ReadingRule<MotorCase> Rule<TRule>()
        where TRule : ReadingRule<MotorCase> => MotorBefore.Rules.OfType<TRule>().Single();
}
