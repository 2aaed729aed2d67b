using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Browser.Tests.Support;

/// <summary>A service of its own with a catalogue of seven parts, for tests that write.</summary>
public sealed class SmallSite : Site
{
    private readonly TestFolder _seed = new();

    public SmallSite() => Seed.WriteTo(_seed);

    protected override IReadOnlyList<string> Settings => [$"--Data:SeedFolder={_seed.Path}"];

    /// <summary>Nothing: its outcomes are in its tables.</summary>
    protected override Task LiveAsync() => Task.CompletedTask;

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        _seed.Dispose();
    }
}
