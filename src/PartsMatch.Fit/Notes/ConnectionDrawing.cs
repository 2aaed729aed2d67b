using System.Text;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Notes;

/// <summary>Connections drawn in plain text of a fixed width, so that a phone shows them and a printer too.</summary>
internal static class ConnectionDrawing
{
    private const string OwnDiagramFirst = "The motor's own diagram outranks this.";

    /// <summary>Draws each connection under its heading, then where they come from.</summary>
    public static string Of(IReadOnlyList<Connection> connections)
    {
        var drawing = new StringBuilder();
        foreach (var connection in connections)
        {
            foreach (var heading in Headings(connection)) drawing.Append(heading).Append('\n');
            for (var line = 0; line < connection.Lines.Count; line++) Fork(drawing, FormattableString.Invariant($"L{line + 1} ──"), connection.Lines[line]);
            foreach (var joint in connection.Joined) Fork(drawing, "join ", joint);
            foreach (var pair in connection.Through) drawing.Append(FormattableString.Invariant($"{pair[0]} ──┤├── {pair[1]}  run capacitor\n"));
        }

        foreach (var source in connections.Select(connection => connection.Source.ToString()).Distinct()) drawing.Append(source).Append('\n');
        return drawing.Append(OwnDiagramFirst).ToString();
    }

    private static IEnumerable<string> Headings(Connection connection)
    {
        var volts = connection.Volts is ConnectedVolts.Low or ConnectedVolts.High ? $", {new Spelt<ConnectedVolts>(connection.Volts)} volts" : string.Empty;
        yield return connection.Leads switch
        {
            LeadMarks.NemaSinglePhase => $"Leads T1 to T8{volts}",
            LeadMarks.NemaNineLeadsWye => $"Leads T1 to T9, wye inside{volts}",
            LeadMarks.NemaNineLeadsDelta => $"Leads T1 to T9, delta inside{volts}",
            LeadMarks.IecSixTerminals => $"Terminals U1 to W2{volts}",
            LeadMarks.IecRunCapacitor => "Terminals U1 U2, Z1 Z2",
            _ => "The three lines",
        };
        if (connection.FacingShaft is { } turn) yield return $"{(turn == Direction.Clockwise ? "clockwise" : "counterclockwise")} facing the shaft";
        else if (connection.TurnWords.Length > 0) yield return connection.TurnWords;
    }

    private static void Fork(StringBuilder drawing, string stem, IReadOnlyList<string> leads)
    {
        for (var at = 0; at < leads.Count; at++)
        {
            var branch = leads.Count == 1 ? "──" : at == 0 ? "┬─" : at == leads.Count - 1 ? "└─" : "├─";
            drawing.Append(at == 0 ? stem : new string(' ', stem.Length)).Append(branch).Append(' ').Append(leads[at]).Append('\n');
        }
    }
}
