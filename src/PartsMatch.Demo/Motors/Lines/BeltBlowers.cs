using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors.Lines;

/// <summary>Single-phase motors with a starting winding, for blowers on belts: split phase, capacitor start, and capacitor start capacitor run.</summary>
public sealed class BeltBlowers : MotorLine
{
    /// <summary>A winding for four poles and another for six: a fan at two thirds of its speed needs about a third of the power.</summary>
    private static readonly string[] TwoSpeeds = ["1/4 / 1/12 hp", "1/3 / 1/10 hp", "1/2 / 1/5 hp", "1/2 / 1/6 hp", "3/4 / 1/3 hp", "3/4 / 1/4 hp", "1 / 1/3 hp"];

    public override string Title => "Belt blower motor";

    public override int Share => 230;

    public override Programme MadeBy => Programme.Frames;

    public override MotorDesign Design(Draw draw)
    {
        var type = draw.Of((MotorType.SplitPhase, 42), (MotorType.CapacitorStart, 42), (MotorType.CapacitorStartCapacitorRun, 16));
        var twoSpeed = type != MotorType.CapacitorStartCapacitorRun && draw.Chance(0.2);
        var power = TradeText.Read<Figures<Power>>(twoSpeed ? draw.Pick(TwoSpeeds) : type switch
        {
            MotorType.SplitPhase => draw.Of(("1/6 hp", 3), ("1/4 hp", 6), ("1/3 hp", 8), ("1/2 hp", 5)),
            MotorType.CapacitorStart => draw.Of(("1/3 hp", 4), ("1/2 hp", 8), ("3/4 hp", 7), ("1 hp", 6), ("1-1/2 hp", 3)),
            _ => draw.Of(("1 hp", 4), ("1-1/2 hp", 5), ("2 hp", 5), ("3 hp", 1)),
        });
        var hp = power.Horsepower();
        var poles = twoSpeed ? 4 : draw.Of((4, 85), (6, hp <= 1 ? 9 : 0), (2, 6));
        var enclosure = draw.Of((Enclosure.OpenDripProof, 76), (Enclosure.EnclosedFanCooled, 16), (Enclosure.EnclosedNonVentilated, hp < 0.6 ? 8 : 0));
        var face = draw.Chance(0.08);
        var spec = new MotorSpec
        {
            Type = type,
            Power = power,
            PowerMeaning = PowerMeaning.Output,
            Speed = TradeText.Read<Figures<RotationalSpeed>>(twoSpeed ? "1725/1140 rpm" : poles switch { 4 => draw.Of(("1725 rpm", 9), ("1740 rpm", 1)), 6 => "1140 rpm", _ => "3450 rpm" }),
            Speeds = power.Count,
            SpeedMeans = twoSpeed ? SpeedMeans.SeparateWindings : null,
            Poles = poles,
            ServiceFactor = FrameBuild.ServiceFactor(hp, enclosure, draw),
            Duty = Duty.Continuous,
            Voltage = TradeText.Read<Figures<Spread<ElectricPotential>>>(twoSpeed ? draw.Of(("115 V", 6), ("208-230 V", 3), ("230 V", 1)) : hp > 2.5 ? "230 V" : draw.Of(("115 V", hp < 0.6 ? 4 : 1), ("115/230 V", 3), ("115/208-230 V", 5), ("230 V", 1))),
            Phase = Phases.Single,
            Frequency = new(Frequency.FromHertz(60)),
            Frame = TradeText.Read<FrameSize>(face ? "56C" : hp < 0.4 && draw.Chance(0.6) ? "48" : draw.Of(("56", 8), ("56H", 2))),
            Enclosure = enclosure,
            Mounts = new(face ? draw.Of<MountKind[]>(([MountKind.TappedFace], 1), ([MountKind.RigidBase, MountKind.TappedFace], 1)) : draw.Of<MountKind[]>(([MountKind.ResilientCradle], 6), ([MountKind.RigidBase], 4))),
            Reversing = draw.Of((Reversing.ByLeads, 85), (Reversing.ByPlug, 5), (Reversing.Fixed, 10)),
            Rotation = new(draw.Chance(0.35) ? Direction.Clockwise : Direction.Counterclockwise, MotorEnd.Shaft),
            Standard = PlateStandard.Nema,
        };
        return new(spec, spec.Voltage.Count > 1 && spec.Reversing == Reversing.ByLeads, draw.Between(0.1, 0.9));
    }

    public override MotorSpec Build(MotorDesign design, Draw draw)
    {
        var spec = FrameBuild.WithNema(design.Spec, draw);
        spec = spec with
        {
            ConnectedFor = FanBuild.ConnectedFor(spec.Voltage!, draw),
            DrainHoles = FanBuild.Drains(spec.Enclosure!.Value, universal: false, draw),
            Protection = draw.Of((Protection.Automatic, 48), (Protection.Manual, 14), (Protection.Thermal, 8), (Protection.None, 30)),
            SpeedControls = new(SpeedControl.None),
            Hazards = draw.Chance(0.1) ? new(HazardMarking.Ordinary) : null,
            BreakdownTorque = draw.Chance(0.2) ? Ratio.FromPercent(draw.Whole(40, 55) * 5) : null,
        };
        return FanBuild.WithAmbient(FanBuild.WithBearings(spec, 0.5, allPositions: false, draw), 40, draw);
    }
}
