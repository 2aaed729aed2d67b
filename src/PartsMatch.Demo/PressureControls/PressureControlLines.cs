using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls;
using UnitsNet;

namespace PartsMatch.Demo.PressureControls;

/// <summary>A line of pressure controls: what is alike in it, and how much of the catalogue it fills.</summary>
/// <param name="Title">What a counter calls them.</param>
/// <param name="Share">How many parts the catalogue has of them.</param>
/// <param name="Price">What one costs, roughly.</param>
/// <param name="Draw">Draws one.</param>
public sealed record PressureControlLine(string Title, int Share, double Price, Func<Draw, PressureControlSpec> Draw);

/// <summary>The lines: ranges, differentials, settings as shipped and contacts of the trade are practice, from memory, unchecked; pilot duties are the published designations.</summary>
public static class PressureControlLines
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<PressureControlLine> All { get; } =
    [
        new("High-pressure control", 90, 78, OfHighPressure),
        new("Low-pressure control", 80, 64, OfLowPressure),
        new("Fan-cycling control", 50, 58, OfFanCycling),
        new("High-pressure switch, fixed", 45, 24, draw => OfDisc(draw, PressureFunction.HighPressure)),
        new("Low-pressure switch, fixed", 35, 22, draw => OfDisc(draw, PressureFunction.LowPressure)),
    ];

    private static PressureControlSpec OfHighPressure(Draw draw)
    {
        var isManual = draw.Chance(0.4);
        var (range, differential, cutOut, cutIn, most) = draw.Of(
            (("100 to 425 psi", "50 to 120 psi", 350.0, 270.0, 475.0), 4),
            (("150 to 450 psi", "60 to 150 psi", 400.0, 300.0, 525.0), 4),
            (("200 to 610 psi", "80 to 160 psi", 500.0, 400.0, 680.0), 2));
        return Screwed(draw) with
        {
            Function = PressureFunction.HighPressure,
            Action = PressureAction.OpensOnRise,
            Reset = isManual ? ContactReset.Manual : ContactReset.Automatic,
            Poles = draw.Of((1, 8), (2, 2)),
            Range = TradeText.Read<PressureSpan>(range),
            Differential = isManual ? null : TradeText.Read<PressureSpan>(differential),
            CutOut = Psi(cutOut),
            CutIn = isManual ? null : Psi(cutIn),
            PressureMost = Psi(most),
        };
    }

    private static PressureControlSpec OfLowPressure(Draw draw)
    {
        var (range, differential, cutOut, cutIn) = draw.Of(
            (("5 to 100 psi", "10 to 40 psi", 10.0, 30.0), 5),
            (("10 to 60 psi", "10 to 30 psi", 15.0, 30.0), 2),
            (("20 to 150 psi", "20 to 80 psi", 30.0, 60.0), 3));
        return Screwed(draw) with
        {
            Function = PressureFunction.LowPressure,
            Action = draw.Of((PressureAction.OpensOnFall, 9), (PressureAction.ChangeOver, 1)),
            Reset = draw.Of((ContactReset.Automatic, 9), (ContactReset.Manual, 1)),
            Poles = 1,
            Range = TradeText.Read<PressureSpan>(range),
            Differential = TradeText.Read<PressureSpan>(differential),
            CutOut = Psi(cutOut),
            CutIn = Psi(cutIn),
            PressureMost = Psi(draw.Of((325, 4), (400, 6))),
        };
    }

    private static PressureControlSpec OfFanCycling(Draw draw)
    {
        var (range, differential, cutOut, cutIn, most) = draw.Of(
            (("100 to 400 psi", "30 to 150 psi", 150.0, 225.0, 475.0), 6),
            (("200 to 500 psi", "50 to 150 psi", 250.0, 350.0, 600.0), 4));
        return Screwed(draw) with
        {
            Function = PressureFunction.FanCycling,
            Action = PressureAction.OpensOnFall,
            Reset = ContactReset.Automatic,
            Poles = 1,
            Range = TradeText.Read<PressureSpan>(range),
            Differential = TradeText.Read<PressureSpan>(differential),
            CutOut = Psi(cutOut),
            CutIn = Psi(cutIn),
            PressureMost = Psi(most),
        };
    }

    /// <summary>Disc-type switches screw onto a valve core and cannot be set; they switch coils.</summary>
    private static PressureControlSpec OfDisc(Draw draw, PressureFunction function)
    {
        var isHigh = function == PressureFunction.HighPressure;
        var cutOut = isHigh ? draw.Pick([350.0, 400, 425, 450, 550, 600, 610, 650]) : draw.Pick([5.0, 7, 10, 15, 20, 25, 30, 50]);
        var between = isHigh ? draw.Of((100, 6), (120, 4)) : draw.Of((15, 5), (20, 5));
        var isManual = isHigh && draw.Chance(0.25);
        var isSealed = draw.Chance(0.5);
        return new()
        {
            Function = function,
            Action = isHigh ? PressureAction.OpensOnRise : PressureAction.OpensOnFall,
            Reset = isManual ? ContactReset.Manual : ContactReset.Automatic,
            Poles = 1,
            IsAdjustable = false,
            CutOut = Psi(cutOut),
            CutIn = isManual ? null : Psi(isHigh ? cutOut - between : cutOut + between),
            Differential = isManual ? null : TradeText.Read<PressureSpan>(FormattableString.Invariant($"{between} psi")),
            PressureMost = Psi(isHigh ? 800 : draw.Of((400, 5), (500, 5))),
            Connection = draw.Of((PressureConnection.FemaleFlare, 6), (PressureConnection.Braze, 4)),
            Materials = draw.Of((new Choices<WettedMaterial>(WettedMaterial.Brass), 5), (new Choices<WettedMaterial>(WettedMaterial.Copper, WettedMaterial.Steel), 5)),
            PilotDuty = new(draw.Of(("B300", 4), ("C300", 5), ("D300", 1))),
            Contacts = isSealed ? ContactEnclosure.Sealed : ContactEnclosure.Open,
            Hazards = isSealed && draw.Chance(0.4) ? new(HazardMarking.A2L) : null,
        };
    }

    private static PressureControlSpec Screwed(Draw draw)
    {
        var (low, high) = draw.Of(((20.0, 16.0), 5), ((24.0, 24.0), 3), ((10.0, 8.0), 2));
        return new()
        {
            IsAdjustable = true,
            Connection = draw.Of((PressureConnection.Capillary, 6), (PressureConnection.MaleFlare, 3), (PressureConnection.Thread, 1)),
            Materials = draw.Of((new Choices<WettedMaterial>(WettedMaterial.Copper, WettedMaterial.Brass), 8), (new Choices<WettedMaterial>(WettedMaterial.Steel), 2)),
            RatedVolts = TradeText.Read<Figures<ElectricPotential>>("120/240 V"),
            FullLoadAmps = Amps(low, high),
            LockedRotorAmps = Amps(low * 6, high * 6),
            ResistiveAmps = Amps(low + 2, high + 2),
            PilotDuty = new(draw.Of(("A300", 7), ("B300", 3))),
            Contacts = ContactEnclosure.Open,
        };
    }

    private static Pressure Psi(double psi) => Pressure.FromPoundsForcePerSquareInch(psi);

    private static Figures<ElectricCurrent> Amps(double low, double high) => new((low.Equals(high) ? (double[])[low] : [low, high]).Select(one => ElectricCurrent.FromAmperes(one)));
}
