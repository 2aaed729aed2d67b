using System.ComponentModel;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Service.Graph.Results;

[Description("A value as the trade writes it, and as a number where it is a single one.")]
internal class FieldValue(Field field, object value, Units units)
{
    private readonly Figure? _figure = field.Form.FigureOf(value, units);

    [Description("As the trade writes it, with its unit: 1/4 hp, 208-230 V.")]
    public string Text { get; } = field.Form.WriteAny(value, units);

    [Description("The number, in the unit given beside it; null for a choice, for words, and for several numbers.")]
    public double? Value => _figure?.Value;

    [Description("The number's unit; null when it has none.")]
    public string? Unit => _figure?.Unit;

    internal static FieldValue? Of(Field field, Spec spec, Units units) => field.Get(spec) is { } value ? new(field, value, units) : null;
}

[Description("A known field of a part, with what a person needs to make sense of it.")]
internal sealed class PartField(Field field, object value, Units units) : FieldValue(field, value, units)
{
    private readonly Field _field = field;

    [Description("Its name in the family's own types.")]
    public string Name => _field.Name;

    [Description("What a person calls it.")]
    public string Label => _field.Label;

    [Description("How to read or measure it.")]
    public string Help => _field.Help;

    [Description("The heading under which it stands.")]
    public string Group => _field.Group;

    internal static IReadOnlyList<PartField> AllOf(Family family, Spec spec, Units units) =>
        [.. family.SpecShape.Fields.Select(field => (field, value: field.Get(spec))).Where(pair => pair.value is not null).Select(pair => new PartField(pair.field, pair.value!, units))];
}
