using System.Globalization;
using PartsMatch.Demo.Motors.Lines;
using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Demo.Motors;

/// <summary>The invented motors: 3,000 of them.</summary>
public sealed class MotorCatalogue : FamilyCatalogue
{
    public static IReadOnlyList<MotorLine> Lines { get; } =
    [
        new CondenserFans(), new ShadedPoleFans(), new UnitBearingFans(), new DirectBlowers(), new BeltBlowers(),
        new NemaThreePhase(), new ThreePhaseFans(), new IecThreePhase(), new IecFans(), new ElectronicFans(),
    ];

    public override string Kind => "motor";

    public override Shape Shape => Shape<MotorSpec>.Of;

    public override int SeedOffset => 0;

    public override string HowDrawn => """
        Motors are drawn line by line (condenser fans, shaded pole, unit-bearing, direct and belt blowers, three-phase on NEMA and IEC frames ...). What belongs together is drawn together: a frame brings its shaft and face from NEMA MG 1 or IEC 60072-1,
        amps follow from power, volts, and the type's published efficiency and power factor bands, code letters from locked-rotor amps, run capacitors and bodies from power. Several makers offer most designs, each with its own amps, lengths, bearings and price.
        """;

    public override int Outcomes => 30_000;

    public override HiddenTruth Truth(Draw draw) => MotorTruth.Of();

    public override IReadOnlyList<NamedText> SiteOf(PartFigures old, Place place, Draw draw) => MotorTruth.SiteOf(old, place, draw);

    public override IReadOnlyDictionary<string, Look> Looks { get; } = new Dictionary<string, Look>
    {
        ["type"] = new(3),
        ["voltage"] = new(25),
        ["phase"] = new(12),
        ["frequency"] = new(6),
        ["power"] = new(6, Less: 8),
        ["speed"] = new(200),
        ["poles"] = new(6),
        ["mounts"] = new(20),
        ["shaftDiameter"] = new(60),
        ["shaftLength"] = new(5, Less: 60),
        ["shaftForm"] = new(4),
        ["shaftEnds"] = new(4),
        ["rotation"] = new(12),
        ["reversing"] = new(4),
        ["protection"] = new(25),
        ["enclosure"] = new(4),
        ["ambientMost"] = new(8, Less: 4),
        ["bodyDiameter"] = new(4),
        ["speedControls"] = new(2),
    };

    public override IReadOnlyList<DemoPart> Make(PartNumbers numbers, int seed)
    {
        var draw = new Draw(seed);
        var motors = Lines.SelectMany(line => Of(line, numbers, draw)).ToList();

        // Drawn afterwards, with chance of its own, so that all else stays as it was.
        var heights = new Draw(seed + 500);
        return [.. motors.Select(motor => motor with { Spec = MotorAltitudes.Print((MotorSpec)motor.Spec, heights) })];
    }

    /// <summary>Several makers offer most designs, so that near-equal parts stand side by side.</summary>
    private static List<DemoPart> Of(MotorLine line, PartNumbers numbers, Draw draw)
    {
        var makers = Maker.WhoMake(line.MadeBy);
        var parts = new List<DemoPart>();
        while (parts.Count < line.Share)
        {
            var design = line.Design(draw);
            foreach (var maker in draw.Some(makers, draw.Of((1, 45), (2, 30), (3, 17), (4, 8))))
            {
                if (parts.Count < line.Share) parts.Add(Offer(line, design, maker, numbers, draw));
            }
        }

        return parts;
    }

    private static DemoPart Offer(MotorLine line, MotorDesign design, Maker maker, PartNumbers numbers, Draw draw)
    {
        var full = Electrics.Fill(line.Build(design, draw), design.Goodness, draw);
        if (full.Rotation is { } turn && turn.SeenFrom != maker.NamesTurnFrom) full = full with { Rotation = turn.FromOtherEnd() };
        var discontinued = draw.Chance(DemoPart.DiscontinuedShare);
        return new(
            numbers.Next(maker),
            maker,
            MotorTitles.Of(line.Title, full),
            discontinued,
            MotorGaps.Leave(full, maker, draw),
            Niche(line, full),
            Stock.Price(UsualPrice(full, design.IsUniversal), maker, draw),
            Stock.OnHand(discontinued, design.IsUniversal, draw));
    }

    /// <summary>Parts that differ in taps, body or turn alone stand in for one another, rightly or not.</summary>
    private static string Niche(MotorLine line, MotorSpec spec) => string.Create(
        CultureInfo.InvariantCulture,
        $"{line.GetType().Name} {TradeText.Write(spec.Power!)} {spec.Poles} poles {spec.Voltage![^1].Last.Volts} V");

    /// <summary>Dollars: by kind, then by power, more for what replaces many.</summary>
    private static double UsualPrice(MotorSpec spec, bool universal)
    {
        var kilowatts = spec.Power!.WattsOf() / 1000;
        var plain = spec.Type switch
        {
            MotorType.ShadedPole => 24 + (600 * kilowatts),
            MotorType.ElectronicallyCommutated => 68 + (520 * kilowatts),
            MotorType.ThreePhaseInduction => 135 + (190 * kilowatts),
            MotorType.PermanentSplitCapacitor => 52 + (260 * kilowatts),
            _ => 98 + (210 * kilowatts),
        };
        return plain * (universal ? 1.18 : 1);
    }
}
