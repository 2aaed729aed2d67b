using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Pages.Parts;
using PartsMatch.Store;

namespace PartsMatch.Service.Pages.Outcomes;

/// <summary>What was kept of how it went.</summary>
/// <param name="outcome">The outcome.</param>
/// <param name="whyNothingIsLearnt">Why ranking learns nothing of it; null where it does.</param>
public sealed class OutcomeModel(StoredOutcome outcome, string? whyNothingIsLearnt)
{
    public StoredOutcome Outcome => outcome;

    public OutcomeDraft Said => outcome.Said;

    public string? WhyNothingIsLearnt => whyNothingIsLearnt;

    public string Part => PartAddress.Of(Said.Part);

    /// <summary>The form that puts it right.</summary>
    public string Correct => OutcomeEndpoints.ToCorrect(Said.Id);

    public string? CorrectedBy => outcome.CorrectedBy is { } id ? OutcomeEndpoints.Of(id) : null;

    public string? Corrects => Said.Corrects.Length > 0 ? OutcomeEndpoints.Of(Said.Corrects) : null;

    /// <summary>What was said of the old part and of the site, by what people call it.</summary>
    public IReadOnlyList<(string Label, string Text)> Facts { get; } = Families.Find(outcome.Said.Kind) is { } family
        ? [.. Labelled(family.SpecShape, outcome.Said.Plate), .. Labelled(family.SiteShape, outcome.Said.Site)]
        : [];

    private static IEnumerable<(string Label, string Text)> Labelled(Shape shape, IEnumerable<Store.NamedText> texts) => texts.Select(text => (shape.Find(text.Name)?.Label ?? text.Name, text.Text));
}
