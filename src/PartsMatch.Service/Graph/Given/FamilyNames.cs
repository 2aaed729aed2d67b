using PartsMatch.Fit.Judging;

namespace PartsMatch.Service.Graph.Given;

/// <summary>What the schema calls a family's types and says of its fields: all of it from the family and its shapes.</summary>
internal static class FamilyNames
{
    /// <summary>The kind, capitalised, and what is to be named: Spec, SiteInput, NeedInput.</summary>
    public static string TypeName(this Family family, string what) => char.ToUpperInvariant(family.Kind[0]) + family.Kind[1..] + what;

    /// <summary>"Power. HP on the plate. Written as a power, such as 1/4 hp."</summary>
    public static string Describe(this Field field)
    {
        var form = field.Form;
        var example = field.Expected.Contains(field.Example, StringComparison.Ordinal) ? string.Empty : $", such as {field.Example}";
        return $"{field.Label}. {field.Help} Written as {field.Expected}{example}.";
    }
}
