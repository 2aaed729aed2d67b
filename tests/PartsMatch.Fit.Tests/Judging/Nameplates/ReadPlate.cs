namespace PartsMatch.Fit.Tests.Judging.Nameplates;

/// <summary>Reads a plate's text, so that a case is one line: fields as name=text, semicolons between.</summary>
internal static class ReadPlate
{
    /// <summary>The fields, after asserting that no two of them contradict each other.</summary>
    public static string Fields(string kind, string plate)
    {
        var reading = Families.Find(kind)!.ReadNameplate(plate);
        reading.Contradictions.ShouldBeEmpty();
        return string.Join("; ", reading.Fields.Select(field => $"{field.Field.Name}={field.Text}"));
    }

    /// <summary>The same, after asserting that nothing was left over either.</summary>
    public static string Whole(string kind, string plate)
    {
        Families.Find(kind)!.ReadNameplate(plate).Leftovers.ShouldBeEmpty();
        return Fields(kind, plate);
    }
}
