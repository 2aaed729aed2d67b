using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Are the three windings of a three-phase motor whole and alike?</summary>
/// <remarks>Their spread, greatest less least, is at most 5 % of their mean, and a step of the meter besides. A protector that opens when hot opens all of them together.</remarks>
public sealed class ThreePhaseWindings() : ReadingRule<MotorCase>("Windings, three-phase", MotorReadingSources.WindingSpread)
{
    private const double MostSpread = 0.05;

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one.IsElectronic || one.IsThreePhase == false) return null;
        (string Field, Ohms? Ohms)[] pairs =
            [("ohmsOneToTwo", one.Readings.OhmsOneToTwo), ("ohmsTwoToThree", one.Readings.OhmsTwoToThree), ("ohmsOneToThree", one.Readings.OhmsOneToThree)];
        List<Ohms> read = [.. pairs.Select(pair => pair.Ohms).OfType<Ohms>()];
        if (read.Count == 0) return null;
        if (read.Any(ohms => ohms.IsOpen))
        {
            return one switch
            {
                _ when read.Exists(ohms => !ohms.IsOpen) => Ruling.Bad($"Two leads show {read.Find(ohms => !ohms.IsOpen)!.Text} between them and another pair is open, where a protector opens all of them: a winding or its lead is broken.", $"not open").ThePartHasFailed(),
                { MayHaveProtector: true, Readings.ShellHot: null } => Ruling.CantTell($"A winding is open; a protector inside a hot motor opens them as well.").ThenRead("shellHot", "A winding is open, as a hot protector makes it. Is the shell too hot to keep a hand on?"),
                { MayHaveProtector: true, Readings.ShellHot: true } => Ruling.CantTell($"A winding is open; a protector inside a hot motor opens them as well.").ThenRead(pairs[0].Field, "A winding is open, as a hot protector makes it. Let the motor cool for an hour, and measure all three with the shell cold."),
                _ => Ruling.Bad($"A winding is open, and no hot protector explains it: the winding is broken.", $"not open").ThePartHasFailed(),
            };
        }

        if (read.Count < pairs.Length) return Ruling.Read(pairs.First(pair => pair.Ohms is null).Field, "Measure the three windings: they must be alike.");
        double[] ohms = [.. read.Select(winding => winding.Value)];
        FormattableString limit = $"at most {MostSpread * 100} % of their mean apart";
        var (apart, most) = (ohms.Max() - ohms.Min(), MostSpread * ohms.Average());
        var spread = apart > 0 ? apart / ohms.Average() : 0;
        return Within.AtMost(apart, most)
            ? Ruling.Good($"{ohms[0]:0.###}, {ohms[1]:0.###} and {ohms[2]:0.###} Ω lie {spread * 100:0.#} % of their mean apart; {MostSpread * 100} % is the most.", limit)
            : Within.AtMost(apart, most + (2 * MeterSlack.Step))
                ? Ruling.CantTell($"{ohms[0]:0.###}, {ohms[1]:0.###} and {ohms[2]:0.###} Ω lie {spread * 100:0.#} % of their mean apart, over {MostSpread * 100} %, but no further than a step of {MeterSlack.Step} Ω of the meter's last digit makes it. {MeterSlack.Advice}", limit)
            : Ruling.Bad($"{ohms[0]:0.###}, {ohms[1]:0.###} and {ohms[2]:0.###} Ω lie {spread * 100:0.#} % of their mean apart, over {MostSpread * 100} %: turns are shorted.", limit).ThePartHasFailed();
    }
}
