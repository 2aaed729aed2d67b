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
    private readonly Lazy<Access> access;

    internal Field(PropertyInfo property, FieldAttribute attribute, int place)
    {
        var type = property.PropertyType;
        access = new(() => (Access)Activator.CreateInstance(typeof(Access<,>).MakeGenericType(property.DeclaringType!, type), property)!);
        Form = TextForms.Of(Nullable.GetUnderlyingType(type) ?? type);
        Name = char.ToLowerInvariant(property.Name[0]) + property.Name[1..];
        (Label, Help, Group, Tool, Place) = (attribute.Label, attribute.Help, attribute.Group, attribute.Tool, place);
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

    /// <summary>Its place among the fields of its record, from 0.</summary>
    public int Place { get; }

    /// <summary>How its value is read and written.</summary>
    public TextForm Form { get; }

    /// <summary>The field's value in a record; null when unknown.</summary>
    public object? Get(object record) => access.Value.Get(record);

    /// <summary>The field's value as text; null when unknown.</summary>
    public string? TextOf(object record, Units units = Units.AsGiven) => Get(record) is { } value ? Form.WriteAny(value, units) : null;

    /// <summary>A text of this field, such as a deduction's, in the units that were chosen; a text that does not read stays as it is.</summary>
    public string InUnits(string text, Units units)
    {
        var reading = Form.ReadAny(text);
        return reading.IsRead && units != Units.AsGiven ? Form.WriteAny(reading.Value, units) : text;
    }

    /// <summary>Puts a value into a record that is being made and that nobody else has seen.</summary>
    internal void Set(object record, object? value) => access.Value.Set(record, value);

    /// <summary>How its value is got and put: a read need does so a hundred times.</summary>
    private abstract class Access
    {
        public abstract object? Get(object record);

        public abstract void Set(object record, object? value);
    }

    private sealed class Access<TRecord, TValue>(PropertyInfo property) : Access
    {
        private readonly Func<TRecord, TValue> get = property.GetMethod!.CreateDelegate<Func<TRecord, TValue>>();
        private readonly Action<TRecord, TValue> set = property.SetMethod!.CreateDelegate<Action<TRecord, TValue>>();

        public override object? Get(object record) => get((TRecord)record);

        public override void Set(object record, object? value) => set((TRecord)record, (TValue)value!);
    }
}
