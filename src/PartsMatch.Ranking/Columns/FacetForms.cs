using System.Reflection;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Columns;

/// <summary>The forms of all that a facet may hold.</summary>
internal static class FacetForms
{
    private static readonly Dictionary<Type, FacetForm> Plain = new()
    {
        [typeof(bool)] = new PlainForm((to, value) => to.Write((bool)value), from => from.ReadBoolean()),
        [typeof(char)] = new PlainForm((to, value) => to.Write7BitEncodedInt((char)value), from => (char)from.Read7BitEncodedInt()),
        [typeof(int)] = new PlainForm((to, value) => to.Write7BitEncodedInt((int)value), from => from.Read7BitEncodedInt()),
        [typeof(double)] = new DoubleForm(),
    };

    /// <summary>Makes the form of a type.</summary>
    public static FacetForm Make(Type type)
    {
        if (Plain.TryGetValue(type, out var plain)) return plain;
        if (type.IsEnum) return new ChoiceForm(type);
        if (Nullable.GetUnderlyingType(type) is { } known) return new NullableForm(FacetForm.Of(known));
        if (type.IsConstructedGenericType && type.GetGenericTypeDefinition() == typeof(Sequence<>)) return (FacetForm)Activator.CreateInstance(typeof(SequenceForm<>).MakeGenericType(type.GenericTypeArguments), BindingFlags.Instance | BindingFlags.Public | BindingFlags.DoNotWrapExceptions, null, null, null)!;
        return type is { IsValueType: true, IsPrimitive: false } ? new RecordForm(type) : throw new NotSupportedException($"A facet cannot hold a {type.Name}.");
    }
}

/// <summary>A value that the runtime writes itself.</summary>
internal sealed class PlainForm(Action<BinaryWriter, object> write, Func<BinaryReader, object> read) : FacetForm
{
    /// <inheritdoc/>
    public override void Write(BinaryWriter to, object? value) => write(to, value!);

    /// <inheritdoc/>
    public override object Read(BinaryReader from) => read(from);
}

/// <summary>A number. Facets are rounded to the trade's precision: most are so many thousandths, and take two or three bytes instead of eight.</summary>
internal sealed class DoubleForm : FacetForm
{
    private const double Parts = 1000;

    /// <summary>Thousandths up to here take fewer bytes than the number itself.</summary>
    private const double MostParts = 1L << 40;

    /// <inheritdoc/>
    public override void Write(BinaryWriter to, object? value)
    {
        var number = (double)value!;
        var parts = Math.Round(number * Parts);
        if (Math.Abs(parts) < MostParts && parts / Parts == number)
        {
            // The sign goes below, so that small numbers stay short; the lowest bit says that these are thousandths. Zero has no sign: −0 equals 0.
            var whole = (long)parts;
            to.Write7BitEncodedInt64(((whole << 1) ^ (whole >> 63)) << 1);
            return;
        }

        to.Write7BitEncodedInt64(1);
        to.Write(double.IsNaN(number) ? double.NaN : number);
    }

    /// <inheritdoc/>
    public override object Read(BinaryReader from)
    {
        var said = from.Read7BitEncodedInt64();
        if (said == 1) return from.ReadDouble();
        var folded = said >> 1;
        return ((folded >> 1) ^ -(folded & 1)) / Parts;
    }
}

/// <summary>A choice, as its number.</summary>
internal sealed class ChoiceForm(Type type) : FacetForm
{
    /// <inheritdoc/>
    public override void Write(BinaryWriter to, object? value) => to.Write7BitEncodedInt((int)value!);

    /// <inheritdoc/>
    public override object Read(BinaryReader from) => Enum.ToObject(type, from.Read7BitEncodedInt());
}

/// <summary>A value that may be unknown.</summary>
internal sealed class NullableForm(FacetForm known) : FacetForm
{
    /// <inheritdoc/>
    public override void Write(BinaryWriter to, object? value)
    {
        to.Write(value is not null);
        if (value is not null) known.Write(to, value);
    }

    /// <inheritdoc/>
    public override object? Read(BinaryReader from) => from.ReadBoolean() ? known.Read(from) : null;
}

/// <summary>A few values in order.</summary>
internal sealed class SequenceForm<T> : FacetForm
    where T : struct, IEquatable<T>
{
    private readonly FacetForm each = Of(typeof(T));

    /// <inheritdoc/>
    public override void Write(BinaryWriter to, object? value)
    {
        var all = (Sequence<T>)value!;
        to.Write7BitEncodedInt(all.Count);
        foreach (var one in all.AsSpan()) each.Write(to, one);
    }

    /// <inheritdoc/>
    public override object Read(BinaryReader from)
    {
        var all = new T[from.Read7BitEncodedInt()];
        foreach (ref var one in all.AsSpan()) one = (T)each.Read(from)!;
        return Sequence.Of<T>(all);
    }
}
