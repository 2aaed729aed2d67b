using System.Reflection;
using System.Runtime.CompilerServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Ranking.Columns;

/// <summary>The forms of all that a facet may hold.</summary>
internal static class ValueForms
{
    private static readonly Dictionary<Type, FacetForm> Plain = new()
    {
        [typeof(bool)] = new PlainForm<bool>((to, value) => to.Write(value), from => from.ReadBoolean()),
        [typeof(char)] = new PlainForm<char>((to, value) => to.Write7BitEncodedInt(value), from => (char)from.Read7BitEncodedInt()),
        [typeof(int)] = new PlainForm<int>((to, value) => to.Write7BitEncodedInt(value), from => from.Read7BitEncodedInt()),
        [typeof(double)] = new DoubleForm(),
    };

    /// <summary>Makes the form of a type.</summary>
    public static FacetForm Make(Type type)
    {
        if (Plain.TryGetValue(type, out var plain)) return plain;
        var form = type.IsEnum ? typeof(EnumForm<>).MakeGenericType(type)
            : Nullable.GetUnderlyingType(type) is { } known ? typeof(NullableForm<>).MakeGenericType(known)
            : type.IsConstructedGenericType && type.GetGenericTypeDefinition() == typeof(Sequence<>) ? typeof(SequenceForm<>).MakeGenericType(type.GenericTypeArguments)
            : type is { IsValueType: true, IsPrimitive: false } ? typeof(RecordForm<>).MakeGenericType(type)
            : throw new NotSupportedException($"A facet cannot hold a {type.Name}.");
        return (FacetForm)Activator.CreateInstance(form, BindingFlags.Instance | BindingFlags.Public | BindingFlags.DoNotWrapExceptions, null, null, null)!;
    }
}

/// <summary>A value that the runtime writes itself.</summary>
internal sealed class PlainForm<T>(Action<BinaryWriter, T> write, Func<BinaryReader, T> read) : ValueForm<T>
{
    /// <inheritdoc/>
    public override void Write(BinaryWriter to, T value) => write(to, value);

    /// <inheritdoc/>
    public override T Read(BinaryReader from) => read(from);
}

/// <summary>A number. Facets are rounded to the trade's precision: most are so many thousandths, and take two or three bytes instead of eight.</summary>
internal sealed class DoubleForm : ValueForm<double>
{
    private const double Parts = 1000;

    /// <summary>Thousandths up to here take fewer bytes than the number itself.</summary>
    private const double MostParts = 1L << 40;

    /// <inheritdoc/>
    public override void Write(BinaryWriter to, double value)
    {
        var parts = Math.Round(value * Parts);
        if (Math.Abs(parts) < MostParts && parts / Parts == value)
        {
            // The sign goes below, so that small numbers stay short; the lowest bit says that these are thousandths. Zero has no sign: −0 equals 0.
            var whole = (long)parts;
            to.Write7BitEncodedInt64(((whole << 1) ^ (whole >> 63)) << 1);
            return;
        }

        to.Write7BitEncodedInt64(1);
        to.Write(double.IsNaN(value) ? double.NaN : value);
    }

    /// <inheritdoc/>
    public override double Read(BinaryReader from)
    {
        var said = from.Read7BitEncodedInt64();
        if (said == 1) return from.ReadDouble();
        var folded = said >> 1;
        return ((folded >> 1) ^ -(folded & 1)) / Parts;
    }
}

/// <summary>A choice.</summary>
internal sealed class EnumForm<T> : ValueForm<T>
    where T : struct, Enum
{
    /// <inheritdoc/>
    public override void Write(BinaryWriter to, T value) => to.Write7BitEncodedInt(Unsafe.BitCast<T, int>(value));

    /// <inheritdoc/>
    public override T Read(BinaryReader from) => Unsafe.BitCast<int, T>(from.Read7BitEncodedInt());
}

/// <summary>A value that may be unknown.</summary>
internal sealed class NullableForm<T> : ValueForm<T?>
    where T : struct
{
    private readonly ValueForm<T> known = (ValueForm<T>)FacetForm.Of(typeof(T));

    /// <inheritdoc/>
    public override void Write(BinaryWriter to, T? value)
    {
        to.Write(value.HasValue);
        if (value is { } one) known.Write(to, one);
    }

    /// <inheritdoc/>
    public override T? Read(BinaryReader from) => from.ReadBoolean() ? known.Read(from) : null;
}

/// <summary>A few values in order.</summary>
internal sealed class SequenceForm<T> : ValueForm<Sequence<T>>
    where T : struct, IEquatable<T>
{
    private readonly ValueForm<T> each = (ValueForm<T>)FacetForm.Of(typeof(T));

    /// <inheritdoc/>
    public override void Write(BinaryWriter to, Sequence<T> value)
    {
        to.Write7BitEncodedInt(value.Count);
        foreach (var one in value.AsSpan()) each.Write(to, one);
    }

    /// <inheritdoc/>
    public override Sequence<T> Read(BinaryReader from)
    {
        var all = new T[from.Read7BitEncodedInt()];
        foreach (ref var one in all.AsSpan()) one = each.Read(from);
        return Sequence.Of<T>(all);
    }
}
