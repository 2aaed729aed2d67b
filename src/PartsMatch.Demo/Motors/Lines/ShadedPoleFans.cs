using PartsMatch.Demo.Motors.Tables;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors.Lines;

/// <summary>Shaded pole fan motors of 1/200 to 1/15 hp: cheap, warm, and they turn one way only.</summary>
public sealed class ShadedPoleFans : MotorLine
{
    public override string Title => "Fan motor";

    public override int Share => 400;

    public override Programme MadeBy => Programme.Small;

    public override MotorDesign Design(Draw draw)
    {
        var power = TradeText.Read<Power>(draw.Of(
            ("1/200 hp", 4), ("1/150 hp", 5), ("1/125 hp", 4), ("1/100 hp", 8), ("1/70 hp", 6), ("1/50 hp", 9), ("1/40 hp", 8), ("1/30 hp", 10), ("1/25 hp", 9), ("1/20 hp", 14), ("1/15 hp", 12)));
        var volts = draw.Of(("115 V", 56), ("230 V", 22), ("208-230 V", 19), ("115/230 V", 3));
        var both = volts is "115 V" or "230 V" && draw.Chance(0.14);
        var poles = both ? 4 : draw.Of((4, 64), (6, 26), (2, 10));
        var speed = poles switch { 4 => draw.Of((1550, 8), (1500, 2)), 6 => draw.Of((1050, 8), (1000, 1)), _ => 3000 };
        var large = power.Watts >= 29;
        var spec = new MotorSpec
        {
            Type = MotorType.ShadedPole,
            Power = new(power),
            PowerMeaning = PowerMeaning.Output,

            // Both frequencies stand side by side with their speeds: 50 Hz turns five sixths as fast.
            Speed = new(both ? [RotationalSpeed.FromRevolutionsPerMinute(1300), RotationalSpeed.FromRevolutionsPerMinute(1550)] : [RotationalSpeed.FromRevolutionsPerMinute(speed)]),
            Frequency = TradeText.Read<Figures<Frequency>>(both ? "50/60 Hz" : "60 Hz"),
            Speeds = 1,
            Poles = poles,
            ServiceFactor = 1,
            Duty = Duty.Continuous,
            Voltage = TradeText.Read<Figures<Spread<ElectricPotential>>>(volts),
            Phase = Phases.Single,
            Enclosure = draw.Of((Enclosure.OpenAirOver, 36), (Enclosure.OpenDripProof, 18), (Enclosure.EnclosedAirOver, 26), (Enclosure.EnclosedNonVentilated, 20)),
            Mounts = new(draw.Of<MountKind[]>(([MountKind.Studs], 40), ([MountKind.Ears], 18), ([MountKind.BellyBand], 14), ([MountKind.BellyBand, MountKind.Studs], 10), ([MountKind.RigidBase], 10), ([MountKind.ThreePoint], 8))),
            ShaftDiameter = TradeText.Read<Length>(large ? draw.Of(("5/16 in", 6), ("3/8 in", 3), ("1/4 in", 1)) : draw.Of(("1/4 in", 5), ("5/16 in", 4), ("3/16 in", 1))),
            ShaftEnds = draw.Chance(0.06) ? 2 : 1,
            Reversing = Reversing.Fixed,
            Rotation = new(draw.Chance(0.55) ? Direction.Clockwise : Direction.Counterclockwise, MotorEnd.Shaft),
            Standard = PlateStandard.Nema,
        };
        return new(spec, draw.Chance(0.1), draw.Between(0.1, 0.9));
    }

    public override MotorSpec Build(MotorDesign design, Draw draw)
    {
        var spec = design.Spec;
        var watts = spec.Power!.WattsOf();
        spec = FanBuild.WithBody(spec, watts >= 29 && draw.Chance(0.7) ? FanBodies.Medium : FanBodies.Small, draw);
        spec = spec with
        {
            ConnectedFor = FanBuild.ConnectedFor(spec.Voltage!, draw),
            ShaftLength = FanBuild.Quarters(design.IsUniversal ? draw.Between(3, 4.5) : draw.Between(1, 3.5)),
            ShaftForm = draw.Of((ShaftForm.Flat, 5), (ShaftForm.Round, 5)),
            ShaftCanBeCut = design.IsUniversal || draw.Chance(0.7),
            DrainHoles = FanBuild.Drains(spec.Enclosure!.Value, universal: false, draw),
            Protection = watts < 20 ? draw.Of((Protection.Impedance, 8), (Protection.Thermal, 2)) : draw.Of((Protection.Automatic, 5), (Protection.Impedance, 3), (Protection.Thermal, 2)),
            SpeedControls = new(draw.Chance(0.3) ? SpeedControl.PhaseCut : SpeedControl.None),
            Hazards = FanBuild.Hazards(draw),
        };
        spec = FanBuild.WithBearings(spec, 0.1, design.IsUniversal, draw);
        return FanBuild.WithFlat(FanBuild.WithAmbient(spec, draw.Of((40, 7), (60, 3)), draw), draw);
    }
}
