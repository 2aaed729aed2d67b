using PartsMatch.Fit.Motors;
using UnitsNet;

namespace PartsMatch.Demo.Tests.Motors;

/// <summary>Speeds, frames, shafts and capacitors belong together.</summary>
public sealed class MotorBuildTests
{
    /// <summary>Slip of the first row in percent. Published: fan motor speeds of NEMA MG 1 part 18 (8.3 to 10.4 split capacitor, 11 to 14 shaded pole), 1725 and 1140 rpm of general ones;
    /// 3000 rpm of small two-pole shaded pole motors is 16.7 % (practice); IEC motors slip 3 to 13 % at 50 Hz (practice).</summary>
    [Fact]
    public void Induction_motors_turn_below_synchronous_speed_by_their_types_slip()
    {
        foreach (var (row, spec) in SeedData.Motors.Where(part => part.Spec.Poles is not null))
        {
            for (var at = 0; at < (spec.Speed!.Count == spec.Frequency!.Count ? spec.Speed.Count : 1); at++)
            {
                var synchronous = 120 * spec.Frequency.Of(at).Hertz / spec.Poles!.Value;
                var slip = 100 * (1 - (spec.Speed[at].RevolutionsPerMinute / synchronous));
                var (least, most) = spec.Type switch
                {
                    MotorType.ShadedPole => (10.0, 17.0),
                    MotorType.PermanentSplitCapacitor => (6.0, 14.0),
                    MotorType.ThreePhaseInduction when spec.Standard == PlateStandard.Iec => (3.0, 13.0),
                    _ => (2.0, 7.0),
                };
                slip.ShouldBeInRange(least, most, row.Number);
            }
        }
    }

    [Fact]
    public void Lower_speeds_have_less_power_and_separate_windings_two_more_poles()
    {
        var several = SeedData.Motors.Where(part => part.Spec.SpeedMeans is SpeedMeans.TappedWinding or SpeedMeans.SeparateWindings).ToList();
        several.Select(part => part.Spec.SpeedMeans).Distinct().Count().ShouldBe(2);
        foreach (var (row, spec) in several)
        {
            spec.Speeds.ShouldBe(spec.Speed!.Count, row.Number);
            for (var at = 1; at < spec.Speed.Count; at++)
            {
                spec.Speed[at].RevolutionsPerMinute.ShouldBeLessThan(spec.Speed[at - 1].RevolutionsPerMinute, row.Number);
                spec.Power![at].Watts.ShouldBeLessThan(spec.Power[at - 1].Watts, row.Number);
            }

            // Worked by hand: synchronous speed with two poles more is p / (p + 2) of it; plate speeds keep about that ratio.
            if (spec.SpeedMeans == SpeedMeans.SeparateWindings) (spec.Speed[1] / spec.Speed[0]).ShouldBe(spec.Poles!.Value / (spec.Poles.Value + 2.0), 0.01, row.Number);
        }
    }

    /// <summary>Published: NEMA MG 1 4.4.1 (U, N-W) and 4.4.4 (AH, AJ, AK), in inches.</summary>
    [Theory]
    [InlineData("48", 0.5, 1.5, null, null)]
    [InlineData("56", 0.625, 1.88, null, null)]
    [InlineData("56H", 0.625, 1.88, null, null)]
    [InlineData("56C", 0.625, 2.06, 5.875, 4.5)]
    [InlineData("143T", 0.875, 2.25, null, null)]
    [InlineData("145TC", 0.875, 2.12, 5.875, 4.5)]
    [InlineData("182T", 1.125, 2.75, null, null)]
    [InlineData("184TC", 1.125, 2.62, 7.25, 8.5)]
    public void A_nema_frame_brings_its_shaft_and_face(string frame, double shaft, double length, double? circle, double? pilot)
    {
        var motors = SeedData.Motors.Where(part => part.Row["frame"] == frame).ToList();
        motors.Count.ShouldBeGreaterThan(3);
        foreach (var (row, spec) in motors)
        {
            spec.ShaftDiameter!.Value.Inches.ShouldBe(shaft, 1e-9, row.Number);
            if (spec.ShaftLength is { } given) given.Inches.ShouldBe(length, 1e-9, row.Number);
            spec.FaceBoltCircle?.Inches.ShouldBe(circle!.Value, 1e-9, row.Number);
            spec.FacePilot?.Inches.ShouldBe(pilot!.Value, 1e-9, row.Number);
            (spec.FaceBoltCircle is null).ShouldBe(circle is null, row.Number);
        }
    }

    /// <summary>From memory, unchecked: IEC 60072-1, in mm.</summary>
    [Theory]
    [InlineData("IEC 63", 11, 23, 115, 75)]
    [InlineData("IEC 71", 14, 30, 130, 85)]
    [InlineData("IEC 80", 19, 40, 165, 100)]
    [InlineData("IEC 90S", 24, 50, 165, 115)]
    [InlineData("IEC 100L", 28, 60, 215, 130)]
    public void An_iec_frame_brings_its_shaft_and_its_flange_or_face(string frame, double shaft, double length, double flange, double face)
    {
        var motors = SeedData.Motors.Where(part => part.Row["frame"] == frame).ToList();
        motors.Count.ShouldBeGreaterThan(3);
        foreach (var (row, spec) in motors)
        {
            spec.ShaftDiameter!.Value.Millimeters.ShouldBe(shaft, 1e-9, row.Number);
            if (spec.ShaftLength is { } given) given.Millimeters.ShouldBe(length, 1e-9, row.Number);
            double? circle = spec.Mounts!.Contains(MountKind.Flange) ? flange : spec.Mounts!.Contains(MountKind.TappedFace) ? face : null;
            spec.FaceBoltCircle?.Millimeters.ShouldBe(circle!.Value, 1e-9, row.Number);
            (spec.FaceBoltCircle is null).ShouldBe(circle is null, row.Number);
        }
    }

    [Fact]
    public void Only_motors_that_run_on_a_capacitor_have_one_of_a_voltage_class_of_the_trade()
    {
        foreach (var (row, spec) in SeedData.Motors)
        {
            var runsOnOne = spec.Type is MotorType.PermanentSplitCapacitor or MotorType.CapacitorStartCapacitorRun;
            spec.RunCapacitor!.IsNone.ShouldBe(!runsOnOne, row.Number);

            // Published: 370 and 440 V in North America, mostly 400 and 450 V in Europe.
            if (runsOnOne) spec.RunCapacitor.Volts!.Value.Volts.ShouldBeOneOf(spec.Standard == PlateStandard.Iec ? [400.0, 450.0] : [370.0, 440.0]);
        }
    }

    [Fact]
    public void Larger_split_capacitor_motors_run_on_larger_capacitors()
    {
        double Mean(string power) => SeedData.Motors.Where(part => part.Row["power"] == power && part.Row["voltage"] == "208-230 V" && part.Spec.Type == MotorType.PermanentSplitCapacitor)
            .Average(part => part.Spec.RunCapacitor!.Capacitance!.Value.Microfarads);

        string[] powers = ["1/8 hp", "1/6 hp", "1/3 hp", "1/2 hp", "3/4 hp", "1 hp"];
        powers.Select(Mean).ShouldBeInOrder();
    }

    [Fact]
    public void A_flat_is_shorter_than_its_shaft_and_a_shaft_has_a_flat_only_if_its_form_says_so()
    {
        foreach (var (row, spec) in SeedData.Motors.Where(part => part.Spec.FlatLength is not null))
        {
            spec.ShaftForm.ShouldBeOneOf([ShaftForm.Flat, ShaftForm.DoubleFlat], row.Number);
            spec.FlatLength!.Value.ShouldBeLessThanOrEqualTo(spec.ShaftLength!.Value, row.Number);
        }
    }

    [Fact]
    public void Shaded_pole_motors_turn_one_way_and_three_phase_ones_either()
    {
        SeedData.Motors.Where(part => part.Spec is { Type: MotorType.ShadedPole, Reversing: not null }).ShouldAllBe(part => part.Spec.Reversing == Reversing.Fixed);
        SeedData.Motors.Where(part => part.Spec is { Type: MotorType.ThreePhaseInduction, Reversing: not null }).ShouldAllBe(part => part.Spec.Reversing == Reversing.ByLeads);
    }

    [Fact]
    public void Nothing_with_an_open_starting_switch_is_marked_for_a_flammable_refrigerant()
    {
        SeedData.Motors.Where(part => part.Spec.Type is MotorType.SplitPhase or MotorType.CapacitorStart or MotorType.CapacitorStartCapacitorRun)
            .ShouldAllBe(part => part.Spec.Hazards == null || part.Spec.Hazards.All(mark => mark == HazardMarking.Ordinary));
    }

    [Fact]
    public void What_ships_on_a_tap_ships_on_one_of_its_own()
    {
        var tapped = SeedData.Motors.Where(part => part.Spec.ConnectedFor is not null).ToList();
        tapped.Count.ShouldBeGreaterThan(400);
        tapped.ShouldAllBe(part => part.Spec.Voltage!.Count == 2 && part.Spec.Voltage.Contains(part.Spec.ConnectedFor![0]));
    }
}
