using System.Globalization;
using PartsMatch.Demo.Motors.Tables;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors.Lines;

/// <summary>Three-phase motors on IEC frames: 230/400 V 50 Hz, kilowatts, feet, flange (B5) or face (B14).</summary>
public sealed class IecThreePhase : MotorLine
{
    public override string Title => "Motor";

    public override int Share => 220;

    public override Programme MadeBy => Programme.Iec;

    public override MotorDesign Design(Draw draw)
    {
        var rating = draw.Pick(IecFrames.Ratings);
        var inAir = rating.Kilowatts < 1 && draw.Chance(0.3);
        var both = draw.Chance(0.1);
        var spec = new MotorSpec
        {
            Type = MotorType.ThreePhaseInduction,
            Power = new(Power.FromKilowatts((decimal)rating.Kilowatts)),
            PowerMeaning = PowerMeaning.Output,
            Speed = new(RotationalSpeed.FromRevolutionsPerMinute(rating.Speed)),
            Speeds = 1,
            Poles = rating.Poles,
            ServiceFactor = 1,
            Duty = Duty.Continuous,
            Voltage = TradeText.Read<Figures<Spread<ElectricPotential>>>(rating.Kilowatts >= 3 ? "400/690 V" : both ? "400 V" : draw.Of(("230/400 V", 94), ("400 V", 6))),
            Phase = Phases.Three,
            Frequency = new(Frequency.FromHertz(50)),
            Frame = TradeText.Read<FrameSize>(string.Create(CultureInfo.InvariantCulture, $"IEC {rating.Frame}")),
            Mounts = new(draw.Of<MountKind[]>(([MountKind.RigidBase], 34), ([MountKind.Flange], 24), ([MountKind.TappedFace], 24), ([MountKind.RigidBase, MountKind.Flange], 8), ([MountKind.RigidBase, MountKind.TappedFace], 10))),
            Reversing = Reversing.ByLeads,
            Rotation = new(Direction.Clockwise, MotorEnd.Shaft),
            Enclosure = inAir ? Enclosure.EnclosedAirOver : Enclosure.EnclosedFanCooled,
            IpCode = TradeText.Read<IpCode>(draw.Of(("IP54", 3), ("IP55", 6), ("IP56", 1))),
            Standard = PlateStandard.Iec,
        };
        return new(spec, spec.Mounts.Count > 1, draw.Between(0.1, 0.9));
    }

    public override MotorSpec Build(MotorDesign design, Draw draw)
    {
        var spec = FrameBuild.WithIec(design.Spec, draw) with
        {
            ConnectedFor = FanBuild.ConnectedFor(design.Spec.Voltage!, draw),
            DrainHoles = draw.Of((DrainHoles.None, 5), (DrainHoles.BothEnds, 4), (DrainHoles.ShaftEnd, 1)),
            Protection = draw.Of((Protection.None, 8), (Protection.Thermal, 2)),
            SpeedControls = new(draw.Chance(0.6) ? SpeedControl.Drive : SpeedControl.None),
            Hazards = draw.Chance(0.06) ? new(HazardMarking.Ordinary) : null,
            BreakdownTorque = draw.Chance(0.4) ? Ratio.FromPercent(draw.Whole(42, 60) * 5) : null,
        };
        spec = FanBuild.WithBearings(spec, 1, allPositions: true, draw);
        spec = FanBuild.WithAmbient(spec, draw.Of((40, 8), (50, 1), (60, 1)), draw);
        return spec with { Insulation = draw.Of((InsulationClass.F, 8), (InsulationClass.B, 1), (InsulationClass.H, 1)) };
    }
}
