using PartsMatch.Fit.Motors.Aspects;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors;

/// <summary>Starting a new motor, and proving that it runs as it should.</summary>
internal static class MotorStartSteps
{
    public static IEnumerable<Step> Of(MotorNeed need, MotorSpec part)
    {
        var chosen = ChosenTap.Of(need, part);
        yield return new(Stage.StartAndCheck, "put guard and covers back, stand clear, take the lock off and start it", "Let it stand still first: a fan that the wind turns may start backwards.");
        yield return Volts(chosen, part.Phase == Phases.Three);
        yield return new(
            Stage.StartAndCheck,
            (chosen, part.FullLoadAmps) switch
            {
                ({ Amps: { } amps, Tap: var tap }, _) => FormattableString.Invariant($"{SpeedSteps.OnHigh(need, part)}clamp its amps: not above {amps:0.###} A (its plate, at {tap})"),
                _ => $"{SpeedSteps.OnHigh(need, part)}clamp its amps: not above what its plate says at these volts",
            },
            $"Over the plate: too much blade, wrong volts{(RunCapacitor.RatingOf(part) is { IsNone: true } ? string.Empty : " or capacitor")}, or the guard and coil are not in place. Far under it: the blade slips or turns backwards.");
        foreach (var step in SpeedSteps.Proof(need, part, chosen)) yield return step;
        yield return Turn(need);
        yield return new(
            Stage.StartAndCheck,
            need.Site.FanKind == FanKind.BlowerWheel ? "see that the wheel runs true and clear of its housing, and look at amps and shell again after ten minutes" : "see that the blade runs true and clear of its ring, and look at amps and shell again after ten minutes");
    }

    private static Step Volts(ChosenTap? chosen, bool isThreePhase) => new(
        Stage.StartAndCheck,
        chosen is { Tap: var tap }
            ? FormattableString.Invariant($"measure the volts at its leads while it runs: {tap.Least:0.#} to {tap.Most:0.#} V for {tap}")
            : "measure the volts at its leads while it runs: within 10 % of its plate",
        isThreePhase ? "All three pairs of lines; the furthest lies within 1 % of their mean, or the motor is to be derated (NEMA MG 1 12.45)." : null);

    private static Step Turn(MotorNeed need)
    {
        var turn = MotorSteps.TurnWords(need) ?? "as the old one did";
        return need.Site.FanKind switch
        {
            FanKind.Propeller => new(Stage.StartAndCheck, $"see that it turns {turn}, and that the air leaves where it did before"),
            FanKind.BlowerWheel => new(Stage.StartAndCheck, $"see that the wheel turns {turn}: look at the wheel, not at the air"),
            _ => new(Stage.StartAndCheck, $"see that it turns {turn}", "A propeller that turns backwards blows the wrong way; a blower wheel still blows the right way, only less."),
        };
    }
}
