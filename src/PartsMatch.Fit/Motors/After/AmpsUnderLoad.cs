using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Before;

namespace PartsMatch.Fit.Motors.After;

/// <summary>Do the running amps stay within the new motor's plate?</summary>
public sealed class AmpsUnderLoad() : ReadingRule<SwapCase>("Amps", MotorReadingSources.AmpsAgainstPlate)
{
    /// <inheritdoc/>
    public override Ruling Judge(SwapCase one) =>
        one.AsMotor.Amps.Count == 0 ? Ruling.CantTell($"The running amps were not measured, panels on.")
        : one.StandsStill == true ? Ruling.NotApplicable($"It stands still: {one.AsMotor.Amps.Max():0.###} A are not what it takes running.")
        : one.AsMotor.TakesNoCurrent == true ? Ruling.Bad($"It takes no current ({one.AsMotor.Amps.Max():0.###} A).")
        : PlateAmps.Judge(one.AsMotor, one.AsMotor.FullLoadAmps);
}

/// <summary>Are the amps of the three legs alike?</summary>
public sealed class BalanceOfAmps() : ReadingRule<SwapCase>("Balance of the amps", MotorReadingSources.AmpsUnbalance)
{
    /// <inheritdoc/>
    public override Ruling? Judge(SwapCase one) => AmpsBalance.Of(one.AsMotor.Amps);
}
