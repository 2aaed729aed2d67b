using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging;

public class LookedAtTests
{
    public static TheoryData<string, string> Aspects => [.. Families.All.SelectMany(family => family.Aspects.Select(aspect => (family.Kind, aspect.Name)))];

    [Theory]
    [MemberData(nameof(Aspects))]
    public void Every_aspect_names_a_few_fields_that_its_family_has(string kind, string name)
    {
        var (family, aspect) = Find(kind, name);
        aspect.Fields.Spec.Count.ShouldBeInRange(1, 3);
        aspect.Fields.Site.Count.ShouldBeInRange(0, 3);
        aspect.Fields.Spec.ShouldBeUnique();
        aspect.Fields.Site.ShouldBeUnique();
        aspect.Fields.Spec.ShouldAllBe(field => family.SpecShape.Find(field)!.Name == field);
        aspect.Fields.Site.ShouldAllBe(field => family.SiteShape.Find(field)!.Name == field);
    }

    [Theory]
    [MemberData(nameof(Aspects))]
    public void The_field_that_an_aspect_names_first_is_one_that_it_reads(string kind, string name)
    {
        var (family, aspect) = Find(kind, name);
        var first = family.SpecShape.Find(aspect.Fields.Spec[0])!;

        // The second text is one figure of several, which needs no other field to run beside.
        string[] texts = [first.Example, first.Example.Split('/')[0]];
        var unknown = aspect.FacetOf(family.ReadSpec([]).Spec);
        texts.Select(text => aspect.FacetOf(family.ReadSpec([new(first.Name, text)]).Spec)).ShouldContain(facet => !facet.Equals(unknown), first.Name);
    }

    private static (Family Family, Aspect Aspect) Find(string kind, string name)
    {
        var family = Families.Find(kind)!;
        return (family, family.Aspects.Single(aspect => aspect.Name == name));
    }
}
