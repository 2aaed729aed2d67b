using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Motors.Aspects;

namespace PartsMatch.Fit.Tests.Motors;

public sealed class EverySpeedTests
{
    private static readonly Finding Meets = Finding.Meets($"It meets.") with { Shortfall = 0.9 };
    private static readonly Finding Open = Finding.Unknown(Side.Plate, "speed", $"It is open.");
    private static readonly Finding OpenToo = Finding.Unknown(Side.Part, "speed", $"It is open, too.") with { Shortfall = 0.5 };
    private static readonly Finding Fails = Finding.Fails($"It fails.");
    private static readonly Finding FailsByMore = Finding.Fails($"It fails by more.") with { Shortfall = 2 };

    [Fact]
    public void The_first_unknown_stands_before_whatever_passes() => EverySpeed.Of(Meets, [Open, Meets, OpenToo]).Sentence.ShouldBe("It is open.");

    [Fact]
    public void The_worst_failure_stands_before_all_else_and_the_first_of_those_that_are_alike()
    {
        EverySpeed.Of(Open, [Fails, FailsByMore, Meets]).Sentence.ShouldBe("It fails by more.");
        EverySpeed.Of(Fails, [Finding.Fails($"It fails on low.")]).Sentence.ShouldBe("It fails.");
    }

    [Fact]
    public void Where_every_speed_passes_the_greatest_shortfall_counts_and_each_change_is_asked_for_once()
    {
        Change set = new(SupplyChanges.SetTap, $"set the 230 V tap"), check = new(CircuitChanges.CheckCircuit, $"see that the wire suits");
        var high = Finding.MeetsWith([set], $"It meets on high.") with { Shortfall = 0.1 };
        var low = Finding.MeetsWith([set with { }, check], $"It meets on low.") with { Shortfall = 0.2 };
        var both = EverySpeed.Of(high, [low]);
        both.Sentence.ShouldBe("It meets on low.");
        both.Verdict.ShouldBe(Verdict.MeetsWithChanges);
        both.Changes.Select(change => change.Text).ShouldBe(["set the 230 V tap", "see that the wire suits"]);
        EverySpeed.Of(Meets, [high with { Shortfall = 1 }]).Sentence.ShouldBe("It meets on high.");
    }

    [Fact]
    public void One_speed_is_what_it_is() => EverySpeed.Of(Meets, []).ShouldBeSameAs(Meets);
}
