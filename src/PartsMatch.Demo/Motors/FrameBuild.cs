using PartsMatch.Demo.Motors.Tables;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using UnitsNet;

namespace PartsMatch.Demo.Motors;

/// <summary>Motors whose frame promises the dimensions: they are taken from the tables, never drawn.</summary>
public static class FrameBuild
{
    /// <summary>Shaft, face and body of a NEMA frame.</summary>
    public static MotorSpec WithNema(MotorSpec spec, Draw draw)
    {
        var row = NemaFrames.All[TradeText.Write(spec.Frame!)];
        var body = TradeText.Read<Length>(row.Body);
        return spec with
        {
            ShaftDiameter = TradeText.Read<Length>(row.ShaftDiameter),
            ShaftLength = TradeText.Read<Length>(row.ShaftLength),
            ShaftForm = TradeText.Read<ShaftForm>(row.ShaftForm),
            FlatLength = row.ShaftForm == "flat" ? FanBuild.Eighths(TradeText.Read<Length>(row.ShaftLength).Inches - 0.4) : null,
            ShaftCanBeCut = false,
            ShaftEnds = 1,
            FaceBoltCircle = row.FaceCircle is { } circle ? TradeText.Read<Length>(circle) : null,
            FacePilot = row.FacePilot is { } pilot ? TradeText.Read<Length>(pilot) : null,
            BodyDiameter = body,
            BodyLength = FanBuild.Eighths(body.Inches + (2.1 * Math.Sqrt(spec.Power!.Horsepower())) + draw.Between(0, 1)),
        };
    }

    /// <summary>Shaft, flange or face and body of an IEC frame.</summary>
    public static MotorSpec WithIec(MotorSpec spec, Draw draw)
    {
        var row = IecFrames.All[TradeText.Write(spec.Frame!)[4..]];
        var (circle, pilot) = spec.Mounts!.Contains(MountKind.Flange) ? (row.FlangeCircle, row.FlangePilot)
            : spec.Mounts!.Contains(MountKind.TappedFace) ? (row.FaceCircle, row.FacePilot) : (0, 0);
        return spec with
        {
            ShaftDiameter = Length.FromMillimeters(row.Shaft),
            ShaftLength = Length.FromMillimeters(row.ShaftLength),
            ShaftForm = ShaftForm.Keyway,
            ShaftCanBeCut = false,
            ShaftEnds = 1,
            FaceBoltCircle = circle > 0 ? Length.FromMillimeters(circle) : null,
            FacePilot = pilot > 0 ? Length.FromMillimeters(pilot) : null,
            BodyDiameter = Length.FromMillimeters(row.Body),
            BodyLength = Length.FromMillimeters(Math.Round((row.Body * 1.25) + (28 * Math.Sqrt(spec.Power!.WattsOf() / 1000)) + draw.Between(-8, 12))),
        };
    }

    /// <summary>Standard service factors of small open general-purpose motors at 60 Hz (NEMA MG 1 12.51, memory); closed ones mostly promise less.</summary>
    public static double ServiceFactor(double horsepower, Enclosure enclosure, Draw draw) => enclosure == Enclosure.OpenDripProof
        ? horsepower switch { <= 0.13 => 1.4, <= 0.34 => 1.35, <= 0.76 => 1.25, _ => 1.15 }
        : draw.Of((1.0, 5), (1.15, 5));
}
