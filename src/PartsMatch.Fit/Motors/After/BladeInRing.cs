using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.After;

/// <summary>Does the blade clear its ring all round?</summary>
public sealed class BladeInRing() : ReadingRule<SwapCase>("Blade", MotorReadingSources.BladeClear)
{
    /// <inheritdoc/>
    public override Ruling Judge(SwapCase one) => one.Readings.BladeClear switch
    {
        true => Ruling.Good($"The blade clears its ring and guard.", $"clear all round"),
        false => Ruling.Bad($"The blade touches its ring or guard: stop the fan, set blade and mount anew, and turn it by hand.", $"clear all round"),
        null => Ruling.CantTell($"Whether the blade clears its ring was not looked at: turn it by hand, power off."),
    };
}
