using LiteDB;
using PartsMatch.Store.Filed;

namespace PartsMatch.Store;

/// <summary>What has to be true of the files before the first read: made if there are none, inspected, settled, upgraded.</summary>
internal static class Opening
{
    /// <summary>Step n takes a file from format n + 1 to n + 2. A new format adds its step at the end, and nothing else here changes.</summary>
    public static readonly IReadOnlyList<Action<LiteDatabase>> Upgrades = [OutcomeCollection.Prepare];

    /// <exception cref="StoreRefusedException">The files are not ours to open, and are left as they are.</exception>
    public static (Database Database, CatalogueSnapshot Catalogue) Open(
        StoreFolder folder, TimeProvider clock, Func<SeedData>? seed, IReadOnlyList<Action<LiteDatabase>> upgrades)
    {
        PartsFile? parts = null;
        CatalogueSnapshot? opened = null;
        try
        {
            var newest = upgrades.Count + 1;
            if (!File.Exists(folder.Data))
                Make(folder, clock, seed?.Invoke(), newest);
            var version = Inspection.Read(folder, newest, database =>
            {
                // Steps are taken only over what was read whole.
                if (database.FormatVersion == newest) parts = CleanEnd.Find(folder);
                if (parts is null) database.WriteParts(folder.Parts);
            });

            var database = Database.Open(new StoreFile(folder.Data, FileMode.Open), new StoreFile(folder.Log, FileMode.OpenOrCreate));
            try
            {
                CleanEnd.TakeAway(folder);
                database.Settle();
                if (version < newest)
                {
                    for (; version < newest; version++)
                        database.Upgrade(upgrades[version - 1], version + 1);
                    database.WriteParts(folder.Parts);
                }

                parts ??= PartsFile.Open(folder.Parts) ?? throw new IOException($"{folder.Parts} was written, and cannot be read again.");
                opened = CatalogueSnapshot.Of(parts, database.Revision, database.KeysByLabel);
                return (database, opened);
            }
            catch
            {
                database.Dispose();
                throw;
            }
        }
        catch (IOException e) when (StoreFile.IsHeldElsewhere(e))
        {
            throw new StoreRefusedException(
                RefusalReason.InUse, $"{folder.Data} is open in another program. Close that, or give another folder with --data.", e);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or StoreFailedException)
        {
            throw new StoreRefusedException(
                RefusalReason.NotWritable,
                $"The files in {folder.Path} cannot be read and written by this user, or the disk is full. Mend that, or give another folder with --data.",
                e);
        }
        finally
        {
            if (opened is null) parts?.Dispose();
        }
    }

    /// <summary>Under another name until it is whole: a process killed amid the seeding leaves no half catalogue.</summary>
    private static void Make(StoreFolder folder, TimeProvider clock, SeedData? seed, int formatVersion)
    {
        if (File.Exists(folder.Log) && new FileInfo(folder.Log).Length > 0)
        {
            throw new StoreRefusedException(
                RefusalReason.Corrupt,
                $"{folder.Log} is there, but the {Path.GetFileName(folder.Data)} it belongs to is not. Put that back beside it, or move it away to begin anew.");
        }

        using (var database = Database.Make(new StoreFile(folder.Making, FileMode.Create), formatVersion))
        {
            var group = new WriteGroup(CatalogueSnapshot.Empty, clock.GetUtcNow(), database.Outcomes);
            foreach (var part in seed?.Parts ?? [])
                Demand(group.Add(part, seed!.Source, PartChangeKind.Seeded));
            foreach (var line in seed?.Stock ?? [])
                Demand(group.SetStock(line));
            foreach (var outcome in seed?.Outcomes ?? [])
                Demand(group.Outcomes.Record(outcome, seed!.Source));
            database.Write(group, CatalogueSnapshot.Empty.Revision + 1);
        }

        File.Move(folder.Making, folder.Data);
    }

    private static void Demand(WriteResult result)
    {
        if (result is not (WriteResult.Written or WriteResult.Recorded))
            throw new InvalidOperationException($"The seed cannot be kept: {result}");
    }
}
