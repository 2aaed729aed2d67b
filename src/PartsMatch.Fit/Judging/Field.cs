using System.Reflection;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging;

/// <summary>A field's label and help, on the property that holds it.</summary>
/// <param name="label">What a person calls it.</param>
/// <param name="help">How to read or measure it, in one or two sentences.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class FieldAttribute(string label, string help) : Attribute
{
    /// <summary>What a person calls it.</summary>
    public string Label => label;

    /// <summary>How to read or measure it.</summary>
    public string Help => help;

    /// <summary>The heading under which it stands, as a person reads a plate.</summary>
    public string Group { get; init; } = "General";

    /// <summary>With what it is read.</summary>
    public Tool Tool { get; init; } = Tool.Look;

    /// <summary>An example of the field's own, where its form's would mislead; null to take the form's.</summary>
    public string? Example { get; init; }
}

/// <summary>One field of a spec or site, as edges see it.</summary>
public sealed class Field
{
    private readonly MethodInvoker getter;
    private readonly MethodInvoker setter;

    internal Field(PropertyInfo property, FieldAttribute attribute)
    {
        (getter, setter) = (MethodInvoker.Create(property.GetMethod!), MethodInvoker.Create(property.SetMethod!));
        var type = property.PropertyType;
        Form = TextForms.Of(Nullable.GetUnderlyingType(type) ?? type);
        Name = char.ToLowerInvariant(property.Name[0]) + property.Name[1..];
        (Label, Help, Group, Tool) = (attribute.Label, attribute.Help, attribute.Group, attribute.Tool);
        Example = attribute.Example ?? Form.Example;
        Expected = Form.Expected.Replace(Form.Example, Example, StringComparison.Ordinal);
    }

    /// <summary>Its name at every edge, in camel case: shaftDiameter.</summary>
    public string Name { get; }

    /// <summary>What a person calls it.</summary>
    public string Label { get; }

    /// <summary>How to read or measure it.</summary>
    public string Help { get; }

    /// <summary>The heading under which it stands.</summary>
    public string Group { get; }

    /// <summary>With what it is read.</summary>
    public Tool Tool { get; }

    /// <summary>A text that reads, typical of the field.</summary>
    public string Example { get; }

    /// <summary>What a right text is, with the field's example.</summary>
    public string Expected { get; }

    /// <summary>How its value is read and written.</summary>
    public TextForm Form { get; }

    /// <summary>The field's value in a record; null when unknown.</summary>
    public object? Get(object record) => getter.Invoke(record);

    /// <summary>The field's value as text; null when unknown.</summary>
    public string? TextOf(object record, Units units = Units.AsGiven) => Get(record) is { } value ? Form.WriteAny(value, units) : null;

    /// <summary>A text of this field, such as a deduction's, in the units that were chosen; a text that does not read stays as it is.</summary>
    public string InUnits(string text, Units units)
    {
        var reading = Form.ReadAny(text);
        return reading.IsRead && units != Units.AsGiven ? Form.WriteAny(reading.Value, units) : text;
    }

    /// <summary>Puts a value into a record that is being made and that nobody else has seen.</summary>
    internal void Set(object record, object? value) => setter.Invoke(record, value);
}
