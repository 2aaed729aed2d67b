using PartsMatch.Fit;
using PartsMatch.Fit.Published;

namespace PartsMatch.Service.Tests.House;

/// <summary>docs/sources.md names every table and every rule's source.</summary>
public sealed class SourcesPageTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "sources.md"));

    [Fact]
    public void Every_published_table_is_on_the_page()
    {
        var tables = Directory.GetFiles(Path.Combine(Repository.Root, "src", "PartsMatch.Fit", "Published"), "*.csv").Select(file => Path.GetFileName(file)).ToList();
        tables.ShouldNotBeEmpty();
        tables.ShouldAllBe(table => Page.Contains($"`{table}`", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_question_stands_on_the_page_with_its_source()
    {
        var rules = string.Join('\n', Families.All.SelectMany(family => new[] { $"**{char.ToUpperInvariant(family.Title[0])}{family.Title[1..]}**", string.Empty }
            .Concat(family.Aspects.Select(aspect => $"- {aspect.Title}{(aspect.IsDeciding ? string.Empty : " (a check)")}: {aspect.Source}."))
            .Append(string.Empty)));
        Page.Split("<!-- rules -->\n")[1].Split("<!-- end of rules -->")[0].ShouldBe(rules, $"Put this into docs/sources.md:\n{rules}");
    }

    [Fact]
    public void Every_limit_of_a_reading_stands_on_the_page()
    {
        var sources = string.Concat(typeof(ReadingSources).GetProperties().Select(property => $"- {property.GetValue(null)}.\n"));
        Page.Split("<!-- readings -->\n")[1].Split("<!-- end of readings -->")[0].ShouldBe(sources, $"Put this into docs/sources.md:\n{sources}");
    }
}
