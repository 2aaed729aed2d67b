using System.Reflection;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Tests.Notes;

/// <summary>Every kind of change of every family has exactly one step.</summary>
public sealed class ChangeKindTests
{
    private static readonly IReadOnlyList<ChangeKind> Declared = [.. typeof(ChangeKind).Assembly.GetTypes()
        .SelectMany(type => type.GetProperties(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
        .Where(property => property.PropertyType == typeof(ChangeKind))
        .Select(property => (ChangeKind)property.GetValue(null)!)];

    public static TheoryData<string> Names => [.. Declared.Select(kind => kind.Name)];

    [Fact]
    public void No_two_kinds_have_one_name_or_one_way_to_do_it()
    {
        Declared.Count.ShouldBeGreaterThan(25);
        Declared.Select(kind => kind.Name).ShouldBeUnique();
        Declared.Select(kind => kind.HowTo).ShouldBeUnique();
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_change_of_each_kind_becomes_one_step_at_its_stage_with_its_words_and_how_to_do_it(string name)
    {
        var kind = Declared.Single(one => one.Name == name);
        foreach (var family in Families.All)
        {
            FitSheet sheet = new([new(new Asking(), Finding.MeetsWith([new(kind, $"see to {7.5} of it")], $"It asks for 7.5."))]);
            var part = family.ReadSpec([]).Spec;
            var step = family.NotesFor(family.ReadNeed(new(null, [], [])).Need, part, sheet, []).Steps.Where(one => one.Kind is not null).ShouldHaveSingleItem();
            step.ShouldSatisfyAllConditions(
                () => step.Kind.ShouldBe(kind),
                () => step.Stage.ShouldBe(kind.Stage),
                () => step.Words.ShouldBe("see to 7.5 of it"),
                () => step.Detail.ShouldBe(kind.HowTo),
                () => kind.HowTo.ShouldMatch(@"^\p{Lu}.*\.$"),
                () => kind.Stage.ShouldBeOneOf(Stage.NoteWhatIsThere, Stage.MendFirst, Stage.Bench, Stage.Mount, Stage.Wire, Stage.FirstStart, Stage.StartAndCheck));
        }
    }

    private sealed class Asking() : Aspect("Asking", isDeciding: true, new("Made up for this test", SourceStatus.Practice), new(0, 0, 0))
    {
        public override LookedAt Fields => new([], []);

        public override Type FacetType => typeof(int);

        public override object FacetOf(Spec part) => 0;

        public override Finding Judge(Need need, object facet) => Finding.Meets($"It meets.");
    }
}
