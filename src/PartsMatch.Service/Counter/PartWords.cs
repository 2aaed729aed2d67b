using PartsMatch.Fit.Quantities;
using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>What numbers and free words of a part have to be, whichever edge they come from.</summary>
internal static class PartWords
{
    private const int LongestWords = 200;

    /// <summary>What is wrong with a number that is to be kept.</summary>
    public static IEnumerable<Refusal> Number(string number, string at)
    {
        if (string.IsNullOrWhiteSpace(number)) yield return new(Codes.NumberUnusable, at, "A part number is needed: at least one letter or digit.");
        else if (UnseenSigns.Complaint(number.Trim()) is { } unseen) yield return new(Codes.NumberUnusable, at, unseen);
        else if (PartNumber.Complaint(number) is { } why) yield return new(Codes.NumberUnusable, at, why);
    }

    /// <summary>What is wrong with a maker, a title, a source.</summary>
    public static IEnumerable<Refusal> Words(string words, string at)
    {
        if (string.IsNullOrWhiteSpace(words)) yield return new(Codes.Empty, at, "A few words are needed here.");
        if (words.Length > LongestWords) yield return new(Codes.TooLong, at, $"At most {LongestWords} characters go here.");
        if (UnseenSigns.Complaint(words.Trim()) is { } unseen) yield return new(Codes.Unreadable, at, unseen);
    }
}
