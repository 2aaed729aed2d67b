using PartsMatch.Demo.Motors.Tables;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors.Lines;

/// <summary>Three-phase condenser fan motors: fan bodies with a blade on the shaft.</summary>
public sealed class ThreePhaseFans : MotorLine
{
    public override string Title => "Fan motor";

    public override int Share => 130;

    public override Programme MadeBy => Programme.Fans;

    public override MotorDesign Design(Draw draw)
    {
        var universal = draw.Chance(0.25);
        var twoSpeed = !universal && draw.Chance(0.08);
        var power = TradeText.Read<Figures<Power>>(twoSpeed ? draw.Of(("1 / 1/2 hp", 1), ("3/4 / 1/3 hp", 1)) : draw.Of(("1/3 hp", 4), ("1/2 hp", 8), ("3/4 hp", 7), ("1 hp", 8), ("1-1/2 hp", 3)));
        var poles = twoSpeed ? 6 : draw.Of((6, 8), (8, 2));
        var large = power.WattsOf() > 500;
        var spec = new MotorSpec
        {
            Type = MotorType.ThreePhaseInduction,
            Power = power,
            PowerMeaning = PowerMeaning.Output,
            Speed = TradeText.Read<Figures<RotationalSpeed>>(twoSpeed ? "1140/850 rpm" : poles == 6 ? draw.Of(("1140 rpm", 8), ("1120 rpm", 2)) : "850 rpm"),
            Speeds = power.Count,
            SpeedMeans = twoSpeed ? SpeedMeans.SeparateWindings : null,
            Poles = poles,
            ServiceFactor = 1,
            Duty = Duty.Continuous,
            Voltage = TradeText.Read<Figures<Spread<ElectricPotential>>>(twoSpeed ? draw.Of(("460 V", 1), ("208-230 V", 1)) : draw.Of(("208-230/460 V", 58), ("460 V", 24), ("208-230 V", 10), ("200 V", 3), ("575 V", 5))),
            Phase = Phases.Three,
            Frequency = new(Frequency.FromHertz(60)),
            Frame = TradeText.Read<FrameSize>(large ? draw.Of(("56Y", 7), ("48Y", 3)) : "48Y"),
            Enclosure = draw.Of((Enclosure.EnclosedAirOver, 85), (Enclosure.OpenAirOver, 15)),
            Mounts = new(universal ? [MountKind.BellyBand, MountKind.Studs] : draw.Of<MountKind[]>(([MountKind.Studs], 6), ([MountKind.BellyBand], 2), ([MountKind.RigidBase], 2))),
            ShaftDiameter = TradeText.Read<Length>(large ? draw.Of(("5/8 in", 7), ("1/2 in", 3)) : "1/2 in"),
            ShaftEnds = 1,
            Reversing = Reversing.ByLeads,
            Standard = PlateStandard.Nema,
        };
        return new(spec, universal, draw.Between(0.1, 0.9));
    }

    public override MotorSpec Build(MotorDesign design, Draw draw)
    {
        var spec = FanBuild.WithBody(design.Spec, FanBodies.ByFrame[TradeText.Write(design.Spec.Frame!)], draw);
        var drive = draw.Chance(0.35);
        spec = spec with
        {
            ConnectedFor = FanBuild.ConnectedFor(spec.Voltage!, draw),
            ShaftLength = FanBuild.Quarters(design.IsUniversal ? draw.Between(5, 7) : draw.Between(3, 6)),
            ShaftForm = spec.ShaftDiameter!.Value.Inches > 0.6 ? ShaftForm.Keyway : draw.Of((ShaftForm.Flat, 7), (ShaftForm.DoubleFlat, 3)),
            ShaftCanBeCut = design.IsUniversal || draw.Chance(0.5),
            DrainHoles = FanBuild.Drains(spec.Enclosure!.Value, design.IsUniversal, draw),
            Protection = draw.Of((Protection.Automatic, 6), (Protection.Thermal, 2), (Protection.None, 2)),
            Hazards = FanBuild.Hazards(draw),
            SpeedControls = new(drive ? SpeedControl.Drive : SpeedControl.None),
        };
        spec = FanBuild.WithAmbient(FanBuild.WithBearings(spec, 0.85, design.IsUniversal, draw), draw.Of((60, 6), (70, 4)), draw);
        return FanBuild.WithFlat(drive ? spec with { Insulation = InsulationClass.F } : spec, draw);
    }
}
