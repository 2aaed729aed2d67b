using PartsMatch.Fit.Judging;
using PartsMatch.Store;
using NamedText = PartsMatch.Fit.Judging.NamedText;

namespace PartsMatch.Service.Counter;

/// <summary>One thing that is said of a part: its maker, or a field of its spec.</summary>
/// <param name="Name">The name at every edge.</param>
/// <param name="Label">What a person calls it.</param>
/// <param name="Text">What is said; empty when nothing is.</param>
public sealed record PartText(string Name, string Label, string Text);

/// <summary>One thing of which two versions of a part say something else; empty where one says nothing.</summary>
public sealed record ChangedText(string Name, string Label, string Before, string After);

/// <summary>Lays parts out as texts, so that two versions can be held beside each other thing by thing.</summary>
internal static class PartTexts
{
    /// <summary>All that a version says, in the order of the form it is changed by.</summary>
    public static IReadOnlyList<PartText> Of(Family family, StoredPart part) =>
        Of(family, part.Number, part.Maker, part.Title, part.Status, part.SupersededBy, part.Spec.Select(text => new NamedText(text.Name, text.Text)));

    /// <summary>What would be kept of a part that is given, as it would be written.</summary>
    public static IReadOnlyList<PartText> Of(PartGiven given)
    {
        var family = given.Spec.Family;
        return Of(family, given.Number, given.Maker.Trim(), given.Title.Trim(), given.Status, given.SupersededBy, family.SpecShape.Write(family.ReadSpec(given.Spec.Texts).Spec));
    }

    /// <summary>The things of which the two say something else.</summary>
    public static IReadOnlyList<ChangedText> Between(IReadOnlyList<PartText> before, IReadOnlyList<PartText> after) =>
        [.. before.Concat(after).DistinctBy(text => text.Name)
            .Select(text => new ChangedText(text.Name, text.Label, TextOf(before, text.Name), TextOf(after, text.Name)))
            .Where(changed => changed.Before != changed.After)];

    public static string TextOf(IReadOnlyList<PartText> texts, string name) => texts.FirstOrDefault(text => text.Name == name)?.Text ?? string.Empty;

    private static IReadOnlyList<PartText> Of(Family family, string number, string maker, string title, PartStatus status, IReadOnlyList<Supersession> by, IEnumerable<NamedText> spec)
    {
        var texts = spec.ToList();
        return
        [
            new("number", "Part number", number),
            new("maker", "Maker", maker),
            new("title", "Title", title),
            new("status", "Status", status.ToString().ToLowerInvariant()),
            new("supersededBy", "Superseded by", string.Join("; ", by.Select(one => FormattableString.Invariant($"{one.Number} on {one.On:O}, as {one.SaidBy} says")))),
            .. family.SpecShape.Fields.Select(field => new PartText(field.Name, field.Label, texts.Find(text => text.Name == field.Name)?.Text ?? string.Empty)),
            // What an earlier version kept and this one knows no field for.
            .. texts.Where(text => family.SpecShape.Find(text.Name) is null).Select(text => new PartText(text.Name, text.Name, text.Text)),
        ];
    }
}
