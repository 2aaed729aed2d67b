using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Are the volts of the three legs alike?</summary>
/// <remarks>Up to 1 % is good, over 5 % no motor should run; between them it carries less than its rating. A lost leg is far over.</remarks>
public sealed class SupplyBalance() : ReadingRule<MotorCase>("Balance of the volts", MotorReadingSources.VoltsUnbalance)
{
    internal const double EasyPercent = 1;
    internal const double MostPercent = 5;
    private const int AllLegs = 3;

    /// <summary>Unlike loads never pull legs further apart than this share of the greatest; an open fuse or pole does (practice).</summary>
    private const double MostApart = 0.25;

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one.HasVolts != true) return null;
        if (one.Volts.Count == AllLegs) return Of(one.Volts) is { Verdict: ReadingVerdict.Bad } bad ? bad.NotThePart() : Of(one.Volts);
        return one.IsThreePhase == true && (one.TakesNoCurrent == true || one.IsStalled == true)
            ? Ruling.Read("leadVolts", "Measure all three legs, line to line: a lost leg stops a three-phase motor, and burns it.")
            : null;
    }

    /// <summary>Whether a leg is lost: dead, or left with what comes back through windings. No mean and no percentage of such readings means anything.</summary>
    internal static bool IsLost(IReadOnlyList<double> legs) => !Within.AtMost(1 - (legs.Min() / legs.Max()), MostApart);

    /// <summary>What three readings line to line say.</summary>
    internal static Ruling Of(IReadOnlyList<double> legs)
    {
        FormattableString limit = $"at most {EasyPercent} %; never over {MostPercent} %";
        var shown = FormattableString.Invariant($"{legs[0]:0.#}, {legs[1]:0.#} and {legs[2]:0.#} V");
        if (IsLost(legs)) return Ruling.Bad($"{shown}: a leg is {(legs.Min() > 0 ? "lost, and what is read there comes back through windings" : "dead")}. Look at fuses and contactor poles upstream.", limit);
        var percent = Unbalance.Percent(legs[0], legs[1], legs[2]);
        return Within.AtMost(percent, EasyPercent) ? Ruling.Good($"{shown} are {percent:0.##} % out of balance; up to {EasyPercent} % needs no derating.", limit)
            : !Within.AtMost(percent, MostPercent) ? Ruling.Bad($"{shown} are {percent:0.##} % out of balance, over {MostPercent} %: mend the supply before any motor runs on it.", limit)
            : Ruling.CantTell($"{shown} are {percent:0.##} % out of balance: over {EasyPercent} % a motor carries only {UnbalanceDerating.Factor(Math.Min(percent, MostPercent)):0.00} of its rated power, and over {MostPercent} % none should run.", limit);
    }
}
