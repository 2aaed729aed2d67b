using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Are the amps of the three legs alike?</summary>
/// <remarks>
/// Up to 10 % out of balance. Beyond it the windings decide first. When they are good it is the supply, where its volts are unlike enough to explain it; with volts that are alike it is
/// open until the lines are rolled: a few shorted turns do it as well, and no ohms show them.
/// </remarks>
public sealed class AmpsBalance() : ReadingRule<MotorCase>("Balance of the amps", MotorReadingSources.AmpsUnbalance)
{
    private const double MostPercent = 10;

    /// <summary>Amps at full load are at most so many times as far out of balance as the volts that make them so.</summary>
    private const double MostTimesVolts = 10;

    private const int AllLegs = 3;

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one.HasVolts != true || one.TakesNoCurrent != false || Of(one.Amps) is not { } ruling) return null;
        if (ruling.Verdict != ReadingVerdict.Bad) return ruling;
        if (one.IsElectronic) return Ruling.CantTell($"{ruling.Sentence}", $"{ruling.Limit}");
        if (!Windings.AreGood(one)) return Windings.Await(one, ruling, "The legs take unlike currents. Power off, leads apart, measure the three windings: if they are alike, look at contactor and supply.");
        return one.HasLegWithoutCurrent ? ruling : ByVolts(one, ruling);
    }

    private static Ruling ByVolts(MotorCase one, Ruling ruling)
    {
        if (one.Volts.Count != AllLegs) return ruling.ThenRead("leadVolts", "The legs take unlike currents, and the windings are alike. Measure all three legs, line to line, while it runs: unlike volts make unlike currents.");
        if (one.HasLostLeg) return ruling.NotThePart();
        if (one.Amps.Min() <= 0) return Ruling.CantTell($"{ruling.Sentence}", $"{ruling.Limit}");
        var (volts, amps) = (Unbalance.Percent(one.Volts[0], one.Volts[1], one.Volts[2]), Unbalance.Percent(one.Amps[0], one.Amps[1], one.Amps[2]));
        return Within.AtMost(amps, MostTimesVolts * volts)
            ? Ruling.Bad($"Its currents are {amps:0.#} % out of balance, and the volts at its leads {volts:0.##} %, which makes up to {MostTimesVolts} times as much of the currents: look at contactor poles, joints and supply.", $"{ruling.Limit}").NotThePart()
            : Ruling.CantTell($"{ruling.Sentence}", $"{ruling.Limit}");
    }

    /// <summary>What three currents say; null when there are not three.</summary>
    internal static Ruling? Of(IReadOnlyList<double> legs)
    {
        if (legs.Count != AllLegs) return null;
        FormattableString limit = $"at most {MostPercent} %";
        var shown = FormattableString.Invariant($"{legs[0]:0.###}, {legs[1]:0.###} and {legs[2]:0.###} A");
        if (legs.Min() <= 0) return Ruling.Bad($"{shown}: a leg takes no current. A winding, a lead or a pole of the contactor is open.", limit);
        var percent = Unbalance.Percent(legs[0], legs[1], legs[2]);
        return Within.AtMost(percent, MostPercent)
            ? Ruling.Good($"{shown} are {percent:0.#} % out of balance; up to {MostPercent} % passes.", limit)
            : Ruling.Bad($"{shown} are {percent:0.#} % out of balance, over {MostPercent} %: roll the three lines by one; if the odd leg stays with the line it is the supply, if it goes with the lead it is the motor.", limit);
    }
}
