using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Pages.Fields;

/// <summary>All that is wrong with what was typed, by the name of the input it belongs to.</summary>
public sealed class Complaints
{
    private readonly IReadOnlyList<(string Input, string Message)> _all;

    private Complaints(IReadOnlyList<(string Input, string Message)> all) => _all = all;

    public static Complaints None { get; } = new([]);

    /// <summary>In the order in which they came. What is wrong with no input of the page, as a part's number in a link, has an empty name.</summary>
    public IReadOnlyList<(string Input, string Message)> All => _all;

    public bool Any => _all.Count > 0;

    /// <summary>Of refusals of a need: their places become the names of inputs.</summary>
    public static Complaints OfNeed(IEnumerable<Refusal> refusals) => Of(refusals, at =>
        at.Split('.', 3) switch
        {
            ["need", _, "plateText" or "oldPartNumber"] => "text",
            ["need", _, var place] => place,
            ["readings", _, var field] => $"{Needs.NeedTyped.ReadingsPrefix}.{field}",
            ["site", _, var field] => $"{Needs.NeedTyped.SitePrefix}.{field}",
            ["partNumber" or "newPartNumber"] => "part",
            ["oldPartNumber"] => "old",
            _ => at,
        });

    /// <summary>More is filled in than a link can hold.</summary>
    public static Complaints TooLongForALink(string input) =>
        Of([new(Codes.TooLong, input, FormattableString.Invariant($"So much is filled in that no link can hold it ({Link.Longest} characters). Leave out what decides least."))]);

    public static Complaints Of(IEnumerable<Refusal> refusals, Func<string, string>? inputOf = null) =>
        new([.. refusals.Select(refusal => (inputOf?.Invoke(refusal.At) ?? refusal.At, refusal.Message))]);

    /// <summary>These, and others after them.</summary>
    public Complaints And(Complaints others) => new([.. _all, .. others._all]);

    /// <summary>For a page that has no such input.</summary>
    public Complaints Without(string input) => new([.. _all.Select(one => one.Input == input ? (string.Empty, one.Message) : one)]);

    /// <summary>What is wrong with one input.</summary>
    public IReadOnlyList<string> At(string input) => [.. _all.Where(one => one.Input.Equals(input, StringComparison.OrdinalIgnoreCase)).Select(one => one.Message)];
}
