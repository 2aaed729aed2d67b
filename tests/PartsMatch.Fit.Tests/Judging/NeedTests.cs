using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging;

public sealed class NeedTests
{
    private static readonly Aspect Length = MotorFamily.Motor.Aspects.Single(aspect => aspect.Name == "bodyLength");

    [Fact]
    public void What_follows_from_a_need_is_worked_out_once()
    {
        var need = new Need<MotorSpec, MotorSite>(new(), new());
        need.Once(static _ => new object()).ShouldNotBeNull();
        var asked = Enumerable.Range(0, 3).Select(_ => need.Once(static _ => new object())).ToList();
        asked.ShouldAllBe(one => ReferenceEquals(one, asked[0]));
    }

    [Fact]
    public void Nothing_is_worked_out_once_as_well()
    {
        var (need, times) = (new Need<MotorSpec, MotorSite>(new(), new()), 0);
        Func<Need<MotorSpec, MotorSite>, string?> work = _ =>
        {
            times++;
            return null;
        };
        (need.Once(work), need.Once(work)).ShouldBe((null, null));
        times.ShouldBe(1);
    }

    [Fact]
    public void A_changed_copy_remembers_nothing_of_the_other_site()
    {
        // Worked by hand: a body of 6 in (152.4 mm) goes into 7 in, and is 1 in too long for 5 in.
        var facet = Length.FacetOf(Named.Record<MotorSpec>("bodyLength=6 in"));
        var need = new Need(new MotorSpec(), Named.Record<MotorSite>("bodyRoom=7 in"));
        Length.Judge(need, facet).Verdict.ShouldBe(Verdict.Meets);
        Length.Judge(need with { Site = Named.Record<MotorSite>("bodyRoom=5 in") }, facet).Verdict.ShouldBe(Verdict.Fails);
        Length.Judge(need, facet).Verdict.ShouldBe(Verdict.Meets);
    }

    [Fact]
    public void Needs_are_equal_by_plate_and_site_whatever_was_worked_out_of_them()
    {
        var (judged, other) = (new Need(Named.Record<MotorSpec>("bodyLength=6 in"), new MotorSite()), new Need(Named.Record<MotorSpec>("bodyLength=6 in"), new MotorSite()));
        Length.Judge(judged, Length.FacetOf(new MotorSpec()));
        judged.ShouldBe(other);
        judged.GetHashCode().ShouldBe(other.GetHashCode());
        judged.ShouldNotBe(other with { Site = Named.Record<MotorSite>("bodyRoom=5 in") });
    }
}
