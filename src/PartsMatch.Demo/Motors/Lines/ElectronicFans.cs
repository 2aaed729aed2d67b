using PartsMatch.Demo.Motors.Tables;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors.Lines;

/// <summary>Electronically commutated motors in fan bodies: of several speeds, or driven by a signal.</summary>
public sealed class ElectronicFans : MotorLine
{
    public override string Title => "Fan motor";

    public override int Share => 100;

    public override Programme MadeBy => Programme.Electronic;

    public override MotorDesign Design(Draw draw)
    {
        var universal = draw.Chance(0.4);
        var power = TradeText.Read<Power>(draw.Of(("1/6 hp", 2), ("1/5 hp", 2), ("1/4 hp", 4), ("1/3 hp", 6), ("1/2 hp", 7), ("3/4 hp", 4), ("1 hp", 3)));
        var spec = new MotorSpec
        {
            Type = MotorType.ElectronicallyCommutated,
            Power = new(power),
            PowerMeaning = PowerMeaning.Output,
            Speed = TradeText.Read<Figures<RotationalSpeed>>(draw.Of(("1075 rpm", 6), ("1050 rpm", 2), ("825 rpm", 2), ("1200 rpm", 1))),
            Speeds = draw.Of((1, 2), (2, 3), (5, 3)),
            SpeedMeans = SpeedMeans.Electronic,
            ServiceFactor = 1,
            Duty = Duty.Continuous,
            Voltage = TradeText.Read<Figures<Spread<ElectricPotential>>>(universal ? draw.Of(("115/208-230 V", 5), ("208-230 V", 5)) : draw.Of(("115 V", 3), ("208-230 V", 6), ("277 V", 1))),
            Phase = Phases.Single,
            Frequency = TradeText.Read<Figures<Frequency>>(draw.Of(("60 Hz", 6), ("50/60 Hz", universal ? 0 : 4))),
            Frame = TradeText.Read<FrameSize>("48Y"),
            Enclosure = draw.Of((Enclosure.EnclosedAirOver, 5), (Enclosure.OpenAirOver, 4), (Enclosure.EnclosedNonVentilated, 1)),
            Mounts = new(universal ? [MountKind.BellyBand, MountKind.Studs] : draw.Of<MountKind[]>(([MountKind.BellyBand], 5), ([MountKind.Studs], 4), ([MountKind.ThreePoint], 1))),
            ShaftDiameter = TradeText.Read<Length>("1/2 in"),
            ShaftEnds = 1,
            Reversing = universal || draw.Chance(0.4) ? Reversing.BySetting : Reversing.Fixed,
            Rotation = new(draw.Chance(0.5) ? Direction.Clockwise : Direction.Counterclockwise, MotorEnd.Shaft),
            Standard = PlateStandard.Nema,
        };
        return new(spec, universal, draw.Between(0.1, 0.9));
    }

    public override MotorSpec Build(MotorDesign design, Draw draw)
    {
        var spec = FanBuild.WithBody(design.Spec, FanBodies.ByFrame["48Y"], draw);
        spec = spec with
        {
            ConnectedFor = FanBuild.ConnectedFor(spec.Voltage!, draw),
            ShaftLength = FanBuild.Quarters(design.IsUniversal ? draw.Between(5, 6.5) : draw.Between(3, 5.5)),
            ShaftForm = draw.Of((ShaftForm.Flat, 8), (ShaftForm.DoubleFlat, 2)),
            ShaftCanBeCut = design.IsUniversal || draw.Chance(0.5),
            DrainHoles = FanBuild.Drains(spec.Enclosure!.Value, design.IsUniversal, draw),
            Protection = Protection.Automatic,
            SpeedControls = new(draw.Of<SpeedControl[]>(([SpeedControl.None], 5), ([SpeedControl.PulseSignal], 3), ([SpeedControl.VoltageSignal], 2), ([SpeedControl.VoltageSignal, SpeedControl.PulseSignal], 2))),
            Hazards = FanBuild.Hazards(draw),
        };
        spec = spec with { SpeedFeedback = FanBuild.Feedback(spec.SpeedControls) };
        spec = FanBuild.WithBearings(spec, 0.85, design.IsUniversal, draw);
        return FanBuild.WithFlat(FanBuild.WithAmbient(spec, draw.Of((40, 3), (60, 6), (70, 1)), draw), draw);
    }
}
