using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Learning;
using PartsMatch.Service.Counter;
using PartsMatch.Store;

namespace PartsMatch.Service.Graph.Results;

[Name("Outcome")]
[Description("What became of a part that was put in. A record is never changed; a later one may take its place.")]
internal sealed class OutcomeOut(StoredOutcome outcome)
{
    private readonly OutcomeDraft _said = outcome.Said;

    [Id]
    [Description("Its id, made by whoever recorded it.")]
    public string Id => _said.Id;

    [Description("What kind of part it is about.")]
    public Family Kind => Families.Find(_said.Kind)!;

    [Description("The day on which it was known.")]
    public DateOnly On => _said.On;

    [Description("Where, in the recorder's words; null when nothing is said.")]
    public string? Place => Null(_said.Place);

    [Id]
    [Description("The number of what was replaced; null when nothing is said.")]
    public string? OldPartNumber => Null(_said.OldPart);

    [Description("What was given of the old part's plate, field by field.")]
    public IEnumerable<FieldText> Plate => FieldText.AllOf(Kind.SpecShape, _said.Plate);

    [Description("What was given of the site, field by field.")]
    public IEnumerable<FieldText> Site => FieldText.AllOf(Kind.SiteShape, _said.Site);

    [Id]
    [Description("The number of the part that was put in.")]
    public string PartNumber => _said.Part;

    [Description("The part that was put in, as the catalogue has it now.")]
    public Part? Part([FromServices] Catalogues catalogues) => catalogues.Shelf.Find(_said.Part) is { } entry ? new(entry) : null;

    [Description("What became of it.")]
    public Result Result => OutcomeWords.ResultOf(_said.Result)!.Value;

    [Description("Why it was not right; null where it was right first time.")]
    public OutcomeReason? Reason => OutcomeWords.ReasonOf(_said.Reason);

    [Description("Anything else that was said; null when nothing is.")]
    public string? Note => Null(_said.Note);

    [Id]
    [Description("The id of the earlier outcome that this one took the place of; null when it is the first word.")]
    public string? Corrects => Null(_said.Corrects);

    [Id]
    [Description("The id of the outcome that took its place; null while it counts.")]
    public string? CorrectedBy => outcome.CorrectedBy;

    [Description("When it was recorded.")]
    public DateTimeOffset RecordedAt => outcome.At;

    [Description("Who recorded it, by the label of the key.")]
    public string RecordedBy => outcome.By;

    [Description("Why ranking learns nothing of it, in a sentence: the part does not fit, something that decides was not known, or it does not count; null where it does learn.")]
    public string? WhyNothingIsLearnt([FromServices] OutcomeRecords records) => records.WhyNothingIsLearnt(outcome);

    private static string? Null(string text) => text.Length == 0 ? null : text;
}

[Description("What was given of one field, as it was given.")]
internal sealed class FieldText(string name, string label, string text)
{
    [Description("The field's name in the family's own types.")]
    public string Name => name;

    [Description("What a person calls it.")]
    public string Label => label;

    [Description("Its text.")]
    public string Text => text;

    internal static IEnumerable<FieldText> AllOf(Shape shape, IEnumerable<Store.NamedText> texts) => texts.Select(text => new FieldText(text.Name, shape.Find(text.Name)?.Label ?? text.Name, text.Text));
}

[Description("A page of outcomes, the newest record first.")]
internal sealed class OutcomeConnection(OutcomePage page)
{
    [Description("The outcomes of this page.")]
    public IReadOnlyList<OutcomeEdge> Edges { get; } = [.. page.Outcomes.Select(outcome => new OutcomeEdge(outcome))];

    [Description("Where this page stands.")]
    public PageInfo PageInfo => new(page.HasNext, page.HasPrevious, Edges is [var start, ..] ? start.Cursor : null, Edges is [.., var end] ? end.Cursor : null);
}

[Description("An outcome with its place in the list.")]
internal sealed class OutcomeEdge(StoredOutcome outcome)
{
    [Description("Its place, to be given as after.")]
    public string Cursor => OutcomeRecords.Cursor(outcome);

    [Description("The outcome.")]
    public OutcomeOut Node => new(outcome);
}
