using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Pages.WhatFailed;

/// <summary>A stretch of a plate's text.</summary>
/// <param name="Text">The stretch as it stands there.</param>
/// <param name="Mark">What became of it; null for what is only between.</param>
/// <param name="Words">The fields that were read from it, or that it could not be placed.</param>
public sealed record Stretch(string Text, string? Mark, string Words);

/// <summary>A plate's text cut into what was read and what was left over.</summary>
public static class MarkedText
{
    public const string Read = "read";
    public const string Mended = "mended";
    public const string Left = "left";

    /// <summary>All of the text, in order. Where two fields share a stretch it names both.</summary>
    public static IReadOnlyList<Stretch> Of(string text, NameplateReading reading)
    {
        var marks = reading.Fields.SelectMany(field => field.Spans.Select(span => (span, mark: field.Mended.Count > 0 ? Mended : Read, words: WordsOf(field))))
            .Concat(reading.Leftovers.Select(span => (span, mark: Left, words: "could not be placed"))).ToList();
        int[] cuts = [.. marks.SelectMany(one => (int[])[one.span.From, one.span.From + one.span.Length]).Append(0).Append(text.Length).Distinct().Order()];
        return [.. cuts.Zip(cuts.Skip(1), (from, to) =>
        {
            var over = marks.Where(one => one.span.From <= from && one.span.From + one.span.Length >= to).ToList();
            var mark = over.Exists(one => one.mark == Mended) ? Mended : over.Count > 0 ? over[0].mark : null;
            return new Stretch(text[from..to], string.IsNullOrWhiteSpace(text[from..to]) ? null : mark, string.Join("; ", over.Select(one => one.words).Distinct()));
        })];
    }

    private static string WordsOf(ReadField field) =>
        $"{field.Field.Label} {field.Text}{string.Concat(field.Mended.Select(slip => $", {slip.Typed} taken for {slip.ReadAs}"))}";
}
