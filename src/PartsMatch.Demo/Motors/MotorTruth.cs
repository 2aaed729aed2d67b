using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using UnitsNet;

namespace PartsMatch.Demo.Motors;

/// <summary>What really decides, in this invented world, whether a motor does the job: volts off its tap, load near its power, heat, wet, turn, shaft and what is forgotten at the bench. Thresholds and hazards are made up, and no rule that judges parts is asked.</summary>
internal static class MotorTruth
{
    private static readonly Shape Shape = Shape<MotorSpec>.Of;

    /// <summary>The truth.</summary>
    public static HiddenTruth Of() => new(
    [
        new((_, part, place) => 100 * Math.Max(0, VoltsOff(part, place)), Threshold: 6, Softness: 1.2, Hazard: 0.10, IsRework: false),
        new((old, part, _) => -Ratio("power", old, part), 0.05, 0.04, 0.25, IsRework: false),
        new((old, part, _) => Ratio("power", old, part), 0.55, 0.15, 0.05, IsRework: true),
        new((old, part, _) => Math.Abs(Ratio("speed", old, part)), 0.025, 0.01, 0.12, IsRework: false),
        new((old, part, _) => Ratio("fullLoadAmps", old, part), 0.12, 0.05, 0.05, IsRework: false),
        new((old, part, _) => Math.Abs(Ratio("shaftDiameter", old, part)), 0.01, 0.01, 0.03, IsRework: true),
        new((old, part, _) => -Ratio("shaftLength", old, part), 0.08, 0.05, 0.08, IsRework: true),
        new((old, part, _) => Ratio("bodyLength", old, part), 0.12, 0.06, 0.05, IsRework: true),
        new((old, part, _) => Math.Abs(Ratio("bodyDiameter", old, part)), 0.02, 0.02, 0.04, IsRework: true),
        new((old, part, _) => Differs("rotation", old, part), 0.6, 0.12, 0.025, IsRework: true),
        new((old, part, _) => Differs("runCapacitor", old, part), 0.6, 0.12, 0.02, IsRework: true),
        new((_, part, place) => place.IsWet && Text("enclosure", part) is { } text && text.StartsWith("open", StringComparison.Ordinal) ? 1 : 0, 0.6, 0.1, 0.08, IsRework: false),
        new((_, part, place) => place.AirMost - (Number("ambientMost", part) ?? 50), -4, 2, 0.05, IsRework: false),
        new((old, part, _) => Text("bearings", part) == "sleeve" && Text("bearings", old) != "sleeve" ? 1 : 0, 0.6, 0.12, 0.03, IsRework: false),
        new((old, part, _) => Differs("mounts", old, part), 0.6, 0.15, 0.02, IsRework: true),
    ],
    [(0, 1, 1.5), (1, 12, 1.2), (3, 4, 0.8)]);

    /// <summary>What a technician reads at a motor: volts with the meter, the fan, the place.</summary>
    public static IReadOnlyList<NamedText> SiteOf(PartFigures old, Place place, Draw draw)
    {
        var isBlower = Text("mounts", old)?.Contains("rigid base", StringComparison.Ordinal) == true;
        var motor = (MotorSpec)old.Part.Spec;
        var isOpen = motor.Enclosure is Enclosure.OpenDripProof or Enclosure.OpenAirOver;
        return Shape<MotorSite>.Of.Write(new MotorSite
        {
            Volts = motor.Voltage is { } taps ? new(ElectricPotential.FromVolts(Math.Round(draw.Pick([.. taps]).Last.Volts * (1 + place.VoltsOff)))) : null,
            SupplyFrequency = motor.Frequency?[0],
            FanKind = isBlower ? FanKind.BlowerWheel : FanKind.Propeller,
            Drive = isBlower ? Drive.Belt : Drive.Direct,
            ShaftRoom = motor.ShaftLength is { } shaft ? Length.FromMillimeters(Math.Round(shaft.Millimeters) + draw.Whole(15, 80)) : null,
            Surroundings = place.IsWet && !isOpen ? Surroundings.Rain : Surroundings.Dry,
            AirMost = motor.AmbientMost is { } most ? Temperature.FromDegreesCelsius(Math.Min(place.AirMost, most.DegreesCelsius)) : Temperature.FromDegreesCelsius(place.AirMost),
            Hazard = Hazard.None,
            OverloadInCircuit = draw.Chance(0.85),
        });
    }

    /// <summary>The share by which the volts are under or over the nearest tap.</summary>
    private static double VoltsOff(PartFigures part, Place place) => ((MotorSpec)part.Part.Spec).Voltage is { } taps
        ? taps.Min(tap => Math.Abs((tap.Last.Volts * (1 + place.VoltsOff) / ((tap.First.Volts + tap.Last.Volts) / 2)) - 1))
        : 0;

    private static double Ratio(string field, PartFigures old, PartFigures part) =>
        Number(field, old) is > 0 and var before && Number(field, part) is > 0 and var after ? Math.Log(after / before) : 0;

    private static double Differs(string field, PartFigures old, PartFigures part) => Text(field, old) is { } before && Text(field, part) is { } after && before != after ? 1 : 0;

    private static double? Number(string field, PartFigures part) => part.NumberAt(PlaceOf(field));

    private static string? Text(string field, PartFigures part) => part.TextAt(PlaceOf(field));

    private static int PlaceOf(string field) => Places[field];

    private static readonly Dictionary<string, int> Places = Shape.Fields.Index().ToDictionary(one => one.Item.Name, one => one.Index);
}
