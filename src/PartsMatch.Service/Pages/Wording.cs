using System.Globalization;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;
using PartsMatch.Ranking;
using PartsMatch.Ranking.Unknowns;
using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Pages;

/// <summary>The words that pages use for what the core answers.</summary>
internal static class Wording
{
    public static string Of(PartFit fit) => Words.Of(fit);

    public static string Of(FitSheet sheet) => Words.Of(sheet);

    /// <summary>A class of the stylesheet.</summary>
    public static string ClassOf(PartFit fit) => fit switch
    {
        PartFit.DropIn => "good",
        PartFit.FitsWithChanges => "change",
        PartFit.CantTellYet => "open",
        _ => "bad",
    };

    public static string Of(Verdict verdict) => Words.Of(verdict);

    public static string ClassOf(Verdict verdict) => verdict switch
    {
        Verdict.Meets => "good",
        Verdict.MeetsWithChanges => "change",
        Verdict.Unknown => "open",
        _ => "bad",
    };

    public static string Of(ReadingVerdict verdict) => verdict switch
    {
        ReadingVerdict.Good => "as it should be",
        ReadingVerdict.Bad => "not as it should be",
        ReadingVerdict.CantTell => "can't tell",
        _ => "means nothing here",
    };

    public static string ClassOf(ReadingVerdict verdict) => verdict switch
    {
        ReadingVerdict.Good => "good",
        ReadingVerdict.Bad => "bad",
        _ => "open",
    };

    public static string Of(Conclusion conclusion) => conclusion switch
    {
        Conclusion.PartHasFailed => "The part has failed",
        Conclusion.NotThePart => "It is not the part",
        Conclusion.ReadNext => "Not known yet",
        _ => "Nothing wrong found",
    };

    /// <summary>A class of the stylesheet.</summary>
    public static string ClassOf(Conclusion conclusion) => conclusion switch
    {
        Conclusion.PartHasFailed => "stop",
        Conclusion.NotThePart => "caution",
        _ => "open",
    };

    /// <summary>A stage of the notes, as a heading.</summary>
    public static string Of(Stage stage) => Capital(new EnumForm<Stage>().Write(stage));

    public static string? Of(PartStatus status) => Words.Of(status);

    public static string Of(PartChangeKind what) => what switch
    {
        PartChangeKind.Seeded => "Came with the store",
        var done => done.ToString(),
    };

    /// <summary>Who did it, or where it came from.</summary>
    public static string By(PartChange change) => change.What == PartChangeKind.Seeded ? $"from {change.By}" : $"by {change.By}";

    /// <summary>A moment, the same for every reader: UTC, to the second (ISO 8601).</summary>
    public static string At(DateTimeOffset moment) => moment.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);

    public static string AtHand(StockLine? stock) => stock?.OnHand switch
    {
        null => "not known whether at hand",
        0 => "none at hand",
        var count => FormattableString.Invariant($"{count} at hand"),
    };

    public static string? Price(StockLine? stock) => stock?.Price is { } price ? Words.Price(price, stock.Currency) : null;

    public static string LikelihoodFrom(Likelihood likelihood) => likelihood switch
    {
        { IsHandSet: true } => "from hand-set weights, not yet from outcomes",
        { IsOfInvented: true } => "from outcomes of past installations, invented ones among them",
        _ => "from outcomes of past installations",
    };

    /// <summary>On how many known machines a likelihood rests, and how near they come; null when it is the need's own.</summary>
    public static string? RestsOn(Completions completions)
    {
        if (completions.IsNone) return null;
        var agreeing = completions.Agreeing switch { 0 => "None of them agrees", 1 => "One of them agrees", var many => FormattableString.Invariant($"{many} of them agree") };
        var differing = completions.Differing.Count == 0 ? string.Empty : $" Most of what counts differs in {string.Join(", ", completions.Differing.Select(field => InSentence.Of(field.Label)))}.";
        return FormattableString.Invariant($"The plate leaves something open: each likelihood is the mean over {completions.Machines} known machines, and the nearer one comes to what is known, the more it counts. {agreeing} with all of it; together they count as {completions.Effective:0} alike ones.{differing}");
    }

    /// <summary>How much of what the old part may be a part to carry fits for sure.</summary>
    public static string Fits(CarriedPart part) => FormattableString.Invariant($"fits {100 * part.Share:0} %");

    /// <summary>What a carry set promises, in one or two sentences.</summary>
    public static string Of(CarrySet set)
    {
        if (set.Parts.Count == 0) return "Of no part on offer can it be told yet that it fits whatever the old one may be: take the readings first.";
        var parts = set.Parts.Count == 1 ? "This part fits" : FormattableString.Invariant($"One of these {set.Parts.Count} parts fits");
        var promise = FormattableString.Invariant($"{parts} {100 * set.Reached:0} % of what the old one may be, by {set.Machines} known machines.");
        return !set.IsSmallest ? promise : set.Reached + 1e-9 < CarrySet.UsualShare ? $"{promise} No choice of parts does better." : $"{promise} Fewer parts do not get as far.";
    }

    /// <summary>Something to bring, and how many.</summary>
    public static string Of(KitItem item) => item.Quantity == 1 ? item.What : FormattableString.Invariant($"{item.Quantity} × {item.What}");

    /// <summary>What is to be found out, and where.</summary>
    public static string Of(Missing missing, Family family) => Words.ToFindOut(family, missing);

    public static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
