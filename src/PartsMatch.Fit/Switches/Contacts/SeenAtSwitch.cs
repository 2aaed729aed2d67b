using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What was seen at a switch that moves by a temperature or a pressure.</summary>
/// <param name="IsClosed">Whether its contacts are closed.</param>
/// <param name="IsManual">Whether it is reset by hand.</param>
/// <param name="HasOpened">Whether it was read where they opened.</param>
/// <param name="HasClosed">Whether it was read where they closed.</param>
internal sealed record SeenAtSwitch(bool IsClosed, bool IsManual, bool HasOpened, bool HasClosed)
{
    /// <summary>The reading of what is there: pressureThere.</summary>
    public required string There { get; init; }

    /// <summary>What tells it: "the gauge".</summary>
    public required string Instrument { get; init; }

    /// <summary>What comes and goes: "the pressure".</summary>
    public required string Feels { get; init; }
}

/// <summary>Where contacts move as what to read next.</summary>
internal static class SeenMoving
{
    /// <summary>The same, and where they move is read next; once it is, the rule that judges that has the word.</summary>
    public static Ruling ThenSeeItMove(this Ruling open, SeenAtSwitch seen, string why) => (seen.IsClosed ? seen.HasOpened : seen.HasClosed) ? open : open.ThenRead(seen.IsClosed ? "openedAt" : "closedAt", why);
}
