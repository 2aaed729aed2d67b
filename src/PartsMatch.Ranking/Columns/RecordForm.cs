using System.Linq.Expressions;
using System.Reflection;

namespace PartsMatch.Ranking.Columns;

/// <summary>A record: what it is made of, one behind the other.</summary>
internal sealed class RecordForm<T> : ValueForm<T>
    where T : struct
{
    private readonly Action<BinaryWriter, T> write;
    private readonly Func<BinaryReader, T> read;

    public RecordForm()
    {
        var maker = typeof(T).GetConstructors().MaxBy(one => one.GetParameters().Length);
        List<(PropertyInfo? Property, FacetForm Form)> parts = [.. maker?.GetParameters().Select(one => (typeof(T).GetProperty(one.Name!, one.ParameterType), Of(one.ParameterType))) ?? []];

        // What is kept beside the parameters, or of them under another name, would be lost.
        var kept = typeof(T).GetFields(BindingFlags.Instance | BindingFlags.NonPublic | BindingFlags.Public).Length;
        if (parts.Count != kept || parts.Exists(part => part.Property is null)) throw new NotSupportedException($"{typeof(T).Name} is not all that its parameters say.");
        var (to, from, value) = (Expression.Parameter(typeof(BinaryWriter)), Expression.Parameter(typeof(BinaryReader)), Expression.Parameter(typeof(T)));
        write = Expression.Lambda<Action<BinaryWriter, T>>(
            Expression.Block(typeof(void), parts.Select(part => Expression.Call(Expression.Constant(part.Form), nameof(Write), null, to, Expression.Property(value, part.Property!)))), to, value).Compile();
        read = Expression.Lambda<Func<BinaryReader, T>>(Expression.New(maker!, parts.Select(part => Expression.Call(Expression.Constant(part.Form), nameof(Read), null, from))), from).Compile();
    }

    /// <inheritdoc/>
    public override void Write(BinaryWriter to, T value) => write(to, value);

    /// <inheritdoc/>
    public override T Read(BinaryReader from) => read(from);
}
