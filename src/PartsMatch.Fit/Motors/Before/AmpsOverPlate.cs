using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Does it take more than its plate says while it turns?</summary>
/// <remarks>A bad capacitor, shorted turns or too much load do that; only when the first two are measured and good, and its speed is as low as load makes it, is it the load. With unlike currents in three legs it is none of these, which is another rule.</remarks>
public sealed class AmpsOverPlate() : ReadingRule<MotorCase>("Amps against the plate", MotorReadingSources.AmpsAgainstPlate)
{
    private static readonly CapacitorUnderLoad Capacitor = new();
    private static readonly SlowedByLoad Speed = new();

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one is not { HasVolts: true, IsStalled: false, TakesNoCurrent: false, HasLegWithoutCurrent: false }) return null;
        var ruling = PlateAmps.Judge(one, one.FullLoadAmps);
        if (ruling.Verdict != ReadingVerdict.Bad) return ruling;
        if (AmpsBalance.Of(one.Amps) is { Verdict: ReadingVerdict.Bad }) return Ruling.CantTell($"{one.Amps.Max():0.###} A is over the plate's {one.FullLoadAmps:0.###} A, and the legs take unlike currents, which load does not: that comes first.", $"{ruling.Limit}");
        if (one is { HasCapacitor: not false, IsElectronic: false } && Capacitor.Judge(one) is not { Verdict: ReadingVerdict.Good })
        {
            return ruling.ThenRead("capacitorAmps", "It takes more than its plate says. Running, measure amps and volts of its run capacitor: a weak one does that.");
        }

        return one.IsElectronic ? ruling.NotThePart()
            : Windings.AreGood(one) ? BySpeed(one, ruling)
            : Windings.Await(one, ruling, "It takes more than its plate says. Power off, leads apart, measure the windings: shorted turns do that.");
    }

    /// <summary>With capacitor and windings good it is the load, if it is slowed by it. If it is not, a few shorted turns are left, which no ohms show, and a wrong connection.</summary>
    private static Ruling BySpeed(MotorCase one, Ruling ruling) => Speed.Judge(one) switch
    {
        { Verdict: ReadingVerdict.Good } => ruling.NotThePart(),
        null => ruling.ThenRead("runningSpeed", "It takes more than its plate says, and what was measured of it is good. Take its speed with a tachometer, panels on: too much load slows it, shorted turns do not."),
        _ when one.Need.Plate.Speed is null => ruling.ThenRead("speed", "It takes more than its plate says. Read the speed on the plate: too much load makes it run slower than that.", Side.Plate),
        { } told => Ruling.CantTell($"{one.Amps.Max():0.###} A is over the plate's {one.FullLoadAmps:0.###} A. {told.Sentence} See whether it is connected for its volts and its speed, and hold its amps against a sister motor's: a few shorted turns take more, and no ohms show them.", $"{ruling.Limit}"),
    };
}

/// <summary>Running amps against a plate, old or new.</summary>
internal static class PlateAmps
{
    /// <summary>The greatest leg against full-load amps; up to the service factor only where one is marked and the supply is the rated one.</summary>
    public static Ruling Judge(MotorCase one, double? fullLoad)
    {
        var amps = one.Amps.Max();
        if (fullLoad is not { } full) return Ruling.CantTell($"{amps:0.###} A; the plate's full-load amps are not known.");
        var factor = Math.Max(1, one.Need.Plate.ServiceFactor ?? 1);
        var credit = factor > 1 ? ServiceFactorCredit.Of(one) : new(false);
        var most = credit.Counts == false ? full : full * factor;
        FormattableString limit = $"at most {most:0.###} A";
        if (Within.AtMost(amps, full)) return Ruling.Good($"{amps:0.###} A; the plate has {full:0.###} A.", limit);
        if (!Within.AtMost(amps, most)) return Over(amps, full, most, credit, limit);
        return credit is { Counts: null, Asks: { } next }
            ? Ruling.CantTell($"{amps:0.###} A is over the plate's {full:0.###} A; whether its service factor of {factor:0.##} counts is open: {credit.Why}.", limit).ThenRead(next.Field, next.Why, next.Side)
            : Ruling.Good($"{amps:0.###} A is over the plate's {full:0.###} A and within its service factor of {factor:0.##}, {most:0.###} A: it has no room left.", limit);
    }

    private static Ruling Over(double amps, double full, double most, ServiceFactorCredit credit, FormattableString limit) =>
        Ruling.Bad($"{amps:0.###} A is over the plate's {most:0.###} A{(most > full ? " with its service factor" : credit.Why.Length > 0 ? $", and its service factor does not count, for {credit.Why}" : string.Empty)}: too much load (blade, pitch, depth, thin belt or thick air) or wrong volts.", limit);
}
