using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Has an electronically commutated motor that stands still its command?</summary>
public sealed class CommandOfElectronics() : ReadingRule<MotorCase>("Command", MotorReadingSources.Command)
{
    private static readonly SupplyAtLeads Supply = new();

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one is not { IsElectronic: true, HasVolts: true } || one.Readings.Turns == true || (one.TakesNoCurrent != true && one.IsStalled != true)) return null;
        return one.Readings.SignalThere switch
        {
            false => Ruling.Bad($"It has volts and no command, so it stands still as it should: look at its control.").NotThePart(),
            null => Ruling.CantTell($"It has volts and stands still; without its command it should.")
                .ThenRead("signalThere", "An electronically commutated motor stands still without its command: is the speed signal there?"),
            true when Supply.Judge(one) is not { Verdict: ReadingVerdict.Good } => Ruling.CantTell($"It has volts and its command and stands still; whether its volts are right is not known.")
                .ThenRead("voltage", "Read the volts on the plate: electronics on the wrong volts do not start.", Side.Plate),
            true when one.TakesNoCurrent == true => Ruling.Bad($"It has volts and its command, and takes no current: its electronics have failed.").ThePartHasFailed(),
            true when one.Readings.SpinsFreely == true => Ruling.Bad($"It has volts and its command, spins free by hand, and stands still: its electronics have failed.").ThePartHasFailed(),
            true => null,
        };
    }
}
