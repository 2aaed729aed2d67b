namespace PartsMatch.Learning.Tests;

/// <summary>What is held out was not learnt from.</summary>
public sealed class FoldsTests
{
    [Fact]
    public void Outcomes_of_one_place_are_never_on_both_sides_and_every_one_is_held_out_once()
    {
        var examples = Drawn.Of(new(1, [1]), 500, seed: 1, places: 60);
        var held = new List<Example>();
        foreach (var (learnt, heldOut) in Folds.Parted(examples, 10))
        {
            learnt.Select(example => example.Place).Intersect(heldOut.Select(example => example.Place)).ShouldBeEmpty();
            (learnt.Count + heldOut.Count).ShouldBe(500);
            held.AddRange(heldOut);
        }

        held.ShouldBe(examples, ignoreOrder: true);
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 2)]
    [InlineData(7, 7)]
    [InlineData(10, 10)]
    [InlineData(11, 10)]
    public void There_are_as_many_folds_as_places_and_ten_at_most(int places, int folds) =>
        Folds.Parted(Drawn.Of(new(1, [1]), 200, seed: 1, places: places), 10).Count().ShouldBe(folds);

    /// <summary>One place with 100 outcomes and 18 with 10: 280 in ten folds, of which the large one fills one and the others share nine, two each.</summary>
    [Fact]
    public void Places_are_dealt_out_by_how_many_outcomes_they_have()
    {
        var examples = Enumerable.Range(0, 280).Select(at => Drawn.Example([], [], Result.Reworked, at < 100 ? "the large one" : FormattableString.Invariant($"place {at % 18}"))).ToList();
        Folds.Parted(examples, 10).Select(fold => fold.HeldOut.Count).Order().ShouldBe([20, 20, 20, 20, 20, 20, 20, 20, 20, 100]);
    }

    [Fact]
    public void A_place_is_one_however_it_is_typed() =>
        Folds.Parted([.. ((string[])["Cold Store 4", "cold store 4 ", "COLD STORE 4", "Depot"]).Select(place => Drawn.Example([], [], Result.Reworked, place))], 10).Select(fold => fold.HeldOut.Count).Order().ShouldBe([1, 3]);

    /// <summary>SHA-256 of the text begins ca978112 (published test of "a"): 0xca978112 read from its least byte is 0x128197ca = 310,482,890, which leaves 0 of ten.</summary>
    [Fact]
    public void A_text_has_the_same_number_on_every_machine() => Folds.Of("a", 10).ShouldBe(0);
}
