using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Is the winding insulated from the shell?</summary>
/// <remarks>At least 5 MΩ is good, under 1 MΩ condemns, between them nothing does. An insulation tester destroys the electronics of a commutated motor, so its reading there is no reading.</remarks>
public sealed class InsulationToEarth() : ReadingRule<MotorCase>("Insulation to earth", MotorReadingSources.Insulation)
{
    private const double GoodMegohms = 5;
    private const double FailedMegohms = 1;

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        FormattableString limit = $"at least {GoodMegohms} MΩ; under {FailedMegohms} MΩ it has failed";
        return one.Readings.InsulationToEarth switch
        {
            null when one is { IsElectronic: false, HasVolts: false, Readings.Control: CircuitState.FuseBlown } =>
                Ruling.Read("insulationToEarth", "A fuse or breaker opened: before it is closed again, measure the winding to the bare shell, leads apart. Never on an electronically commutated motor."),
            null => null,
            _ when one.IsElectronic => Ruling.NotApplicable($"Never put an insulation tester on an electronically commutated motor: it destroys the electronics, and this reading says nothing of a winding.", limit),
            { IsOpen: true } => Ruling.Good($"The tester shows no leak to earth; {GoodMegohms} MΩ are enough.", limit),
            { Megohms: var megohms } when Within.AtLeast(megohms, GoodMegohms) => Ruling.Good($"{megohms:0.##} MΩ to earth; {GoodMegohms} MΩ are enough.", limit),
            { Megohms: var megohms } when Within.AtLeast(megohms, FailedMegohms) =>
                Ruling.CantTell($"{megohms:0.##} MΩ to earth: under {GoodMegohms} MΩ it is doubtful, under {FailedMegohms} MΩ it would have failed. It may be damp: dry it and measure again.", limit)
                    .ThenRead("insulationToEarth", $"The insulation is doubtful, and may only be damp. Dry the motor and measure it again: {GoodMegohms} MΩ are enough."),
            { Megohms: var megohms } => Ruling.Bad($"{megohms:0.####} MΩ from winding to shell; under {FailedMegohms} MΩ the winding has failed to earth.", limit).ThePartHasFailed(),
        };
    }
}
