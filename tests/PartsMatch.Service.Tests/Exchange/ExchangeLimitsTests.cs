using PartsMatch.Service.Exchange;

namespace PartsMatch.Service.Tests.Exchange;

public sealed class ExchangeLimitsTests
{
    [Fact]
    public void The_operations_page_lists_every_limit_with_its_default()
    {
        var listed = File.ReadAllLines(Path.Combine(Repository.Root, "docs", "operations.md"))
            .Where(line => line.StartsWith("| `Exchange:", StringComparison.Ordinal))
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
            .ToDictionary(cells => cells[0].Trim('`'), cells => cells[1].Trim('`'));
        var defaults = new ExchangeLimits();
        listed.ShouldBe(typeof(ExchangeLimits).GetProperties().ToDictionary(property => $"Exchange:{property.Name}", property => FormattableString.Invariant($"{property.GetValue(defaults):#,0}")), ignoreOrder: true);
    }
}
