using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors.Lines;

/// <summary>Motors of a few watts with one long bearing, for cases and unit coolers: the same body in three kinds, US and European.</summary>
public sealed class UnitBearingFans : MotorLine
{
    public override string Title => "Unit-bearing fan motor";

    public override int Share => 320;

    public override Programme MadeBy => Programme.Small;

    public override MotorDesign Design(Draw draw)
    {
        var type = draw.Of((MotorType.ShadedPole, 58), (MotorType.ElectronicallyCommutated, 27), (MotorType.PermanentSplitCapacitor, 15));
        var european = draw.Chance(0.4);
        var electronic = type == MotorType.ElectronicallyCommutated;
        var output = type == MotorType.PermanentSplitCapacitor ? draw.Of((9, 2), (12, 2), (16, 4), (25, 4), (34, 2)) : draw.Of((4, 3), (5, 4), (6, 3), (9, 6), (10, 3), (12, 4), (16, 6), (20, 2), (25, 4));

        // Some catalogues, European ones more often, give what it takes rather than what it gives.
        var isInput = draw.Chance(european ? 0.4 : 0.1);
        var watts = isInput ? InputWatts(type, output) : output;
        var both = european && !electronic && draw.Chance(0.4);
        var spec = new MotorSpec
        {
            Type = type,
            Power = new(Power.FromWatts(watts)),
            PowerMeaning = isInput ? PowerMeaning.Input : PowerMeaning.Output,
            Speed = TradeText.Read<Figures<RotationalSpeed>>(electronic ? draw.Of(("1550 rpm", 6), ("1300 rpm", 3), ("1800 rpm", 1)) : both ? "1300/1550 rpm" : european ? "1300 rpm" : "1550 rpm"),
            Frequency = TradeText.Read<Figures<Frequency>>(electronic && (european || draw.Chance(0.5)) || both ? "50/60 Hz" : european ? "50 Hz" : "60 Hz"),
            Speeds = 1,
            Poles = electronic ? null : 4,
            Duty = Duty.Continuous,
            Voltage = TradeText.Read<Figures<Spread<ElectricPotential>>>(european ? "230 V" : electronic ? draw.Of(("115 V", 5), ("208-230 V", 3), ("100 to 240 V", 3)) : draw.Of(("115 V", 6), ("208-230 V", 3), ("230 V", 2))),
            Phase = Phases.Single,
            Enclosure = draw.Of((Enclosure.EnclosedNonVentilated, 6), (Enclosure.EnclosedAirOver, 4)),
            Mounts = new(draw.Of<MountKind[]>(([MountKind.RigidBase], 35), ([MountKind.Studs], 25), ([MountKind.RigidBase, MountKind.Studs], 20), ([MountKind.ThreePoint], 12), ([MountKind.Ears], 8))),
            ShaftDiameter = TradeText.Read<Length>(european ? draw.Of(("6 mm", 5), ("8 mm", 3)) : draw.Of(("1/4 in", 6), ("5/16 in", 4))),
            ShaftEnds = 1,
            Reversing = electronic && draw.Chance(0.4) ? Reversing.BySetting : Reversing.Fixed,
            Rotation = new(draw.Chance(european ? 0.3 : 0.6) ? Direction.Clockwise : Direction.Counterclockwise, MotorEnd.Shaft),
            Standard = european ? PlateStandard.Iec : PlateStandard.Nema,
        };
        return new(spec, draw.Chance(0.15), draw.Between(0.1, 0.9));
    }

    public override MotorSpec Build(MotorDesign design, Draw draw)
    {
        var spec = design.Spec;
        var european = spec.Standard == PlateStandard.Iec;
        var watts = spec.Power!.WattsOf() / (spec.PowerMeaning == PowerMeaning.Input ? 3 : 1);
        spec = spec with
        {
            BodyDiameter = european ? Length.FromMillimeters(84) : Length.FromInches(3.3),
            BodyLength = european ? Length.FromMillimeters(Math.Round(44 + (1.4 * watts) + draw.Between(-3, 4))) : FanBuild.Eighths(1.75 + (0.05 * watts) + draw.Between(-0.15, 0.2)),
            StudCircle = !spec.Mounts!.Contains(MountKind.Studs) ? null : european ? Length.FromMillimeters(71) : TradeText.Read<Length>("2-13/16 in"),
            ShaftLength = european ? Length.FromMillimeters(draw.Whole(5, 9) * 4) : FanBuild.Quarters(draw.Between(0.75, 1.75)),
            ShaftForm = draw.Of((ShaftForm.Round, 7), (ShaftForm.Flat, 3)),
            ShaftCanBeCut = false,
            IpCode = european ? TradeText.Read<IpCode>(draw.Of(("IP42", 3), ("IP44", 4), ("IP54", 2), ("IP55", 1))) : null,
            DrainHoles = draw.Of((DrainHoles.None, 6), (DrainHoles.LeadEnd, 2), (DrainHoles.BothEnds, 2)),
            Protection = spec.Type == MotorType.ElectronicallyCommutated ? Protection.Automatic : draw.Of((Protection.Impedance, 7), (Protection.Thermal, 2), (Protection.Automatic, 1)),
            SpeedControls = new(spec.Type == MotorType.ElectronicallyCommutated ? draw.Of((SpeedControl.None, 6), (SpeedControl.PulseSignal, 2), (SpeedControl.VoltageSignal, 2)) : draw.Of((SpeedControl.None, 7), (SpeedControl.PhaseCut, 3))),
            Hazards = FanBuild.Hazards(draw),
        };
        if (spec.Type == MotorType.ElectronicallyCommutated) spec = spec with { SpeedFeedback = FanBuild.Feedback(spec.SpeedControls) };
        spec = FanBuild.WithBearings(spec, spec.Type == MotorType.ElectronicallyCommutated ? 0.6 : 0.15, allPositions: false, draw);
        spec = FanBuild.WithAmbient(spec, draw.Of((40, 6), (50, 3), (60, 1)), draw);
        return FanBuild.WithFlat(spec with { AmbientLeast = Temperature.FromDegreesCelsius(draw.Of((-30, 5), (-40, 3), (-20, 2))) }, draw);
    }

    /// <summary>Line watts for shaft watts, at the middle of the published bands for fan motors of 1 to 50 W.</summary>
    private static double InputWatts(MotorType type, double output) => Math.Round(output / Tables.Efficiency.Of(type, output, 4, PlateStandard.Iec).At(0.5));
}
