using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Tests.Unknowns;

/// <summary>A plate on which only the shaft cannot be read, and known motors of which a quarter have a 3/8 in shaft and the others 1/2 in: worked out by hand.</summary>
public sealed class UnreadShaftTests
{
    private const string Motor =
        "type=PSC; power=1/3 hp; powerMeaning=output; speed=1075 rpm; speeds=1; frequency=60 Hz; voltage=208-230 V; phase=1; fullLoadAmps=2.6 A; runCapacitor=5 µF 370 V; "
        + "mounts=band; bodyDiameter=5.6 in; shaftLength=4 in; shaftForm=flat; shaftEnds=1; rotation=CW lead end; reversing=by plug; enclosure=TEAO; protection=automatic";

    private static readonly Family Family = Families.Find("motor")!;
    private static readonly Weights Weights = Weights.HandSet(Family);
    private static readonly IReadOnlyList<CataloguePart> Parts = [Part("THIN", "3/8 in"), Part("THICK-1", "1/2 in"), Part("THICK-2", "1/2 in"), Part("THICK-3", "1/2 in")];
    private static readonly Catalogue Catalogue = Catalogue.Of(Family, Parts).WithStock([new("THIN", new(1, 20m)), new("THICK-2", new(1, 10m))]);
    private static readonly Need Need = Family.ReadNeed(new(null, NearestSizeTests.Texts(Motor), NearestSizeTests.Texts("volts=230 V"))).Need;
    private static readonly Completions Completions = KnownMachines.Of(Family, Parts).Complete(Need);

    [Fact]
    public void Motors_that_cannot_be_told_apart_are_counted_together()
    {
        Completions.All.Select(one => one.Weight).ShouldBe([1000, 3000], ignoreOrder: true);
        (Completions.Machines, Completions.Agreeing, Completions.Effective).ShouldBe((4, 4, 4.0));
        Completions.Differing.ShouldBeEmpty();
    }

    [Fact]
    public void A_part_that_fails_a_quarter_of_them_shows_three_quarters_of_its_likelihood()
    {
        // A 1/2 in shaft does not go into a 3/8 in hub; it is right for the others. 97.07 % x 3/4 = 72.8 %.
        var page = Ranker.Rank(Catalogue, Weights, new(Need, null, 10, null) { Completions = Completions }).ShouldBeOfType<RankingPage.Listed>();

        var thick = page.Parts.Single(part => part.Number == "THICK-2");
        thick.Likelihood.Machines.ShouldBe(4);
        var alone = Ranker.Explain(Family, Weights, Completions.All.Single(one => one.Weight == 3000).Need, Parts[2].Spec);
        ((double)thick.Likelihood.Percent).ShouldBe(75.0 / (1 + Math.Exp(-3.5 - alone.Score.Value)), 0.5);
        thick.Explained.Score.ShouldBe(alone.Score);

        // A 3/8 in shaft goes into both, into the larger with a bushing: no machine is lost, only the bushing's effort.
        page.Parts[0].Number.ShouldBe("THIN");
        page.Parts[0].Likelihood.Percent.ShouldBeGreaterThan(85);
    }

    [Fact]
    public void The_shaft_is_the_reading_to_take_next()
    {
        // Which is the best: THIN for a quarter, THICK-2 for the rest: h(1/4) = 0.811278 bits, and nothing after reading it.
        // Which do: THIN always, the three others with 3/4 each: 3/4 of 0.811278. Together 1.419737 bits, in the 3 minutes that calipers take.
        var advice = NextReadings.Of(Catalogue, Weights, Need, Completions, 3);

        advice[0].Field.Name.ShouldBe("shaftDiameter");
        advice[0].Narrowing.ShouldBe(1.419737, 1e-6);
        advice[0].Worth.ShouldBe(1.419737 / 3, 1e-6);
        advice[0].Sentence.ShouldBe("Measure with calipers: shaft diameter. It decides between 3 parts, and every part here waits for it.");
    }

    [Fact]
    public void One_part_that_goes_into_every_hub_is_all_that_has_to_be_carried_and_its_bushing()
    {
        var set = CarrySet.Of(Catalogue, Weights, Need, Completions);

        var part = set.Parts.ShouldHaveSingleItem();
        (part.Number, part.Share, set.Reached, set.IsSmallest).ShouldBe(("THIN", 1.0, 1.0, true));
        part.Kit(Family, Parts[0].Spec).Select(item => item.What).ShouldContain(text => text.Contains("bushing", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_it_as_much_is_carried_as_can_be_and_the_shortage_is_said()
    {
        var set = CarrySet.Of(Catalogue, Weights, Need, Completions, leftOut: "THIN");

        // Of three that are alike the one at hand.
        (set.Parts.ShouldHaveSingleItem().Number, set.Reached).ShouldBe(("THICK-2", 0.75));
    }

    [Fact]
    public void Three_quarters_are_enough_when_three_quarters_are_asked()
    {
        // Either of THIN and THICK-2 will do then; one is enough.
        var set = CarrySet.Of(Catalogue, Weights, Need, Completions, atLeast: 0.75);

        set.Parts.Count.ShouldBe(1);
        set.Reached.ShouldBeGreaterThanOrEqualTo(0.75);
    }

    [Fact]
    public void A_need_that_leaves_nothing_open_has_no_completions_and_nothing_to_carry()
    {
        var need = Family.ReadNeed(new(null, NearestSizeTests.Texts(Motor + "; shaftDiameter=1/2 in"), NearestSizeTests.Texts("volts=230 V"))).Need;
        var completions = KnownMachines.Of(Family, Parts).Complete(need);

        completions.IsNone.ShouldBeTrue();
        CarrySet.Of(Catalogue, Weights, need, completions).Parts.ShouldBeEmpty();
    }

    [Fact]
    public void A_reading_of_the_site_that_every_part_waits_for_is_advised_too()
    {
        var need = Family.ReadNeed(new(null, NearestSizeTests.Texts(Motor + "; shaftDiameter=1/2 in"), [])).Need;
        var advice = NextReadings.Of(Catalogue, Weights, need, KnownMachines.Of(Family, Parts).Complete(need), 3);

        var volts = advice.Single(one => one.Field.Name == "volts");
        (volts.Side, volts.IsEstimated).ShouldBe((Side.Site, false));

        // The three, and the one with the bushing: all wait for it, so that it stands before what only sharpens the order.
        volts.Parts.ShouldBe(4);
        volts.EveryPartWaits.ShouldBeTrue();
        advice[0].ShouldBe(volts);
    }

    private static CataloguePart Part(string number, string shaft) => new(number, NearestSizeTests.Spec(Family, $"{Motor}; shaftDiameter={shaft}"), IsOffered: true);
}
