using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Demo.Capacitors;

/// <summary>The invented capacitors: 200 of them.</summary>
public sealed class CapacitorCatalogue : FamilyCatalogue
{
    public override string Kind => "capacitor";

    public override Shape Shape => Shape<CapacitorSpec>.Of;

    public override int SeedOffset => 1;

    public override string HowDrawn => "Capacitors are drawn by line (single and two-section run capacitors, round and oval, and a few start capacitors): the usual sizes, a can that grows with µF and the square of the volts.";

    public override IReadOnlyDictionary<string, Look> Looks { get; } = new Dictionary<string, Look> { ["rating"] = new(60, Less: 2), ["duty"] = new(60), ["isProtected"] = new(60), ["temperatureMost"] = new(10, Less: 6), ["frequency"] = new(3) };

    public override IReadOnlyList<DemoPart> Make(PartNumbers numbers, int seed)
    {
        var draw = new Draw(seed);
        return [.. CapacitorLines.All.SelectMany(line => Of(line, numbers, draw))];
    }

    /// <summary>A maker never lists the same capacitor twice.</summary>
    private static List<DemoPart> Of(CapacitorLine line, PartNumbers numbers, Draw draw)
    {
        var makers = Maker.WhoMake(Programme.Capacitors);
        var listed = new HashSet<(Maker, CapacitorRating, CanShape)>();
        var parts = new List<DemoPart>();
        while (parts.Count < line.Share)
        {
            var spec = line.Draw(draw);
            var maker = draw.Pick(makers);
            if (listed.Add((maker, spec.Rating!, spec.Can!.Value))) parts.Add(Offer(line, spec, maker, numbers, draw));
        }

        return parts;
    }

    private static DemoPart Offer(CapacitorLine line, CapacitorSpec spec, Maker maker, PartNumbers numbers, Draw draw)
    {
        var discontinued = draw.Chance(DemoPart.DiscontinuedShare);
        var rating = spec.Rating!;
        var microfarads = rating.Capacitance!.Value.Microfarads + (rating.SecondSection?.Microfarads ?? 0);
        var usual = spec.Duty == CapacitorDuty.Start ? 9 + (0.03 * microfarads) : 5 + (0.28 * microfarads);
        return new(
            numbers.Next(maker),
            maker,
            $"{line.Title}, {TradeText.Write(rating)}, {TradeText.Write(spec.Can!.Value)}",
            discontinued,
            WithGaps(spec, maker, draw),
            $"{line.Title} {TradeText.Write(rating with { Volts = null })}",
            Stock.Price(usual, maker, draw),
            Stock.OnHand(discontinued, universal: true, draw));
    }

    /// <summary>Leaves out what catalogues leave out.</summary>
    private static CapacitorSpec WithGaps(CapacitorSpec spec, Maker maker, Draw draw) => !draw.Chance(maker.GapShare) ? spec : draw.Of(
        (spec with { Height = null }, 3),
        (spec with { IsProtected = null }, 3),
        (spec with { TemperatureMost = null }, 2),
        (spec with { Tolerance = null }, 1),
        (spec with { Height = null, Diameter = null }, 2));
}
