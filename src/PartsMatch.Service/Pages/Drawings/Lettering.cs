namespace PartsMatch.Service.Pages.Drawings;

/// <summary>How much room text takes: an estimate, as the reader's font is not known here.</summary>
internal static class Lettering
{
    /// <summary>All pictures are so wide, about a phone's: text of 12 units is then readable without zooming.</summary>
    public const double PictureWidth = 340;

    public const double Size = 12;

    public const double LineHeight = 16;

    /// <summary>Of ordinary sans serif letters, of their size; rather wide, so that text never runs out of the picture.</summary>
    private const double LetterWidth = 0.56;

    public static double WidthOf(string text) => text.Length * Size * LetterWidth;

    /// <summary>The text in lines that fit; a word that is too long for a line has one to itself.</summary>
    public static IReadOnlyList<string> Wrap(string text, double width)
    {
        List<string> lines = [];
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (lines.Count > 0 && WidthOf($"{lines[^1]} {word}") <= width) lines[^1] += $" {word}";
            else lines.Add(word);
        }

        return lines;
    }
}
