using System.Globalization;
using System.Text.Json;
using Spectre.Console;

namespace PartsMatch.Service.Commands;

/// <summary>Install notes for a terminal: kit first, since it is packed first, then the steps in working order, each caution at its stage.</summary>
internal static class NotesView
{
    /// <summary>Wide enough to read, narrow enough for half a page.</summary>
    private const int TextColumns = 100;

    /// <summary>The stages, in working order.</summary>
    private static readonly IReadOnlyList<(string Stage, string Heading)> Headings =
    [
        ("MAKE_SAFE", "Make safe"),
        ("PROVE_THE_PART", "Prove that it is the part"),
        ("NOTE_WHAT_IS_THERE", "Note what is there"),
        ("MEND_FIRST", "Mend first"),
        ("BENCH", "On the bench"),
        ("MOUNT", "Mount"),
        ("WIRE", "Wire"),
        ("FIRST_START", "First start"),
        ("START_AND_CHECK", "Start and check"),
        ("RECORD", "Record"),
    ];

    public static void Write(JsonElement sheet, IAnsiConsole console)
    {
        if (sheet.GetProperty("notes") is not { ValueKind: JsonValueKind.Object } notes)
        {
            console.WriteLine("It does not fit: there are no notes on putting it in.");
            return;
        }

        console.WriteLine("To bring besides the part:");
        foreach (var item in sheet.Each("kit")) console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"  {item.GetProperty("quantity").GetInt32()} × {item.Text("what")}"));

        var cautions = sheet.Each("cautions").ToLookup(caution => caution.Text("stage"), caution => caution.Text("words"));
        var steps = notes.Each("steps").ToLookup(step => step.Text("stage"));
        var number = 0;
        foreach (var (stage, heading) in Headings)
        {
            if (!steps.Contains(stage) && !cautions.Contains(stage)) continue;
            console.WriteLine();
            console.WriteLine(heading);
            var grid = new Grid().AddColumn(new GridColumn().Width(5).NoWrap().RightAligned().PadRight(1)).AddColumn(new GridColumn().Width(TextColumns));
            foreach (var caution in cautions[stage]) grid.AddRow(new Text("!"), new Text(caution));
            foreach (var step in steps[stage])
            {
                number++;
                grid.AddRow(new Text(string.Create(CultureInfo.InvariantCulture, $"{number}.")), new Text(step.Text("words")));
                foreach (var more in (string[])["detail", "diagram"])
                {
                    if (step.GetProperty(more) is { ValueKind: JsonValueKind.String } text) grid.AddRow(new Text(string.Empty), new Padder(new Text(text.GetString()!)).Padding(2, 0, 0, 0));
                }
            }

            console.Write(grid);
        }
    }
}
