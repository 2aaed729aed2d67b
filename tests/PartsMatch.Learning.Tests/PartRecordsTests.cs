using PartsMatch.Ranking;

namespace PartsMatch.Learning.Tests;

/// <summary>Records of parts, worked by hand from their formula: Σ(y − p) / (Σp(1 − p) + 4).</summary>
public sealed class PartRecordsTests
{
    private static readonly Costs Even = new(0, []);

    /// <summary>Every example works with a chance of 1/2, and all that does not work came back, so p is 1/2: 8 of 8 come back, 8 · 1/2 / (8 · 1/4 + 4) = 4 / 6.</summary>
    [Fact]
    public void A_part_that_comes_back_more_often_than_it_should_has_a_record()
    {
        var records = PartRecords.Of([.. Times(8, "BAD-1", Result.CameBack), .. Times(8, "GOOD-1", Result.RightFirstTime)], Even);
        records.Keys.ShouldBe(["BAD-1"]);
        records["BAD-1"].ShouldBe(4.0 / 6, 1e-12);
    }

    [Fact]
    public void One_misfortune_weighs_little() => PartRecords.Of(Times(1, "BAD-1", Result.CameBack), Even)["BAD-1"].ShouldBe(0.5 / 4.25, 1e-12);

    /// <summary>At log-odds of 12 six in a million are not right the first time: 500 of 500 that come back are 500 / (500 · 6e-6 + 4), 125.</summary>
    [Fact]
    public void A_record_is_never_more_than_weights_hold() =>
        PartRecords.Of(Times(500, "BAD-1", Result.CameBack), new(12, []))["BAD-1"].ShouldBe(Weights.MostWeight);

    /// <summary>Half of what was not right came back, so p is 1/4: two of eight come back as expected, and none is more than none.</summary>
    [Fact]
    public void A_part_that_only_takes_rework_or_does_as_expected_has_none() =>
        PartRecords.Of([.. Times(4, "FAIR-1", Result.RightFirstTime), .. Times(2, "FAIR-1", Result.Reworked), .. Times(2, "FAIR-1", Result.CameBack)], Even).ShouldBeEmpty();

    private static List<Example> Times(int count, string part, Result result) => [.. Enumerable.Repeat(Drawn.Example([], [], result, part: part), count)];
}
