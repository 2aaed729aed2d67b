namespace PartsMatch.Fit.Judging;

/// <summary>What a reading says of the thing it was taken at.</summary>
public enum ReadingVerdict
{
    /// <summary>It is as it should be.</summary>
    Good,

    /// <summary>It is not as it should be.</summary>
    Bad,

    /// <summary>It does not decide: something is not known, or it lies between two limits.</summary>
    CantTell,

    /// <summary>It means nothing here, and must not be judged by.</summary>
    NotApplicable,
}

/// <summary>What one reading, or a few that belong together, say.</summary>
/// <param name="Title">A few words for what was looked at: "Insulation to earth".</param>
/// <param name="Verdict">What they say.</param>
/// <param name="Sentence">Why, in one sentence or two, with the limit.</param>
/// <param name="Limit">The limit alone, in a few words with its unit: "at least 5 MΩ"; null where there is none.</param>
/// <param name="Source">Where the limit comes from.</param>
public sealed record ReadingCheck(string Title, ReadingVerdict Verdict, string Sentence, string? Limit, Source Source);

/// <summary>A rule's answer: what its readings say, what follows from that, and what it would have read next. Any of the three may be missing.</summary>
public sealed record Ruling
{
    private Ruling(ReadingVerdict? verdict, string sentence, string? limit) => (Verdict, Sentence, Limit) = (verdict, sentence, limit);

    /// <summary>What the readings say; null when there was nothing to judge.</summary>
    public ReadingVerdict? Verdict { get; }

    /// <summary>Why, with the limit; empty when there was nothing to judge.</summary>
    public string Sentence { get; }

    /// <summary>The limit alone; null where there is none.</summary>
    public string? Limit { get; }

    /// <summary>What follows for the part; null when nothing does.</summary>
    public Conclusion? Concludes { get; private init; }

    /// <summary>The reading that would bring the rule further; null when none would.</summary>
    public NextReading? Asks { get; private init; }

    /// <summary>The readings are as they should be.</summary>
    public static Ruling Good(FormattableString sentence, FormattableString? limit = null) => Of(ReadingVerdict.Good, sentence, limit);

    /// <summary>The readings are not as they should be.</summary>
    public static Ruling Bad(FormattableString sentence, FormattableString? limit = null) => Of(ReadingVerdict.Bad, sentence, limit);

    /// <summary>The readings do not decide.</summary>
    public static Ruling CantTell(FormattableString sentence, FormattableString? limit = null) => Of(ReadingVerdict.CantTell, sentence, limit);

    /// <summary>The readings mean nothing here.</summary>
    public static Ruling NotApplicable(FormattableString sentence, FormattableString? limit = null) => Of(ReadingVerdict.NotApplicable, sentence, limit);

    /// <summary>There is nothing to judge yet: this is to be read first.</summary>
    public static Ruling Read(string field, string why, Side? side = null) => new(null, string.Empty, null) { Asks = new(field, why, side) };

    /// <summary>The same, and it follows that the part has failed.</summary>
    public Ruling ThePartHasFailed() => this with { Concludes = Conclusion.PartHasFailed };

    /// <summary>The same, and it follows that something else is to be mended.</summary>
    public Ruling NotThePart() => this with { Concludes = Conclusion.NotThePart };

    /// <summary>The same, and this is to be read next.</summary>
    public Ruling ThenRead(string field, string why, Side? side = null) => this with { Asks = new(field, why, side) };

    private static Ruling Of(ReadingVerdict verdict, FormattableString sentence, FormattableString? limit) =>
        new(verdict, FormattableString.Invariant(sentence), limit is null ? null : FormattableString.Invariant(limit));
}

/// <summary>One rule about readings: pure, stateless, blind to what other rules say.</summary>
/// <typeparam name="TCase">Need and readings of a family, with the few figures that several rules take from them.</typeparam>
/// <param name="title">A few words for what it looks at.</param>
/// <param name="source">Where its limit comes from.</param>
public abstract class ReadingRule<TCase>(string title, Source source)
{
    /// <summary>A few words for what it looks at.</summary>
    public string Title => title;

    /// <summary>Where its limit comes from.</summary>
    public Source Source => source;

    /// <summary>What it says of a case; null when it has nothing to say and nothing to ask.</summary>
    public abstract Ruling? Judge(TCase one);

    internal ReadingCheck? CheckOf(Ruling? ruling) => ruling is { Verdict: { } verdict } ? new(Title, verdict, ruling.Sentence, ruling.Limit, Source) : null;
}
