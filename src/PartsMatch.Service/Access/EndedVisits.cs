using System.Collections.Concurrent;
using System.Globalization;
using PartsMatch.Service.Hosting;

namespace PartsMatch.Service.Access;

/// <summary>The visits that were signed out of: a copy of their cookie opens nothing any more, also after a restart.</summary>
internal sealed class EndedVisits
{
    private readonly ConcurrentDictionary<string, DateTimeOffset> _ended;
    private readonly Lock _writing = new();
    private readonly string _path;
    private readonly TimeProvider _clock;

    public EndedVisits(DataFolder folder, TimeProvider clock)
    {
        (_path, _clock) = (Path.Combine(folder.CookieKeys().FullName, "ended-visits.txt"), clock);
        var lines = File.Exists(_path) ? File.ReadAllLines(_path) : [];
        _ended = new(lines.Select(line => line.Split(' ')).Where(parts => parts.Length == 2 && DateTimeOffset.TryParse(parts[1], CultureInfo.InvariantCulture, out _))
            .DistinctBy(parts => parts[0]).Select(parts => KeyValuePair.Create(parts[0], DateTimeOffset.Parse(parts[1], CultureInfo.InvariantCulture))));
    }

    public bool Contains(string visit) => _ended.ContainsKey(visit);

    public void Add(string visit)
    {
        _ended[visit] = _clock.GetUtcNow();
        lock (_writing)
        {
            // A cookie that nobody renews is out by itself after so long, and need not be remembered.
            foreach (var (old, at) in _ended)
            {
                if (_clock.GetUtcNow() - at > SignInCookie.Kept) _ended.TryRemove(old, out _);
            }

            File.WriteAllLines(_path, _ended.Select(one => $"{one.Key} {one.Value.ToString("O", CultureInfo.InvariantCulture)}"));
        }
    }
}
