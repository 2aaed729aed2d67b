using System.Globalization;
using System.Reflection;
using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>A query judges far more than it shows, and leaves out of it what nobody reads.</summary>
public sealed class UnreadFindingTests
{
    public static TheoryData<string> Kinds => [.. Families.All.Select(family => family.Kind)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_finding_judged_unread_lacks_its_sentence_alone_and_takes_no_later_reader_his(string kind)
    {
        var family = Families.Find(kind)!;
        var cases =
            from plate in TextPool.TextsOf(family.SpecShape, 6)
            from site in TextPool.TextsOf(family.SiteShape, 4)
            from part in TextPool.TextsOf(family.SpecShape, 9)
            select (plate, site, part);

        Check.One(Config.QuickThrowOnFailure.WithMaxTest(1000), Prop.ForAll(cases.ToArbitrary(), one =>
        {
            var part = family.Deduce(family.ReadSpec(one.part).Spec).Spec;
            var need = family.ReadNeed(new(null, one.plate, one.site)).Need;
            var judged = need with { };
            foreach (var aspect in family.Aspects)
            {
                var facet = aspect.FacetOf(part);
                var (unread, read) = (aspect.JudgeUnread(judged, facet), aspect.Judge(need, facet));
                Told(unread).ShouldBe(Told(read), aspect.Name);
                Should.Throw<InvalidOperationException>(() => unread.Sentence, aspect.Name);
                aspect.Judge(judged, facet).Sentence.ShouldBe(read.Sentence, aspect.Name);
            }
        }));
    }

    [Fact]
    public void No_finding_is_kept_for_good_since_it_may_have_been_judged_unread() =>
        typeof(Finding).Assembly.GetTypes()
            .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly | (type.IsSubclassOf(typeof(Aspect)) ? BindingFlags.Instance : BindingFlags.Default)))
            .Where(field => Holds(field.FieldType))
            .Select(field => $"{field.DeclaringType}.{field.Name}")
            .ShouldBeEmpty();

    [Fact]
    public void A_reason_is_formed_when_it_is_read_and_as_an_interpolated_string_is_whatever_the_language()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            var counted = new Counted();
            var finding = Finding.Meets($"{{It}} takes {1234.5:0.##} A, {counted}: {1.25}, {(string?)null}{"so":x}.");
            counted.Times.ShouldBe(0);
            finding.Sentence.ShouldBe("{It} takes 1234.5 A, counted: 1.25, so.");
            counted.Times.ShouldBe(1);
            finding.On("low").Then($"Its speed is {0.5:0.0}.").Sentence.ShouldBe("On low: {It} takes 1234.5 A, counted: 1.25, so. Its speed is 0.5.");
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void An_unread_sentence_cannot_be_read_by_mistake_and_a_judgement_that_fails_unread_leaves_the_next_one_its_own()
    {
        var (aspect, need) = (MotorFamily.Motor.Aspects[0], new Need(new MotorSpec(), new MotorSite()));
        Should.Throw<InvalidOperationException>(() => aspect.JudgeUnread(need, aspect.FacetOf(new MotorSpec())).Sentence);
        Should.Throw<InvalidCastException>(() => aspect.JudgeUnread(need, "no facet of it"));
        aspect.Judge(need, aspect.FacetOf(new MotorSpec())).Sentence.ShouldEndWith(".");
    }

    [Fact]
    public void What_is_remembered_of_a_need_has_its_sentences_though_it_was_first_asked_unread()
    {
        var need = new Need<MotorSpec, MotorSite>(new(), new());
        Func<Need<MotorSpec, MotorSite>, Finding> work = static _ => Finding.Meets($"It is kept.");
        using (Reason.Unread()) need.Once(work);
        need.Once(work).Sentence.ShouldBe("It is kept.");
    }

    [Fact]
    public void A_finding_can_be_printed_whether_it_was_judged_unread_or_not()
    {
        var (aspect, need) = (MotorFamily.Motor.Aspects[0], new Need(new MotorSpec(), new MotorSite()));
        var facet = aspect.FacetOf(new MotorSpec());
        aspect.Judge(need, facet).ToString().ShouldBe($"{Verdict.Unknown}: {aspect.Judge(need, facet).Sentence}");
        aspect.JudgeUnread(need, facet).ToString().ShouldBe($"{Verdict.Unknown}, judged unread");
    }

    private static string Told(Finding finding) => string.Join('\n',
    [
        $"{finding.Verdict} {finding.Shortfall:R} {finding.Margin} {finding.CautionAt} {finding.Caution}",
        .. finding.Missing.Select(missing => $"{missing.Side} {missing.Field}"),
        .. finding.Changes.Select(change => $"{change.Kind.Name} {change.Text} {string.Join(", ", change.Kit.Select(item => $"{item.Quantity} {item.What}"))}"),
    ]);

    private static bool Holds(Type type) => !type.IsAssignableTo(typeof(Delegate)) && (type == typeof(Finding) || type == typeof(Reason) || (type.IsGenericType && type.GetGenericArguments().Any(Holds)) || (type.GetElementType() is { } element && Holds(element)));

    private sealed class Counted
    {
        public int Times { get; private set; }

        public override string ToString()
        {
            Times++;
            return "counted";
        }
    }
}
