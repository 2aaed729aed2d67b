using System.Text.Json;
using PartsMatch.Fit.Judging;
using Spectre.Console;

namespace PartsMatch.Service.Commands;

/// <summary>How a need was understood, for a terminal.</summary>
internal static class NeedView
{
    /// <summary>What was read from the plate, what was not, and what the catalogue says of the old part.</summary>
    public static void WriteGiven(JsonElement answer, IAnsiConsole console)
    {
        if (answer.GetProperty("nameplate") is { ValueKind: JsonValueKind.Object } plate)
        {
            Terminal.Line(console, "Read", plate.Each("fields").Where(field => !field.GetProperty("deduced").GetBoolean()).Select(Read));
            Terminal.Line(console, "Left over", plate.Each("leftovers").Select(span => span.Text("text")));
            foreach (var complaint in plate.Each("complaints")) console.WriteLine($"Not read: {complaint.Text("sentence")}");
        }

        if (answer.GetProperty("oldPart") is not { ValueKind: JsonValueKind.Object } old) return;
        console.WriteLine($"Old part: {Terminal.Part(old)}");
        foreach (var line in Terminal.Superseded(old)) console.WriteLine(line);
    }

    /// <summary>A field as read, with the slip of the thumb that was mended for it.</summary>
    private static string Read(JsonElement field) => $"{field.Text("label")} {field.Text("text")}{(field.GetProperty("mended").GetString() is { } mended ? $" ({mended})" : string.Empty)}";

    /// <summary>All of it: what was given, what follows, and what to doubt.</summary>
    public static void Write(Family family, JsonElement answer, IAnsiConsole console)
    {
        WriteGiven(answer, console);
        var deduced = answer.Each("deductions").ToLookup(one => one.Text("side"));
        Terminal.Line(console, "It follows", deduced["PLATE"].Select(one => $"{Terminal.Label(family, one)} {one.Text("text")} ({one.Text("because")})"));
        Terminal.Line(console, "Taken for the site", deduced["SITE"].Select(one => $"{Terminal.Label(family, one)} {one.Text("text")}"));
        foreach (var doubt in answer.Each("contradictions")) console.WriteLine($"Doubt: {doubt.Text("sentence")}");
    }
}
