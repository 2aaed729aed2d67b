namespace PartsMatch.Service.Tests.Support;

/// <summary>A clock that a test moves, so that none waits.</summary>
internal sealed class SteppedClock : TimeProvider
{
    private DateTimeOffset _now = new(2026, 3, 4, 5, 6, 7, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => _now;

    public void Step(TimeSpan by) => _now += by;
}
