using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>What holds for every family, whatever its aspects.</summary>
public sealed class FamilyPropertyTests
{
    /// <summary>What is measured of a fan, or said of its new blade, outranks what was taken: that fans load their motor to 70 to 100 % of its plate, and that the blade stays.</summary>
    private static readonly string[] OutranksTaken = ["measuredSpeed", "measuredAmps", "measuredInput", "newBladeBore", "newHubHoldsOn", "newBladeDiameter"];

    public static TheoryData<string> Kinds => [.. Families.All.Select(family => family.Kind)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_reading_for_a_field_neither_known_nor_deduced_never_turns_a_failed_aspect_into_a_passing_one(string kind)
    {
        var family = Families.Find(kind)!;
        var cases =
            from plate in TextPool.TextsOf(family.SpecShape, 5)
            from site in TextPool.TextsOf(family.SiteShape, 3)
            from part in TextPool.TextsOf(family.SpecShape, 9)
            from side in Gen.Elements(Side.Plate, Side.Site)
            from field in Gen.Elements((IEnumerable<Field>)(side == Side.Plate ? family.SpecShape : family.SiteShape).Fields)
            from text in TextPool.TextOf(field)
            select (plate, site, part, side, field, text);

        Check.One(Config.QuickThrowOnFailure.WithMaxTest(3000), Prop.ForAll(cases.ToArbitrary(), one =>
        {
            var before = family.ReadNeed(new(null, one.plate, one.site));
            if (one.field.Get(one.side == Side.Plate ? before.Need.Plate : before.Need.Site) is not null) return;
            NamedText added = new(one.field.Name, one.text);
            if (OutranksTaken.Contains(added.Name)) return;
            var after = one.side == Side.Plate
                ? family.ReadNeed(new(null, [.. one.plate, added], one.site))
                : family.ReadNeed(new(null, one.plate, [.. one.site, added]));

            // A reading that contradicts the others is reported, and never silently outvotes them. It may settle another contradiction at the same time.
            if (after.Contradictions.Select(About).Except(before.Contradictions.Select(About)).Any()) return;
            var part = family.ReadSpec(one.part).Spec;
            var passesNow = family.Judge(before.Need, part).Failures.Select(failed => failed.Aspect.Name)
                .Except(family.Judge(after.Need, part).Failures.Select(failed => failed.Aspect.Name)).ToList();
            passesNow.ShouldBeEmpty($"adding {one.side} {added} to plate [{Show(one.plate)}] site [{Show(one.site)}] for part [{Show(one.part)}]");
        }));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Judging_never_throws_and_every_unknown_names_a_field_of_its_side(string kind)
    {
        var family = Families.Find(kind)!;
        var cases =
            from plate in TextPool.TextsOf(family.SpecShape, 5)
            from site in TextPool.TextsOf(family.SiteShape, 4)
            from part in TextPool.TextsOf(family.SpecShape, 6)
            select (plate, site, part);

        Check.One(Config.QuickThrowOnFailure.WithMaxTest(2000), Prop.ForAll(cases.ToArbitrary(), one =>
        {
            var need = family.ReadNeed(new(null, one.plate, one.site));
            foreach (var (aspect, finding) in family.Judge(need.Need, family.ReadSpec(one.part).Spec).Findings)
            {
                finding.Sentence.ShouldEndWith(".", customMessage: aspect.Name);
                finding.Shortfall.ShouldBeGreaterThanOrEqualTo(0, aspect.Name);
                (finding.Verdict == Verdict.Unknown).ShouldBe(finding.Missing.Count > 0, aspect.Name);

                // An unknown may name the change that most likely follows; nothing else names one that is not made.
                if (finding.Verdict != Verdict.Unknown) (finding.Verdict == Verdict.MeetsWithChanges).ShouldBe(finding.Changes.Count > 0, aspect.Name);
                foreach (var (side, field) in finding.Missing)
                {
                    (side == Side.Site ? family.SiteShape : family.SpecShape).Find(field).ShouldNotBeNull($"{aspect.Name} misses {side} {field}");
                }
            }
        }));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_aspect_is_listed_once_with_a_title_a_source_and_weights_that_are_no_rewards(string kind)
    {
        var aspects = Families.Find(kind)!.Aspects;
        aspects.Select(aspect => aspect.Name).ShouldBeUnique();
        aspects.ShouldAllBe(aspect => aspect.Title.Length > 0 && aspect.Source.Text.Length > 0);
        aspects.ShouldAllBe(aspect => aspect.DefaultWeight.Shortfall >= 0 && aspect.DefaultWeight.Effort >= 0 && aspect.DefaultWeight.Unknown >= 0);
        var written = typeof(Families).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(Aspect)) && !type.IsAbstract).Select(type => type.Name);
        written.Except(Families.All.SelectMany(family => family.Aspects).Select(aspect => aspect.GetType().Name)).ShouldBeEmpty();
    }

    private static string About(Contradiction one) => $"{one.Source.Text}: {string.Join(", ", one.Fields)} {string.Join(", ", one.SiteFields)}";

    private static string Show(IEnumerable<NamedText> texts) => string.Join("; ", texts.Select(text => $"{text.Name}={text.Text}"));
}
