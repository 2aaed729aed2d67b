using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.After;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Is the condensing split as it should be while the old motor runs?</summary>
/// <remarks>
/// Held against the same limits as the new motor's, for the old one's fan moves the same air. Nothing is said where no split can be told. A large one neither condemns a motor nor clears it:
/// a weak motor makes one, and so do a dirty coil and too much charge. It stands last, so that the motor's own readings are asked for first.
/// </remarks>
public sealed class SplitOfCondenser() : ReadingRule<MotorCase>("Condensing split", MotorReadingSources.Split)
{
    private static readonly CondensingSplit Split = new();
    private static readonly AmpsOverPlate Amps = new();
    private static readonly AmpsBalance Balance = new();

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        var swap = AsSwapped(one);
        if (CondensingSplit.Figures(swap) is null) return null;
        var ruling = Split.Judge(swap);
        if (ruling.Verdict != ReadingVerdict.Bad) return ruling;
        return (Amps.Judge(one), Balance.Judge(one)) switch
        {
            ({ Verdict: ReadingVerdict.Good }, null or { Verdict: ReadingVerdict.Good }) => Ruling.Bad($"{ruling.Sentence} The motor turns and takes no more than its plate's amps: look at coil, blade, air and charge.", $"{ruling.Limit}"),
            ({ Verdict: ReadingVerdict.CantTell }, _) when one.FullLoadAmps is null => ruling.ThenRead("fullLoadAmps", "The condensing split is too much. Read the full-load amps on the motor's plate: they tell whether its fan is driven as it should be.", Side.Plate),
            ({ Verdict: ReadingVerdict.Good or ReadingVerdict.CantTell }, _) => Ruling.CantTell($"{ruling.Sentence} Whether the motor drives its fan as it should is not known yet.", $"{ruling.Limit}"),
            _ => ruling,
        };
    }

    /// <summary>The old motor as if it had been put in for itself.</summary>
    internal static SwapCase AsSwapped(MotorCase one) => new(one.Need, one.Need.Plate, one.Readings);
}
