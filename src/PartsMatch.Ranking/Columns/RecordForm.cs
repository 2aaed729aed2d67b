using System.Reflection;
using System.Runtime.CompilerServices;

namespace PartsMatch.Ranking.Columns;

/// <summary>A record: all that it keeps, one behind the other, in the order in which it is declared.</summary>
internal sealed class RecordForm : FacetForm
{
    private readonly Type type;
    private readonly (FieldInfo Field, FacetForm Form)[] kept;

    /// <summary>Makes the form of a record.</summary>
    /// <param name="type">A value type.</param>
    /// <exception cref="NotSupportedException">It keeps what no facet may hold.</exception>
    public RecordForm(Type type)
    {
        this.type = type;
        kept = [.. type.GetFields(BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public).OrderBy(field => field.MetadataToken).Select(field => (field, Of(field.FieldType)))];
    }

    /// <inheritdoc/>
    public override void Write(BinaryWriter to, object? value)
    {
        foreach (var (field, form) in kept) form.Write(to, field.GetValue(value));
    }

    /// <inheritdoc/>
    public override object Read(BinaryReader from)
    {
        var record = RuntimeHelpers.GetUninitializedObject(type);
        foreach (var (field, form) in kept) field.SetValue(record, form.Read(from));
        return record;
    }
}
