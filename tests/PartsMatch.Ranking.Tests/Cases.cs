using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Tests;

/// <summary>A catalogue, stock and need of the invented kind, with weights.</summary>
public sealed record Case(Family Family, IReadOnlyList<CataloguePart> Parts, IReadOnlyDictionary<string, Stock> Stock, Weights Weights, Need Need)
{
    public Catalogue Catalogue => Catalogue.Of(Family, Parts);

    public override string ToString() => $"{Need.Plate} in {string.Join("; ", Parts)} at {Weights.Id} ({Weights.Intercept})";

    /// <summary>All pages put together, each of so many parts.</summary>
    public IReadOnlyList<RankedPart> AllPages(int pageSize)
    {
        var all = new List<RankedPart>();
        string? after = null;
        while (true)
        {
            var page = Ranker.Rank(Catalogue.WithStock(Stock), Weights, new(Need, null, pageSize, after)).ShouldBeOfType<RankingPage.Listed>();
            all.AddRange(page.Parts);
            if (!page.HasNextPage) return all;
            page.Parts.Count.ShouldBe(pageSize);
            after = page.Parts[^1].Cursor;
        }
    }

    /// <summary>The whole ranking, said once more as plainly as can be: judge every part in full, drop, sort.</summary>
    public IEnumerable<string> ByBruteForce(IReadOnlySet<PartFit> include) =>
        Parts.Where(part => part.IsOffered)
            .Select(part => (part, sheet: Family.Judge(Need, part.Spec), explained: Ranker.Explain(Family, Weights, Need, part.Spec, part.Number), line: Stock.GetValueOrDefault(part.Number)))
            .Where(one => one.sheet.Fit != PartFit.DoesntFit && include.Contains(one.sheet.Fit))
            .OrderByDescending(one => one.explained.Likelihood!.Percent)
            .ThenByDescending(one => one.line?.OnHand > 0)
            .ThenByDescending(one => one.line?.OnHand > 0 || one.part.IsMade)
            .ThenBy(one => one.line?.Price ?? decimal.MaxValue)
            .ThenBy(one => one.part.Number, StringComparer.Ordinal)
            .Select(one => one.part.Number);
}

/// <summary>Makes cases: small numbers, so that ties, gaps and failures are all common.</summary>
internal static class Cases
{
    private const int CostsOfAspect = ShortfallCurve.Count + 2;

    private static readonly Gen<int?> Number = Gen.Frequency((5, Gen.Choose(0, 12).Select(n => (int?)n)), (1, Gen.Constant((int?)null)));

    public static Gen<GasketSpec> Spec { get; } =
        from bore in Number
        from thickness in Number
        from hardness in Number
        from colour in Number
        select new GasketSpec(bore, thickness, hardness, colour);

    public static Gen<Weights> WeightsFor(Family family) =>
        from intercept in Gen.Choose(-30, 50)
        from heights in Gen.Choose(0, 100).ListOf(CostsOfAspect * family.Aspects.Count)
        from pairs in Gen.Choose(0, 300).ListOf(family.Pairs.Count)
        select Weights.Of(family, new(WeightsOrigin.Trained, intercept / 10.0)
        {
            MadeOn = new DateOnly(2026, 3, 14),
            Aspects = family.Aspects.Zip(heights.Chunk(CostsOfAspect)).ToDictionary(one => one.First.Name, one => CostOf([.. one.Second.Select(height => height / 100.0)])),
            Pairs = family.Pairs.Zip(pairs).ToDictionary(one => one.First.Name, one => one.Second / 100.0),
        });

    /// <summary>The same weights, and a record of every third part.</summary>
    private static Weights WithRecords(Family family, Weights weights, IEnumerable<string> numbers) => Weights.Of(family, new(weights.Origin, weights.Intercept)
    {
        MadeOn = weights.MadeOn,
        Aspects = weights.Aspects,
        Pairs = weights.Pairs.ToDictionary(pair => pair.Pair.Name, pair => pair.Cost),
        Records = numbers.Where((_, index) => index % 3 == 1).Select((number, index) => (number, index)).ToDictionary(one => one.number, one => 0.25 * (1 + (one.index % 5))),
    });

    private static AspectCost CostOf(double[] heights) => new(ShortfallCurve.Of(heights[..ShortfallCurve.Count]), heights[^2], heights[^1]);

    private static Gen<(GasketSpec Spec, bool IsOffered, bool IsMade, Stock? Stock)> Row { get; } =
        from spec in Spec
        from offered in Gen.Choose(0, 7)
        from made in Gen.Choose(0, 2)
        from onHand in Gen.Elements<int?>(null, 0, 1, 40)
        from price in Gen.Elements<decimal?>(null, 9.5m, 9.50m, 12m, 1048.25m)
        from hasLine in Gen.Choose(0, 3)
        select (spec, offered > 0, made > 0, hasLine > 0 ? new Stock(onHand, price) : null);

    public static Gen<Case> All { get; } =
        from rows in Row.ListOf().Resize(40)
        let family = Gaskets.Family(new Bore(), new Thickness(), new Hardness(), new Colour(), new Rim())
        from weights in WeightsFor(family)
        from plate in Spec
        select Make(family, rows, weights, plate);

    private static Case Make(Family family, IEnumerable<(GasketSpec Spec, bool IsOffered, bool IsMade, Stock? Stock)> rows, Weights weights, GasketSpec plate)
    {
        // Numbers that sort differently by letter and by culture, and one mark that cursors use themselves.
        var numbered = rows.Select((row, index) => (row, number: FormattableString.Invariant($"{(index % 3 == 0 ? "q" : "Q")}{(index % 5 == 0 ? "|" : "-")}ß{index}"))).ToList();
        return new(
            family,
            [.. numbered.Select(pair => new CataloguePart(pair.number, pair.row.Spec, pair.row.IsOffered, pair.row.IsMade))],
            numbered.Where(pair => pair.row.Stock is not null).ToDictionary(pair => pair.number, pair => pair.row.Stock!),
            WithRecords(family, weights, numbered.Select(pair => pair.number)),
            new(plate, new GasketSite()));
    }
}
