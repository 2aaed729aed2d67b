namespace PartsMatch.Store.Tests;

/// <summary>Things to put in a store; every maker and number is invented.</summary>
internal static class A
{
    public static readonly DateTimeOffset Noon = new(2026, 3, 14, 12, 0, 0, TimeSpan.Zero);

    public static PartDraft Motor(string number = "QX-1048", string title = "1/4 hp condenser fan motor") => new(
        number,
        "motor",
        "Quillon Wexbarrow",
        title,
        PartStatus.Current,
        [new("power", "1/4 hp"), new("speed", "1075 rpm"), new("voltages", "208-230 V"), new("note", " keeps its blanks "), new("empty", "")],
        [new Supersession("QX-1049", "Quillon Wexbarrow", new DateOnly(2025, 11, 2))]);

    public static StockLine Line(string number = "QX-1048", decimal? price = 84.50m, int? onHand = 3) => new(number, price, "USD", onHand);

    public static SeedData Seed(int parts = 3) => new(
        "the demo catalogue",
        [.. Enumerable.Range(1, parts).Select(i => Motor($"DEMO-{i}"))],
        [.. Enumerable.Range(1, parts).Select(i => Line($"DEMO-{i}", onHand: i))]);

    public static OutcomeDraft Outcome(string id, string part = "DEMO-1", string corrects = "", string note = "") => new(
        id,
        "motor",
        new DateOnly(2026, 3, 13),
        "cold store 4",
        "DEMO-2",
        [new("power", "1/4 hp"), new("note", " keeps its blanks ")],
        [new("volts", "202 V")],
        part,
        "came back",
        "failed again",
        note,
        corrects);

    public static StoredOutcome Recorded(WriteResult result) => result.ShouldBeOfType<WriteResult.Recorded>().Outcome;

    public static StoredPart Written(WriteResult result) => result.ShouldBeOfType<WriteResult.Written>().Part;
}

/// <summary>A clock that stands still.</summary>
internal sealed class StoppedClock(DateTimeOffset at) : TimeProvider
{
    public override DateTimeOffset GetUtcNow() => at;
}
