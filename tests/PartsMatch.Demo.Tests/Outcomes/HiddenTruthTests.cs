using PartsMatch.Demo.Outcomes;
using PartsMatch.Demo.Trade;

namespace PartsMatch.Demo.Tests.Outcomes;

/// <summary>What no record tells moves what becomes of a part the way that it says, in every family's truth.</summary>
public sealed class HiddenTruthTests
{
    private static readonly Place Usual = new("a place", VoltsOff: 0, AirMost: 35, IsWet: false, Harshness: 1, Skill: 0.6);

    public static TheoryData<string> Kinds => [.. Districts.Kinds];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void At_a_harsher_place_more_comes_back_and_less_is_right(string kind) =>
        Every(kind, (truth, old, part) => (truth.Of(old, part, Usual, 0.02, 1), truth.Of(old, part, Usual with { Harshness = 1.5 }, 0.02, 1)), (usual, harsher) =>
        {
            harsher.Right.ShouldBeLessThan(usual.Right);
            harsher.CameBack.ShouldBeGreaterThan(usual.CameBack);
        });

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Whoever_knows_the_work_better_reworks_less_and_has_more_right(string kind) =>
        Every(kind, (truth, old, part) => (truth.Of(old, part, Usual with { Skill = 0.3 }, 0.02, 1), truth.Of(old, part, Usual with { Skill = 0.9 }, 0.02, 1)), (lesser, better) =>
        {
            better.Right.ShouldBeGreaterThan(lesser.Right);
            Reworked(better).ShouldBeLessThan(Reworked(lesser));
        });

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_part_of_lesser_quality_comes_back_more_often(string kind) =>
        Every(kind, (truth, old, part) => (truth.Of(old, part, Usual, 0, 1), truth.Of(old, part, Usual, 0.5, 1)), (good, lesser) =>
        {
            lesser.Right.ShouldBeLessThan(good.Right);
            lesser.CameBack.ShouldBeGreaterThan(good.CameBack);
        });

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Once_times_are_harder_more_comes_back(string kind) =>
        Every(kind, (truth, old, part) => (truth.Of(old, part, Usual, 0.02, 1), truth.Of(old, part, Usual, 0.02, 1.25)), (before, later) =>
        {
            later.Right.ShouldBeLessThan(before.Right);
            later.CameBack.ShouldBeGreaterThan(before.CameBack);
        });

    /// <summary>Worked by hand: no rule but what always may happen, 0.02, and the part's quality, 0.08: a failure's hazard is 0.1 · 2 · 1.25 = 0.25, a rework's 0.02 · (1.5 − 0.5) = 0.02; e^−0.27 = 0.7634, and of the rest 0.25 / 0.27 comes back.</summary>
    [Fact]
    public void Place_quality_skill_and_drift_are_a_hazard()
    {
        var part = Districts.Of("contactor").Figures[0];
        var chances = new HiddenTruth([], []).Of(part, part, Usual with { Harshness = 2, Skill = 0.5 }, quality: 0.08, drift: 1.25);
        chances.Right.ShouldBe(0.7634, 1e-4);
        chances.CameBack.ShouldBe((1 - 0.7634) * 0.25 / 0.27, 1e-4);
    }

    /// <summary>Pairs in which neither hazard is so great that everything is certain.</summary>
    private static void Every(string kind, Func<HiddenTruth, PartFigures, PartFigures, (Chances One, Chances Other)> of, Action<Chances, Chances> holds)
    {
        var family = Districts.Of(kind);
        var truth = family.Made.Family.Truth(new Draw(7));
        var tried = 0;
        foreach (var (old, part) in family.Figures.Zip(family.Figures.Skip(1)).Take(300))
        {
            var (one, other) = of(truth, old, part);
            if (one.Right < 0.01 || other.Right < 0.01) continue;
            holds(one, other);
            tried++;
        }

        tried.ShouldBeGreaterThan(20);
    }

    private static double Reworked(Chances chances) => 1 - chances.Right - chances.CameBack;
}
