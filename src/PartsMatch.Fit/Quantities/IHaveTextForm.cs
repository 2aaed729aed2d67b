namespace PartsMatch.Fit.Quantities;

/// <summary>A type of this project that says itself how it is read and written.</summary>
/// <typeparam name="TSelf">The type.</typeparam>
public interface IHaveTextForm<TSelf>
    where TSelf : notnull, IHaveTextForm<TSelf>
{
    /// <summary>How its values are read and written.</summary>
    static abstract TextForm<TSelf> Form { get; }
}
