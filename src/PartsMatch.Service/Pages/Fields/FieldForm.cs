using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Pages.Fields;

/// <summary>The inputs of one record: its fields by the headings they stand under, with what was typed, what is wrong with it, and what is known besides.</summary>
/// <param name="Prefix">Stands before each field's name, with a dot.</param>
/// <param name="Shape">The record's fields.</param>
/// <param name="Texts">What was typed.</param>
/// <param name="Complaints">What is wrong.</param>
public sealed record FieldForm(string Prefix, Shape Shape, IReadOnlyList<NamedText> Texts, Complaints Complaints)
{
    /// <summary>What is known of a field that nobody typed, and from what: "6: 1075 rpm at 60 Hz fits no other count".</summary>
    public IReadOnlyDictionary<string, string> Known { get; init; } = new Dictionary<string, string>();

    public IEnumerable<IGrouping<string, Field>> Groups => Shape.Fields.GroupBy(one => one.Group);

    public string InputOf(Field field) => $"{Prefix}.{field.Name}";

    public string TextOf(Field field) => Texts.FirstOrDefault(text => text.Name.Equals(field.Name, StringComparison.OrdinalIgnoreCase))?.Text ?? string.Empty;

    /// <summary>Typed texts of fields that there are none of: shown, so that they can be seen and taken out.</summary>
    public IReadOnlyList<NamedText> Strays => [.. Texts.Where(text => Shape.Find(text.Name) is null)];

    public bool AnyTyped(IEnumerable<Field> fields) => fields.Any(field => TextOf(field).Length > 0);

    public bool AnyWrong(IEnumerable<Field> fields) => fields.Any(field => Complaints.At(InputOf(field)).Count > 0);
}
