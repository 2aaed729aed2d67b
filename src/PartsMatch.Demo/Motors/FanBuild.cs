using PartsMatch.Demo.Motors.Tables;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Motors;

/// <summary>What makers of fan motors decide alike: bodies, bearings, insulation, drains.</summary>
public static class FanBuild
{
    /// <summary>Lengths step by an eighth of an inch.</summary>
    public static Length Eighths(double inches) => Length.FromInches(Math.Round(inches * 8) / 8);

    /// <summary>Shaft lengths step by a quarter of an inch (NEMA MG 1 4.4.1 note 3).</summary>
    public static Length Quarters(double inches) => Length.FromInches(Math.Round(inches * 4) / 4);

    /// <summary>Body and studs.</summary>
    public static MotorSpec WithBody(MotorSpec spec, FanBody body, Draw draw) => spec with
    {
        BodyDiameter = TradeText.Read<Length>(body.Diameter),
        BodyLength = Eighths(body.LeastLength + (body.InchesPerHorsepower * spec.Power!.Horsepower()) + draw.Between(-0.25, 0.35)),
        StudCircle = spec.Mounts!.Contains(MountKind.Studs) ? TradeText.Read<Length>(body.StudCircle) : null,
    };

    /// <summary>The flat runs from the tip to short of the bearing.</summary>
    public static MotorSpec WithFlat(MotorSpec spec, Draw draw)
    {
        if (spec.ShaftForm is not (ShaftForm.Flat or ShaftForm.DoubleFlat)) return spec;
        var length = spec.ShaftLength!.Value.Inches;
        return spec with { FlatLength = Eighths(Math.Clamp(length * draw.Between(0.5, 0.85), Math.Min(0.75, length), Math.Max(0.75, length - 0.5))) };
    }

    /// <summary>Balls run in any position; sleeves in those that their oil and thrust face allow.</summary>
    public static MotorSpec WithBearings(MotorSpec spec, double ballShare, bool allPositions, Draw draw)
    {
        ShaftPosition[] all = [ShaftPosition.Horizontal, ShaftPosition.Up, ShaftPosition.Down];
        if (draw.Chance(ballShare)) return spec with { Bearings = Bearings.Ball, ShaftPositions = new(all) };
        var positions = allPositions ? all : draw.Of<ShaftPosition[]>((all, 40), ([ShaftPosition.Horizontal], 22), ([ShaftPosition.Horizontal, ShaftPosition.Down], 20), ([ShaftPosition.Horizontal, ShaftPosition.Up], 18));
        return spec with { Bearings = Bearings.Sleeve, ShaftPositions = new(positions) };
    }

    /// <summary>The hotter the air it is made for, the better its insulation (classes: IEC 60085).</summary>
    public static MotorSpec WithAmbient(MotorSpec spec, int most, Draw draw) => spec with
    {
        AmbientMost = Temperature.FromDegreesCelsius(most),
        Insulation = most switch
        {
            >= 70 => draw.Of((InsulationClass.F, 7), (InsulationClass.B, 3), (InsulationClass.H, 1)),
            >= 60 => draw.Of((InsulationClass.B, 7), (InsulationClass.F, 3)),
            _ => draw.Of((InsulationClass.B, 7), (InsulationClass.A, 2), (InsulationClass.F, 1)),
        },
        AmbientLeast = draw.Chance(0.4) ? Temperature.FromDegreesCelsius(draw.Of((-20, 4), (-30, 4), (-40, 2))) : null,
    };

    /// <summary>Only closed motors need drains.</summary>
    public static DrainHoles Drains(Enclosure enclosure, bool universal, Draw draw) =>
        enclosure is Enclosure.OpenDripProof or Enclosure.OpenAirOver ? DrainHoles.None
        : universal ? DrainHoles.BothEnds
        : draw.Of((DrainHoles.BothEnds, 4), (DrainHoles.ShaftEnd, 2), (DrainHoles.LeadEnd, 2), (DrainHoles.None, 2));

    /// <summary>Most motors carry no marking: then it is unknown. Nothing with an open switch is marked for a flammable refrigerant.</summary>
    public static Choices<HazardMarking>? Hazards(Draw draw) => draw.Of<HazardMarking[]?>(
        (null, 80), ([HazardMarking.Ordinary], 7), ([HazardMarking.A2L], 10), ([HazardMarking.A2L, HazardMarking.A3], 3)) is { } marks ? new(marks) : null;

    /// <summary>Motors that take a pulse signal answer with one, those without any signal have no lead for it; the catalogues do not say it of a 0 to 10 V signal.</summary>
    public static bool? Feedback(Choices<SpeedControl>? controls) =>
        controls is null ? null : controls.Contains(SpeedControl.PulseSignal) ? true : controls.Contains(SpeedControl.None) ? false : null;

    /// <summary>The tap a new motor leaves the box on: mostly the higher one.</summary>
    public static Figures<Spread<ElectricPotential>>? ConnectedFor(Figures<Spread<ElectricPotential>> taps, Draw draw) =>
        taps.Count == 1 ? null : new(draw.Chance(0.7) ? taps[^1] : taps[0]);
}
