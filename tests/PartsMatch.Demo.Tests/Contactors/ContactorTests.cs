using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors;
using UnitsNet;

namespace PartsMatch.Demo.Tests.Contactors;

public sealed class ContactorTests
{
    private static readonly IReadOnlyList<SeedPart<ContactorSpec>> All = SeedData.Contactors;

    [Fact]
    public void There_are_500_contactors_and_relays_of_three_makers()
    {
        All.Count.ShouldBe(500);
        All.Select(part => part.Row["maker"]).Distinct().Count().ShouldBe(3);
        foreach (var poles in Enum.GetValues<PoleCount>()) All.Count(part => part.Spec.PoleCount == poles).ShouldBeGreaterThan(10, poles.ToString());
        All.Count(part => part.Spec.ContactAction == ContactAction.ChangeOver).ShouldBeInRange(50, 120);
    }

    /// <summary>NEMA ICS 2 (published): 9, 18, 27, 36, 45 A for sizes 00, 0, 1, 1P, 2; 7-1/2 hp at 230 V and 10 hp at 460 V for size 1.</summary>
    [Fact]
    public void Sizes_carry_what_the_standard_says()
    {
        var amps = new Dictionary<NemaSize, double> { [NemaSize.DoubleZero] = 9, [NemaSize.Zero] = 18, [NemaSize.One] = 27, [NemaSize.OneP] = 36, [NemaSize.Two] = 45 };
        var sized = All.Where(part => part.Spec.Size is not null).ToList();

        sized.Count.ShouldBe(90);
        sized.ShouldAllBe(part => part.Spec.ContinuousAmps!.Value.Amperes.Equals(amps[part.Spec.Size!.Value]));
        All.Where(part => part.Spec is { Size: NemaSize.One, PoleCount: PoleCount.Three }).ShouldAllBe(part => part.Row["threePhaseHorsepower"] == "7-1/2 / 7-1/2 / 10 / 10 hp" && part.Row["ratedVolts"] == "200/230/460/575 V");
        All.Where(part => part.Spec is { Size: NemaSize.One, PoleCount: PoleCount.Two }).ShouldAllBe(part => part.Row["singlePhaseHorsepower"] == "2 hp / 3 hp" && part.Row["ratedVolts"] == "115/230 V");
        sized.ShouldAllBe(part => (part.Spec.SinglePhaseHorsepower ?? part.Spec.ThreePhaseHorsepower)!.Count == part.Spec.RatedVolts!.Count);
    }

    /// <summary>Figures that stand side by side belong together by position.</summary>
    [Fact]
    public void Amps_pair_with_their_volts_and_fall_with_them()
    {
        foreach (var part in All)
        {
            foreach (var amps in new[] { part.Spec.FullLoadAmps, part.Spec.LockedRotorAmps, part.Spec.ResistiveAmps }.OfType<Figures<ElectricCurrent>>())
            {
                (amps.Count == 1 || amps.Count == part.Spec.RatedVolts!.Count).ShouldBeTrue(part.Row.Number);
                amps.Select(one => one.Amperes).ShouldBe(amps.Select(one => one.Amperes).OrderDescending(), part.Row.Number);
            }
        }
    }

    /// <summary>Practice: locked-rotor amps are four to seven times the full load; AC-1 amps are never less than AC-3 amps.</summary>
    [Fact]
    public void Ratings_of_one_contact_go_together()
    {
        All.Where(part => part.Spec is { FullLoadAmps: not null, LockedRotorAmps: not null })
            .ShouldAllBe(part => Within.Span(part.Spec.LockedRotorAmps![0].Amperes / part.Spec.FullLoadAmps![0].Amperes, 4, 7));
        All.Where(part => part.Spec is { AcOneAmps: not null, AcThreeAmps: not null }).ShouldAllBe(part => part.Spec.AcOneAmps![0] >= part.Spec.AcThreeAmps![0]);
    }

    /// <summary>Practice: the ohms of a coil are less than its volts squared over its VA, for its iron holds the current back besides.</summary>
    [Fact]
    public void Coils_have_less_ohms_than_impedance()
    {
        var known = All.Where(part => part.Spec is { CoilOhms: not null, CoilVa: not null }).ToList();

        known.Count.ShouldBeGreaterThan(100);
        known.ShouldAllBe(part => Within.Span(part.Spec.CoilOhms!.Value * part.Spec.CoilVa!.Value.Voltamperes / Math.Pow(part.Spec.CoilVolts![0].Last.Volts, 2), 0.15, 0.3));
    }

    [Fact]
    public void Further_coils_are_for_other_volts_than_the_one_inside()
    {
        var bodies = All.Where(part => part.Spec.FurtherCoils is not null).Select(part => (Own: part.Spec.CoilVolts![0], Further: part.Spec.FurtherCoils!)).ToList();

        bodies.Count.ShouldBeGreaterThan(90);
        bodies.ShouldAllBe(body => body.Further.All(coil => coil.Volts != body.Own) && body.Further.Select(coil => coil.Number).Distinct().Count() == body.Further.Count);
    }

    [Fact]
    public void One_in_ten_to_one_in_five_lacks_something() =>
        All.Count(part => part.Spec.CoilVa is null || part.Spec.Terminals is null || part.Spec.Mounts is null || part.Spec.CoilFrequency is null || part.Spec.TakesAuxiliaries is null || part.Spec.Contacts is null || part.Spec.Auxiliaries is null).ShouldBeInRange(30, 100);

    [Fact]
    public void The_commonest_are_there_several_times_over() =>
        All.Count(part => part.Spec.PoleCount == PoleCount.Two && part.Row["coilVolts"] == "24 V" && part.Spec.FullLoadAmps?[0].Amperes is >= 30 and <= 40).ShouldBeGreaterThanOrEqualTo(4);
}
