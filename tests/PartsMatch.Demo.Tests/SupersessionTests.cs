using System.Globalization;

namespace PartsMatch.Demo.Tests;

public sealed class SupersessionTests
{
    private static readonly IReadOnlyList<SeedRow> Rows = SeedData.Table("supersessions.csv");
    private static readonly Dictionary<string, SeedRow> ByNumber = Rows.ToDictionary(row => row.Number);
    private static readonly Dictionary<string, SeedRow> Parts = SeedData.ByKind.SelectMany(rows => rows).ToDictionary(row => row.Number);

    [Fact]
    public void About_one_part_in_sixteen_is_superseded_and_all_of_these_are_discontinued()
    {
        ((double)Rows.Count / Parts.Count).ShouldBeInRange(0.045, 0.075);
        Rows.ShouldAllBe(row => Parts[row.Number]["status"] == "discontinued");
    }

    [Fact]
    public void Both_numbers_are_parts_of_one_family()
    {
        var kinds = SeedData.ByKind.SelectMany(rows => rows.Select(row => (row.Number, rows.Key))).ToDictionary(one => one.Number, one => one.Key);

        Rows.ShouldAllBe(row => Parts.ContainsKey(row.Number) && Parts.ContainsKey(row["supersededBy"]));
        Rows.ShouldAllBe(row => kinds[row.Number] == kinds[row["supersededBy"]]);
    }

    [Fact]
    public void Chains_have_one_to_three_links_and_never_return()
    {
        var longest = 0;
        foreach (var row in Rows)
        {
            var seen = new List<string> { row.Number };
            while (ByNumber.TryGetValue(seen[^1], out var next)) seen.Add(next["supersededBy"]);
            seen.Distinct().Count().ShouldBe(seen.Count, row.Number);
            longest = Math.Max(longest, seen.Count - 1);
        }

        longest.ShouldBe(3);
    }

    [Fact]
    public void A_chain_is_told_in_order_of_time()
    {
        foreach (var row in Rows.Where(row => ByNumber.ContainsKey(row["supersededBy"])))
        {
            On(row).ShouldBeLessThanOrEqualTo(On(ByNumber[row["supersededBy"]]), row.Number);
        }
    }

    [Fact]
    public void Makers_counters_and_technicians_speak_and_makers_of_their_own_parts_alone()
    {
        Rows.Select(row => row["saidBy"]).Distinct().Order(StringComparer.Ordinal).ShouldBe(["counter", "maker", "technician"]);
        Rows.Where(row => row["saidBy"] == "maker").ShouldAllBe(row => Parts[row.Number]["maker"] == Parts[row["supersededBy"]]["maker"]);
    }

    private static DateOnly On(SeedRow row) => DateOnly.ParseExact(row["on"], "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
