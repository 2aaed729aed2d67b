using System.Reflection;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Graph;
using PartsMatch.Service.Graph.Limits;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

/// <summary>docs/api.md claims; here it runs.</summary>
public sealed class ApiPageTests
{
    private static readonly string[] Lines = File.ReadAllLines(Path.Combine(Repository.Root, "docs", "api.md"));

    [Fact]
    public async Task Every_example_runs_in_order_without_an_error_and_without_a_conflict()
    {
        await using var service = await TestService.StartAsync();
        foreach (var example in Examples())
        {
            var answer = await service.WriteAsync(example);
            answer.Has("errors").ShouldBeFalse($"{example}\n{answer.Body}");
            answer.Body.ShouldNotContain("sentence\":\"The catalogue has", customMessage: example);
            if (example.Contains("recordOutcome(", StringComparison.Ordinal)) answer.Body.ShouldContain("\"recordedAt\":");
            if (example.Contains("Part(", StringComparison.Ordinal)) answer.Body.ShouldContain("\"version\":");
        }
    }

    [Fact]
    public void Every_root_field_has_an_example()
    {
        var examples = string.Join('\n', Examples());
        var fields = ((Type[])[typeof(Query), typeof(Mutation)])
            .SelectMany(root => root.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly))
            .Select(method => char.ToLowerInvariant(method.Name[0]) + method.Name[1..])
            .ToList();
        fields.Count.ShouldBe(20);
        fields.Where(field => !examples.Contains($"{field}(", StringComparison.Ordinal)).ShouldBeEmpty();
    }

    [Fact]
    public void The_table_of_codes_lists_the_codes_that_there_are()
    {
        var codes = typeof(Codes).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (string)field.GetRawConstantValue()!);
        Cells("| `").Select(cells => cells[0].Trim('`')).ShouldBe(codes, ignoreOrder: true);
    }

    [Fact]
    public void Every_complaint_of_the_core_is_among_them()
    {
        var codes = typeof(Codes).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (string)field.GetRawConstantValue()!);
        typeof(Fit.Judging.ComplaintCode).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (string)field.GetRawConstantValue()!).Except(codes).ShouldBeEmpty();
    }

    [Fact]
    public void The_table_of_limits_has_the_defaults_that_there_are()
    {
        var limits = new QueryLimits();
        foreach (var cells in Lines.Where(line => line.Contains("`Limits:", StringComparison.Ordinal) && line.StartsWith('|')).Select(CellsOf))
        {
            var value = typeof(QueryLimits).GetProperty(cells[2].Trim('`')["Limits:".Length..])!.GetValue(limits)!;
            cells[1].ShouldBe(FormattableString.Invariant($"{value:#,0}"));
        }
    }

    [Fact]
    public void The_exit_codes_in_the_operations_page_are_those_that_there_are()
    {
        var listed = File.ReadAllLines(Path.Combine(Repository.Root, "docs", "operations.md"))
            .Where(line => line.StartsWith('|')).Select(CellsOf).Where(cells => cells.Length == 2 && int.TryParse(cells[0], out _)).Select(cells => cells[0]);
        listed.ShouldBe(typeof(Service.Hosting.ExitCode).GetFields().Select(field => field.GetRawConstantValue()!.ToString()), ignoreOrder: true);
    }

    private static IEnumerable<string> Examples()
    {
        for (var at = 0; at < Lines.Length; at++)
        {
            if (Lines[at] != "```graphql") continue;
            var end = Array.IndexOf(Lines, "```", at);
            yield return string.Join('\n', Lines[(at + 1)..end]);
            at = end;
        }
    }

    private static IEnumerable<string[]> Cells(string start) => Lines.Where(line => line.StartsWith(start, StringComparison.Ordinal)).Select(CellsOf);

    private static string[] CellsOf(string line) => line.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
