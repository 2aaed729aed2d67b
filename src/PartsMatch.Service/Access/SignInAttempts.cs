using System.Net;
using System.Net.Sockets;

namespace PartsMatch.Service.Access;

/// <summary>Slows those who guess keys: each address waits longer with every wrong one, and all addresses together get only so many tries a minute.</summary>
/// <remarks>A key of 256 random bits is not found by guessing; this keeps those who try from costing the service anything.</remarks>
internal sealed class SignInAttempts(TimeProvider clock)
{
    private const int FreeOfWaiting = 5;
    private const int MostAMinute = 60;

    /// <summary>A home or an office has as many IPv6 addresses as it likes under one prefix of 64 bits (RFC 6177).</summary>
    private const int PrefixBytes = 8;

    private static readonly TimeSpan FirstWait = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan LongestWait = TimeSpan.FromMinutes(15);
    private static readonly TimeSpan Remembered = TimeSpan.FromHours(1);
    private static readonly TimeSpan Minute = TimeSpan.FromMinutes(1);

    private readonly Lock _lock = new();
    private readonly Dictionary<IPAddress, (int Wrong, DateTimeOffset Last)> _byAddress = [];
    private readonly Queue<DateTimeOffset> _lastMinute = [];

    /// <summary>How long to wait before trying; nothing when the try may go on. It counts as a wrong one until it is said to be right, so that tries at the same moment count too.</summary>
    public TimeSpan Begin(IPAddress? address)
    {
        var from = Prefix(address);
        lock (_lock)
        {
            var now = clock.GetUtcNow();
            Forget(now);
            var (wrong, last) = _byAddress.GetValueOrDefault(from);
            var own = last + WaitAfter(wrong) - now;
            var everyones = _lastMinute.Count < MostAMinute ? TimeSpan.Zero : _lastMinute.Peek() + Minute - now;
            var wait = own > everyones ? own : everyones;
            if (wait > TimeSpan.Zero) return wait;
            _byAddress[from] = (wrong + 1, now);
            _lastMinute.Enqueue(now);
            return TimeSpan.Zero;
        }
    }

    public void WasRight(IPAddress? address)
    {
        lock (_lock) _byAddress.Remove(Prefix(address));
    }

    private static TimeSpan WaitAfter(int wrong) =>
        wrong < FreeOfWaiting ? TimeSpan.Zero : TimeSpan.FromSeconds(Math.Min(LongestWait.TotalSeconds, FirstWait.TotalSeconds * Math.Pow(2, wrong - FreeOfWaiting)));

    /// <summary>What is over is forgotten; the tries a minute bound what is left.</summary>
    private void Forget(DateTimeOffset now)
    {
        while (_lastMinute.TryPeek(out var first) && first + Minute <= now) _lastMinute.Dequeue();
        foreach (var (address, _) in _byAddress.Where(one => one.Value.Last + Remembered <= now).ToList()) _byAddress.Remove(address);
    }

    private static IPAddress Prefix(IPAddress? address)
    {
        if (address is null) return IPAddress.None;
        if (address.IsIPv4MappedToIPv6) return address.MapToIPv4();
        if (address.AddressFamily != AddressFamily.InterNetworkV6) return address;
        var bytes = address.GetAddressBytes();
        bytes.AsSpan(PrefixBytes).Clear();
        return new(bytes);
    }
}
