using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging;

/// <summary>Puts deductions into a record of readings. A reading is never overridden, nor an earlier deduction by a later one.</summary>
public static class Deducing
{
    /// <summary>Asks each rule in turn what follows from the record so far.</summary>
    /// <param name="record">The readings: a spec or a site.</param>
    /// <param name="rules">Each gives what follows; a later rule sees what earlier ones found.</param>
    /// <returns>A new record, and the deductions that filled a gap in it.</returns>
    public static (T Record, IReadOnlyList<Deduction> Deductions) Apply<T>(T record, params IReadOnlyList<Func<T, IEnumerable<Deduction>>> rules)
        where T : class, new()
    {
        var shape = Shape<T>.Of;
        var found = new List<Deduction>();
        foreach (var rule in rules)
        {
            // A rule sees the record as it was when it was asked, and none of what it adds.
            T? filled = null;
            foreach (var deduction in rule(record))
            {
                var field = shape.Find(deduction.Field)!;
                if (field.Get(filled ?? record) is not null) continue;
                filled ??= Copy(record);
                field.Set(filled, field.Form.ReadAny(deduction.Text).Value!);
                found.Add(deduction);
            }

            record = filled ?? record;
        }

        return (record, found);
    }

    /// <summary>The text of a value, as its field reads it.</summary>
    public static string Text<T>(T value)
        where T : notnull => TextForms.Of<T>().Write(value);

    private static T Copy<T>(T record)
        where T : class => (T)(object)(record switch
        {
            Spec spec => spec with { },
            Site site => site with { },
            _ => throw new ArgumentException("Only a spec or a site is deduced of.", nameof(record)),
        });
}
