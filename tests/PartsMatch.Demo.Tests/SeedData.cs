using System.Globalization;
using CsvHelper;
using PartsMatch.Fit;
using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Switches.PressureControls;
using PartsMatch.Fit.Switches.Thermostats;

namespace PartsMatch.Demo.Tests;

/// <summary>One row of a committed table, by column.</summary>
public sealed record SeedRow(IReadOnlyDictionary<string, string> Cells)
{
    public string this[string column] => Cells[column];

    public string Number => this["number"];
}

/// <summary>A row of a family's table with its spec.</summary>
public sealed record SeedPart<TSpec>(SeedRow Row, TSpec Spec)
{
    public bool IsDiscontinued => Row["status"] == "discontinued";
}

/// <summary>The committed files, read as any reader of them would.</summary>
public static class SeedData
{
    private static readonly string[] OfThePart = ["number", "maker", "title", "status"];

    public static string Folder { get; } = Path.Combine(Repository.Root, "seed-data");

    public static IReadOnlyList<SeedPart<MotorSpec>> Motors { get; } = Parts<MotorSpec>("motors.csv");

    public static IReadOnlyList<SeedPart<CapacitorSpec>> Capacitors { get; } = Parts<CapacitorSpec>("capacitors.csv");

    public static IReadOnlyList<SeedPart<ContactorSpec>> Contactors { get; } = Parts<ContactorSpec>("contactors.csv");

    public static IReadOnlyList<SeedPart<PressureControlSpec>> PressureControls { get; } = Parts<PressureControlSpec>("pressureControls.csv");

    public static IReadOnlyList<SeedPart<ThermostatSpec>> Thermostats { get; } = Parts<ThermostatSpec>("thermostats.csv");

    /// <summary>The rows of every family's table, by kind.</summary>
    public static ILookup<string, SeedRow> ByKind { get; } = Families.All.SelectMany(family => Table($"{family.Kind}s.csv").Select(row => (family.Kind, Row: row))).ToLookup(one => one.Kind, one => one.Row);

    public static IReadOnlyList<SeedRow> Table(string file)
    {
        using var text = new StreamReader(Path.Combine(Folder, file));
        using var csv = new CsvReader(text, CultureInfo.InvariantCulture);
        csv.Read();
        csv.ReadHeader();
        var rows = new List<SeedRow>();
        while (csv.Read()) rows.Add(new(csv.HeaderRecord!.ToDictionary(head => head, head => csv.GetField(head)!)));
        return rows;
    }

    public static IEnumerable<NamedText> Texts(SeedRow row) => row.Cells.Where(cell => !OfThePart.Contains(cell.Key)).Select(cell => new NamedText(cell.Key, cell.Value));

    public static IReadOnlyList<SeedPart<TSpec>> Parts<TSpec>(string file)
        where TSpec : class, new() => [.. Table(file).Select(row => new SeedPart<TSpec>(row, Shape<TSpec>.Of.Read(Texts(row)).Record))];
}
