using PartsMatch.Fit;

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
            .Concat(family.Aspects.Select(aspect => $"- `{family.Kind}.{aspect.Name}` {aspect.Title}{(aspect.IsDeciding ? string.Empty : " (a check)")}: {aspect.Source}."))
            .Append(string.Empty)));
        Page.Split("<!-- rules -->\n")[1].Split("<!-- end of rules -->")[0].ShouldBe(rules, $"Put this into docs/sources.md:\n{rules}");
    }

    [Fact]
    public void Every_limit_of_a_reading_stands_on_the_page()
    {
        var declared = typeof(Families).Assembly.GetTypes().Where(type => type.Name.EndsWith("ReadingSources", StringComparison.Ordinal)).OrderBy(type => type.FullName, StringComparer.Ordinal).SelectMany(type => type.GetProperties()).ToList();
        declared.Count.ShouldBeGreaterThan(40);
        var sources = string.Concat(declared.Select(property => $"- `reading.{char.ToLowerInvariant(property.Name[0])}{property.Name[1..]}` {property.GetValue(null)}.\n"));
        Page.Split("<!-- readings -->\n")[1].Split("<!-- end of readings -->")[0].ShouldBe(sources, $"Put this into docs/sources.md:\n{sources}");
    }

    [Fact]
    public void Every_row_has_a_key_that_some_test_names_and_no_test_names_another()
    {
        var rows = Page.Split('\n').Where(line => line.StartsWith("- ", StringComparison.Ordinal) || (line.StartsWith("| ", StringComparison.Ordinal) && !line.StartsWith("| ---", StringComparison.Ordinal)))
            .Where(line => line is not ("| table | what | from | confirmed |" or "| key | what | from | confirmed |")).ToList();
        var keys = rows.Select(row => row.Split('`') is [_, var key, ..] ? key : row).ToList();
        var named = Directory.GetFiles(Path.Combine(Repository.Root, "tests"), "*.cs", SearchOption.AllDirectories)
            .SelectMany(file => File.ReadAllLines(file).Where(line => line.StartsWith("[Trait(\"Source\", \"", StringComparison.Ordinal)))
            .Select(line => line.Split('"')[3]).Distinct().ToList();
        keys.Count.ShouldBeGreaterThan(60);
        keys.ShouldBeUnique();
        keys.Except(named).ShouldBeEmpty("Rows of docs/sources.md that no test names");
        named.Except(keys).ShouldBeEmpty("Sources that tests name and docs/sources.md lacks");
    }
}
