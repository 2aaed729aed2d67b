namespace PartsMatch.Fit.Judging;

/// <summary>Puts together what several readings say of the same plate.</summary>
public static class PlateMerge
{
    private static readonly Source TypedOutranks = new("What was typed field by field stands before the plate's text, and that before the catalogue", SourceStatus.Practice);

    /// <summary>Merges readings, the first that knows a field winning, and tells where a later one says otherwise.</summary>
    /// <param name="shape">The shape of the records.</param>
    /// <param name="first">The reading that outranks the others.</param>
    /// <param name="others">The others, in falling rank; null ones say nothing.</param>
    /// <returns>A new record, and one contradiction for each field in which two readings differ.</returns>
    public static (T Merged, IReadOnlyList<Contradiction> Disagreements) Merge<T>(Shape shape, T first, params IEnumerable<T?> others)
        where T : Spec, new()
    {
        var merged = new T();
        var disagreements = new List<Contradiction>();
        var ranked = others.Prepend(first).OfType<T>().ToList();
        foreach (var field in shape.Fields)
        {
            object? known = null;
            foreach (var reading in ranked)
            {
                if (field.Get(reading) is not { } value) continue;
                if (known is null)
                {
                    known = value;
                    field.Set(merged, known);
                }
                else if (!value.Equals(known))
                {
                    disagreements.Add(new(
                        [field.Name],
                        $"{field.Label}: {field.Form.WriteAny(known, Quantities.Units.AsGiven)} is used, but it also reads {field.Form.WriteAny(value, Quantities.Units.AsGiven)}.",
                        TypedOutranks));
                    break;
                }
            }
        }

        return (merged, disagreements);
    }
}
