namespace PartsMatch.Service.Tests.Support;

/// <summary>One service for all tests of a class that only read.</summary>
public sealed class SharedService : IAsyncLifetime
{
    internal TestService Service { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Service = await TestService.StartAsync();

    public ValueTask DisposeAsync() => Service.DisposeAsync();
}
