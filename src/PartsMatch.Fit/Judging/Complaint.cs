namespace PartsMatch.Fit.Judging;

/// <summary>What is wrong with something that was typed: where, what, and what would be right.</summary>
/// <param name="Code">One of <see cref="ComplaintCode"/>.</param>
/// <param name="Field">The name of the field, or of the input as a whole.</param>
/// <param name="Given">The text as it was given.</param>
/// <param name="Message">The whole sentence for a person.</param>
public sealed record Complaint(string Code, string Field, string Given, string Message);

/// <summary>The codes that programs can rely on.</summary>
public static class ComplaintCode
{
    /// <summary>No field has this name.</summary>
    public const string UnknownField = "UNKNOWN_FIELD";

    /// <summary>The text is not of the field's form, or its value is out of range.</summary>
    public const string Unreadable = "UNREADABLE";

    /// <summary>A field is given twice.</summary>
    public const string GivenTwice = "GIVEN_TWICE";

    /// <summary>The text is longer than what is read.</summary>
    public const string TooLong = "TOO_LONG";

    /// <summary>Words and figures stand so that they can be read in two ways.</summary>
    public const string Ambiguous = "AMBIGUOUS";

    /// <summary>There is no text.</summary>
    public const string Empty = "EMPTY";

    /// <summary>There is a text, and nothing in it says anything of a part.</summary>
    public const string NothingRead = "NOTHING_READ";
}
