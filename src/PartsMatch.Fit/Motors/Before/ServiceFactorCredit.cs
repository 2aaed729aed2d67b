using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Running;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>May running amps go up to a motor's service factor, by what was read of its supply?</summary>
/// <param name="Counts">Whether they may; null when it is not known.</param>
/// <param name="Why">Why not, as part of a sentence; empty when they may.</param>
/// <param name="Asks">What is to be read where it is not known; null otherwise.</param>
internal sealed record ServiceFactorCredit(bool? Counts, string Why = "", NextReading? Asks = null)
{
    /// <summary>What the readings say. A frequency that nobody gave is taken for the plate's.</summary>
    public static ServiceFactorCredit Of(MotorCase one)
    {
        if (one.Volts.Count == 3 && !RatedSupply.IsBalanced(one.Volts)) return new(false, FormattableString.Invariant($"the legs are {Physics.Unbalance.Percent(one.Volts[0], one.Volts[1], one.Volts[2]):0.##} % out of balance, over {RatedSupply.MostUnbalance} %"));
        if (one.Volts.Count > 0 && one.Taps.Count > 0 && !one.Taps.Any(tap => RatedSupply.AreVoltsOf(tap, one.Volts.Average())))
        {
            return new(false, FormattableString.Invariant($"{one.Volts.Average():0.#} V are more than {RatedSupply.SameVolts * 100} % off its rated volts"));
        }

        if (one.Need.Site.SupplyFrequency is { } there && one.Need.Plate.Frequency is { } rated && !rated.Any(each => RatedSupply.IsFrequencyOf(each, there))) return new(false, FormattableString.Invariant($"{there.Hertz:0.#} Hz are not its rated frequency"));
        if ((one.Readings.Altitude ?? one.Need.Site.Altitude) is { } altitude && !RatedSupply.IsLow(altitude)) return new(false, "thin air has used it up");
        if (one.Volts.Count == 0) return new(null, "the volts at its leads were not measured", new("leadVolts", "Measure the volts at its leads: the service factor counts at rated volts only."));
        if (one.Taps.Count == 0) return new(null, "the plate's volts are not known", new("voltage", "Read the volts on the plate: the service factor counts at rated volts only.", Side.Plate));
        return one.IsThreePhase == true && one.Volts.Count < 3
            ? new(null, "not all three legs were measured", new("leadVolts", "Measure all three legs, line to line: the service factor counts with like legs only."))
            : new(true);
    }
}
