using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Tests.Unknowns;

/// <summary>With every completion kept, ranking a need with unknowns is judging every part for every known machine, each by how near it comes.</summary>
public sealed class CompletionsPropertyTests
{
    /// <summary>Some old parts of every family, each with the forty parts of the demo catalogue that say most fields alike.</summary>
    private static readonly Dictionary<string, List<(CataloguePart Old, List<CataloguePart> Near)>> Demo = Families.All.ToDictionary(family => family.Kind, family =>
    {
        var all = Machines.Demo(family).Select(part => (Part: part, Texts: family.SpecShape.Write(part.Spec).ToHashSet())).ToList();
        return all.Where((_, index) => index % (all.Count / 15) == 0)
            .Select(old => (old.Part, all.OrderByDescending(other => other.Texts.Count(old.Texts.Contains)).Take(40).Select(other => other.Part).ToList())).ToList();
    });

    /// <summary>A family, some of its demo parts, and the plate of one of their like with holes in it.</summary>
    internal static Gen<(Family Family, List<CataloguePart> Parts, Need Need, Weights Weights, Dictionary<string, Stock> Stock)> Asked { get; } =
        from family in Gen.Elements(Families.All.AsEnumerable())
        from old in Gen.Elements(Demo[family.Kind].AsEnumerable())
        from isIn in Gen.Elements(true, true, false).ListOf(40)
        from holes in Gen.Choose(0, 3).ListOf(family.SpecShape.Fields.Count)
        from isMeasured in Gen.Elements(true, false)
        from weights in Cases.WeightsFor(family)
        from prices in Gen.Choose(0, 30).ListOf(40)
        let texts = family.SpecShape.Write(old.Old.Spec).Where(text => holes[family.SpecShape.Fields.Index().First(one => one.Item.Name == text.Name).Index] > 0)
        let site = isMeasured && family.SiteShape.Find("volts") is { } volts ? new NamedText[] { new(volts.Name, volts.Example) } : []
        let parts = old.Near.Where((_, index) => isIn[index]).ToList()
        select (family, parts, family.ReadNeed(new(null, [.. texts], site)).Need, weights, parts.Index().ToDictionary(one => one.Item.Number, one => new Stock(prices[one.Index] % 3, prices[one.Index])));

    [Fact]
    public void Most_of_the_needs_asked_here_are_open_and_many_pass_some_completions_only()
    {
        var asked = Asked.Sample(600).Select(one => (one.Family, one.Parts, one.Need, one.Weights, Completions: KnownMachines.Of(one.Family, one.Parts).Complete(one.Need))).ToList();

        asked.Count(one => !one.Completions.IsNone).ShouldBeGreaterThan(300);
        asked.Where(one => !one.Completions.IsNone).Count(one => one.Parts.Any(part => Ranker.Explain(one.Family, one.Weights, one.Need, one.Completions, part.Spec).Likelihood?.Percent is > 1 and < 60)).ShouldBeGreaterThan(100);
    }

    [Property(MaxTest = 40)]
    public Property The_list_is_that_of_judging_every_part_for_every_machine() => Prop.ForAll(Asked.ToArbitrary(), asked =>
    {
        var (family, parts, need, weights, stock) = asked;
        var completions = KnownMachines.Of(family, parts).Complete(need, Completions.Most);
        if (completions.IsNone) return;
        var all = Machines.Near(family, need, parts);
        completions.Machines.ShouldBe(all.Count);
        var expected = parts.Select(part => (part.Number, Fit: family.Judge(need, part.Spec).Fit, Likelihood: Machines.Likelihood(family, weights, all, part.Spec)))
            .Where(one => one.Fit != PartFit.DoesntFit).ToDictionary(one => one.Number);

        var page = Ranker.Rank(Catalogue.Of(family, parts).WithStock(stock), weights, new(need, null, 100, null) { Completions = completions }).ShouldBeOfType<RankingPage.Listed>();

        page.Parts.Select(part => part.Number).ShouldBe(expected.Keys, ignoreOrder: true);
        foreach (var part in page.Parts)
        {
            ((double)part.Likelihood.Percent).ShouldBe(Math.Clamp(100 * expected[part.Number].Likelihood, 1, 99), 0.5 + 1e-6, part.Number);
            part.Likelihood.Machines.ShouldBe(all.Count);
            part.Explained.Likelihood.ShouldBe(part.Likelihood);
            (part.Fit, part.Explained.Sheet.Fit).ShouldBe((expected[part.Number].Fit, expected[part.Number].Fit));
            part.Explained.Contributions.Sum(one => one.Amount.Millionths).ShouldBe(part.Explained.Score.Millionths);
            part.Explained.Contributions.ShouldAllBe(one => one.Amount.Millionths <= 0);
        }

        page.Parts.ShouldBe(page.Parts.OrderByDescending(part => part.Likelihood.Percent).ThenByDescending(part => part.Stock.OnHand > 0).ThenBy(part => part.Stock.Price).ThenBy(part => part.Number, StringComparer.Ordinal));
    });

    [Property(MaxTest = 40)]
    public Property A_machine_that_comes_nearer_never_counts_less_and_one_that_agrees_with_all_that_is_known_counts_in_full() => Prop.ForAll(Asked.ToArbitrary(), asked =>
    {
        var (family, parts, need, _, _) = asked;
        if (parts.Count == 0) return;
        var blank = new Need(family.ReadSpec([]).Spec, family.ReadSite([]).Site);
        var weights = KnownMachines.Of(family, parts).Near(need).ToDictionary(machine => machine.Number, machine => machine.Weight);
        var machines = parts.Select(part => (Apart: Machines.Apart(family, need, family.Complete(blank, family.Deduce(part.Spec).Spec)), Weight: weights.GetValueOrDefault(part.Number))).OrderBy(machine => machine.Apart).ToList();

        machines[0].Weight.ShouldBe(1000);
        foreach (var (nearer, further) in machines.Zip(machines.Skip(1))) nearer.Weight.ShouldBeGreaterThanOrEqualTo(further.Weight);
        foreach (var (nearer, further) in machines.Zip(machines.Skip(1)).Where(two => two.First.Apart == two.Second.Apart)) nearer.Weight.ShouldBe(further.Weight);
        machines.Where(machine => machine.Apart == 0).ShouldAllBe(machine => machine.Weight == 1000);
    });

    [Property(MaxTest = 40)]
    public Property However_likely_a_part_is_for_the_machines_that_it_passes_those_that_it_fails_count_as_nothing() => Prop.ForAll(Asked.ToArbitrary(), asked =>
    {
        var (family, parts, need, weights, _) = asked;
        var completions = KnownMachines.Of(family, parts).Complete(need);
        if (completions.IsNone) return;
        var all = completions.All.Sum(completion => (double)completion.Weight);
        foreach (var part in parts)
        {
            var passed = completions.All.Where(completion => family.Judge(completion.Need, part.Spec).Fit != PartFit.DoesntFit).Sum(completion => completion.Weight);
            var likelihood = Ranker.Explain(family, weights, need, completions, part.Spec).Likelihood;
            if (family.Judge(need, part.Spec).Fit == PartFit.DoesntFit) likelihood.ShouldBeNull();
            else ((double)likelihood!.Percent).ShouldBeLessThanOrEqualTo(Math.Max(1, (100 * passed / all) + 0.5));
        }
    });

    [Property(MaxTest = 40)]
    public Property Of_more_machines_than_are_told_apart_those_taken_stand_for_all() => Prop.ForAll(Asked.Zip(Gen.Choose(1, 12)).ToArbitrary(), given =>
    {
        var ((family, parts, need, _, _), most) = given;
        var (few, all) = (KnownMachines.Of(family, parts).Complete(need, most), KnownMachines.Of(family, parts).Complete(need, Completions.Most));
        if (all.IsNone) return;

        few.All.Count.ShouldBeInRange(1, most);
        (few.Machines, few.Agreeing, few.Effective).ShouldBe((all.Machines, all.Agreeing, all.Effective));
        few.All.Select(one => one.Need).ShouldBeSubsetOf(all.All.Select(one => one.Need));
        if (all.All.Count <= most) few.All.Select(one => (one.Need, one.Weight)).ShouldBe(all.All.Select(one => (one.Need, one.Weight)));

        // What counts by itself more than one of equal lengths is taken. Of completions that are the same need, since what a machine says of its site is settled by what is known, each lies elsewhere;
        // and of those that stand for others already, which count by how often they were taken, only these know what they counted.
        var (ofFew, ofAll) = (few.All.Sum(one => (double)one.Weight), all.All.Sum(one => (double)one.Weight));
        foreach (var one in all.All.Where(one => ofAll > Completions.Most && one.Weight / ofAll > 1.0 / most)) few.All.ShouldContain(taken => taken.Need == one.Need);

        few.All.Sum(one => one.Weight / ofFew).ShouldBe(1, 1e-9);
    });

    [Property(MaxTest = 40)]
    public Property The_first_few_are_the_first_of_all() => Prop.ForAll(Asked.Zip(Gen.Choose(1, 12)).ToArbitrary(), given =>
    {
        var ((family, parts, need, weights, stock), first) = given;
        var (catalogue, completions) = (Catalogue.Of(family, parts).WithStock(stock), KnownMachines.Of(family, parts).Complete(need));

        var all = Page(100, null);
        var some = Page(first, null);
        some.Parts.Select(part => part.Cursor).ShouldBe(all.Parts.Take(first).Select(part => part.Cursor));
        some.HasNextPage.ShouldBe(all.Parts.Count > first);
        if (some.HasNextPage) Page(100, some.Parts[^1].Cursor).Parts.Select(part => part.Cursor).ShouldBe(all.Parts.Skip(first).Select(part => part.Cursor));

        RankingPage.Listed Page(int most, string? after) => Ranker.Rank(catalogue, weights, new(need, null, most, after) { Completions = completions }).ShouldBeOfType<RankingPage.Listed>();
    });

    [Property(MaxTest = 40)]
    public Property A_part_asked_for_alone_is_explained_as_in_the_list() => Prop.ForAll(Asked.ToArbitrary(), asked =>
    {
        var (family, parts, need, weights, stock) = asked;
        var completions = KnownMachines.Of(family, parts).Complete(need);
        foreach (var part in Ranker.Rank(Catalogue.Of(family, parts).WithStock(stock), weights, new(need, null, 100, null) { Completions = completions }).ShouldBeOfType<RankingPage.Listed>().Parts)
        {
            var alone = Ranker.Explain(family, weights, need, completions, parts.Single(other => other.Number == part.Number).Spec);
            (alone.Score, alone.Likelihood).ShouldBe((part.Explained.Score, part.Likelihood));
            alone.Contributions.ShouldBe(part.Explained.Contributions);
        }
    });

    [Property(MaxTest = 40)]
    public Property Machines_are_the_same_in_whatever_order_they_were_written() => Prop.ForAll(Asked.ToArbitrary(), asked =>
    {
        var (family, parts, need, _, _) = asked;
        var turned = parts.AsEnumerable().Reverse().Aggregate(KnownMachines.Of(family, []), (machines, part) => machines.With([part]));
        turned.Complete(need).All.Select(one => (one.Need, one.Weight)).ShouldBe(KnownMachines.Of(family, parts).Complete(need).All.Select(one => (one.Need, one.Weight)));
    });
}
