using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking.Tests.Engine;

public sealed class BestPartsTests
{
    [Fact]
    public void The_best_so_many_are_kept_in_order_and_of_equal_ones_those_that_came_first() =>
        Check.One(Config.QuickThrowOnFailure.WithMaxTest(2000), Prop.ForAll(Gen.Choose(0, 11).ArrayOf().ToArbitrary(), Gen.Choose(1, 8).ToArbitrary(), (keys, most) =>
        {
            var best = new BestParts<int>(most, Comparer<int>.Default);
            for (var place = 0; place < keys.Length; place++)
            {
                var soFar = keys[..place].Order().Take(most).ToList();
                best.IsFull.ShouldBe(soFar.Count == most);
                best.Admits(keys[place]).ShouldBe(soFar.Count < most || keys[place] < soFar[^1]);
                best.Offer(place, keys[place]);
            }

            best.All.ShouldBe(keys.Select((key, place) => (place, key)).OrderBy(one => one.key).Take(most));
        }));
}
