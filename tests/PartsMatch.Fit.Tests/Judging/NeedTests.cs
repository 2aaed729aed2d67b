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

    // 250 W are less than the 370 W that three phases are taken to give, and may be enough where the motor is electronically commutated: 0.60 · 370 = 222 W (from memory).
    [Fact]
    public void A_copy_knows_what_was_read_of_the_plate_until_it_has_another()
    {
        var power = MotorFamily.Motor.Aspects.Single(aspect => aspect.Name == "outputPower");
        var facet = power.FacetOf(Named.Record<MotorSpec>("power=250 W; powerMeaning=output"));
        var read = MotorFamily.Motor.ReadNeed(new(null, Named.Texts("phase=3; power=370 W"), [])).Need;
        power.Judge(read, facet).Verdict.ShouldBe(Verdict.Unknown);
        power.Judge(read with { }, facet).Verdict.ShouldBe(Verdict.Unknown);
        power.Judge(read with { Plate = Named.Record<MotorSpec>("phase=3; power=370 W; powerMeaning=output") }, facet).Verdict.ShouldBe(Verdict.Fails);
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

    [Fact]
    public void A_spec_equals_its_copy_whatever_was_worked_out_of_it_and_a_changed_copy_is_worked_out_anew()
    {
        var spec = Named.Record<MotorSpec>("speed=1075 rpm; frequency=60 Hz");
        Ratings.Of(spec).ShouldBeSameAs(Ratings.Of(spec));
        var copy = spec with { };
        copy.ShouldBe(spec);
        copy.GetHashCode().ShouldBe(spec.GetHashCode());
        Ratings.Of(spec with { Speed = Named.Record<MotorSpec>("speed=1550 rpm").Speed }).Rows.ShouldHaveSingleItem().Speed!.Value.RevolutionsPerMinute.ShouldBe(1550);
    }

    [Fact]
    public void What_follows_from_the_plate_of_a_catalogue_entry_is_worked_out_once_for_all_its_needs()
    {
        var entry = Named.Record<MotorSpec>("bodyLength=6 in");
        Func<MotorSpec, object> work = static _ => new();
        var known = Of("bodyRoom=7 in").OnceOfPlate(work);
        Of("bodyRoom=5 in").OnceOfPlate(work).ShouldBeSameAs(known);

        // Whoever types something of the plate has another, and so has whoever changes a copy.
        Of("bodyRoom=7 in", "poles=6").OnceOfPlate(work).ShouldNotBeSameAs(known);
        new Need<MotorSpec, MotorSite>(Read("bodyRoom=7 in") with { Plate = new MotorSpec() }).OnceOfPlate(work).ShouldNotBeSameAs(known);

        Need Read(string site, string plate = "") => MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site), entry)).Need;
        Need<MotorSpec, MotorSite> Of(string site, string plate = "") => new(Read(site, plate));
    }
}
