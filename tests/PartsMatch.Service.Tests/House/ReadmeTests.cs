using PartsMatch.Service.Tests.Commands;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.House;

/// <summary>What the README shows is what its commands print.</summary>
public sealed class ReadmeTests
{
    private const string Run = "dotnet run -c Release --project src/PartsMatch.Service -- ";

    [Theory]
    [InlineData("main job")]
    [InlineData("sheet")]
    [InlineData("list")]
    public async Task The_readme_shows_what_its_command_prints(string example)
    {
        using var folder = new TestFolder();
        var command = Fence(example);
        command.ShouldStartWith(Run);
        var ran = await Ran.Of(command[Run.Length..].Replace(" docs/", $" {Repository.Root}/docs/", StringComparison.Ordinal), folder.Path);
        ran.Exit.ShouldBe(0, ran.Errors);
        ran.Output.ShouldBe(Fence($"{example} prints"), $"Put this into README.md:\n{ran.Output}");
    }

    [Fact]
    public void The_two_commands_of_the_readme_are_all_the_set_up_there_is() => Fence("all tests").ShouldBe("dotnet test");

    /// <summary>The fence behind a mark.</summary>
    private static string Fence(string mark)
    {
        var lines = File.ReadAllLines(Path.Combine(Repository.Root, "README.md"));
        var start = Array.FindIndex(lines, Array.IndexOf(lines, $"<!-- {mark} -->"), line => line.StartsWith("```", StringComparison.Ordinal)) + 1;
        return string.Join('\n', lines.Skip(start).TakeWhile(line => line != "```")).Trim('\n');
    }
}
