using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Does one leg of a three-phase motor take no current, though the others do?</summary>
/// <remarks>
/// The volts at the leads tell whether it is the supply's leg; only where they are good on all three do the ohms condemn the motor. A turning motor makes volts of its own on the open leg,
/// so that whole windings mean an open fuse, pole or joint in spite of good volts.
/// </remarks>
public sealed class LegWithoutCurrent() : ReadingRule<MotorCase>("Current in every leg", MotorReadingSources.AmpsUnbalance)
{
    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one is not { HasVolts: true, HasLegWithoutCurrent: true, HasLostLeg: false }) return null;
        if (Windings.AreGood(one))
        {
            return Ruling.Bad($"One leg takes no current and the windings are whole: the fuse, the contactor pole or a joint of that leg is open. A turning motor makes volts of its own on it, so measure across each closed pole and fuse.").NotThePart();
        }

        return one.Volts.Count == one.Amps.Count && !one.IsElectronic
            ? Windings.Await(one, Ruling.Bad($"One leg takes no current, with volts on all three at the leads: a winding or a lead is open."), "One leg takes no current, with volts on all three at the leads: a winding or a lead is open. Power off and locked out, leads apart, measure the three windings.")
            : Ruling.Bad($"One leg takes no current: the supply's leg, or something behind the leads, is open.")
                .ThenRead("leadVolts", "One leg takes no current. With the contactor in, measure the volts of all three legs at the leads, line to line, then across each pole of the contactor and each fuse: a closed one that shows volts is open.");
    }
}
