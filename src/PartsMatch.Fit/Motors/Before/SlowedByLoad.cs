using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Does a motor that takes too much run as slowly as too much load makes it?</summary>
/// <remarks>
/// Torque and slip of an induction motor grow at least as its amps do. Half of what the amps are over is asked of the slip, since plates round their speeds and motors of a kind differ by
/// a fifth in slip. What takes more and is not slowed has no more load than it should.
/// </remarks>
public sealed class SlowedByLoad() : ReadingRule<MotorCase>("Speed against the amps", MotorReadingSources.SlowedByLoad)
{
    private const double ShareAsked = 0.5;

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one is not { IsElectronic: false, HasVolts: true, TakesNoCurrent: false, Readings.RunningSpeed.RevolutionsPerMinute: var rpm } || one.FullLoadAmps is not { } full || Within.AtMost(one.Amps.Max(), full)) return null;
        double[] rated = [.. one.Rows.Select(row => row.Speed?.RevolutionsPerMinute).OfType<double>().Distinct()];
        if (rated.Length == 0) return Ruling.CantTell($"{rpm:0} rpm; the plate's speed is not known.");
        if (one.Need.Plate.Speeds > rated.Length) return Ruling.CantTell($"{rpm:0} rpm; the motor has {one.Need.Plate.Speeds} speeds, and the plate does not give all of them.");
        var most = rated is [var only] && Slip(only, one) is { } slip ? only - (slip * ShareAsked * ((one.Amps.Max() / full) - 1)) : rated.Min();
        FormattableString limit = $"too much load: under {most:0} rpm";
        return Within.AtLeast(rpm, most)
            ? Ruling.CantTell($"{rpm:0} rpm: too much load would slow it to under {most:0} rpm, so that is not what makes its amps.", limit)
            : Ruling.Good($"{rpm:0} rpm: under {most:0} rpm, as slow as too much load makes it.", limit);
    }

    /// <summary>How far a rated speed lies under that of the field, rpm; null when the frequency is not known.</summary>
    private static double? Slip(double rated, MotorCase one) => CapacitorUnderLoad.Hertz(one.Need) is { } hertz && PoleCounts.Fewest(rated, hertz) is { } poles ? PoleCounts.Synchronous(poles, hertz) - rated : null;
}
