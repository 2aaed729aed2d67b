using GraphQL.Types;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Graph.Given;

/// <summary>A shape's fields, each as text: the core reads them and complains of all at once, where a scalar of the library would lose the reason.</summary>
internal sealed class TextsInput : InputObjectGraphType
{
    public TextsInput(string name, string description, Shape shape)
    {
        (Name, Description) = (name, description);
        foreach (var field in shape.Fields) Field<StringGraphType>(field.Name).Description(field.Describe());
    }

    /// <summary>The texts of a parsed value; none when the field was left out or null.</summary>
    public static IReadOnlyList<NamedText> Of(IDictionary<string, object?> value, string name) => value.TryGetValue(name, out var texts) && texts is IReadOnlyList<NamedText> given ? given : [];

    public override object ParseDictionary(IDictionary<string, object?> value) =>
        value.Where(pair => pair.Value is not null).Select(pair => new NamedText(pair.Key, (string)pair.Value!)).ToList();
}
