using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;

namespace PartsMatch.Service.Access;

/// <summary>A code that signs in once and soon. Only its hash is kept, and only until the process ends.</summary>
internal sealed class OneTimeCode(TimeProvider clock)
{
    /// <summary>Long enough to walk over to the machine with the browser.</summary>
    public static readonly TimeSpan Life = TimeSpan.FromMinutes(15);

    private const int Bytes = 32;
    private readonly Lock _lock = new();
    private Kept? _kept;

    /// <summary>A new code in place of the last.</summary>
    public string Make(string label)
    {
        var code = Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(Bytes));
        lock (_lock) _kept = new(Hash(code), label, clock.GetUtcNow() + Life);
        return code;
    }

    /// <summary>The label of the key that it stands for, this once; null for a code that is wrong, spent or too old.</summary>
    public string? Spend(string code)
    {
        lock (_lock)
        {
            if (_kept is not { } kept || clock.GetUtcNow() >= kept.Until || !CryptographicOperations.FixedTimeEquals(Hash(code), kept.Hash)) return null;
            _kept = null;
            return kept.Label;
        }
    }

    private static byte[] Hash(string code) => SHA256.HashData(Encoding.UTF8.GetBytes(code));

    private sealed record Kept(byte[] Hash, string Label, DateTimeOffset Until);
}
