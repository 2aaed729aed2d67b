using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>Speeds that are possible, in rpm: one when it is known, a range when only poles and frequency are.</summary>
/// <param name="Least">The lowest.</param>
/// <param name="Most">The highest.</param>
internal readonly record struct SpeedRange(double Least, double Most)
{
    /// <summary>Whether it is one speed.</summary>
    public bool IsKnown => Least.Equals(Most);

    /// <summary>The possible speeds of a motor at a supply's frequency; none when nothing is known.</summary>
    public static Sequence<SpeedRange> Of(SpeedFacet motor, double? supplyHertz)
    {
        if (motor.Rpm.Count == 0) return OfPoles(motor, supplyHertz) is { } range ? [range] : [];
        var speeds = HighSpeed.At(motor.Rpm, supplyHertz);
        return speeds.Count == 1 ? [new(speeds[0], speeds[0])] : [.. speeds.Select(rpm => new SpeedRange(rpm, rpm))];
    }

    /// <summary>The speeds that its poles allow; null when they or the frequency are unknown.</summary>
    public static SpeedRange? OfPoles(SpeedFacet motor, double? supplyHertz)
    {
        if (motor.InductionPoles is not (> 0 and var poles) || supplyHertz is not { } hertz) return null;
        var synchronous = PoleCounts.Synchronous(poles, hertz);
        return new((1 - PoleCounts.MostSlip) * synchronous, synchronous);
    }

    /// <inheritdoc/>
    public override string ToString() => IsKnown ? FormattableString.Invariant($"{Least:0} rpm") : FormattableString.Invariant($"{Least:0} to {Most:0} rpm");
}
