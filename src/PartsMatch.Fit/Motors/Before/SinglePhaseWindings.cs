using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Are the run and start windings of a single-phase motor whole?</summary>
/// <remarks>
/// Run to start goes through both windings, so it has the ohms of the other two readings together, within 5 % and what a meter leaves open. A protector stands in the common lead: with both windings open to
/// common and whole to each other it is the protector, and a hot one closes again. A shaded-pole motor has one winding.
/// </remarks>
public sealed class SinglePhaseWindings() : ReadingRule<MotorCase>("Windings, single-phase", MotorReadingSources.WindingSum)
{
    private const double MostOff = 0.05;
    private const int AllReadings = 3;
    private const string Run = "ohmsCommonToRun";
    private const string Start = "ohmsCommonToStart";
    private const string Both = "ohmsRunToStart";

    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one.IsElectronic || one.IsThreePhase == true) return null;
        var (run, start, both) = (one.Readings.OhmsCommonToRun, one.Readings.OhmsCommonToStart, one.Readings.OhmsRunToStart);
        if (one.Need.Plate.Type == MotorType.ShadedPole) return run is null ? null : OneWinding(one, run);
        Ohms?[] all = [run, start, both];
        if (all.All(ohms => ohms is null)) return null;
        return (run, start, both) switch
        {
            (_, _, { IsOpen: true }) => Ruling.Bad($"Open from run to start lead: a winding is broken.", $"not open").ThePartHasFailed(),
            (_, _, null) => Ruling.Read(Both, "Measure run to start as well: it goes past a protector in the common lead, and with the other two it shows a broken or shorted winding."),
            ({ IsOpen: true }, { IsOpen: true }, _) => CommonOpen(one),
            ({ IsOpen: true }, not null, _) or (not null, { IsOpen: true }, _) =>
                Ruling.CantTell($"One winding shows open to common, but run to start, which goes through both, does not: these cannot be from the same leads.").ThenRead(Both, "The three readings cannot be from the same leads. Find common, run and start again and measure all three."),
            (null, _, _) => Ruling.Read(Run, "Measure common to run as well: the three readings show a broken or shorted winding."),
            (_, null, _) => Ruling.Read(Start, "Measure common to start as well: the three readings show a broken or shorted winding."),
            _ => Sum(run.Value, start.Value, both.Value),
        };
    }

    private static Ruling OneWinding(MotorCase one, Ohms winding) => winding switch
    {
        { IsOpen: true } => CommonOpen(one),
        _ => Ruling.Good($"The winding shows {winding.Text}: it is not open.", $"not open"),
    };

    private static Ruling CommonOpen(MotorCase one) => one switch
    {
        { MayHaveProtector: true, Need.Plate.Protection: Protection.Manual } =>
            Ruling.CantTell($"Open at the common lead: its protector is set back by hand.").ThenRead(Run, "Open at the common lead. Let it cool, press the motor's reset, and measure again."),
        { MayHaveProtector: true, Readings.ShellHot: null } =>
            Ruling.CantTell($"Open at the common lead: a hot motor's protector opens there, and closes again when it is cold.").ThenRead("shellHot", "Open at the common lead, as a hot protector is. Is the shell too hot to keep a hand on?"),
        { MayHaveProtector: true, Readings.ShellHot: true } =>
            Ruling.CantTell($"Open at the common lead: a hot motor's protector opens there, and closes again when it is cold.").ThenRead(Run, "Open at the common lead, as a hot protector is. Let it cool for an hour, and measure again with the shell cold."),
        _ => Ruling.Bad($"Open at the common lead of a motor that is {(one.MayHaveProtector ? "cold" : "without a protector")}: the winding or its protector has failed.", $"not open").ThePartHasFailed(),
    };

    private static Ruling Sum(double run, double start, double both)
    {
        double[] rising = [run, start, both];
        Array.Sort(rising);
        var sum = rising[0] + rising[1];
        var (off, most) = (rising[2] - sum, MostOff * sum);
        FormattableString limit = $"within {MostOff * 100} % of the other two together";
        if (Within.AtMost(Math.Abs(off), most))
        {
            return both < rising[2]
                ? Ruling.Good($"The largest of the three, {rising[2]:0.##} Ω, is within {MostOff * 100} % of the other two together; run and start are the leads that show it.", limit)
                : Ruling.Good($"Run to start shows {both:0.##} Ω, within {MostOff * 100} % of {run:0.##} + {start:0.##} Ω.", limit);
        }

        // The meter's own leads are twice in the sum of two readings, and once in the third.
        const double digits = AllReadings * MeterSlack.Step;
        return Within.Span(off, -most - digits - MeterSlack.Leads, most + digits)
            ? Ruling.CantTell($"{run:0.##} and {start:0.##} Ω to common make {run + start:0.##} Ω, and run to start shows {both:0.##} Ω: more than {MostOff * 100} % off, but no further than the meter's last digit and its leads make it. {MeterSlack.Advice}", limit)
            : Ruling.Bad($"{run:0.##} and {start:0.##} Ω to common make {run + start:0.##} Ω, but run to start shows {both:0.##} Ω: more than {MostOff * 100} % off. A winding is shorted or broken.", limit).ThePartHasFailed();
    }
}
