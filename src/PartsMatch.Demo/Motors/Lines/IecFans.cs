using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors.Lines;

/// <summary>Single-phase split-capacitor fan motors to European habits: 230 V, watts that are often input, IP code, 400 or 450 V capacitor.</summary>
public sealed class IecFans : MotorLine
{
    /// <summary>Frames and shaft watts: practice, from memory, unchecked.</summary>
    private static readonly (string Frame, int Watts)[] Ratings = [("63", 60), ("63", 90), ("71", 120), ("71", 180), ("71", 250), ("80", 370)];

    public override string Title => "Fan motor";

    public override int Share => 120;

    public override Programme MadeBy => Programme.Iec;

    public override MotorDesign Design(Draw draw)
    {
        var poles = draw.Of((4, 6), (6, 4));
        var (frame, output) = draw.Pick(Ratings);
        var isInput = draw.Chance(0.5);
        var both = draw.Chance(0.25);
        var spec = new MotorSpec
        {
            Type = MotorType.PermanentSplitCapacitor,
            Power = new(isInput ? Power.FromWatts(Math.Round((decimal)output / 0.52m / 5) * 5) : Power.FromKilowatts(output / 1000m)),
            PowerMeaning = isInput ? PowerMeaning.Input : PowerMeaning.Output,

            // Fan motors slip more than general ones; at 60 Hz they turn about a sixth faster.
            Speed = TradeText.Read<Figures<RotationalSpeed>>((poles, both) switch { (4, true) => "1350/1580 rpm", (4, _) => draw.Of(("1350 rpm", 1), ("1380 rpm", 1)), (_, true) => "890/1050 rpm", _ => draw.Of(("890 rpm", 1), ("910 rpm", 1)) }),
            Frequency = TradeText.Read<Figures<Frequency>>(both ? "50/60 Hz" : "50 Hz"),
            Speeds = 1,
            Poles = poles,
            ServiceFactor = 1,
            Duty = Duty.Continuous,
            Voltage = TradeText.Read<Figures<Spread<ElectricPotential>>>("230 V"),
            Phase = Phases.Single,
            Frame = TradeText.Read<FrameSize>("IEC " + frame),
            Enclosure = draw.Of((Enclosure.EnclosedAirOver, 8), (Enclosure.EnclosedNonVentilated, 2)),
            IpCode = TradeText.Read<IpCode>(draw.Of(("IP44", 3), ("IP54", 6), ("IP55", 1))),
            Mounts = new(draw.Of<MountKind[]>(([MountKind.RigidBase], 4), ([MountKind.TappedFace], 4), ([MountKind.Flange], 2))),
            Reversing = draw.Of((Reversing.Fixed, 6), (Reversing.ByLeads, 4)),
            Rotation = new(draw.Chance(0.6) ? Direction.Clockwise : Direction.Counterclockwise, MotorEnd.Shaft),
            Standard = PlateStandard.Iec,
        };
        return new(spec, false, draw.Between(0.1, 0.9));
    }

    public override MotorSpec Build(MotorDesign design, Draw draw)
    {
        var spec = FrameBuild.WithIec(design.Spec, draw) with
        {
            DrainHoles = draw.Of((DrainHoles.BothEnds, 6), (DrainHoles.None, 2), (DrainHoles.ShaftEnd, 2)),
            Protection = draw.Of((Protection.Thermal, 7), (Protection.Automatic, 3)),
            SpeedControls = new(draw.Chance(0.5) ? SpeedControl.PhaseCut : SpeedControl.None),
            Hazards = FanBuild.Hazards(draw),
        };
        spec = FanBuild.WithBearings(spec, 0.8, allPositions: true, draw);
        return FanBuild.WithAmbient(spec, draw.Of((40, 5), (50, 2), (60, 3)), draw);
    }
}
