namespace PartsMatch.Store;

/// <summary>What became of a part that was put in, as whoever records it says so. The store knows neither results nor reasons: they are texts to it.</summary>
/// <param name="Id">Made by who records it: the same id twice is the same record.</param>
/// <param name="Kind">The kind of part.</param>
/// <param name="On">The day on which it was known.</param>
/// <param name="Place">Where, in the recorder's own words; may be empty.</param>
/// <param name="OldPart">The number of what was replaced; empty when that is not known.</param>
/// <param name="Plate">What the old part's plate said.</param>
/// <param name="Site">What was read of the site.</param>
/// <param name="Part">The number of what was put in.</param>
/// <param name="Result">What became of it.</param>
/// <param name="Reason">Why it was not right; empty where it was.</param>
/// <param name="Note">Free words; may be empty.</param>
/// <param name="Corrects">The id of the record that this one takes the place of; empty for none.</param>
public sealed record OutcomeDraft(
    string Id,
    string Kind,
    DateOnly On,
    string Place,
    string OldPart,
    IReadOnlyList<NamedText> Plate,
    IReadOnlyList<NamedText> Site,
    string Part,
    string Result,
    string Reason,
    string Note,
    string Corrects)
{
    /// <summary>Whether it says the same as another. Numbers that differ only by dashes, spaces or case are the same, and fields stand in no order.</summary>
    public bool SaysAsMuchAs(OutcomeDraft other) =>
        WithoutTexts(this) == WithoutTexts(other) && InOrder(Plate).SequenceEqual(InOrder(other.Plate)) && InOrder(Site).SequenceEqual(InOrder(other.Site));

    private static OutcomeDraft WithoutTexts(OutcomeDraft draft) => draft with { OldPart = PartNumber.Key(draft.OldPart), Part = PartNumber.Key(draft.Part), Plate = [], Site = [] };

    private static IEnumerable<NamedText> InOrder(IReadOnlyList<NamedText> texts) => texts.OrderBy(text => text.Name, StringComparer.Ordinal);
}
