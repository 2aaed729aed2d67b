using System.Globalization;
using PartsMatch.Store.CrashWriter;

namespace PartsMatch.Store.Tests;

public sealed class CrashTests(ITestOutputHelper output) : IDisposable
{
    private const int Kills = 30;

    private readonly TestFolder _folder = new();
    private readonly HashSet<string> _recorded = [];

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Killed_30_times_while_it_writes_every_acknowledged_write_is_there_again()
    {
        var seed = Environment.TickCount;
        output.WriteLine(FormattableString.Invariant($"seed {seed}"));
        var random = new Random(seed);
        var acknowledged = new Dictionary<string, int>();

        for (var run = 1; run <= Kills; run++)
        {
            var before = new HashSet<string>(acknowledged.Keys);
            using (var writer = OtherProcess.Start("write", _folder.Path, $"RUN{run}"))
            {
                // By turns a moment of the start, which settles what the last kill left, and a moment of steady writing.
                string? first = null;
                if (run % 3 != 0)
                    first = writer.ReadLine();
                await Task.Delay(random.Next(0, run % 3 != 0 ? 200 : 400), TestContext.Current.CancellationToken);
                writer.Kill();
                foreach (var line in writer.RemainingLines().Prepend(first))
                    Note(line, acknowledged);
            }

            PartStore.WhoHolds(_folder.Path).ShouldBeNull();
            using var store = _folder.Open();
            foreach (var (number, version) in acknowledged)
                ShouldBeAsWritten(store.Find(number), number, version);
            foreach (var number in acknowledged.Keys.Except(before))
                await HistoryShouldBeWhole(store, number, acknowledged[number]);
        }

        using var last = _folder.Open();
        foreach (var (number, version) in acknowledged)
            await HistoryShouldBeWhole(last, number, version);
        await OutcomesShouldBeThere(last);
        output.WriteLine(FormattableString.Invariant($"{acknowledged.Count} parts acknowledged, {last.Parts.Count()} kept, {last.Revision} groups"));
        acknowledged.Count.ShouldBeGreaterThan(Kills);
    }

    [Fact]
    public async Task When_the_disk_is_full_the_writer_is_told_and_every_acknowledged_write_is_there_again()
    {
        var acknowledged = new Dictionary<string, int>();
        using (var writer = OtherProcess.StartWithFilesUpTo(kibibytes: 2048, "write", _folder.Path, "FULL"))
        {
            var lines = writer.RemainingLines().ToList();
            writer.Ended().ShouldBe(4);
            lines[^1].ShouldStartWith("The disk failed under a write");
            lines[^2].ShouldBe("has failed");
            foreach (var line in lines[..^2])
                Note(line, acknowledged);
        }

        acknowledged.Count.ShouldBeGreaterThan(10);
        using var store = _folder.Open();
        foreach (var (number, version) in acknowledged)
        {
            ShouldBeAsWritten(store.Find(number), number, version);
            await HistoryShouldBeWhole(store, number, version);
        }

        await OutcomesShouldBeThere(store);
        A.Written(await store.AddAsync(A.Motor(), "the counter")).Version.ShouldBe(1);
    }

    [Fact]
    public void When_the_disk_is_full_at_the_first_start_the_store_is_refused_and_begun_anew_later()
    {
        using (var writer = OtherProcess.StartWithFilesUpTo(kibibytes: 64, "write", _folder.Path, "FULL"))
        {
            writer.RemainingLines().ToList().ShouldHaveSingleItem().ShouldContain(
                $"The files in {_folder.Path} cannot be read and written by this user, or the disk is full.");
            writer.Ended().ShouldBe(3);
        }

        using var store = _folder.Open();
        store.Parts.ShouldBeEmpty();
    }

    private void Note(string? line, Dictionary<string, int> acknowledged)
    {
        line?.ShouldNotStartWith("unexpected");
        if (line?.Split(' ') is not [var number, var version, "."])
            return;
        if (version == "recorded") _recorded.Add(number);
        else acknowledged[number] = int.Parse(version, CultureInfo.InvariantCulture);
    }

    /// <summary>A kill between the disk and the acknowledgement may leave one version more than was acknowledged, never less.</summary>
    private static void ShouldBeAsWritten(StoredPart? part, string number, int acknowledgedVersion)
    {
        part.ShouldNotBeNull(number);
        part.Version.ShouldBeInRange(acknowledgedVersion, acknowledgedVersion + 1, number);
        ShouldHoldWhatWasGiven(part, number);
    }

    private static async Task HistoryShouldBeWhole(PartStore store, string number, int acknowledgedVersion)
    {
        var history = await store.HistoryAsync(number);
        history.Count.ShouldBe(store.Find(number)!.Version, number);
        history.Count.ShouldBeGreaterThanOrEqualTo(acknowledgedVersion, number);
        history.Select(change => change.Version).ShouldBe(Enumerable.Range(1, history.Count));
        foreach (var change in history)
            ShouldHoldWhatWasGiven(change.After, number);
    }

    private async Task OutcomesShouldBeThere(PartStore store)
    {
        _recorded.ShouldNotBeEmpty();
        (await store.Outcomes.FindAsync(_recorded)).Keys.ShouldBe(_recorded, ignoreOrder: true);
        var all = store.Outcomes.All(OutcomeRange.All).ToList();
        all.Select(one => one.Sequence).ShouldBe(Enumerable.Range(1, all.Count).Select(at => (long)at));
        foreach (var one in all) CrashPart.OutcomeOf(one.Said.Part).SaysAsMuchAs(one.Said).ShouldBeTrue(one.Said.Id);
    }

    private static void ShouldHoldWhatWasGiven(StoredPart part, string number)
    {
        var given = CrashPart.For(number, part.Version);
        part.Title.ShouldBe(given.Title);
        part.Spec.ShouldBe(given.Spec);
        part.SupersededBy.ShouldBe(given.SupersededBy);
    }
}
