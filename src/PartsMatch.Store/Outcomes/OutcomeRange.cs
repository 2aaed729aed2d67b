using System.Globalization;

namespace PartsMatch.Store;

/// <summary>Which outcomes are meant: all, those of a kind, or those of a part that was put in.</summary>
public sealed record OutcomeRange
{
    private OutcomeRange(string field, string? key) => (Field, Key) = (field, key);

    public static OutcomeRange All { get; } = new("_id", key: null);

    internal string Field { get; }

    internal string? Key { get; }

    public static OutcomeRange OfKind(string kind) => new("ofKind", kind);

    public static OutcomeRange OfPart(string number) => new("ofPart", PartNumber.Key(number));

    /// <summary>A document's place in the range: what is said of a kind or a part stands together, in the order in which it was recorded.</summary>
    internal static string Place(string key, long sequence) => string.Create(CultureInfo.InvariantCulture, $"{key} {sequence:D19}");
}
