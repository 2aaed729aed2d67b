using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Are the amps of the three legs alike?</summary>
/// <remarks>Up to 10 % out of balance. Beyond it the windings decide: when they are good, it is the supply or the contactor.</remarks>
public sealed class AmpsBalance() : ReadingRule<MotorCase>("Balance of the amps", MotorReadingSources.AmpsUnbalance)
{
    private const double MostPercent = 10;

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one.HasVolts != true || one.TakesNoCurrent != false || Of(one.Amps) is not { } ruling) return null;
        if (ruling.Verdict != ReadingVerdict.Bad) return ruling;
        return Windings.AreGood(one)
            ? one.HasLegWithoutCurrent ? ruling : ruling.NotThePart()
            : Windings.Await(one, ruling, "The legs take unlike currents. Power off, leads apart, measure the three windings: if they are alike, look at contactor and supply.");
    }

    /// <summary>What three currents say; null when there are not three.</summary>
    internal static Ruling? Of(IReadOnlyList<double> legs)
    {
        if (legs.Count != 3) return null;
        FormattableString limit = $"at most {MostPercent} %";
        var shown = FormattableString.Invariant($"{legs[0]:0.###}, {legs[1]:0.###} and {legs[2]:0.###} A");
        if (legs.Min() <= 0) return Ruling.Bad($"{shown}: a leg takes no current. A winding, a lead or a pole of the contactor is open.", limit);
        var percent = Unbalance.Percent(legs[0], legs[1], legs[2]);
        return Within.AtMost(percent, MostPercent)
            ? Ruling.Good($"{shown} are {percent:0.#} % out of balance; up to {MostPercent} % passes.", limit)
            : Ruling.Bad($"{shown} are {percent:0.#} % out of balance, over {MostPercent} %: roll the three lines by one; if the odd leg stays with the line it is the supply, if it goes with the lead it is the motor.", limit);
    }
}
