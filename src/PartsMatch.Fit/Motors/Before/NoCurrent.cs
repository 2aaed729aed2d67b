using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Does it take current when it has volts?</summary>
/// <remarks>Without any, and without a hot protector, a winding is open, which the ohms must show. An electronically commutated motor may only lack its command, which is another rule.</remarks>
public sealed class NoCurrent() : ReadingRule<MotorCase>("Current", MotorReadingSources.NoCurrent)
{
    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one.HasVolts != true) return null;
        if (one.TakesNoCurrent is not { } none) return Ruling.Read("motorAmps", "There are volts at its leads: with a clamp meter, does it take current?");
        if (!none) return Ruling.Good($"It takes current: {one.Amps.Max():0.###} A.");
        if (one.IsElectronic || one is { MayHaveProtector: true, Readings.ShellHot: not false }) return null;
        return Windings.AreNotOpen(one)
            ? Ruling.CantTell($"It has volts and takes no current, though its windings are whole: these cannot all be true.")
                .ThenRead("leadVolts", "Volts without current into whole windings are ghost volts or an open lead: measure at the leads again, with a load or a meter of low resistance.")
            : Windings.Await(one, Ruling.CantTell($"It has volts and takes no current: a winding or a lead is open, which the ohms will show."), "It has volts, takes no current and no hot protector explains it. Power off, measure the windings.");
    }
}
