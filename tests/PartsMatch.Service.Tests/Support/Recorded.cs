using Microsoft.Extensions.DependencyInjection;
using PartsMatch.Store;

namespace PartsMatch.Service.Tests.Support;

/// <summary>Outcomes of the small catalogue's motors, each put in for a quarter horsepower at 230 V.</summary>
internal static class Recorded
{
    /// <summary>As many as a training is still at work on when it is told to stop.</summary>
    public const int ForLong = 20_000;

    private const int Group = 2_000;

    /// <summary>A plate and a place with all that decides: where something were open, nothing could be learnt.</summary>
    private static readonly NamedText[] Plate =
    [
        new("power", "1/4 hp"), new("speed", "1075 rpm"), new("voltage", "230 V"), new("phase", "1"), new("frequency", "60 Hz"), new("shaftDiameter", "1/2 in"), new("shaftLength", "4 in"), new("shaftForm", "flat"),
        new("shaftEnds", "1"), new("mounts", "belly band"), new("bodyDiameter", "5.6 in"), new("rotation", "CCW lead end"), new("enclosure", "totally enclosed air over"), new("speeds", "1"), new("type", "PSC"),
        new("fullLoadAmps", "2 A"), new("frame", "48Y"),
    ];

    private static readonly NamedText[] Site =
    [
        new("volts", "230 V"), new("fanKind", "propeller"), new("drive", "direct"), new("surroundings", "dry"), new("hazard", "none"), new("airMost", "40 °C"), new("shaftRoom", "5 in"), new("speedControl", "none"),
        new("speedsUsed", "1"), new("bodyRoom", "8 in"), new("bodyDiameterRoom", "7 in"),
    ];

    /// <summary>QN-100 and QN-200 in turn, which their specs hardly tell apart: one of them comes back from most places, the other from few.</summary>
    public static Task OneMotorComesBackAsync(TestService service, int count, string note = "") => AddAsync(service, count, note, at => at % 2 == 0 ? ("QN-100", at % 20 == 0) : ("QN-200", at % 10 < 7));

    /// <summary>Two motors of which one comes back as often as the other: there is nothing to learn but how often.</summary>
    public static Task BothComeBackAlikeAsync(TestService service, int count) => AddAsync(service, count, string.Empty, at => (at % 2 == 0 ? "QN-100" : "QN-200", at % 8 < 2));

    private static async Task AddAsync(TestService service, int count, string note, Func<int, (string Number, bool ComesBack)> told)
    {
        var store = service.Services.GetRequiredService<PartStore>();
        foreach (var group in Enumerable.Range(0, count).Chunk(Group))
        {
            var results = await store.WriteAllAsync([.. group.Select(at => new AskedWrite.Record(Draft(at, told(at), note)))], "a test");
            results.ShouldAllBe(result => result is WriteResult.Recorded);
        }
    }

    private static OutcomeDraft Draft(int at, (string Number, bool ComesBack) told, string note) => new(
        FormattableString.Invariant($"told-{at:00000}"),
        "motor",
        new DateOnly(2025, 1, 1).AddDays(at % 365),
        FormattableString.Invariant($"place {at % 23}"),
        OldPart: string.Empty,
        Plate,
        Site,
        told.Number,
        told.ComesBack ? "came back" : "right first time",
        told.ComesBack ? "failed again" : string.Empty,
        note,
        Corrects: string.Empty);
}
