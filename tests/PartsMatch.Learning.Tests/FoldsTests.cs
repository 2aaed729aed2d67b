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

    /// <summary>SHA-256 of the text begins ca978112 (published test of "a"): 0xca978112 read from its least byte is 0x128197ca = 310,482,890, which leaves 0 of ten.</summary>
    [Fact]
    public void A_place_has_the_same_fold_on_every_machine() => Folds.Of("a", 10).ShouldBe(0);
}
