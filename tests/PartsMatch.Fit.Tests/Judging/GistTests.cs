using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>Whoever judges gists in place of facets gets the same answers: shown on the demo catalogue, for plates with holes in them.</summary>
public class GistTests
{
    private static readonly Dictionary<string, List<IReadOnlyList<NamedText>>> Demo = Families.All.ToDictionary(family => family.Kind, family => DemoParts.Of(family).Select(part => part.Texts).ToList());

    private static Gen<Case> Asked { get; } =
        from family in Gen.Elements(Families.All.Where(family => family.Aspects.Any(aspect => aspect.HasGist)))
        from old in Gen.Elements(Demo[family.Kind].AsEnumerable())
        from first in Gen.Choose(0, 49)
        from holes in Gen.Choose(0, 9).ListOf(family.SpecShape.Fields.Count)
        from measured in Gen.Choose(0, 5)
        let plate = old.Where(text => holes[family.SpecShape.Fields.Index().First(one => one.Item.Name == text.Name).Index] > 0)
        let site = measured == 0 && family.SiteShape.Find("measuredSpeed") is { } speed ? new NamedText[] { new(speed.Name, speed.Example) } : []
        select new Case(family, family.ReadNeed(new(null, [.. plate], site)).Need, [.. Demo[family.Kind].Where((_, index) => index % 50 == first).Select(texts => family.Deduce(family.ReadSpec(texts).Spec).Spec)]);

    [Property(MaxTest = 100)]
    public Property A_gist_answers_as_its_facet_does_unless_the_need_asks_beyond_it() => Prop.ForAll(Asked.ToArbitrary(), asked =>
    {
        foreach (var aspect in asked.Aspects.Where(aspect => !aspect.AsksBeyondGist(asked.Need)))
        {
            foreach (var facet in asked.Parts.Select(aspect.FacetOf))
            {
                var (whole, gist) = (aspect.Judge(asked.Need, facet), aspect.Judge(asked.Need, aspect.GistOf(facet)));
                (gist.Verdict, gist.Shortfall, gist.Margin, gist.Sentence).ShouldBe((whole.Verdict, whole.Shortfall, whole.Margin, whole.Sentence), $"{aspect.Title} of {facet}");
                gist.Changes.Select(change => (change.Kind, change.Text)).ShouldBe(whole.Changes.Select(change => (change.Kind, change.Text)));
                gist.Missing.ShouldBe(whole.Missing);
            }
        }
    });

    [Fact]
    public void The_needs_asked_here_come_to_every_verdict_and_some_ask_beyond_gists()
    {
        var asked = Asked.Sample(200).ToList();
        var verdicts = asked.SelectMany(one => one.Aspects.Where(aspect => !aspect.AsksBeyondGist(one.Need)).SelectMany(aspect => one.Parts.Select(part => aspect.Judge(one.Need, aspect.GistOf(aspect.FacetOf(part))).Verdict)));
        verdicts.Distinct().Count().ShouldBe(Enum.GetValues<Verdict>().Length);
        asked.Count(one => one.Aspects.Any(aspect => aspect.AsksBeyondGist(one.Need))).ShouldBeInRange(10, 100);
    }

    [Fact]
    public void Gists_are_far_fewer_than_facets()
    {
        foreach (var family in Families.All)
        {
            List<Spec> parts = [.. Demo[family.Kind].Select(texts => family.Deduce(family.ReadSpec(texts).Spec).Spec)];
            foreach (var aspect in family.Aspects.Where(aspect => aspect.HasGist))
            {
                var facets = parts.Select(aspect.FacetOf).Distinct().ToList();
                facets.Select(aspect.GistOf).Distinct().Count().ShouldBeLessThan(facets.Count / 5, aspect.Title);
            }
        }
    }

    private sealed record Case(Family Family, Need Need, IReadOnlyList<Spec> Parts)
    {
        public IEnumerable<Aspect> Aspects => Family.Aspects.Where(aspect => aspect.HasGist);

        public override string ToString() => string.Join("; ", Family.SpecShape.Write(Need.Plate).Concat(Family.SiteShape.Write(Need.Site)).Select(text => $"{text.Name}={text.Text}"));
    }
}
