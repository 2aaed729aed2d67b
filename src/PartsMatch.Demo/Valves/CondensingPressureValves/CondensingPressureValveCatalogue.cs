using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves.CondensingPressureValves;
using PartsMatch.Fit.Valves.Pipes;
using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Demo.Valves.CondensingPressureValves;

/// <summary>The invented condensing-pressure valves: 100 of them.</summary>
public sealed class CondensingPressureValveCatalogue : FamilyCatalogue
{
    private const int Count = 100;

    private static readonly (string Refrigerants, string RatedWith, int[] Settings)[] Groups =
    [
        ("R-404A, R-507A, R-448A, R-449A", "R-404A", [180, 180, 200, 210]),
        ("R-134a", "R-134a", [100, 100, 110]),
        ("R-22, R-407C", "R-22", [180, 180, 170]),
        ("R-410A", "R-410A", [295]),
    ];

    private static readonly (string Tube, double Tons)[] Sizes = [("1/2 in", 3), ("5/8 in", 6), ("7/8 in", 14), ("1-1/8 in", 25), ("1-3/8 in", 40)];

    public override string Kind => "condensingPressureValve";

    public override Shape Shape => Shape<CondensingPressureValveSpec>.Of;

    public override int SeedOffset => 6;

    public override string HowDrawn => "Condensing-pressure valves are drawn by arrangement, refrigerant group and tube size: three-way ones hold one pressure that belongs to the group, inlet regulators are set over a range, differential check valves open at a small difference.";

    public override IReadOnlyDictionary<string, Look> Looks { get; } = new Dictionary<string, Look> { ["arrangement"] = new(20), ["refrigerants"] = new(5), ["setting"] = new(6), ["ratedCapacity"] = new(6), ["ratedWith"] = new(5) };

    public override IReadOnlyList<NamedText> SiteOf(PartFigures old, Place place, Draw draw)
    {
        var valve = (CondensingPressureValveSpec)old.Part.Spec;
        return Shape<CondensingPressureValveSite>.Of.Write(new CondensingPressureValveSite
        {
            Refrigerant = valve.RatedWith ?? valve.Refrigerants?[0],
            LeastHead = valve.Setting - Pressure.FromKilopascals(draw.Whole(70, 200)),
            Load = valve.RatedCapacity is { } capacity ? new CoolingLoad(Power.FromWatts(Math.Round((double)capacity.Value.Watts * draw.Between(0.5, 0.9)))) : null,
            LeastAmbient = valve.RatedAmbient,
            ReceiverHoldsFlooding = true,
            DesignPressure = valve.WorkingPressure * draw.Between(0.75, 0.98),
        });
    }

    public override IReadOnlyList<DemoPart> Make(PartNumbers numbers, int seed)
    {
        var draw = new Draw(seed);
        var makers = Maker.WhoMake(Programme.Valves);
        var listed = new HashSet<(Maker, Arrangement, int Group, int Size, int Setting)>();
        var parts = new List<DemoPart>();
        while (parts.Count < Count)
        {
            var (maker, how, group, size) = (draw.Pick(makers), draw.Of((Arrangement.ThreeWay, 5), (Arrangement.InletRegulator, 3), (Arrangement.DifferentialCheck, 2)), draw.Whole(0, Groups.Length - 1), draw.Whole(0, Sizes.Length - 1));
            var setting = how == Arrangement.DifferentialCheck ? draw.Of((20, 3), (30, 1)) : draw.Pick(Groups[group].Settings);
            if (listed.Add((maker, how, group, size, setting))) parts.Add(Offer(how, group, size, setting, maker, numbers, draw));
        }

        return parts;
    }

    private static DemoPart Offer(Arrangement how, int group, int size, int setting, Maker maker, PartNumbers numbers, Draw draw)
    {
        var discontinued = draw.Chance(DemoPart.DiscontinuedShare);
        var (refrigerants, ratedWith, _) = Groups[group];
        var (tube, tons) = Sizes[size];
        var isSet = how == Arrangement.InletRegulator;
        var spec = new CondensingPressureValveSpec
        {
            Arrangement = how,
            Refrigerants = TradeText.Read<RefrigerantList>(refrigerants),
            Oils = ListedOils.Of(maker, TradeText.Read<RefrigerantList>(refrigerants)),
            Setting = Pressure.FromPoundsForcePerSquareInch(setting),
            SettingLeast = isSet ? Pressure.FromPoundsForcePerSquareInch(group == 1 ? 65 : 100) : null,
            SettingMost = isSet ? Pressure.FromPoundsForcePerSquareInch(group == 3 ? 400 : 225) : null,
            IsAdjustable = SaysWhetherItIsSet(maker) ? isSet : null,
            WorkingPressure = Pressure.FromPoundsForcePerSquareInch(group == 3 ? 700 : draw.Of((450, 3), (500, 2))),
            RatedCapacity = new(new Power((decimal)Math.Round(tons * draw.Between(0.92, 1.1), 1), PowerUnit.TonOfRefrigeration)),
            RatedWith = TradeText.Read<RefrigerantList>(ratedWith)[0],
            RatedDrop = new(Pressure.FromPoundsForcePerSquareInch(draw.Of((2, 3), (5, 1)))),
            RatedAmbient = RatedDownTo(maker) is { } ambient ? Temperature.FromDegreesFahrenheit(ambient) : null,
            Joint = PipeJoint.Solder,
            CondenserPort = how == Arrangement.DifferentialCheck ? null : TradeText.Read<Length>(tube),
            ReceiverPort = TradeText.Read<Length>(tube),
            DischargePort = how == Arrangement.InletRegulator ? null : TradeText.Read<Length>(tube),
        };
        var title = $"condensing-pressure valve, {TradeText.Write(how)}, {tube}, {setting} psi";
        return new(
            numbers.Next(maker),
            maker,
            title,
            discontinued,
            WithGaps(spec, maker, draw),
            $"{TradeText.Write(how)} {ratedWith} {tube}",
            Stock.Price(95 + (6 * tons), maker, draw),
            Stock.OnHand(discontinued, universal: false, draw));
    }

    /// <summary>°F: each maker gives its capacities for one ambient, invented; the cheapest says nothing of it.</summary>
    private static double? RatedDownTo(Maker maker) => maker.PriceFactor switch { > 1.05 => -20, >= 1 => 0, >= 0.93 => 20, _ => null };

    /// <summary>The dearer makers' catalogues say whether a valve can be set; of the others' a range alone tells it.</summary>
    private static bool SaysWhetherItIsSet(Maker maker) => maker.PriceFactor >= 1;

    /// <summary>Leaves out what catalogues leave out.</summary>
    private static CondensingPressureValveSpec WithGaps(CondensingPressureValveSpec spec, Maker maker, Draw draw) => !draw.Chance(maker.GapShare) ? spec : draw.Of(
        (spec with { RatedDrop = null }, 2),
        (spec with { RatedCapacity = null, RatedWith = null, RatedDrop = null, RatedAmbient = null }, 1),
        (spec with { WorkingPressure = null }, 1),
        (spec with { Joint = null }, 1));
}
