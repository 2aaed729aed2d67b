using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>One line of a reading on docs/nameplates.md: the phrases it comes from, the field (or leftover, contradiction, mended), and the value.</summary>
public sealed record PageLine(IReadOnlyList<int> Phrases, string Name, string Value);

/// <summary>One plate of docs/nameplates.md.</summary>
public sealed record PagePlate(string Section, string Title, string Kind, string Marked, IReadOnlyList<PageLine> Lines)
{
    public string AsWritten => Marked.Replace("¦", string.Empty, StringComparison.Ordinal);

    public IReadOnlyList<string> Phrases => [.. Marked.Split('¦')];

    public IEnumerable<PageLine> Fields => Lines.Where(line => line.Name is not ("leftover" or "contradiction" or "mended"));

    public IEnumerable<PageLine> Of(string name) => Lines.Where(line => line.Name == name);

    /// <summary>The phrases in another order, each without the spaces and dividers at its ends; a plate whose phrases have lines of their own keeps lines.</summary>
    public string Shuffled(int seed)
    {
        var phrases = Phrases.Select(phrase => phrase.Trim(' ', '\n', ',', '|', ';')).ToArray();
        new Random(seed).Shuffle(phrases);
        var hasLines = Array.Exists(phrases, phrase => phrase.Contains('\n', StringComparison.Ordinal));
        return string.Join(hasLines ? "\n" : ((string[])[" ", "\n", ", ", " | "])[seed % 4], phrases);
    }

    /// <summary>The plate as written, without one phrase, which is counted from 1.</summary>
    public string Without(int phrase) => string.Concat(Phrases.Where((_, at) => at != phrase - 1));

    public Family Family => Families.All.Single(family => family.Kind == Kind);

    public NameplateReading Read(string text) => Family.ReadNameplate(text);
}

/// <summary>Reads docs/nameplates.md: each plate a fence, its reading the fence behind it.</summary>
public static class PlatePage
{
    public static IReadOnlyList<PagePlate> All { get; } = Parse(File.ReadAllLines(Path.Combine(Repository.Root, "docs", "nameplates.md")));

    public static TheoryData<string> Titles => [.. All.Select(plate => plate.Title)];

    public static PagePlate Titled(string title) => All.Single(plate => plate.Title == title);

    private static List<PagePlate> Parse(string[] lines)
    {
        var plates = new List<PagePlate>();
        var (section, title, kind, marked) = (string.Empty, string.Empty, string.Empty, string.Empty);
        for (var at = 0; at < lines.Length; at++)
        {
            if (lines[at].StartsWith("## ", StringComparison.Ordinal)) section = lines[at][3..];
            if (lines[at].StartsWith("### ", StringComparison.Ordinal)) title = lines[at][4..];
            if (lines[at].StartsWith("```plate ", StringComparison.Ordinal)) (kind, marked) = (lines[at][9..], string.Join('\n', Fence(lines, ref at)));
            else if (lines[at] == "```reading") plates.Add(new(section, title, kind, marked, [.. Fence(lines, ref at).Select(Line)]));
        }

        return plates;
    }

    private static List<string> Fence(string[] lines, ref int at)
    {
        var inside = new List<string>();
        while (lines[++at] != "```") inside.Add(lines[at]);
        return inside;
    }

    private static PageLine Line(string line)
    {
        var colon = line.IndexOf(": ", StringComparison.Ordinal);
        var words = line[..colon].Split(' ');
        return new([.. words[0].Split(',').Select(number => int.Parse(number, global::System.Globalization.CultureInfo.InvariantCulture))], words[1], line[(colon + 2)..]);
    }
}
