using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Tests.Unknowns;

/// <summary>What is open of a need is the same machines with the same weights, whatever a part is like: then a part that falls further short is never likelier, nor higher up.</summary>
public sealed class FixedCompletionsTests
{
    /// <summary>A part alone, with a colour and a lower one; the need that leaves thickness open, and what it may be.</summary>
    private static Gen<Asked> All { get; } =
        from one in Cases.All
        from machines in Cases.Spec.ListOf(12)
        from plate in Cases.Spec
        from isBoreKnown in Gen.Elements(true, true, false)
        from spec in Cases.Spec
        from colour in Gen.Choose(1, 12)
        from lower in Gen.Choose(0, 11)
        let family = Gaskets.Family(new Bore(), new Thickness(), new Hardness(), new Colour(), new Fading())
        from weights in Cases.WeightsFor(family)
        let need = new Need(plate with { Thickness = null, Bore = isBoreKnown ? plate.Bore : null }, new GasketSite())
        let completions = KnownMachines.Of(family, [.. machines.Select((machine, at) => new CataloguePart($"M-{at}", machine, IsOffered: true))]).Complete(need, Completions.Most)
        select new Asked(family, weights, need, completions, spec with { Colour = colour }, spec with { Colour = Math.Min(colour - 1, lower) }, one.Parts);

    /// <summary>So that the property below is no empty one.</summary>
    [Fact]
    public void Many_of_the_parts_tried_here_differ_by_it_and_some_by_what_they_fail()
    {
        var tried = All.Sample(1_000).Where(one => one.OfWorse is not null).ToList();
        tried.Count.ShouldBeGreaterThan(200);
        tried.Count(one => one.OfBetter > one.OfWorse).ShouldBeGreaterThan(100);
        tried.Count(one => one.Passed(one.Better) > one.Passed(one.Worse)).ShouldBeGreaterThan(30);
    }

    [Property(MaxTest = 500)]
    public Property A_worse_shortfall_never_raises_a_likelihood() => Prop.ForAll(All.ToArbitrary(), one =>
    {
        // What fails the need as it is has none.
        if (one.OfWorse is { } percent) one.OfBetter.ShouldNotBeNull().ShouldBeGreaterThanOrEqualTo(percent);
    });

    [Property(MaxTest = 200)]
    public Property A_worse_shortfall_never_raises_a_rank() => Prop.ForAll(All.ToArbitrary(), one =>
    {
        if (one.OfWorse is null || one.Completions.IsNone) return;
        one.PlaceOf(one.Better).ShouldBeLessThanOrEqualTo(one.PlaceOf(one.Worse));
    });

    private sealed record Asked(Family Family, Weights Weights, Need Need, Completions Completions, GasketSpec Worse, GasketSpec Better, IReadOnlyList<CataloguePart> Others)
    {
        private const string Number = "Q-0";

        public int? OfWorse => PercentOf(Worse);

        public int? OfBetter => PercentOf(Better);

        public int Passed(Spec part) => Completions.All.Count(completion => Family.Judge(completion.Need, part).Fit != PartFit.DoesntFit);

        public int PlaceOf(Spec part)
        {
            var catalogue = Catalogue.Of(Family, [.. Others, new(Number, part, IsOffered: true)]);
            var page = Ranker.Rank(catalogue, Weights, new(Need, null, 1_000, null) { Completions = Completions }).ShouldBeOfType<RankingPage.Listed>();
            return page.Parts.Select(ranked => ranked.Number).ToList().IndexOf(Number);
        }

        private int? PercentOf(Spec part) => Ranker.Explain(Family, Weights, Need, Completions, part).Likelihood?.Percent;
    }

    /// <summary>Colours fade on thin gaskets: of each step that a part's colour has beyond the old one's thickness a fifth of the way is gone, and beyond eight steps it fails.</summary>
    private sealed class Fading() : Aspect<GasketSpec, GasketSite, Mark>("Fading", isDeciding: true, new("invented for a test", SourceStatus.Practice), new(1, 0, 0))
    {
        public override LookedAt Fields => new(["thickness"], []);

        public override Mark Read(GasketSpec part) => new(part.Colour);

        public override Finding Judge(Need<GasketSpec, GasketSite> need, Mark facet)
        {
            if (need.Plate.Thickness is not { } thickness) return Finding.Unknown(Side.Plate, "thickness", $"The plate's thickness is not given.");
            var steps = Math.Max(0, (facet.Number ?? 0) - thickness);
            return steps > 8 ? Finding.Fails($"{steps} steps faded.") : Finding.Meets($"{steps} steps faded.") with { Shortfall = steps / 5.0 };
        }
    }
}
