using System.Globalization;
using CsvHelper;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>Tables of saturation computed by a second program that solves the full equations of state (and not by the code under test), embedded beside this file.</summary>
internal static class RefrigerantFacts
{
    /// <summary>The rows of a table.</summary>
    public static IReadOnlyList<RefrigerantFact> Read(string name)
    {
        using var reader = new StreamReader(typeof(RefrigerantFacts).Assembly.GetManifestResourceStream($"PartsMatch.Fit.Tests.Physics.refrigerants-{name}.csv")!);
        using var csv = new CsvReader(reader, CultureInfo.InvariantCulture);
        return [.. csv.GetRecords<dynamic>().Select(row => new RefrigerantFact((IDictionary<string, object>)row))];
    }
}

/// <summary>One row of such a table.</summary>
internal sealed class RefrigerantFact(IDictionary<string, object> cells)
{
    public string Refrigerant => (string)cells["refrigerant"];

    public double Number(string column) => double.Parse((string)cells[column], CultureInfo.InvariantCulture);

    public override string ToString() => string.Join(' ', cells.Values);
}
