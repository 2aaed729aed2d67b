using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Before;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.After;

/// <summary>Does a tap of the new motor take the volts under load?</summary>
public sealed class VoltsUnderLoad() : ReadingRule<SwapCase>("Volts under load", MotorSources.Running)
{
    private static readonly SupplyAtLeads Rule = new();

    /// <inheritdoc/>
    public override Ruling Judge(SwapCase one) => one.AsMotor.HasVolts switch
    {
        null => Ruling.CantTell($"The volts at its leads were not measured while it runs."),
        false => Ruling.Bad($"There are no volts at its leads."),
        true => Rule.Judge(one.AsMotor)!,
    };
}

/// <summary>Do the volts hold when the motor runs?</summary>
/// <remarks>Within 10 % of the volts before it runs.</remarks>
public sealed class DropUnderLoad() : ReadingRule<SwapCase>("Drop of the volts", MotorReadingSources.VoltsDrop)
{
    private const double MostPercent = 10;

    /// <inheritdoc/>
    public override Ruling? Judge(SwapCase one)
    {
        if (one.Volts is not { } under || one.Readings.StandingVolts is not { } standing) return null;
        var before = standing.Legs.Average(volts => volts.Volts);
        if (before <= 0) return Ruling.CantTell($"No volts were read before it runs, so no drop follows.");
        var drop = (before - under) / before * 100;
        FormattableString limit = $"at most {MostPercent} %";
        return Within.AtMost(drop, MostPercent)
            ? Ruling.Good($"{before:0.#} V before and {under:0.#} V while it runs: {Math.Max(0, drop):0.#} % less; up to {MostPercent} % passes.", limit)
            : Ruling.Bad($"{before:0.#} V before and {under:0.#} V while it runs: {drop:0.#} % less, over {MostPercent} %. Look for a loose terminal, a burnt contact, thin wire.", limit);
    }
}

/// <summary>Are the volts of the three legs alike under load?</summary>
public sealed class BalanceUnderLoad() : ReadingRule<SwapCase>("Balance of the volts", MotorReadingSources.VoltsUnbalance)
{
    /// <inheritdoc/>
    public override Ruling? Judge(SwapCase one) =>
        one.AsMotor.HasVolts == true && one.AsMotor.Volts.Count == 3 ? SupplyBalance.Of(one.AsMotor.Volts)
        : one.AsMotor.IsThreePhase == true ? Ruling.CantTell($"Not all three legs were measured: line to line, under load.") : null;
}
