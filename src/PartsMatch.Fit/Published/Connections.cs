using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Published;

/// <summary>How a motor's leads are marked.</summary>
public enum LeadMarks
{
    /// <summary>T1 to T8, the auxiliary winding between T5 and T8.</summary>
    [Words("nema single-phase")]
    NemaSinglePhase,

    /// <summary>T1 to T9, a star inside.</summary>
    [Words("nema nine leads wye")]
    NemaNineLeadsWye,

    /// <summary>T1 to T9, a triangle inside.</summary>
    [Words("nema nine leads delta")]
    NemaNineLeadsDelta,

    /// <summary>U1 V1 W1 and U2 V2 W2.</summary>
    [Words("iec six terminals")]
    IecSixTerminals,

    /// <summary>U1 U2 and the auxiliary winding Z1 Z2, with a run capacitor.</summary>
    [Words("iec run capacitor")]
    IecRunCapacitor,

    /// <summary>The three line leads T1 T2 T3 alone.</summary>
    [Words("nema three lines")]
    NemaThreeLines,

    /// <summary>The three line terminals U1 V1 W1 alone.</summary>
    [Words("iec three lines")]
    IecThreeLines,
}

/// <summary>Which of a motor's volts a connection is for.</summary>
public enum ConnectedVolts
{
    /// <summary>The only ones it has.</summary>
    [Words("only")]
    Only,

    /// <summary>The lower of two.</summary>
    [Words("low")]
    Low,

    /// <summary>The higher of two.</summary>
    [Words("high")]
    High,

    /// <summary>Whichever it is connected for.</summary>
    [Words("any")]
    Any,
}

/// <summary>One way to connect a motor.</summary>
/// <param name="Leads">How its leads are marked.</param>
/// <param name="Volts">For which of its volts.</param>
/// <param name="TurnWords">Which way it turns then, as the table says it; empty when the connection does not tell.</param>
/// <param name="FacingShaft">The same as seen facing the shaft; null when the connection does not tell.</param>
/// <param name="Lines">For each line the leads that go to it.</param>
/// <param name="Joined">Leads that are joined to one another and to no line.</param>
/// <param name="Through">Leads between which the run capacitor sits.</param>
/// <param name="Source">Where the row comes from.</param>
public sealed record Connection(
    LeadMarks Leads,
    ConnectedVolts Volts,
    string TurnWords,
    Direction? FacingShaft,
    IReadOnlyList<IReadOnlyList<string>> Lines,
    IReadOnlyList<IReadOnlyList<string>> Joined,
    IReadOnlyList<IReadOnlyList<string>> Through,
    Source Source);

/// <summary>Connections by lead marks: NEMA MG 1 Part 2 and IEC 60034-8. The motor's own diagram outranks every row.</summary>
/// <remarks>
/// The NEMA rows say CW and CCW as seen facing the end opposite the shaft (MG 1 Part 2; for single-phase motors from memory): CCW there is clockwise facing the shaft.
/// IEC's clockwise is as seen from the shaft end, lines in their order. The IEC rows with a run capacitor do not say which way is which: sources differ.
/// </remarks>
public static class Connections
{
    private const char CapacitorMark = '~';

    /// <summary>All rows.</summary>
    public static IReadOnlyList<Connection> All { get; } = [.. PublishedTable.Read("connections").Select(Row)];

    private static Connection Row(PublishedRow row)
    {
        var joined = row.Text("joined").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        return new(
            new EnumForm<LeadMarks>().Read(row.Text("leads")).Value,
            new EnumForm<ConnectedVolts>().Read(row.Text("volts")).Value,
            row.Text("turn"),
            row.Text("turn") switch
            {
                "CCW" or "clockwise" => Direction.Clockwise,
                "CW" or "counterclockwise" => Direction.Counterclockwise,
                _ => null,
            },
            [.. ((string[])["L1", "L2", "L3"]).Select(line => row.Text(line)).Where(cell => cell.Length > 0).Select(Group)],
            [.. joined.Where(group => !group.Contains(CapacitorMark)).Select(Group)],
            [.. joined.Where(group => group.Contains(CapacitorMark)).Select(Group)],
            row.Source);
    }

    private static IReadOnlyList<string> Group(string cell) => cell.Split([' ', CapacitorMark]);
}
