using PartsMatch.Store;
using PartsMatch.Store.CrashWriter;
using static System.FormattableString;

// The other process of the store's tests:
//   write FOLDER RUN   adds and changes parts, and records outcomes, as fast as it can, until it is killed; a line on stdout for each acknowledged write
//   hold FOLDER URL    opens the store, announces the address, and waits for stdin to end
const int Writers = 8;

try
{
    using var store = PartStore.Open(new StoreOptions(args[1]), TimeProvider.System);
    if (args[0] == "hold")
    {
        store.AnnounceAddress(args[2]);
        Console.WriteLine("holding");
        Console.In.ReadToEnd();
    }
    else
    {
        try
        {
            await Task.WhenAll(Enumerable.Range(0, Writers).Select(writer => Task.Run(() => Write(store, Invariant($"{args[2]}-W{writer}")))));
        }
        catch (StoreFailedException)
        {
            // Whoever asks the store whether it takes writes is told that it does not.
            Console.WriteLine(store.HasFailed ? "has failed" : "takes writes");
            throw;
        }
    }

    return 0;
}
catch (StoreRefusedException refused)
{
    Console.WriteLine(refused.Message);
    return 3;
}
catch (StoreFailedException failed)
{
    Console.WriteLine(failed.Message);
    return 4;
}

static async Task Write(PartStore store, string prefix)
{
    for (var i = 0; ; i++)
    {
        // A letter before each count, as dashes tell no two numbers apart.
        var number = Invariant($"{prefix}-N{i}");
        Acknowledged(await store.AddAsync(CrashPart.For(number, 1), prefix), 1);
        if (i % 2 == 0)
            Acknowledged(await store.ChangeAsync(number, 1, CrashPart.For(number, 2), prefix), 2);
        Recorded(await store.Outcomes.RecordAsync(CrashPart.OutcomeOf(number), prefix));
    }

    // A kill may cut a line in two: only one that ends in a full stop counts.
    void Acknowledged(WriteResult result, int version) => Console.WriteLine(
        result is WriteResult.Written written && written.Part.Version == version ? Invariant($"{written.Part.Number} {version} .") : $"unexpected {result} .");

    void Recorded(WriteResult result) => Console.WriteLine(result is WriteResult.Recorded recorded ? Invariant($"{recorded.Outcome.Said.Id} recorded .") : $"unexpected {result} .");
}
