namespace PartsMatch.Ranking.Engine;

/// <summary>The numbers of all parts that a catalogue and what was made of it ever had, each with its part's index.</summary>
/// <param name="all">Their bytes.</param>
internal sealed class PartNumbers(Numbered all)
{
    /// <summary>Their bytes.</summary>
    public Numbered All => all;

    /// <summary>The number of a part.</summary>
    public NumberText this[int part] => new(all[part]);

    /// <summary>The part of a number; a new one gets the next index.</summary>
    public int Add(string number) => all.Add(NumberText.Of(number).Bytes.Span);

    /// <summary>The part of a number; null when there never was one.</summary>
    public int? Find(string number) => all.Find(NumberText.Of(number).Bytes.Span);
}
