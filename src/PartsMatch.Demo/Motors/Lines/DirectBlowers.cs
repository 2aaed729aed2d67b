using PartsMatch.Demo.Motors.Tables;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors.Lines;

/// <summary>Split-capacitor motors with a blower wheel on the shaft: open, in the air stream, mostly with several speeds by taps.</summary>
public sealed class DirectBlowers : MotorLine
{
    private static readonly string[] Series = ["1/8 hp", "1/6 hp", "1/5 hp", "1/4 hp", "1/3 hp", "1/2 hp", "3/4 hp", "1 hp"];

    public override string Title => "Blower motor";

    public override int Share => 300;

    public override Programme MadeBy => Programme.Fans;

    public override MotorDesign Design(Draw draw)
    {
        var universal = draw.Chance(0.25);
        var poles = draw.Of((6, 84), (4, 16));
        var size = draw.Of((2, 12), (3, 20), (4, 26), (5, 24), (6, 14), (7, 4));
        var speeds = Math.Min(size, universal ? draw.Of((3, 6), (4, 4)) : draw.Of((1, 15), (2, 30), (3, 35), (4, 20)));
        var speed = FanBodies.Speeds(poles)[0];
        var spec = new MotorSpec
        {
            Type = MotorType.PermanentSplitCapacitor,
            Power = new(Enumerable.Range(0, speeds).Select(row => TradeText.Read<Power>(Series[size - row]))),
            PowerMeaning = PowerMeaning.Output,
            Speed = new(Enumerable.Range(0, speeds).Select(row => RotationalSpeed.FromRevolutionsPerMinute(Math.Round(speed * (1 - (0.11 * row)) / 25) * 25))),
            Speeds = speeds,
            SpeedMeans = speeds > 1 ? SpeedMeans.TappedWinding : null,
            Poles = poles,
            ServiceFactor = 1,
            Duty = Duty.Continuous,
            Voltage = TradeText.Read<Figures<Spread<ElectricPotential>>>(draw.Of(("208-230 V", 44), ("115 V", 42), ("230 V", 8), ("277 V", 4), ("460 V", 2))),
            Phase = Phases.Single,
            Frequency = new(Frequency.FromHertz(60)),
            Frame = TradeText.Read<FrameSize>(size <= 2 && draw.Chance(0.3) ? "42Y" : "48Y"),
            Enclosure = draw.Of((Enclosure.OpenAirOver, 78), (Enclosure.OpenDripProof, 16), (Enclosure.EnclosedAirOver, 6)),
            Mounts = new(universal ? [MountKind.BellyBand, MountKind.Studs] : draw.Of<MountKind[]>(([MountKind.BellyBand], 42), ([MountKind.ThreePoint], 20), ([MountKind.ResilientCradle], 14), ([MountKind.Studs], 14), ([MountKind.Ears], 10))),
            ShaftDiameter = TradeText.Read<Length>("1/2 in"),
            ShaftEnds = draw.Chance(0.12) ? 2 : 1,
            Reversing = universal ? Reversing.ByPlug : draw.Of((Reversing.Fixed, 45), (Reversing.ByPlug, 30), (Reversing.ByLeads, 25)),
            Rotation = new(draw.Chance(0.5) ? Direction.Clockwise : Direction.Counterclockwise, MotorEnd.Shaft),
            Standard = PlateStandard.Nema,
        };
        return new(spec, universal, draw.Between(0.1, 0.9));
    }

    public override MotorSpec Build(MotorDesign design, Draw draw)
    {
        var spec = FanBuild.WithBody(design.Spec, FanBodies.ByFrame[TradeText.Write(design.Spec.Frame!)], draw);
        spec = spec with
        {
            ShaftLength = FanBuild.Quarters(design.IsUniversal ? draw.Between(5, 6.5) : draw.Between(3, 5.5)),
            ShaftForm = draw.Of((ShaftForm.Flat, 8), (ShaftForm.DoubleFlat, 2)),
            ShaftCanBeCut = design.IsUniversal || draw.Chance(0.6),
            DrainHoles = FanBuild.Drains(spec.Enclosure!.Value, design.IsUniversal, draw),
            Protection = draw.Of((Protection.Automatic, 9), (Protection.Thermal, 1)),
            SpeedControls = new(draw.Chance(0.12) ? SpeedControl.PhaseCut : SpeedControl.None),
            Hazards = FanBuild.Hazards(draw),
        };
        spec = FanBuild.WithBearings(spec, 0.25, design.IsUniversal, draw);
        return FanBuild.WithFlat(FanBuild.WithAmbient(spec, draw.Of((40, 75), (60, 25)), draw), draw);
    }
}
