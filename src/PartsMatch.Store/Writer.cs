using System.Collections.Concurrent;

namespace PartsMatch.Store;

/// <summary>The one thread that touches LiteDB. What waits in its queue is committed together and acknowledged once it is on the disk.</summary>
/// <remarks>LiteDB binds a transaction to a thread, and has been seen to damage a file under several writers; and one flush for many writes is what makes them fast.</remarks>
internal sealed class Writer : IDisposable
{
    /// <summary>Bounds how long the first of a group waits for the last; a flush costs as much as writing a few dozen parts.</summary>
    private const int MostInAGroup = 256;

    private readonly BlockingCollection<Job> _queue = [];
    private readonly Database _database;
    private readonly TimeProvider _clock;
    private readonly Action<WriteGroup, CatalogueSnapshot> _follow;
    private readonly Thread _thread;
    private volatile StoreFailedException? _failed;
    private volatile CatalogueSnapshot _catalogue;

    public Writer(Database database, CatalogueSnapshot catalogue, TimeProvider clock, Action<WriteGroup, CatalogueSnapshot> follow)
    {
        _database = database;
        _catalogue = catalogue;
        _clock = clock;
        _follow = follow;
        _thread = new Thread(Run) { Name = "PartsMatch store", IsBackground = true };
        _thread.Start();
    }

    /// <summary>As of the last group that is on the disk.</summary>
    public CatalogueSnapshot Catalogue => _catalogue;

    /// <summary>Whether the disk failed under a write: then nobody can say what is in the data file.</summary>
    public bool HasFailed => _failed is not null;

    /// <summary>Completes when what <paramref name="judge"/> wrote into the group is on the disk.</summary>
    public Task<T> Write<T>(Func<WriteGroup, T> judge) => Enqueue(new Writing<T>(judge));

    /// <summary>Runs between two groups, after every write that was asked for before.</summary>
    public Task<T> Between<T>(Func<Database, T> errand) => Enqueue(new Errand<T>(errand));

    /// <summary>Puts another snapshot of the same content in place, between two groups.</summary>
    public Task<CatalogueSnapshot> Replace(Func<CatalogueSnapshot, CatalogueSnapshot> same) => Between(_ => _catalogue = same(_catalogue));

    /// <summary>Everything that was asked for is still done.</summary>
    public void Dispose()
    {
        _queue.CompleteAdding();
        _thread.Join();
        _queue.Dispose();
    }

    private Task<T> Enqueue<T>(Job<T> job)
    {
        try
        {
            _queue.Add(job);
        }
        catch (InvalidOperationException e)
        {
            throw new ObjectDisposedException("The store is closed.", e);
        }

        return job.Task;
    }

    private void Run()
    {
        foreach (var first in _queue.GetConsumingEnumerable())
        {
            var group = new List<IWriting>();
            Job? next = first;
            while (next is IWriting writing)
            {
                group.Add(writing);
                next = group.Count < MostInAGroup && _queue.TryTake(out var taken) ? taken : null;
            }

            if (group.Count > 0)
                Commit(group);
            (next as IErrand)?.Run(_database);
        }
    }

    private void Commit(IReadOnlyList<IWriting> writings)
    {
        WriteGroup group;
        try
        {
            group = Keep(writings);
        }
        catch (StoreFailedException failed)
        {
            _failed = failed;
            foreach (var writing in writings)
                writing.Fail(failed);
            return;
        }
        catch (Exception) when (writings.Count > 1)
        {
            // One of them cannot be written, and took none of the others along: each alone, it will show which.
            foreach (var writing in writings)
                Commit([writing]);
            return;
        }
        catch (Exception e)
        {
            writings[0].Fail(e);
            return;
        }

        Acknowledge(writings, group);
    }

    private WriteGroup Keep(IReadOnlyList<IWriting> writings)
    {
        if (_failed is not null)
            throw _failed;
        var group = new WriteGroup(_catalogue, _clock.GetUtcNow(), _database.Outcomes);
        foreach (var writing in writings)
            writing.Judge(group);
        if (!group.IsEmpty)
            _database.Write(group, _catalogue.Revision + (group.LeavesCatalogue ? 0 : 1));
        return group;
    }

    private void Acknowledge(IReadOnlyList<IWriting> writings, WriteGroup group)
    {
        try
        {
            if (!group.LeavesCatalogue)
            {
                _catalogue = group.After;
                _follow(group, _catalogue);
            }
        }
        catch (Exception e)
        {
            // A follower's fault is told to those who wait, as nobody else here would hear of it; the writes themselves are kept.
            var told = new InvalidOperationException("The write is on the disk, but what follows the catalogue failed.", e);
            foreach (var writing in writings)
                writing.Fail(told);
            return;
        }

        foreach (var writing in writings)
            writing.Acknowledge();
    }

    private interface IWriting
    {
        void Judge(WriteGroup group);

        void Acknowledge();

        void Fail(Exception e);
    }

    private interface IErrand
    {
        void Run(Database database);
    }

    private abstract class Job;

    private abstract class Job<T> : Job
    {
        // Continuations run elsewhere: the writer's thread is for writing.
        protected readonly TaskCompletionSource<T> Done = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public Task<T> Task => Done.Task;
    }

    private sealed class Writing<T>(Func<WriteGroup, T> judge) : Job<T>, IWriting
    {
        private T? _result;

        public void Judge(WriteGroup group) => _result = judge(group);

        public void Acknowledge() => Done.TrySetResult(_result!);

        public void Fail(Exception e) => Done.TrySetException(e);
    }

    private sealed class Errand<T>(Func<Database, T> errand) : Job<T>, IErrand
    {
        public void Run(Database database)
        {
            try
            {
                Done.TrySetResult(errand(database));
            }
            catch (Exception e)
            {
                Done.TrySetException(e);
            }
        }
    }
}
