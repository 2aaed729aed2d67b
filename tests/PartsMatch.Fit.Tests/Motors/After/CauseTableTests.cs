using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.After;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Motors.After;

/// <summary>The table of causes, its page, and what its order promises.</summary>
public sealed class CauseTableTests
{
    private static readonly EnumForm<Evidence> Words = new();

    [Fact]
    public void The_page_shows_the_table_that_is_used()
    {
        var rows = CauseTable.All.Select(cause => $"| {cause.Title} | {Words.Write(cause.Symptom)} | {string.Join(", ", cause.Weights.Select(weight => FormattableString.Invariant($"{Words.Write(weight.Evidence)} {weight.Points:+0;−0}")))} | {cause.Check} |");
        var table = string.Join('\n', ["| cause | named when | points | what to look at |", "| --- | --- | --- | --- |", .. rows]) + "\n";
        PageOf("after-swap.md").Split("<!-- causes -->\n")[1].Split("<!-- end of causes -->")[0].ShouldBe(table, $"Put this into docs/after-swap.md:\n{table}");
    }

    [Fact]
    public void The_page_lists_the_readings_with_their_sources()
    {
        var rows = string.Concat(MotorAfter.Rules.Select(rule => $"- {rule.Title}: {rule.Source}.\n"));
        PageOf("after-swap.md").Split("<!-- readings -->\n")[1].Split("<!-- end of readings -->")[0].ShouldBe(rows, $"Put this into docs/after-swap.md:\n{rows}");
    }

    [Fact]
    public void Every_cause_has_a_name_of_its_own_is_spoken_for_by_its_symptom_and_points_stay_within_10()
    {
        CauseTable.All.Select(cause => cause.Name).ShouldBeUnique();
        CauseTable.All.ShouldAllBe(cause => cause.Weights.Any(weight => weight.Evidence == cause.Symptom && weight.Points > 0) && cause.Check.EndsWith('.'));
        CauseTable.All.SelectMany(cause => cause.Weights).ShouldAllBe(weight => weight.Points != 0 && weight.Points >= -10 && weight.Points <= 10);
        CauseTable.All.ShouldAllBe(cause => cause.Weights.Select(weight => weight.Evidence).Distinct().Count() == cause.Weights.Count);
        CauseTable.All.SelectMany(cause => cause.Weights).Select(weight => weight.Evidence).Distinct().Order().ShouldBe(Enum.GetValues<Evidence>());
    }

    [Property]
    public Property More_evidence_for_a_cause_never_puts_it_behind_one_that_the_evidence_does_not_touch() => Prop.ForAll(
        Gen.SubListOf(Enum.GetValues<Evidence>()).Zip(Gen.Elements(Enum.GetValues<Evidence>())).ToArbitrary(),
        given =>
        {
            var (found, more) = (given.Item1.Append(Evidence.SplitOver).Append(Evidence.AmpsOver).ToHashSet(), given.Item2);
            var before = Rank(found);
            var after = Rank([.. found, more]);
            foreach (var cause in CauseTable.All.Where(cause => Points(cause, more) > 0))
            {
                if (before.IndexOf(cause.Name) is var place && place >= 0) after.ShouldContain(cause.Name);
                foreach (var other in CauseTable.All.Where(other => Points(other, more) == 0))
                {
                    if (Ahead(before, cause.Name, other.Name)) Ahead(after, cause.Name, other.Name).ShouldBeTrue($"{cause.Name} fell behind {other.Name} by {more}");
                }
            }
        });

    private static List<string> Rank(HashSet<Evidence> found) => [.. Cause<Evidence>.Rank(CauseTable.All, found.ToDictionary(evidence => evidence, evidence => evidence.ToString())).Select(cause => cause.Name)];

    private static int Points(Cause<Evidence> cause, Evidence evidence) => cause.Weights.Where(weight => weight.Evidence == evidence).Sum(weight => weight.Points);

    /// <summary>Named, and before the other or without it.</summary>
    private static bool Ahead(List<string> names, string one, string other) => names.IndexOf(one) is var place && place >= 0 && (names.IndexOf(other) is var its && (its < 0 || place < its));

    private static string PageOf(string name)
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "PartsMatch.sln"))) folder = folder.Parent!;
        return File.ReadAllText(Path.Combine(folder.FullName, "docs", name));
    }
}
