using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Is it only its protector that is open?</summary>
public sealed class HotWithoutCurrent() : ReadingRule<MotorCase>("Protector inside", MotorReadingSources.ProtectorOpen)
{
    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one) =>
        one is not { HasVolts: true, TakesNoCurrent: true, IsElectronic: false, MayHaveProtector: true } ? null
        : one.Readings.ShellHot switch
        {
            null => Ruling.Read("shellHot", "It has volts and takes no current. Power off: is the shell too hot to keep a hand on? Then its protector is open."),
            true => Ruling.CantTell($"It has volts, takes no current and is hot: the protector inside is open, which does not condemn it.")
                .ThenRead("motorAmps", "The protector inside is open. Let it cool for an hour with the power off (press its reset, if it has one), then call for it and measure its amps again; find out what made it hot."),
            false => null,
        };
}
