using System.Xml.Linq;

namespace PartsMatch.Service.Tests.House;

/// <summary>Who may know whom: arrows point down, and a library stays in its room.</summary>
public sealed class RoomsTests
{
    private static readonly string Root = Repository.Root;

    [Theory]
    [InlineData("Fit", "")]
    [InlineData("Ranking", "Fit")]
    [InlineData("Learning", "Fit, Ranking")]
    [InlineData("Store", "")]
    [InlineData("Service", "Fit, Learning, Ranking, Store")]
    [InlineData("Demo", "Fit")]
    public void A_room_references_only_the_rooms_below_it(string room, string below) =>
        References(room, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path)["PartsMatch.".Length..]).Order()
            .ShouldBe(below.Split(", ", StringSplitOptions.RemoveEmptyEntries));

    [Theory]
    [InlineData("Fit", "UnitsNet")]
    [InlineData("Ranking", "")]
    [InlineData("Learning", "MathNet.Numerics, Microsoft.ML")]
    [InlineData("Store", "LiteDB")]
    [InlineData("Service", "CsvHelper, GraphQL, GraphQL.MicrosoftDI, GraphQL.SystemTextJson, QRCoder, Spectre.Console, System.CommandLine")]
    [InlineData("Demo", "Bogus, CsvHelper")]
    public void A_room_uses_only_its_libraries(string room, string libraries) =>
        References(room, "PackageReference").Where(name => !name.EndsWith("Analyzers", StringComparison.Ordinal)).Order(StringComparer.Ordinal)
            .ShouldBe(libraries.Split(", ", StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void Every_room_has_a_test_project_and_is_listed_above()
    {
        var rooms = Directory.GetDirectories(Path.Combine(Root, "src")).Select(folder => Path.GetFileName(folder)).Order().ToList();
        rooms.ShouldBe(["PartsMatch.Demo", "PartsMatch.Fit", "PartsMatch.Learning", "PartsMatch.Ranking", "PartsMatch.Service", "PartsMatch.Store"]);
        rooms.ShouldAllBe(room => File.Exists(Path.Combine(Root, "tests", $"{room}.Tests", $"{room}.Tests.csproj")));
    }

    /// <summary>They see what a visitor sees, and reach the service as its program does.</summary>
    [Fact]
    public void The_browser_tests_know_the_service_and_a_browser_and_nothing_else()
    {
        var project = Path.Combine(Root, "tests", "PartsMatch.Browser.Tests", "PartsMatch.Browser.Tests.csproj");
        Included(project, "ProjectReference").Select(path => Path.GetFileName(path)).ShouldBe(["PartsMatch.Service.csproj"]);
        Included(project, "PackageReference").Order(StringComparer.Ordinal).ShouldBe(["Deque.AxeCore.Playwright", "Microsoft.Playwright"]);
        Directory.EnumerateFiles(Path.Combine(Root, "src"), "*.csproj", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(Path.Combine(Root, "tests"), "*.csproj", SearchOption.AllDirectories))
            .Where(file => Included(file, "PackageReference").Contains("Microsoft.Playwright", StringComparer.Ordinal)).ShouldBe([project]);
    }

    [Fact]
    public void The_GraphQL_library_is_known_only_inside_Graph()
    {
        var elsewhere = Sources("PartsMatch.Service")
            .Where(file => !file.Contains("/Graph/", StringComparison.Ordinal))
            .Where(file => File.ReadLines(file).Any(line => line.StartsWith("using GraphQL", StringComparison.Ordinal) || line.Contains(" GraphQL.", StringComparison.Ordinal)));
        elsewhere.ShouldBeEmpty();
    }

    [Fact]
    public void Demo_data_does_not_come_from_the_rules_that_it_tests()
    {
        string[] forbidden = ["PartsMatch.Fit.Physics", "PartsMatch.Fit.Published", ".Aspects;", ".Proof;", "Aspects.All", "Deductions."];
        Sources("PartsMatch.Demo").Where(file => forbidden.Any(word => File.ReadAllText(file).Contains(word, StringComparison.Ordinal))).ShouldBeEmpty();
    }

    [Fact]
    public void No_edge_and_no_engine_knows_one_kind_of_part_from_another()
    {
        string[] kinds = ["MotorSpec", "MotorSite", "CapacitorSpec", "CapacitorSite", "MotorFamily", "CapacitorFamily", "PartsMatch.Fit.Motors", "PartsMatch.Fit.Capacitors"];
        foreach (var room in (string[])["PartsMatch.Learning", "PartsMatch.Ranking", "PartsMatch.Store", "PartsMatch.Service"])
        {
            Sources(room).Where(file => kinds.Any(word => File.ReadAllText(file).Contains(word, StringComparison.Ordinal))).ShouldBeEmpty();
        }
    }

    private static IEnumerable<string> References(string room, string element) =>
        Included(Path.Combine(Root, "src", $"PartsMatch.{room}", $"PartsMatch.{room}.csproj"), element);

    private static IEnumerable<string> Included(string project, string element) =>
        XDocument.Load(project).Descendants(element).Select(reference => reference.Attribute("Include")!.Value);

    private static IEnumerable<string> Sources(string room) =>
        Directory.EnumerateFiles(Path.Combine(Root, "src", room), "*.cs", SearchOption.AllDirectories)
            .Select(file => file.Replace('\\', '/'))
            .Where(file => !file.Contains("/obj/", StringComparison.Ordinal) && !file.Contains("/bin/", StringComparison.Ordinal));
}
