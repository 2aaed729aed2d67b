using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.ExpansionValves;
using PartsMatch.Fit.Valves.Pipes;
using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Demo.Valves.ExpansionValves;

/// <summary>The invented thermostatic expansion valves: 350 of them.</summary>
public sealed class ExpansionValveCatalogue : FamilyCatalogue
{
    public override string Kind => "expansionValve";

    public override Shape Shape => Shape<ExpansionValveSpec>.Of;

    public override int SeedOffset => 5;

    public override string HowDrawn => "Expansion valves are drawn by charge (its refrigerants, range and pressure limit belong together) and nominal tons: each entry prints its capacity with the conditions it was given for, small ones have an internal equaliser and large ones an external one, and connections grow with capacity.";

    public override IReadOnlyDictionary<string, Look> Looks { get; } = new Dictionary<string, Look> { ["charge"] = new(10), ["refrigerants"] = new(10), ["ratedWith"] = new(6), ["ratedCapacity"] = new(30), ["ratedDrop"] = new(20), ["ratedEvaporatingAt"] = new(8), ["ratedLiquidAt"] = new(8), ["equaliser"] = new(3), ["inletSize"] = new(2), ["workingPressure"] = new(3, Less: 20) };

    public override IReadOnlyList<NamedText> SiteOf(PartFigures old, Place place, Draw draw)
    {
        var valve = (ExpansionValveSpec)old.Part.Spec;
        return Shape<ExpansionValveSite>.Of.Write(new ExpansionValveSite
        {
            Refrigerant = valve.Refrigerants?[0],
            HasDistributor = false,
            HasEqualiserTap = true,
            LowStartingTorque = false,
            FlowReverses = false,
            DesignPressure = valve.WorkingPressure * draw.Between(0.75, 0.98),
        });
    }

    public override IReadOnlyList<DemoPart> Make(PartNumbers numbers, int seed)
    {
        var draw = new Draw(seed);
        return [.. ExpansionValveLine.All.SelectMany(line => Of(line, numbers, draw))];
    }

    /// <summary>A maker never lists the same valve twice.</summary>
    private static List<DemoPart> Of(ExpansionValveLine line, PartNumbers numbers, Draw draw)
    {
        var makers = Maker.WhoMake(Programme.Valves);
        var listed = new HashSet<(Maker, double, Equaliser)>();
        var parts = new List<DemoPart>();
        while (parts.Count < line.Share)
        {
            var (maker, tons) = (draw.Pick(makers), draw.Pick(ExpansionValveLine.Tons));
            var equaliser = tons > 3 || draw.Chance(0.5) ? Equaliser.External : Equaliser.Internal;
            if (listed.Add((maker, tons, equaliser))) parts.Add(Offer(line, tons, equaliser, maker, numbers, draw));
        }

        return parts;
    }

    private static DemoPart Offer(ExpansionValveLine line, double tons, Equaliser equaliser, Maker maker, PartNumbers numbers, Draw draw)
    {
        var discontinued = draw.Chance(DemoPart.DiscontinuedShare);
        var (inlet, outlet) = tons switch { <= 1.5 => ("1/4 in", "1/2 in"), <= 5 => ("3/8 in", "1/2 in"), <= 8 => ("1/2 in", "7/8 in"), _ => ("5/8 in", "1-1/8 in") };
        var spec = new ExpansionValveSpec
        {
            Refrigerants = TradeText.Read<RefrigerantList>(line.Refrigerants),
            Oils = ListedOils.Of(maker, TradeText.Read<RefrigerantList>(line.Refrigerants)),
            Equaliser = equaliser,
            EqualisesOff = tons <= 5 && draw.Chance(0.25) ? (maker.PriceFactor > 1.05 ? OffTimeWay.Quick : OffTimeWay.BleedPort) : OffTimeWay.None,
            BothWays = line.Refrigerants == "R-410A" && draw.Chance(0.3),
            WorkingPressure = Pressure.FromPoundsForcePerSquareInch(line.Refrigerants == "R-410A" ? 700 : draw.Of((450, 3), (500, 2), (680, 1))),
            RatedCapacity = new(new Power((decimal)Math.Round(tons * draw.Between(0.94, 1.12), 2), PowerUnit.TonOfRefrigeration)),
            RatedWith = TradeText.Read<RefrigerantList>(line.RatedWith)[0],
            RatedEvaporatingAt = Temperature.FromDegreesFahrenheit(line.RatedAt),
            RatedLiquidAt = Temperature.FromDegreesFahrenheit(100),
            RatedDrop = new(Pressure.FromPoundsForcePerSquareInch(line.RatedDrop)),
            Joint = tons > 5 || draw.Chance(0.6) ? PipeJoint.Solder : PipeJoint.Flare,
            InletSize = TradeText.Read<Length>(inlet),
            OutletSize = TradeText.Read<Length>(outlet),
            Charge = line.Charge,
            EvaporatingLeast = Temperature.FromDegreesFahrenheit(line.From),
            EvaporatingMost = Temperature.FromDegreesFahrenheit(line.To),
            LimitsAt = line.Limit is { } limit ? Temperature.FromDegreesFahrenheit(limit) : null,
            Capillary = Length.FromInches(tons > 5 ? 60 : draw.Of((30, 1), (36, 2), (60, 3))),
            BulbDiameter = maker.PriceFactor < 0.95 ? null : TradeText.Read<Length>(tons > 5 ? "3/4 in" : "1/2 in"),
            BulbLength = maker.PriceFactor < 1 ? null : TradeText.Read<Length>(tons > 5 ? "4 in" : tons > 1.5 ? "3-1/2 in" : "2-1/2 in"),
        };
        return new(
            numbers.Next(maker),
            maker,
            FormattableString.Invariant($"expansion valve, {line.Refrigerants}, {tons} tons nominal, {TradeText.Write(equaliser)} equaliser, {TradeText.Write(line.Charge)}"),
            discontinued,
            WithGaps(spec, maker, draw),
            FormattableString.Invariant($"{line.Refrigerants} {TradeText.Write(line.Charge)} {tons}"),
            Stock.Price(52 + (9 * tons), maker, draw),
            Stock.OnHand(discontinued, universal: tons <= 3, draw));
    }

    /// <summary>Leaves out what catalogues leave out.</summary>
    private static ExpansionValveSpec WithGaps(ExpansionValveSpec spec, Maker maker, Draw draw) => !draw.Chance(maker.GapShare) ? spec : draw.Of(
        (spec with { RatedLiquidAt = null }, 2),
        (spec with { RatedDrop = null }, 2),
        (spec with { EqualisesOff = null }, 3),
        (spec with { Capillary = null }, 4),
        (spec with { EvaporatingLeast = null, EvaporatingMost = null }, 2),
        (spec with { WorkingPressure = null }, 1),
        (spec with { BothWays = null }, 3));
}
