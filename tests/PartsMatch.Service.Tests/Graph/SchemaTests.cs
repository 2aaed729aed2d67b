using System.Text.Json;
using PartsMatch.Fit;
using PartsMatch.Service.Graph;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Graph;

public sealed class SchemaTests(SharedService shared) : IClassFixture<SharedService>
{
    private readonly TestService _service = shared.Service;

    /// <summary>When this fails because the schema was meant to change: PARTSMATCH_WRITE_SCHEMA=1 makes this test write the page anew.</summary>
    [Fact]
    public void The_printed_schema_is_the_one_in_the_docs()
    {
        var page = Path.Combine(Repository.Root, "docs", "schema.graphql");
        if (Environment.GetEnvironmentVariable("PARTSMATCH_WRITE_SCHEMA") == "1") File.WriteAllText(page, PrintedSchema.Text());
        File.ReadAllText(page).ShouldBe(PrintedSchema.Text());
    }

    [Fact]
    public async Task The_service_serves_it_as_text()
    {
        var answer = await _service.SendAsync(new(HttpMethod.Get, "/graphql/schema"));
        answer.MediaType.ShouldBe("text/plain");
        answer.Body.ShouldBe(PrintedSchema.Text());
    }

    [Fact]
    public async Task Every_type_field_argument_and_value_is_described()
    {
        var schema = (await _service.AskAsync(Introspection.Usual)).At("data.__schema");
        List<string> bare = [];
        string[] ofTheSpecification = ["String", "Boolean", "Int", "Float", "ID"];
        foreach (var type in schema.GetProperty("types").EnumerateArray().Where(type => type.GetProperty("name").GetString() is { } name && !name.StartsWith("__", StringComparison.Ordinal) && !ofTheSpecification.Contains(name)))
        {
            var name = type.GetProperty("name").GetString()!;
            Note(type, name);
            foreach (var member in Members(type, "fields").Concat(Members(type, "inputFields")).Concat(Members(type, "enumValues")))
            {
                var memberName = $"{name}.{member.GetProperty("name").GetString()}";
                Note(member, memberName);
                foreach (var argument in Members(member, "args")) Note(argument, $"{memberName}({argument.GetProperty("name").GetString()})");
            }
        }

        bare.ShouldBeEmpty();

        void Note(JsonElement element, string name)
        {
            if (string.IsNullOrWhiteSpace(element.GetProperty("description").GetString())) bare.Add(name);
        }
    }

    [Fact]
    public async Task Kinds_needs_sites_specs_and_their_fields_are_the_families_and_nothing_else()
    {
        var schema = (await _service.AskAsync(Introspection.Usual)).At("data.__schema");
        var types = schema.GetProperty("types").EnumerateArray().ToDictionary(type => type.GetProperty("name").GetString()!);
        var kinds = Families.All.Select(family => family.Kind).ToList();
        Names(types["PartKind"], "enumValues").ShouldBe(kinds);
        foreach (var oneOf in (string[])["NeedInput", "SiteInput", "SpecInput", "ReadingsInput"]) Names(types[oneOf], "inputFields").ShouldBe(kinds);
        foreach (var family in Families.All)
        {
            var prefix = char.ToUpperInvariant(family.Kind[0]) + family.Kind[1..];
            var fields = family.SpecShape.Fields.Select(field => field.Name).ToList();
            Names(types[$"{prefix}Spec"], "fields").ShouldBe(fields);
            Names(types[$"{prefix}SpecInput"], "inputFields").ShouldBe(fields);
            Names(types[$"{prefix}SiteInput"], "inputFields").ShouldBe([.. family.SiteShape.Fields.Select(field => field.Name)]);
            Names(types[$"{prefix}ReadingsInput"], "inputFields").ShouldBe([.. family.ReadingsShape.Fields.Select(field => field.Name)]);
        }
    }

    [Theory]
    [InlineData("stockPlan")]
    public void What_comes_later_is_absent_rather_than_empty(string name) => PrintedSchema.Text().ShouldNotContain($"\n  {name}");

    private static List<JsonElement> Members(JsonElement of, string name) => of.TryGetProperty(name, out var members) && members.ValueKind == JsonValueKind.Array ? [.. members.EnumerateArray()] : [];

    private static IReadOnlyList<string> Names(JsonElement of, string members) => [.. Members(of, members).Select(member => member.GetProperty("name").GetString()!)];
}
