using System.Buffers.Text;
using System.Security.Cryptography;
using System.Text;
using PartsMatch.Store;

namespace PartsMatch.Service.Access;

/// <summary>Makes keys and tells a right one from a wrong one. Only the salted hash is ever kept.</summary>
/// <remarks>A key is 256 random bits, so there is nothing to guess and one round of SHA-256 is enough; a slow hash is for passwords that people choose.</remarks>
internal static class KeyHash
{
    /// <summary>So that a key is known for one when it turns up where it should not.</summary>
    private const string Prefix = "partsmatch_";
    private const int KeyBytes = 32;
    private const int SaltBytes = 16;

    public static (string Key, AccessKey Kept) Make(string label, DateTimeOffset at)
    {
        var key = Prefix + Base64Url.EncodeToString(RandomNumberGenerator.GetBytes(KeyBytes));
        var salt = Convert.ToHexString(RandomNumberGenerator.GetBytes(SaltBytes));
        return (key, new AccessKey(label, Hash(key, salt), salt, at));
    }

    /// <summary>Takes as long for a nearly right key as for a quite wrong one.</summary>
    public static bool Matches(string given, AccessKey kept) =>
        CryptographicOperations.FixedTimeEquals(Encoding.ASCII.GetBytes(Hash(given, kept.Salt ?? string.Empty)), Encoding.ASCII.GetBytes(kept.Hash));

    /// <summary>Tells one kept key from another of the same label, to whoever may hold it: a hash of its hash, of which nothing can be learnt.</summary>
    public static string MarkOf(AccessKey kept) => Convert.ToHexString(SHA256.HashData(Encoding.ASCII.GetBytes(kept.Hash)));

    private static string Hash(string key, string salt) => Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(salt + key)));
}
