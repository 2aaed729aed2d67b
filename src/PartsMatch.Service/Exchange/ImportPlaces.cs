using Microsoft.Extensions.Options;

namespace PartsMatch.Service.Exchange;

/// <summary>How many files are held at once for whoever sends them over HTTP: one that finds no place is refused before it is read, so memory is bounded.</summary>
internal sealed class ImportPlaces(IOptions<ExchangeLimits> limits)
{
    private int _taken;

    /// <summary>A place, until it is disposed of; null while all are taken.</summary>
    public IDisposable? Take()
    {
        if (Interlocked.Increment(ref _taken) <= limits.Value.AtOnce) return new Place(this);
        Interlocked.Decrement(ref _taken);
        return null;
    }

    private sealed class Place(ImportPlaces places) : IDisposable
    {
        private int _left;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref _left, 1) == 0) Interlocked.Decrement(ref places._taken);
        }
    }
}
