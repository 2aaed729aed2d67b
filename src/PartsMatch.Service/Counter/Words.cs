using System.Globalization;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking;
using PartsMatch.Store;

namespace PartsMatch.Service.Counter;

/// <summary>The words that pages and terminal share for what is answered.</summary>
internal static class Words
{
    public static string Of(PartFit fit) => fit switch
    {
        PartFit.DropIn => "drop-in",
        PartFit.FitsWithChanges => "fits with changes",
        PartFit.CantTellYet => "can't tell yet",
        _ => "doesn't fit",
    };

    /// <summary>A part of which nothing need be changed, only looked at, fits once that is done.</summary>
    public static string Of(PartFit fit, bool needsChecksOnly) => fit == PartFit.FitsWithChanges && needsChecksOnly ? "fits once checked" : Of(fit);

    public static string Of(FitSheet sheet) => Of(sheet.Fit, sheet.Changes.All(change => change.Kind.IsCheck));

    /// <summary>What a likelihood is worked out from.</summary>
    public static string From(Likelihood likelihood) => likelihood switch
    {
        { IsHandSet: true } => "hand-set weights",
        { IsOfInvented: true } => "outcomes of past installations, invented ones among them",
        _ => "outcomes of past installations",
    };

    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Meets => "meets",
        Verdict.MeetsWithChanges => "change",
        Verdict.Unknown => "not known",
        _ => "fails",
    };

    /// <summary>What is to be found out, and where.</summary>
    public static string ToFindOut(Side side, string label) => side switch
    {
        Side.Part => $"ask the counter: {InSentence.Of(label)}",
        Side.Plate => $"{InSentence.Of(label)} (old part)",
        _ => $"{InSentence.Of(label)} (site)",
    };

    public static string ToFindOut(Family family, Missing missing) =>
        ToFindOut(missing.Side, (missing.Side == Side.Site ? family.SiteShape : family.SpecShape).Find(missing.Field)?.Label ?? missing.Field);

    /// <summary>Null for a part that is still made.</summary>
    public static string? Of(PartStatus status) => status == PartStatus.Current ? null : status.ToString().ToLowerInvariant();

    /// <summary>Of a part on a list that is the very one that failed: another is still at hand only where one is.</summary>
    public static string TheSame(int? onHand) => onHand > 0 ? "the same part, still at hand" : "the same part";

    public static string Price(decimal amount, string currency) => string.Create(CultureInfo.InvariantCulture, $"{amount:0.00} {currency}");
}
