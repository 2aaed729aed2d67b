using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats;
using UnitsNet;

namespace PartsMatch.Demo.Thermostats;

/// <summary>A line of thermostats: what is alike in it, and how much of the catalogue it fills.</summary>
/// <param name="Title">What a counter calls them.</param>
/// <param name="Share">How many parts the catalogue has of them.</param>
/// <param name="Price">What one costs, roughly.</param>
/// <param name="Draw">Draws one.</param>
public sealed record ThermostatLine(string Title, int Share, double Price, Func<Draw, ThermostatSpec> Draw);

/// <summary>The lines: ranges, differentials, temperatures and contacts of the trade are practice, from memory, unchecked; pilot duties are the published designations.</summary>
public static class ThermostatLines
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<ThermostatLine> All { get; } =
    [
        new("Box thermostat", 80, 66, OfRemoteBulb),
        new("Air thermostat", 30, 72, OfAirSensing),
        new("Fan-delay switch", 45, 19, OfFanDelay),
        new("Defrost-end switch", 55, 18, OfDefrostEnd),
        new("Fan delay and defrost end", 40, 34, OfThreeWires),
        new("Freeze limit", 18, 88, OfFreezeLimit),
        new("Heater limit", 12, 16, OfHeaterLimit),
    ];

    private static ThermostatSpec OfRemoteBulb(Draw draw)
    {
        var (range, differential, cutOut, between) = draw.Of(
            (("-30 to 90 °F", "3.5 to 36 °F", 35.0, 4.0), 5),
            (("-40 to 10 °F", "5 to 30 °F", -10.0, 6.0), 3),
            (("20 to 80 °F", "3 °F", 36.0, 3.0), 3),
            (("0 to 55 °F", "5 °F", 34.0, 5.0), 2));
        return Knobbed(draw) with
        {
            Range = TradeText.Read<TemperatureSpan>(range),
            Differential = TradeText.Read<TemperatureDifferenceSpan>(differential),
            CutOut = Fahrenheit(cutOut),
            CutIn = Fahrenheit(cutOut + between),
            Bulb = draw.Of((BulbForm.Straight, 8), (BulbForm.Coiled, 2)),
            Capillary = Inches(draw.Of((36, 1), (72, 5), (120, 3))),
            BulbMost = Fahrenheit(draw.Of((120, 2), (140, 5), (160, 2))),
            BulbLength = LengthOfBulb(differential),
        };
    }

    /// <summary>The finer the differential, the longer the bulb (practice, from memory); of some it is not listed.</summary>
    private static Length? LengthOfBulb(string differential) => differential switch
    {
        "2 °F" or "3 °F" => Inches(5.5),
        "5 °F" => null,
        "3.5 to 36 °F" => Inches(4),
        _ => Inches(3.5),
    };

    private static ThermostatSpec OfAirSensing(Draw draw)
    {
        var (range, differential, cutOut, between) = draw.Of((("35 to 75 °F", "2 °F", 38.0, 2.0), 4), (("-10 to 35 °C", "1 to 15 K", 2.0, 3.0), 4), (("40 to 110 °F", "3 to 10 °F", 55.0, 5.0), 3));
        var isCelsius = range.EndsWith("°C", StringComparison.Ordinal);
        Temperature At(double degrees) => isCelsius ? Temperature.FromDegreesCelsius(degrees) : Fahrenheit(degrees);
        var isAveraging = draw.Chance(0.25);
        return Knobbed(draw) with
        {
            Range = TradeText.Read<TemperatureSpan>(range),
            Differential = TradeText.Read<TemperatureDifferenceSpan>(differential),
            CutOut = At(cutOut),
            CutIn = At(cutOut + between),
            Bulb = isAveraging ? BulbForm.Averaging : BulbForm.Coiled,
            Capillary = Inches(isAveraging ? 240 : draw.Of((4, 6), (12, 3))),
            BulbMost = At(isCelsius ? 60 : 140),
            BulbLength = isAveraging ? null : LengthOfBulb(differential),
        };
    }

    private static ThermostatSpec OfFanDelay(Draw draw)
    {
        var closes = draw.Of((20.0, 3), (25, 4), (30, 3), (35, 1));
        return Disc(draw) with
        {
            Function = ThermostatFunction.FanDelay,
            Action = ThermostatAction.OpensOnRise,
            CutIn = Fahrenheit(closes),
            CutOut = Fahrenheit(closes + draw.Of((10, 2), (15, 4), (20, 3))),
        };
    }

    /// <summary>Some lie in the heaters' line and open, others feed a timer's release coil and close.</summary>
    private static ThermostatSpec OfDefrostEnd(Draw draw)
    {
        var (upper, isOpening) = (draw.Of((45.0, 1), (50, 3), (55, 5), (60, 2), (70, 1)), draw.Chance(0.55));
        var lower = upper - draw.Of((15, 2), (20, 4), (25, 3), (30, 1));
        return Disc(draw) with
        {
            Function = ThermostatFunction.DefrostEnd,
            Action = isOpening ? ThermostatAction.OpensOnRise : ThermostatAction.ClosesOnRise,
            CutOut = Fahrenheit(isOpening ? upper : lower),
            CutIn = Fahrenheit(isOpening ? lower : upper),
        };
    }

    /// <summary>Those with another common than a red lead rate both contacts alike; those with one are made for larger fans.</summary>
    private static ThermostatSpec OfThreeWires(Draw draw)
    {
        var (ends, fans) = (draw.Of((50.0, 3), (55, 5), (60, 2)), draw.Of((20.0, 2), (25, 4), (30, 3)));
        var alike = Disc(draw) with
        {
            Function = ThermostatFunction.FanDelayAndDefrostEnd,
            Action = ThermostatAction.ChangeOver,
            Common = draw.Of((CommonMark.Red, 5), (CommonMark.C, 3), (CommonMark.Brown, 1)),
            CutIn = Fahrenheit(ends),
            CutOut = Fahrenheit(ends - draw.Of((10, 3), (15, 4))),
            FanCutIn = Fahrenheit(fans),
            FanCutOut = Fahrenheit(fans + draw.Of((10, 3), (15, 3))),
        };
        return alike.Common == CommonMark.Red ? alike with { FanRatedVolts = alike.RatedVolts, FanFullLoadAmps = Amps(16, 8), FanLockedRotorAmps = Amps(96, 48), FanResistiveAmps = Amps(16, 16), FanPilotDuty = alike.PilotDuty } : alike;
    }

    private static ThermostatSpec OfFreezeLimit(Draw draw)
    {
        var isManual = draw.Chance(0.6);
        return Knobbed(draw) with
        {
            Function = ThermostatFunction.LowLimit,
            Action = ThermostatAction.ClosesOnRise,
            Common = null,
            Reset = isManual ? ContactReset.Manual : ContactReset.Automatic,
            Range = TradeText.Read<TemperatureSpan>(draw.Of(("15 to 55 °F", 6), ("30 to 60 °F", 4))),
            Differential = isManual ? null : TradeText.Read<TemperatureDifferenceSpan>("5 °F"),
            CutOut = Fahrenheit(37),
            CutIn = isManual ? null : Fahrenheit(42),
            Bulb = draw.Of((BulbForm.Averaging, 7), (BulbForm.Straight, 3)),
            Capillary = Inches(draw.Of((120, 3), (240, 7))),
            BulbMost = Fahrenheit(draw.Of((200, 3), (250, 5))),
        };
    }

    private static ThermostatSpec OfHeaterLimit(Draw draw)
    {
        var (opens, isManual) = (draw.Of((120.0, 3), (140, 3), (160, 3), (180, 1)), draw.Chance(0.5));
        return Disc(draw) with
        {
            Function = ThermostatFunction.HighLimit,
            Action = ThermostatAction.OpensOnRise,
            Reset = isManual ? ContactReset.Manual : ContactReset.Automatic,
            CutOut = Fahrenheit(opens),
            CutIn = isManual ? null : Fahrenheit(opens - 30),
            BulbMost = Fahrenheit(350),
        };
    }

    /// <summary>Thermostats with a knob switch motors, heaters and coils by line volts.</summary>
    private static ThermostatSpec Knobbed(Draw draw)
    {
        var (low, high) = draw.Of(((16.0, 8.0), 5), ((20.0, 17.0), 4), ((10.0, 5.0), 2));
        var changesOver = draw.Chance(0.45);
        return new()
        {
            Function = ThermostatFunction.Box,
            Action = changesOver ? ThermostatAction.ChangeOver : ThermostatAction.ClosesOnRise,
            Reset = ContactReset.Automatic,
            Poles = 1,
            Common = changesOver ? draw.Of((CommonMark.C, 5), (CommonMark.One, 3), (CommonMark.Two, 2)) : null,
            IsAdjustable = true,
            Terminals = draw.Of((ThermostatEnds.Screws, 8), (ThermostatEnds.QuickConnects, 2)),
            RatedVolts = TradeText.Read<Figures<ElectricPotential>>("120/240 V"),
            FullLoadAmps = Amps(low, high),
            LockedRotorAmps = Amps(low * 6, high * 6),
            ResistiveAmps = Amps(low + 2, high + 2),
            PilotDuty = new(draw.Of(("A300", 6), ("B300", 4))),
            Contacts = draw.Of((ContactEnclosure.Open, 9), (ContactEnclosure.Sealed, 1)),
        };
    }

    /// <summary>Discs cannot be set; most are potted against wet, which seals them.</summary>
    private static ThermostatSpec Disc(Draw draw)
    {
        var isSealed = draw.Chance(0.6);
        var (low, high) = draw.Of(((10.0, 5.0), 4), ((14.0, 7.0), 3), ((6.0, 3.0), 2));
        return new()
        {
            Reset = ContactReset.Automatic,
            Poles = 1,
            IsAdjustable = false,
            Bulb = draw.Of((BulbForm.StrapOnDisc, 5), (BulbForm.ClipOnDisc, 5)),
            BulbMost = Fahrenheit(draw.Of((175, 3), (200, 4), (250, 2))),
            Terminals = draw.Of((ThermostatEnds.Leads, 8), (ThermostatEnds.QuickConnects, 2)),
            RatedVolts = TradeText.Read<Figures<ElectricPotential>>("120/240 V"),
            FullLoadAmps = Amps(low, high),
            LockedRotorAmps = Amps(low * 6, high * 6),
            ResistiveAmps = Amps(25, 25),
            PilotDuty = new(draw.Of(("B300", 5), ("C300", 4))),
            Contacts = isSealed ? ContactEnclosure.Sealed : ContactEnclosure.Open,
            Hazards = isSealed && draw.Chance(0.35) ? draw.Of((new Choices<HazardMarking>(HazardMarking.A2L), 5), (new Choices<HazardMarking>(HazardMarking.A3), 3)) : null,
        };
    }

    private static Temperature Fahrenheit(double degrees) => Temperature.FromDegreesFahrenheit(degrees);

    private static Length Inches(double inches) => Length.FromInches(inches);

    private static Figures<ElectricCurrent> Amps(double low, double high) => new((low.Equals(high) ? (double[])[low] : [low, high]).Select(one => ElectricCurrent.FromAmperes(one)));
}
