using System.Reflection;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Judging;

/// <summary>The fields of a spec or site record, in their order, and how it is read from named texts.</summary>
/// <remarks>Made once from the record's properties that carry <see cref="FieldAttribute"/>; a new field is a new property, and nothing else.</remarks>
public abstract class Shape
{
    private readonly Dictionary<string, Field> byName;

    private protected Shape(Type record)
    {
        Fields = [.. record.GetProperties(BindingFlags.Public | BindingFlags.Instance)
            .Select(property => (property, attribute: property.GetCustomAttribute<FieldAttribute>()))
            .Where(pair => pair.attribute is not null)
            .OrderByDescending(pair => Depth(pair.property.DeclaringType!)).ThenBy(pair => pair.property.MetadataToken)
            .Select((pair, place) => new Field(pair.property, pair.attribute!, place))];
        byName = Fields.ToDictionary(field => field.Name, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>The fields, in the order in which the record declares them; what it shares with others of its like, in a record below it, stands behind its own.</summary>
    public IReadOnlyList<Field> Fields { get; }

    /// <summary>The field of a name, in any case of letters; null when there is none.</summary>
    public Field? Find(string name) => byName.GetValueOrDefault(name);

    /// <summary>How many more of a record's figures were written in US units than in SI; negative where more were in SI. Figures that are the same in both do not count.</summary>
    /// <param name="record">The record.</param>
    public int UnitsLean(object record) => Fields.Sum(field => field.TextOf(record) is not { } given ? 0
        : Convert.ToInt32(given == field.TextOf(record, Units.Us)) - Convert.ToInt32(given == field.TextOf(record, Units.Si)));

    /// <summary>Writes what is known, in the fields' order; unknown fields are left out.</summary>
    public IReadOnlyList<NamedText> Write(object record, Units units = Units.AsGiven) =>
        [.. Fields.Select(field => (field, text: field.TextOf(record, units))).Where(pair => pair.text is not null).Select(pair => new NamedText(pair.field.Name, pair.text!))];

    /// <summary>Fills a new record from named texts; blank texts are unknowns.</summary>
    private protected List<Complaint> Fill(object record, IEnumerable<NamedText> texts)
    {
        var complaints = new List<Complaint>();
        Span<bool> given = stackalloc bool[Fields.Count];
        foreach (var (name, text) in texts)
        {
            if (string.IsNullOrWhiteSpace(text)) continue;
            if (Find(name) is not { } field)
            {
                complaints.Add(new(ComplaintCode.UnknownField, name, text, $"There is no field “{name}”.{Nearest(name)}"));
            }
            else if (given[field.Place])
            {
                complaints.Add(new(ComplaintCode.GivenTwice, field.Name, text, $"{field.Label} is given twice; give it once."));
            }
            else
            {
                given[field.Place] = true;
                if (UnseenSigns.Complaint(text.Trim()) is { } unseen) complaints.Add(new(ComplaintCode.Unreadable, field.Name, text, $"{field.Label}: {unseen}"));
                else if (field.Form.ReadAny(text) is var reading && reading.IsRead) field.Set(record, reading.Value);
                else complaints.Add(new(ComplaintCode.Unreadable, field.Name, text, $"{field.Label}: {reading.Wrong.Replace(field.Form.Expected, field.Expected, StringComparison.Ordinal)}."));
            }
        }

        return complaints;
    }

    private static int Depth(Type record) => record.BaseType is { } below ? Depth(below) + 1 : 0;

    /// <summary>Names the fields that share the most letters' run with a wrong name, so that a slip is easily mended.</summary>
    private string Nearest(string name)
    {
        var near = Fields.Where(field => field.Name.Contains(name, StringComparison.OrdinalIgnoreCase) || name.Contains(field.Name, StringComparison.OrdinalIgnoreCase)
            || field.Label.Contains(name, StringComparison.OrdinalIgnoreCase)).Select(field => field.Name).Take(3).ToList();
        return near.Count > 0 ? $" Did you mean {string.Join(" or ", near)}?" : $" The fields are: {string.Join(", ", Fields.Select(field => field.Name))}.";
    }
}

/// <summary>The shape of one record type.</summary>
/// <typeparam name="T">A record of nullable fields.</typeparam>
public sealed class Shape<T> : Shape
    where T : class, new()
{
    private Shape()
        : base(typeof(T))
    {
    }

    /// <summary>The shape, made at first use.</summary>
    public static Shape<T> Of { get; } = new();

    /// <summary>Reads named texts into a record, with all complaints at once; what could be read stands in the record all the same.</summary>
    public (T Record, IReadOnlyList<Complaint> Complaints) Read(IEnumerable<NamedText> texts)
    {
        var record = new T();
        return (record, Fill(record, texts));
    }
}
