using System.Text;

namespace PartsMatch.Store;

/// <summary>A part number as people write it, and as it is compared.</summary>
public static class PartNumber
{
    /// <summary>In characters. A key indexes the file, and an index entry there takes at most 1,023 bytes.</summary>
    public const int MostCharacters = 100;

    /// <summary>Letters and digits, upper-cased: numbers that differ only by dashes, spaces or case are the same number.</summary>
    public static string Key(string number)
    {
        ArgumentNullException.ThrowIfNull(number);
        var key = new StringBuilder(number.Length);
        foreach (var sign in number)
        {
            if (char.IsLetterOrDigit(sign)) key.Append(char.ToUpperInvariant(sign));
        }

        return key.ToString();
    }

    /// <summary>What is wrong with a number that is to be kept, or null when nothing is.</summary>
    public static string? Complaint(string number) =>
        number.Length > MostCharacters ? FormattableString.Invariant($"A part number has at most {MostCharacters} characters; this one has {number.Length}.")
        : Key(number).Length == 0 ? $"A part number needs at least one letter or digit; \"{number}\" has none."
        : null;
}
