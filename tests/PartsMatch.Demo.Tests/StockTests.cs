using System.Globalization;

namespace PartsMatch.Demo.Tests;

public sealed class StockTests
{
    private static readonly Dictionary<string, SeedRow> Stock = SeedData.Table("stock.csv").ToDictionary(row => row.Number);

    [Fact]
    public void Every_part_has_one_price_in_dollars_and_a_quantity()
    {
        var numbers = SeedData.ByKind.SelectMany(rows => rows.Select(row => row.Number));

        Stock.Keys.Order(StringComparer.Ordinal).ShouldBe(numbers.Order(StringComparer.Ordinal));
        foreach (var row in Stock.Values)
        {
            decimal.Parse(row["price"], CultureInfo.InvariantCulture).ShouldBeInRange(2, 2500, row.Number);
            row["currency"].ShouldBe("USD");
            int.Parse(row["onHand"], CultureInfo.InvariantCulture).ShouldBeInRange(0, 9, row.Number);
        }
    }

    [Fact]
    public void Of_what_is_discontinued_only_a_few_are_left()
    {
        var left = SeedData.Motors.Where(part => part.IsDiscontinued).Select(OnHand).ToList();
        var others = SeedData.Motors.Where(part => !part.IsDiscontinued).Select(OnHand).ToList();

        left.Max().ShouldBeLessThanOrEqualTo(2);
        ((double)left.Count(count => count == 0) / left.Count).ShouldBeGreaterThan(0.8);
        others.Average().ShouldBeGreaterThan(5 * left.Average());
    }

    private static int OnHand<T>(SeedPart<T> part) => int.Parse(Stock[part.Row.Number]["onHand"], CultureInfo.InvariantCulture);
}
