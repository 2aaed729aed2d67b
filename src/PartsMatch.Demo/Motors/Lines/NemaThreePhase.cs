using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors.Lines;

/// <summary>Three-phase general motors on NEMA frames, with feet, a C-face or both.</summary>
public sealed class NemaThreePhase : MotorLine
{
    /// <summary>Powers by frame: 56 and the T frames of NEMA MG 1 13.2 (from memory, unchecked).</summary>
    private static readonly (string Power, string Frame, int Poles, string Speed)[] Ratings =
    [
        ("1/4 hp", "56", 4, "1725 rpm"), ("1/3 hp", "56", 4, "1725 rpm"), ("1/2 hp", "56", 4, "1725 rpm"), ("3/4 hp", "56", 4, "1725 rpm"), ("1 hp", "56", 4, "1725 rpm"),
        ("1-1/2 hp", "56", 4, "1730 rpm"), ("2 hp", "56", 4, "1730 rpm"), ("1/3 hp", "56", 6, "1140 rpm"), ("1/2 hp", "56", 6, "1140 rpm"), ("3/4 hp", "56", 6, "1140 rpm"),
        ("1/2 hp", "56", 2, "3450 rpm"), ("1 hp", "56", 2, "3450 rpm"),
        ("1 hp", "143T", 4, "1740 rpm"), ("1-1/2 hp", "145T", 4, "1740 rpm"), ("2 hp", "145T", 4, "1745 rpm"), ("3 hp", "182T", 4, "1755 rpm"), ("5 hp", "184T", 4, "1755 rpm"),
        ("3/4 hp", "143T", 6, "1150 rpm"), ("1 hp", "145T", 6, "1150 rpm"), ("1-1/2 hp", "182T", 6, "1160 rpm"), ("2 hp", "184T", 6, "1160 rpm"),
        ("1-1/2 hp", "143T", 2, "3490 rpm"), ("2 hp", "145T", 2, "3490 rpm"),
    ];

    public override string Title => "Motor";

    public override int Share => 250;

    public override Programme MadeBy => Programme.Frames;

    public override MotorDesign Design(Draw draw)
    {
        var (power, frame, poles, speed) = draw.Pick(Ratings);
        var rated = TradeText.Read<Figures<Power>>(power);
        var enclosure = draw.Of((Enclosure.OpenDripProof, 38), (Enclosure.EnclosedFanCooled, 50), (Enclosure.EnclosedNonVentilated, rated.WattsOf() < 800 ? 12 : 0));
        var (mounts, face) = draw.Of<(MountKind[], bool)>((([MountKind.RigidBase], false), 50), (([MountKind.TappedFace], true), 25), (([MountKind.RigidBase, MountKind.TappedFace], true), 25));
        var spec = new MotorSpec
        {
            Type = MotorType.ThreePhaseInduction,
            Power = rated,
            PowerMeaning = PowerMeaning.Output,
            Speed = TradeText.Read<Figures<RotationalSpeed>>(speed),
            Speeds = 1,
            Poles = poles,
            ServiceFactor = FrameBuild.ServiceFactor(rated.Horsepower(), enclosure, draw),
            Duty = Duty.Continuous,
            Voltage = TradeText.Read<Figures<Spread<ElectricPotential>>>(draw.Of(("208-230/460 V", 68), ("230/460 V", 16), ("460 V", 6), ("200 V", 4), ("575 V", 6))),
            Phase = Phases.Three,
            Frequency = new(Frequency.FromHertz(60)),
            Frame = TradeText.Read<FrameSize>(face ? frame + "C" : frame),
            Mounts = new(mounts),
            Reversing = Reversing.ByLeads,
            Enclosure = enclosure,
            Standard = PlateStandard.Nema,
        };
        return new(spec, spec.Voltage.Count > 1, draw.Between(0.1, 0.9));
    }

    public override MotorSpec Build(MotorDesign design, Draw draw)
    {
        var spec = FrameBuild.WithNema(design.Spec, draw);
        var closed = spec.Enclosure != Enclosure.OpenDripProof;
        spec = spec with
        {
            ConnectedFor = FanBuild.ConnectedFor(spec.Voltage!, draw),
            DrainHoles = FanBuild.Drains(spec.Enclosure!.Value, universal: false, draw),
            Protection = draw.Of((Protection.None, 84), (Protection.Thermal, 8), (Protection.Automatic, 5), (Protection.Manual, 3)),
            Hazards = draw.Of<HazardMarking[]?>((null, 84), ([HazardMarking.Ordinary], 8), ([HazardMarking.ClassOneDivisionTwo], 5), ([HazardMarking.ClassOneDivisionOne], closed ? 3 : 0)) is { } marks ? new(marks) : null,
            BreakdownTorque = draw.Chance(0.45) ? Ratio.FromPercent(draw.Whole(50, 64) * 5) : null,
        };
        spec = FanBuild.WithAmbient(FanBuild.WithBearings(spec, 1, allPositions: true, draw), 40, draw);
        var drive = draw.Chance(0.45);
        return spec with
        {
            // What a drive does to a winding asks for class F at least.
            SpeedControls = new(drive ? SpeedControl.Drive : SpeedControl.None),
            Insulation = drive ? InsulationClass.F : draw.Of((InsulationClass.B, 5), (InsulationClass.F, 5)),
        };
    }
}
