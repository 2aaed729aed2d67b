using System.Runtime.CompilerServices;

namespace PartsMatch.Fit.Judging;

/// <summary>Why a finding is what it is: a sentence that is formed only when somebody reads it, and of which nothing is gathered where nobody will.</summary>
/// <remarks>
/// A query judges a thousand facets and shows a few. What their sentences say took a sixth of its memory, so that <see cref="Aspect.JudgeUnread"/> leaves it out: of an interpolated string that is
/// given for a reason nothing is worked out then. So nothing else may follow from a sentence.
/// </remarks>
[InterpolatedStringHandler]
public readonly struct Reason
{
    [ThreadStatic]
    private static bool areUnread;

    /// <summary>Its pieces, or a formattable string; null where nobody reads it. In one field, since findings are many.</summary>
    private readonly object? sentence;

    /// <summary>Asked for by the compiler, for an interpolated string.</summary>
    /// <param name="literalLength">How long its fixed parts are together.</param>
    /// <param name="formattedCount">How many values stand between them.</param>
    /// <param name="isRead">Whether anybody may read it.</param>
    public Reason(int literalLength, int formattedCount, out bool isRead)
    {
        isRead = !areUnread;
        if (isRead) sentence = new List<Piece>((2 * formattedCount) + 1);
    }

    private Reason(FormattableString sentence) => this.sentence = sentence;

    /// <summary>One that was put together before.</summary>
    public static implicit operator Reason(FormattableString sentence) => areUnread ? default : new(sentence);

    /// <summary>Takes a fixed part of the sentence.</summary>
    public void AppendLiteral(string text) => Pieces.Add(new(text, null));

    /// <summary>Takes a value, as it is: its words are formed when they are read.</summary>
    public void AppendFormatted<T>(T value) => Pieces.Add(new(value, null));

    /// <summary>Takes a value and how it is to be written.</summary>
    public void AppendFormatted<T>(T value, string? format) => Pieces.Add(new(value, format));

    /// <summary>Whether there is a sentence to read.</summary>
    internal bool IsGiven => sentence is not null;

    private List<Piece> Pieces => (List<Piece>)sentence!;

    /// <summary>The sentence, formed invariantly.</summary>
    /// <exception cref="InvalidOperationException">It was judged unread (<see cref="Aspect.JudgeUnread"/>).</exception>
    public override string ToString()
    {
        if (sentence is FormattableString whole) return FormattableString.Invariant(whole);
        if (sentence is not List<Piece> pieces) throw new InvalidOperationException("A finding that was judged unread has no sentence.");
        var formed = new DefaultInterpolatedStringHandler(0, pieces.Count, System.Globalization.CultureInfo.InvariantCulture);
        foreach (var piece in pieces) formed.AppendFormatted(piece.Value, piece.Format);
        return formed.ToStringAndClear();
    }

    /// <summary>Until it is disposed of, nobody reads the reasons that are given on this thread.</summary>
    internal static Reading Unread() => new(areUnread: true);

    /// <summary>Until it is disposed of, reasons that are given on this thread are gathered: for what is remembered, and may be read by somebody else.</summary>
    internal static Reading Read() => new(areUnread: false);

    private readonly record struct Piece(object? Value, string? Format);

    /// <summary>While it lives, reasons are read, or they are not; then all is as it was before.</summary>
    internal readonly ref struct Reading
    {
        private readonly bool before;

        public Reading(bool areUnread) => (before, Reason.areUnread) = (Reason.areUnread, areUnread);

        public void Dispose() => areUnread = before;
    }
}
