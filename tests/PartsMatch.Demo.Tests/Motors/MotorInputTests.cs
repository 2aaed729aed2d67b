using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Tests.Motors;

/// <summary>Power, volts, amps and locked-rotor amps belong together.</summary>
public sealed class MotorInputTests
{
    private const double Sqrt3 = 1.7320508075688772;

    /// <summary>Efficiency and power factor of each type. Published: shaded pole 15-30, split capacitor 35-50 and electronically commutated 65-75 % (trade-magazine article on fan motors of 1 to 50 W);
    /// split capacitor to 60 % (engineering page); split phase 50-65 % (textbook). Power factors, and the upper ends without a minimum above, are from memory, unchecked;
    /// the lower ends of capacitor start and three-phase are the least of 10 CFR 431.446(a), or 50 % for small European ones ("fractional polyphase ... 50 to over 80", ACEEE IE013; below it from memory).</summary>
    private static (double Low, double High) EfficiencyTimesPowerFactor(MotorSpec spec) => spec.Type switch
    {
        MotorType.ShadedPole => (0.15 * 0.55, 0.30 * 0.65),
        MotorType.PermanentSplitCapacitor => (0.35 * 0.90, 0.60 * 0.98),
        MotorType.SplitPhase => (0.50 * 0.55, 0.65 * 0.70),
        MotorType.CapacitorStart => (0.622 * 0.55, 0.90 * 0.70),
        MotorType.CapacitorStartCapacitorRun => (0.622 * 0.85, 0.90 * 0.97),
        MotorType.ElectronicallyCommutated => (0.65 * 0.50, 0.82 * 0.65),
        _ => (0.45 * 0.65, 0.91 * 0.85),
    };

    [Fact]
    public void Shaft_watts_over_volt_amperes_lie_within_the_types_band_of_efficiency_and_power_factor()
    {
        foreach (var (row, spec) in SeedData.Motors.Where(part => part.Spec is { PowerMeaning: PowerMeaning.Output, FullLoadAmps: not null }))
        {
            var (low, high) = EfficiencyTimesPowerFactor(spec);
            foreach (var (watts, least, most) in Ratings(spec))
            {
                (watts / least).ShouldBeGreaterThanOrEqualTo(low, row.Number);
                (watts / most).ShouldBeLessThanOrEqualTo(high, row.Number);
            }
        }
    }

    [Fact]
    public void Watts_never_exceed_volt_amperes_whether_in_or_out()
    {
        foreach (var (row, spec) in SeedData.Motors.Where(part => part.Spec.FullLoadAmps is not null))
        {
            Ratings(spec).ShouldAllBe(rating => rating.Watts < rating.Most, row.Number);
        }
    }

    [Fact]
    public void Printed_efficiency_and_power_factor_give_the_printed_amps()
    {
        var printed = SeedData.Motors.Where(part => part.Spec is { Efficiency: not null, FullLoadAmps: not null, Speeds: 1 }).ToList();
        printed.Count.ShouldBeGreaterThan(500);
        foreach (var (row, spec) in printed)
        {
            var ratio = spec.Efficiency!.Value.DecimalFractions * spec.PowerFactor!.Value;
            foreach (var (watts, least, most) in Ratings(spec)) (watts / ratio).ShouldBeInRange(least * 0.999, most * 1.001, row.Number);
        }
    }

    /// <summary>Published: NFPA 70 table 430.250 at 460 V. Efficient motors draw less than the table, none much more.</summary>
    [Theory]
    [InlineData("1/2 hp", 1.1)]
    [InlineData("3/4 hp", 1.6)]
    [InlineData("1 hp", 2.1)]
    [InlineData("1-1/2 hp", 3.0)]
    [InlineData("2 hp", 3.4)]
    [InlineData("5 hp", 7.6)]
    public void Three_phase_amps_at_460_volts_stay_under_the_codes_table(string power, double table)
    {
        var amps = SeedData.Motors.Where(part => part.Row["power"] == power && part.Row["phase"] == "three-phase" && part.Row["voltage"].EndsWith("460 V", StringComparison.Ordinal) && part.Spec.FullLoadAmps is not null)
            .Select(part => part.Spec.FullLoadAmps![^1].Last.Amperes).ToList();

        amps.ShouldNotBeEmpty();
        amps.Max().ShouldBeLessThanOrEqualTo(table * 1.1);
        amps.Min().ShouldBeGreaterThanOrEqualTo(table * 0.6);
    }

    /// <summary>Published: the minimum average full-load efficiencies of 10 CFR 431.446(a), polyphase, open.</summary>
    [Theory]
    [InlineData("1/2 hp", 4, 78.2)]
    [InlineData("3/4 hp", 6, 81.7)]
    [InlineData("1 hp", 4, 83.5)]
    [InlineData("3 hp", 4, 86.9)]
    public void Nema_three_phase_motors_reach_the_least_efficiency_allowed(string power, int poles, double least)
    {
        var efficiencies = SeedData.Motors.Where(part => part.Row["power"] == power && part.Spec is { Type: MotorType.ThreePhaseInduction, Standard: PlateStandard.Nema } && part.Spec.Poles == poles)
            .Select(part => part.Spec.Efficiency!.Value.Percent).ToList();

        efficiencies.ShouldNotBeEmpty();
        efficiencies.ShouldAllBe(percent => percent >= least && percent < 92);
    }

    /// <summary>Published: NEMA MG 1 10.37.2; a letter's kVA a horsepower run from its figure to the next letter's.</summary>
    [Fact]
    public void Code_letters_name_the_printed_locked_rotor_kilovolt_amperes_a_horsepower()
    {
        var letters = new Dictionary<string, (double From, double Below)>
        {
            ["F"] = (5.0, 5.6),
            ["G"] = (5.6, 6.3),
            ["H"] = (6.3, 7.1),
            ["J"] = (7.1, 8.0),
            ["K"] = (8.0, 9.0),
            ["L"] = (9.0, 10.0),
            ["M"] = (10.0, 11.2),
            ["N"] = (11.2, 12.5),
        };
        var marked = SeedData.Motors.Where(part => part.Spec.CodeLetter is not null).ToList();
        marked.Count.ShouldBeGreaterThan(400);
        foreach (var (row, spec) in marked)
        {
            var root = spec.Phase == Phases.Three ? Sqrt3 : 1;
            var kilovoltAmperes = root * spec.LockedRotorAmps![0].Last.Amperes * spec.Voltage![0].Last.Volts / 1000 / ((double)spec.Power![0].Watts / 746);
            var (from, below) = letters[spec.CodeLetter!];
            kilovoltAmperes.ShouldBeInRange(from, below, row.Number);
        }
    }

    [Fact]
    public void A_standing_motor_draws_more_than_a_running_one()
    {
        foreach (var (row, spec) in SeedData.Motors.Where(part => part.Spec is { LockedRotorAmps: not null, FullLoadAmps: not null }))
        {
            for (var at = 0; at < spec.LockedRotorAmps!.Count; at++) spec.LockedRotorAmps[at].First.Amperes.ShouldBeGreaterThan(spec.FullLoadAmps!.Of(at).First.Amperes, row.Number);
        }
    }

    [Fact]
    public void What_stands_side_by_side_has_one_figure_or_one_a_rating_row()
    {
        foreach (var (row, spec) in SeedData.Motors)
        {
            int[] counts = [spec.Power!.Count, spec.Speed!.Count, spec.Voltage!.Count, spec.Frequency!.Count, spec.FullLoadAmps?.Count ?? 1, spec.LockedRotorAmps?.Count ?? 1];
            counts.ShouldAllBe(count => count == 1 || count == counts.Max(), row.Number);
        }
    }

    /// <summary>Watts of each rating row beside its least and most volt-amperes, as far as the printed amps are rounded.</summary>
    private static IEnumerable<(double Watts, double Least, double Most)> Ratings(MotorSpec spec)
    {
        var root = spec.Phase == Phases.Three ? Sqrt3 : 1;
        for (var row = 0; row < spec.FullLoadAmps!.Count; row++)
        {
            var (volts, amps) = (spec.Voltage!.Of(row), spec.FullLoadAmps[row]);
            foreach (var (end, current) in Ends(volts, amps))
            {
                // Two digits behind the point under 1 A, one above: half of the last one either way.
                var rounding = current < 1 ? 0.005 : 0.05;
                yield return ((double)spec.Power!.Of(row).Watts, root * end * (current - rounding), root * end * (current + rounding));
            }
        }
    }

    private static IEnumerable<(double Volts, double Amps)> Ends(Spread<ElectricPotential> volts, Spread<ElectricCurrent> amps)
    {
        yield return (volts.Last.Volts, amps.Last.Amperes);
        if (amps.HasTwoEnds) yield return (volts.First.Volts, amps.First.Amperes);
    }
}
