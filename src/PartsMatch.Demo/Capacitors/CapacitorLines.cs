using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Demo.Capacitors;

/// <summary>A line of capacitors: what is alike in it, and how much of the catalogue it fills.</summary>
/// <param name="Title">What a counter calls them.</param>
/// <param name="Share">How many parts the catalogue has of them.</param>
/// <param name="Draw">Draws one.</param>
public sealed record CapacitorLine(string Title, int Share, Func<Draw, CapacitorSpec> Draw);

/// <summary>The lines. Volts are the trade's classes (370 and 440 V in North America, 400 and 450 V in Europe); the steps of µF, can sizes and start ranges are practice, from memory, unchecked.</summary>
public static class CapacitorLines
{
    private static readonly double[] Single = [2, 3, 4, 5, 5, 6, 7.5, 7.5, 10, 10, 12.5, 15, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 70, 80];
    private static readonly double[] Compressor = [20, 25, 30, 35, 40, 45, 50, 55, 60, 70, 80];
    private static readonly double[] Fan = [3, 4, 5, 5, 5, 7.5, 10];
    private static readonly double[] European = [1, 1.5, 2, 2.5, 3, 4, 5, 6.3, 8, 10, 12.5, 14, 16, 20, 25, 30, 40, 50];

    /// <summary>Middles of the usual marked ranges: 88-108 µF, 108-130, 124-149 ...</summary>
    private static readonly double[] Start = [98, 119, 136.5, 159.5, 177, 208, 237.5, 256.5, 297];

    /// <summary>All of them.</summary>
    public static IReadOnlyList<CapacitorLine> All { get; } =
    [
        new("Run capacitor", 92, draw => Run(draw, draw.Pick(Single), 0)),
        new("Dual run capacitor", 46, draw => Run(draw, draw.Pick(Compressor), draw.Pick(Fan))),
        new("Run capacitor", 42, OfEurope),
        new("Start capacitor", 20, OfStart),
    ];

    private static CapacitorSpec Run(Draw draw, double microfarads, double second)
    {
        var volts = draw.Of((440, 6), (370, 4));
        var can = second > 0 ? draw.Of((CanShape.Round, 8), (CanShape.Oval, 2)) : draw.Of((CanShape.Round, 5), (CanShape.Oval, 5));
        var diameter = can == CanShape.Oval ? 2.91 : microfarads + second > 30 ? 2.5 : draw.Of((2.0, 6), (1.75, 4));
        return new()
        {
            Rating = Rating(microfarads, volts, second),
            Tolerance = Ratio.FromPercent(draw.Of((6, 6), (5, 3), (10, 1))),
            Frequency = TradeText.Read<Figures<Frequency>>(draw.Of(("50/60 Hz", 8), ("60 Hz", 2))),
            Duty = CapacitorDuty.Run,
            IsProtected = draw.Chance(0.93),
            TemperatureMost = Temperature.FromDegreesCelsius(draw.Of((70, 7), (85, 3))),
            Can = can,
            Diameter = Length.FromInches(diameter),
            Height = Length.FromInches(Math.Round(Height(microfarads + second, volts, diameter) * 8) / 8),
        };
    }

    private static CapacitorSpec OfEurope(Draw draw)
    {
        var (microfarads, volts) = (draw.Pick(European), draw.Of((450, 7), (400, 3)));
        var diameter = microfarads switch { <= 4 => draw.Of((25, 1), (30, 1)), <= 12.5 => draw.Of((35, 1), (40, 1)), <= 25 => 45, _ => 50 };
        return new()
        {
            Rating = Rating(microfarads, volts, 0),
            Tolerance = Ratio.FromPercent(draw.Of((5, 7), (10, 3))),
            Frequency = TradeText.Read<Figures<Frequency>>("50/60 Hz"),
            Duty = CapacitorDuty.Run,
            IsProtected = draw.Chance(0.55),
            TemperatureMost = Temperature.FromDegreesCelsius(draw.Of((85, 8), (70, 2))),
            Can = CanShape.Round,
            Diameter = Length.FromMillimeters(diameter),
            Height = Length.FromMillimeters(Math.Round(Height(microfarads, volts, diameter / 25.4) * 25.4)),
        };
    }

    private static CapacitorSpec OfStart(Draw draw)
    {
        var microfarads = draw.Pick(Start);
        return new()
        {
            Rating = Rating(microfarads, draw.Of((125, 3), (250, 4), (330, 3)), 0),
            Tolerance = Ratio.FromPercent(10),
            Frequency = TradeText.Read<Figures<Frequency>>("50/60 Hz"),
            Duty = CapacitorDuty.Start,
            IsProtected = false,
            TemperatureMost = Temperature.FromDegreesCelsius(65),
            Can = CanShape.Round,
            Diameter = Length.FromInches(microfarads < 150 ? 1.4375 : 1.8125),
            Height = Length.FromInches(draw.Of((2.75, 1), (3.375, 2))),
        };
    }

    private static CapacitorRating Rating(double microfarads, double volts, double second) => new(
        ElectricCapacitance.FromMicrofarads(microfarads),
        ElectricPotential.FromVolts(volts),
        second > 0 ? ElectricCapacitance.FromMicrofarads(second) : null);

    /// <summary>Film takes room with µF and with the square of its volts: some 1.1 cubic inches at 10 µF and 440 V, above a bottom for the terminals.</summary>
    private static double Height(double microfarads, double volts, double diameter)
    {
        var cubicInches = 0.11 * microfarads * Math.Pow(volts / 440, 2);
        return 1.75 + (cubicInches / (Math.PI / 4 * diameter * diameter));
    }
}
