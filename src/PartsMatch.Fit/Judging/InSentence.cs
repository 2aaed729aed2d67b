namespace PartsMatch.Fit.Judging;

/// <summary>Words that began with a capital, inside a sentence.</summary>
public static class InSentence
{
    /// <summary>The same without its capital; one that begins with an abbreviation or a unit keeps it, and all that follows stays as it is: "transformer's VA", "DC volts".</summary>
    public static string Of(string words) => words.Length == 0 || (words.Length > 1 && (char.IsUpper(words[1]) || char.IsDigit(words[1]) || words[1] == '-')) ? words : char.ToLowerInvariant(words[0]) + words[1..];
}
