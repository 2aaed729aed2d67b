using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Motors.Before;

namespace PartsMatch.Fit.Motors.After;

/// <summary>Has its run capacitor the µF that the new motor's plate asks for?</summary>
/// <remarks>Within 6 % of the plate's. What the old can is marked with is no measure of the new motor, and one that has no run capacitor by its kind carries none beside it.</remarks>
public sealed class CapacitorAfter() : ReadingRule<SwapCase>("Run capacitor", CapacitorReadingSources.CapacitorUnderLoad)
{
    /// <inheritdoc/>
    public override Ruling? Judge(SwapCase one)
    {
        var asked = RunCapacitor.RatingOf(one.Part);
        var measured = CapacitorUnderLoad.Measured(one.Readings);
        var ruling = measured.Judge(FanSection.AskedBy(one.Part)?.Microfarads, MeasuredCapacitor.UsualPercent, CapacitorUnderLoad.Hertz(one.AsMotor.Need));
        return (asked, ruling) switch
        {
            (_, null) => null,
            ({ IsNone: true }, _) => measured.CarriesCurrent
                ? Ruling.Bad($"The new motor has no run capacitor, and one carries current beside it: take it out.")
                : Ruling.NotApplicable($"The new motor has no run capacitor: what was measured is not its own."),
            (_, { Verdict: null, Asks.Why: var why }) => Ruling.CantTell($"{why}"),
            _ => ruling,
        };
    }
}
