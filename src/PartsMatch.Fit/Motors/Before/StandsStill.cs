using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Why does it stand still with current in it?</summary>
/// <remarks>By elimination: with volts, supply, shaft, capacitor and windings each measured and good, only rotor and inner switch are left. One of them unmeasured, and nothing is condemned.</remarks>
public sealed class StandsStill() : ReadingRule<MotorCase>("Starting", MotorReadingSources.Stalled)
{
    private static readonly CapacitorUnderLoad Capacitor = new();
    private static readonly SupplyAtLeads Supply = new();
    private static readonly SupplyBalance Balance = new();

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one is not { HasVolts: true, TakesNoCurrent: not true }) return null;
        if (one.IsStalled is not { } stalled) return one.TakesNoCurrent is null ? null : Ruling.Read("turns", "It takes current: does it turn?");
        if (!stalled) return Ruling.Good($"It turns.");
        if (one.Readings.SpinsFreely != true || one.IsElectronic || one.HasLegWithoutCurrent) return null;
        return Capacitor.Judge(one) switch
        {
            null when one.HasCapacitor == false => WithoutCapacitor(one),
            { Verdict: ReadingVerdict.Good } => WithoutCapacitor(one),
            _ => null,
        };
    }

    private static Ruling? WithoutCapacitor(MotorCase one)
    {
        if (!Windings.AreGood(one)) return Windings.Await(one, Ruling.CantTell($"It stands still with current in it."), $"It stands still{(one.HasCapacitor == false ? " and spins free" : ", spins free, and the capacitor is not the cause")}. Power off, leads apart, measure the windings.");
        if (Supply.Judge(one) is not { Verdict: ReadingVerdict.Good })
        {
            return Ruling.CantTell($"It stands still though shaft, capacitor and windings are good; whether its volts are right is not known.").ThenRead("voltage", "Read the volts on the plate: a motor on the wrong tap may stand still.", Side.Plate);
        }

        if (one.IsThreePhase == true && Balance.Judge(one) is not { Verdict: ReadingVerdict.Good or ReadingVerdict.CantTell }) return null;
        return Ruling.Bad($"Volts, shaft, {(one.HasCapacitor == false ? string.Empty : "capacitor, ")}windings are good, and it stands still with current in it: rotor or inner switch has failed.").ThePartHasFailed();
    }
}
