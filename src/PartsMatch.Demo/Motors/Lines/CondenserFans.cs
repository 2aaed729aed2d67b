using PartsMatch.Demo.Motors.Tables;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors.Lines;

/// <summary>Split-capacitor motors of condenser and evaporator fans: most are made for one machine, some to replace many.</summary>
public sealed class CondenserFans : MotorLine
{
    private static readonly string[] Series = ["1/12 hp", "1/10 hp", "1/8 hp", "1/6 hp", "1/5 hp", "1/4 hp", "1/3 hp", "1/2 hp", "3/4 hp", "1 hp"];

    public override string Title => "Fan motor";

    public override int Share => 930;

    public override Programme MadeBy => Programme.Fans;

    public override MotorDesign Design(Draw draw)
    {
        var universal = draw.Chance(0.32);
        var poles = draw.Of((6, 66), (8, 20), (4, 14));
        var size = poles switch
        {
            6 => draw.Of((0, 5), (1, 4), (2, 7), (3, 12), (4, 8), (5, 24), (6, 19), (7, 13), (8, 8), (9, 4)),
            8 => draw.Of((2, 8), (3, 15), (4, 10), (5, 22), (6, 22), (7, 15), (8, 6)),
            _ => draw.Of((0, 14), (1, 12), (2, 14), (3, 16), (4, 10), (5, 14), (6, 10)),
        };
        var hp = TradeText.Read<Power>(Series[size]);
        var volts = universal ? draw.Of(("208-230 V", 70), ("115/208-230 V", 20), ("115 V", 10)) : draw.Of(("208-230 V", 60), ("230 V", 20), ("115 V", 11), ("460 V", 7), ("277 V", 2));
        var taps = TradeText.Read<Figures<Spread<ElectricPotential>>>(volts);
        var speed = universal ? FanBodies.Speeds(poles)[0] : draw.Pick(FanBodies.Speeds(poles));
        var frame = size <= 2 && draw.Chance(0.45) ? "42Y" : size >= 8 && draw.Chance(0.4) ? "56Y" : "48Y";
        var spec = new MotorSpec
        {
            Type = MotorType.PermanentSplitCapacitor,
            Power = new(hp),
            PowerMeaning = PowerMeaning.Output,
            Speed = new(RotationalSpeed.FromRevolutionsPerMinute(speed)),
            Speeds = 1,
            Poles = poles,
            ServiceFactor = 1,
            Duty = Duty.Continuous,
            Voltage = taps,
            Phase = Phases.Single,
            Frequency = new(Frequency.FromHertz(60)),
            Frame = TradeText.Read<FrameSize>(frame),
            Enclosure = universal ? draw.Of((Enclosure.EnclosedAirOver, 8), (Enclosure.EnclosedNonVentilated, 2)) : draw.Of((Enclosure.EnclosedAirOver, 60), (Enclosure.EnclosedNonVentilated, 24), (Enclosure.OpenAirOver, 16)),
            Mounts = Mounts(universal, draw),
            ShaftDiameter = Shaft(frame, draw),
            ShaftEnds = 1,
            Reversing = universal ? draw.Of((Reversing.ByPlug, 8), (Reversing.ByLeads, 2)) : draw.Of((Reversing.Fixed, 66), (Reversing.ByPlug, 20), (Reversing.ByLeads, 14)),
            Rotation = new(draw.Chance(0.58) ? Direction.Clockwise : Direction.Counterclockwise, MotorEnd.Shaft),
            Standard = PlateStandard.Nema,
        };
        if (taps.Count == 1 && size >= 3 && draw.Chance(universal ? 0.3 : 0.06)) spec = WithLowSpeed(spec, size, speed, draw);
        return new(spec, universal, draw.Between(0.1, 0.9));
    }

    public override MotorSpec Build(MotorDesign design, Draw draw)
    {
        var universal = design.IsUniversal;
        var spec = FanBuild.WithBody(design.Spec, FanBodies.ByFrame[TradeText.Write(design.Spec.Frame!)], draw);
        var keyed = spec.ShaftDiameter!.Value.Inches > 0.6;
        spec = spec with
        {
            ConnectedFor = FanBuild.ConnectedFor(spec.Voltage!, draw),
            ShaftLength = FanBuild.Quarters(universal ? draw.Between(5, 7.5) : draw.Between(2.75, 6.25)),
            ShaftForm = keyed ? ShaftForm.Keyway : draw.Of((ShaftForm.Flat, 62), (ShaftForm.DoubleFlat, 33), (ShaftForm.Round, 5)),
            ShaftCanBeCut = universal || draw.Chance(0.6),
            DrainHoles = FanBuild.Drains(spec.Enclosure!.Value, universal, draw),
            Protection = draw.Of((Protection.Automatic, 88), (Protection.Thermal, 8), (Protection.Manual, 2), (Protection.None, 2)),
            SpeedControls = new(draw.Chance(0.2) ? SpeedControl.PhaseCut : SpeedControl.None),
            Hazards = FanBuild.Hazards(draw),
            BreakdownTorque = draw.Chance(0.12) ? Ratio.FromPercent(draw.Whole(28, 40) * 5) : null,
        };
        spec = FanBuild.WithBearings(spec, universal ? 0.65 : 0.42, universal, draw);
        return FanBuild.WithFlat(FanBuild.WithAmbient(spec, universal ? draw.Of((60, 5), (70, 5)) : draw.Of((60, 50), (70, 30), (40, 20)), draw), draw);
    }

    private static Choices<MountKind> Mounts(bool universal, Draw draw) => universal
        ? new(draw.Of<MountKind[]>(([MountKind.BellyBand, MountKind.Studs], 8), ([MountKind.BellyBand, MountKind.Studs, MountKind.ThreePoint], 2)))
        : new(draw.Of<MountKind[]>(([MountKind.Studs], 46), ([MountKind.BellyBand], 30), ([MountKind.BellyBand, MountKind.Studs], 17), ([MountKind.Ears], 4), ([MountKind.RigidBase], 3)));

    private static Length Shaft(string frame, Draw draw) => TradeText.Read<Length>(frame switch
    {
        "42Y" => draw.Of(("3/8 in", 3), ("1/2 in", 6), ("5/16 in", 1)),
        "56Y" => draw.Of(("5/8 in", 6), ("1/2 in", 4)),
        _ => draw.Of(("1/2 in", 95), ("3/8 in", 3), ("7/16 in", 2)),
    });

    /// <summary>A tap for low speed: the same poles, more slip, and the power of a size or so below.</summary>
    private static MotorSpec WithLowSpeed(MotorSpec spec, int size, int speed, Draw draw) => spec with
    {
        Power = new(spec.Power![0], TradeText.Read<Power>(Series[size - 1])),
        Speed = new(spec.Speed![0], RotationalSpeed.FromRevolutionsPerMinute(Math.Round(speed * draw.Between(0.80, 0.90) / 25) * 25)),
        Speeds = 2,
        SpeedMeans = SpeedMeans.TappedWinding,
    };
}
