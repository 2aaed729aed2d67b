using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>What an aspect declares to read of plate and site is held to what its answers follow from: ranking judges needs that differ elsewhere but once.</summary>
public class ReadFieldsPropertyTests
{
    private static readonly Dictionary<string, List<IReadOnlyList<NamedText>>> Demo = Families.All.ToDictionary(family => family.Kind, family => DemoParts.Of(family).Select(part => part.Texts).ToList());

    [Property(MaxTest = 2000)]
    public Property An_answer_does_not_change_with_a_field_that_the_aspect_does_not_name() => Prop.ForAll(
        (from family in Gen.Elements(Families.All.AsEnumerable())
         from known in Gen.Elements(Demo[family.Kind].AsEnumerable())
         from holes in Gen.Choose(0, 2).ListOf(known.Count)
         from site in TextPool.TextsOf(family.SiteShape, 4)
         from isOfSite in Gen.Elements(true, false)
         from field in Gen.Elements((isOfSite ? family.SiteShape : family.SpecShape).Fields.AsEnumerable())
         from text in Gen.OneOf(TextPool.TextOf(field), Gen.Constant(string.Empty))
         from candidates in Gen.Elements(Demo[family.Kind].AsEnumerable()).ListOf(8)
         select (family, known: known.Where((_, index) => holes[index] > 0).ToList(), site, isOfSite, field, text, candidates)).ToArbitrary(),
        given =>
        {
            var need = given.family.ReadNeed(new(null, given.known, [.. given.site])).Need;
            var changed = given.isOfSite
                ? need with { Site = given.family.ReadSite(Changed(given.family.SiteShape, need.Site, given.field, given.text)).Site }
                : need with { Plate = given.family.ReadSpec(Changed(given.family.SpecShape, need.Plate, given.field, given.text)).Spec };
            foreach (var part in given.candidates.Select(texts => given.family.Deduce(given.family.ReadSpec(texts).Spec).Spec))
            {
                foreach (var aspect in given.family.Aspects.Where(aspect => !aspect.Fields.All.Contains(given.field.Name)))
                {
                    var facet = aspect.FacetOf(part);
                    Counted(aspect.Judge(changed, facet)).ShouldBe(Counted(aspect.Judge(need, facet)), $"{aspect.Name} reads {given.field.Name}");
                }
            }
        });

    [Property(MaxTest = 200)]
    public Property Completing_a_need_keeps_what_it_knows_and_knows_what_the_machine_knows() => Prop.ForAll(
        (from family in Gen.Elements(Families.All.AsEnumerable())
         from plate in TextPool.TextsOf(family.SpecShape, 3)
         from site in TextPool.TextsOf(family.SiteShape, 3)
         from machine in Gen.Elements(Demo[family.Kind].AsEnumerable())
         select (family, plate, site, machine)).ToArbitrary(),
        given =>
        {
            var need = given.family.ReadNeed(new(null, [.. given.plate], [.. given.site])).Need;
            var machine = given.family.Deduce(given.family.ReadSpec(given.machine).Spec).Spec;

            var completed = given.family.Complete(need, machine);

            foreach (var field in given.family.SpecShape.Fields) field.Get(completed.Plate).ShouldBe(field.Get(need.Plate) ?? field.Get(machine), field.Name);
            foreach (var field in given.family.SiteShape.Fields.Where(field => field.Get(need.Site) is not null)) field.Get(completed.Site).ShouldBe(field.Get(need.Site), field.Name);
        });

    private static IEnumerable<NamedText> Changed(Shape shape, object record, Field field, string text) =>
        [.. shape.Write(record).Where(one => one.Name != field.Name), new(field.Name, text)];

    /// <summary>All that ranking takes from an answer.</summary>
    private static (Verdict Verdict, double Shortfall, double Effort, string Missing) Counted(Finding finding) =>
        (finding.Verdict, finding.Shortfall, finding.Changes.Sum(change => change.Kind.Effort), string.Join(" ", finding.Missing.Select(missing => missing.Side)));
}
