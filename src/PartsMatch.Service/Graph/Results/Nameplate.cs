using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Graph.Results;

[Name("NameplateReading")]
[Description("What a plate's text says.")]
internal sealed class NameplateOut(Family family, NameplateReading reading)
{
    [Description("What was read, with where it stood, and what follows from it.")]
    public IEnumerable<NameplateField> Fields =>
    [
        .. reading.Fields.Select(read => new NameplateField(read)),
        .. family.Deduce(reading.Plate).Deductions.Where(one => one.Side == Side.Plate).Select(one => new NameplateField(family, one)),
    ];

    [Description("Text that could not be placed.")]
    public IEnumerable<SpanOut> Leftovers => reading.Leftovers.Select(span => new SpanOut(span));

    [Description("Readings that cannot all be true.")]
    public IEnumerable<ContradictionOut> Contradictions => [.. reading.Contradictions.Concat(family.Contradictions(reading.Plate)).Select(one => new ContradictionOut(one))];

    [Description("Fields that are named on the plate, but whose value could not be read.")]
    public IEnumerable<ComplaintOut> Complaints => reading.Complaints.Select(one => new ComplaintOut(one));
}

[Description("A field of a plate, read or deduced.")]
internal sealed class NameplateField
{
    private readonly Field _field;
    private readonly ReadField? _read;
    private readonly Deduction? _deduction;

    public NameplateField(ReadField read) => (_field, _read, Text) = (read.Field, read, read.Text);

    public NameplateField(Family family, Deduction deduction) => (_field, _deduction, Text) = (family.SpecShape.Find(deduction.Field)!, deduction, deduction.Text);

    [Description("Its name in the family's own types.")]
    public string Name => _field.Name;

    [Description("What a person calls it.")]
    public string Label => _field.Label;

    [Description("Its value, as it is written in the family's own types.")]
    public string Text { get; }

    [Description("Where in the plate's text it begins, counted in UTF-16 code units from 0; null when it is deduced.")]
    public int? From => _read?.Spans.Min(span => span.From);

    [Description("How far it reaches from there, in UTF-16 code units; words of other fields may lie between.")]
    public int? Length => _read is null ? null : _read.Spans.Max(span => span.From + span.Length) - From;

    [Description("The very pieces of the plate's text that it came from.")]
    public IEnumerable<SpanOut> Spans => (_read?.Spans ?? []).Select(span => new SpanOut(span));

    [Description("What was typed where a letter stood for a digit, and what it was read as, such as 6O read as 60; null when nothing was mended.")]
    public string? Mended => _read is { Mended: { Count: > 0 } mended } ? string.Join("; ", mended.Select(one => $"{one.Typed} read as {one.ReadAs}")) : null;

    [Description("Whether it follows from other fields rather than being read.")]
    public bool Deduced => _deduction is not null;

    [Description("The table or rule it follows from; null when it was read.")]
    public SourceOut? Source => _deduction is null ? null : new(_deduction.Source);
}

[Name("TextSpan")]
[Description("A piece of a text.")]
internal sealed class SpanOut(TextSpan span)
{
    [Description("The piece as it stands there.")]
    public string Text => span.Text;

    [Description("Where it begins, counted in UTF-16 code units from 0.")]
    public int From => span.From;

    [Description("How long it is, in UTF-16 code units.")]
    public int Length => span.Length;
}

[Name("Contradiction")]
[Description("Readings that cannot all be true.")]
internal sealed class ContradictionOut(Contradiction contradiction)
{
    [Description("The names of the fields of the plate that disagree.")]
    public IReadOnlyList<string> Fields => contradiction.Fields;

    [Description("The names of the fields of the site that disagree with them; none where the plate contradicts itself.")]
    public IReadOnlyList<string> SiteFields => contradiction.SiteFields;

    [Description("What disagrees, in plain words.")]
    public string Sentence => contradiction.Sentence;

    [Description("The rule they break.")]
    public SourceOut Source => new(contradiction.Source);
}

[Name("Complaint")]
[Description("What is wrong with a text that was named but not read.")]
internal sealed class ComplaintOut(Complaint complaint)
{
    [Description("The code that programs can rely on.")]
    public string Code => complaint.Code;

    [Description("The field's name.")]
    public string Field => complaint.Field;

    [Description("The text as it was given.")]
    public string Given => complaint.Given;

    [Description("What is wrong and what would be right.")]
    public string Sentence => complaint.Message;
}

[Name("Deduction")]
[Description("A value that follows from others. A reading outranks it.")]
internal sealed class DeductionOut(Deduction deduction)
{
    [Description("Whether it fills the plate or the site.")]
    public Side Side => deduction.Side;

    [Description("The name of the field it fills.")]
    public string Field => deduction.Field;

    [Description("Its value.")]
    public string Text => deduction.Text;

    [Description("What it follows from, in a few words.")]
    public string Because => deduction.Because;

    [Description("The names of the fields it follows from.")]
    public IReadOnlyList<string> From => deduction.From;

    [Description("The table or rule.")]
    public SourceOut Source => new(deduction.Source);
}
