using PartsMatch.Service.Pages.Models;

namespace PartsMatch.Service.Tests.Pages;

/// <summary>Costs in words. Expected values worked by hand: ln 2 = 0.693, ln 3 = 1.099, ln 4 = 1.386, e^2 = 7.39, e^3 = 20.1.</summary>
public sealed class OddsTests
{
    [Theory]
    [InlineData(0, "costs nothing")]
    [InlineData(0.04, "hardly changes the odds")]
    [InlineData(0.223, "takes 20 % off the odds")]
    [InlineData(0.5, "takes 39 % off the odds")]
    [InlineData(0.69, "halves the odds")]
    [InlineData(1.1, "leaves a third of the odds")]
    [InlineData(1.39, "leaves a quarter of the odds")]
    [InlineData(2, "divides the odds by 7.4")]
    [InlineData(3, "divides the odds by 20")]
    [InlineData(100, "divides the odds by more than a thousand")]
    public void A_cost_is_told_by_what_it_does_to_the_odds(double cost, string words) => Odds.Of(cost).ShouldBe(words);

    [Theory]
    [InlineData(0.02, 1, "less than a few minutes' work")]
    [InlineData(0.25, 0.5, "as much as 30 minutes' work")]
    [InlineData(0.5, 0.5, "as much as an hour's work")]
    [InlineData(0.69, 0.3, "as much as 2.3 hours' work")]
    [InlineData(5, 0.2, "more than a day's work")]
    public void A_cost_is_told_as_work(double cost, double hour, string words) => Odds.InWork(cost, hour).ShouldBe(words);

    [Fact]
    public void What_is_left_of_the_odds_falls_and_is_never_less_than_nothing()
    {
        double[] costs = [0, 0.1, 0.69, 1, 5, 100];
        costs.Select(Odds.Left).ShouldBe(costs.Select(Odds.Left).OrderDescending());
        costs.ShouldAllBe(cost => Odds.Left(cost) >= 0 && Odds.Left(cost) <= 1);
    }
}
