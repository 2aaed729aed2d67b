using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests.Published;

/// <summary>Connections against the facts that they were taken from: published, where repairers' posts and teaching pages show them; the rest from memory, and says so.</summary>
[Trait("Source", "connections.csv")]
public sealed class ConnectionsTests
{
    [Theory]
    [InlineData(ConnectedVolts.Only, "CCW", "T1 T8 | T4 T5", "", SourceStatus.Published)]
    [InlineData(ConnectedVolts.Only, "CW", "T1 T5 | T4 T8", "", SourceStatus.Published)]
    [InlineData(ConnectedVolts.Low, "CCW", "T1 T3 T8 | T2 T4 T5", "", SourceStatus.Published)]
    [InlineData(ConnectedVolts.Low, "CW", "T1 T3 T5 | T2 T4 T8", "", SourceStatus.Published)]
    [InlineData(ConnectedVolts.High, "CCW", "T1 | T4 T5", "T2 T3 T8", SourceStatus.Published)]
    [InlineData(ConnectedVolts.High, "CW", "T1 | T4 T8", "T2 T3 T5", SourceStatus.Derived)]
    public void Nema_single_phase_leads_are_joined_as_MG_1_part_2_has_it(ConnectedVolts volts, string turn, string lines, string joined, SourceStatus status) =>
        Is(Row(LeadMarks.NemaSinglePhase, volts, turn), lines, joined, status);

    [Theory]
    [InlineData(LeadMarks.NemaNineLeadsWye, ConnectedVolts.Low, "T1 T7 | T2 T8 | T3 T9", "T4 T5 T6")]
    [InlineData(LeadMarks.NemaNineLeadsWye, ConnectedVolts.High, "T1 | T2 | T3", "T4 T7 | T5 T8 | T6 T9")]
    [InlineData(LeadMarks.NemaNineLeadsDelta, ConnectedVolts.Low, "T1 T6 T7 | T2 T4 T8 | T3 T5 T9", "")]
    [InlineData(LeadMarks.NemaNineLeadsDelta, ConnectedVolts.High, "T1 | T2 | T3", "T4 T7 | T5 T8 | T6 T9")]
    [InlineData(LeadMarks.IecSixTerminals, ConnectedVolts.Low, "U1 W2 | V1 U2 | W1 V2", "")]
    [InlineData(LeadMarks.IecSixTerminals, ConnectedVolts.High, "U1 | V1 | W1", "U2 V2 W2")]
    public void Three_phase_leads_are_joined_as_known_from_memory(LeadMarks leads, ConnectedVolts volts, string lines, string joined) =>
        Is(Row(leads, volts, string.Empty), lines, joined, SourceStatus.Memory);

    [Fact]
    public void Nema_names_the_turn_from_the_end_opposite_the_shaft_and_iec_from_the_shaft()
    {
        // Geometry: counterclockwise seen from one end is clockwise seen from the other.
        Row(LeadMarks.NemaSinglePhase, ConnectedVolts.Only, "CCW").FacingShaft.ShouldBe(Direction.Clockwise);
        Row(LeadMarks.NemaSinglePhase, ConnectedVolts.Only, "CW").FacingShaft.ShouldBe(Direction.Counterclockwise);
        Row(LeadMarks.IecThreeLines, ConnectedVolts.Any, "clockwise").FacingShaft.ShouldBe(Direction.Clockwise);
    }

    [Theory]
    [InlineData(ConnectedVolts.Only)]
    [InlineData(ConnectedVolts.Low)]
    [InlineData(ConnectedVolts.High)]
    public void Both_turns_of_a_nema_single_phase_motor_differ_by_T5_and_T8_alone(ConnectedVolts volts)
    {
        static string Swapped(string text) => text.Replace("T5", "T#", StringComparison.Ordinal).Replace("T8", "T5", StringComparison.Ordinal).Replace("T#", "T8", StringComparison.Ordinal);
        var (one, other) = (Row(LeadMarks.NemaSinglePhase, volts, "CCW"), Row(LeadMarks.NemaSinglePhase, volts, "CW"));
        Sets(one.Lines, Swapped).ShouldBe(Sets(other.Lines, text => text));
        Sets(one.Joined, Swapped).ShouldBe(Sets(other.Joined, text => text));
    }

    [Fact]
    public void No_connection_uses_a_lead_twice_or_leaves_one_of_its_set_over()
    {
        foreach (var row in Connections.All)
        {
            var used = row.Lines.Concat(row.Joined).SelectMany(group => group).ToList();
            used.ShouldBeUnique();
            if (row.Leads is LeadMarks.NemaNineLeadsDelta or LeadMarks.NemaNineLeadsWye) used.Count.ShouldBe(9, $"{row.Leads} {row.Volts}");
            if (row.Leads == LeadMarks.NemaSinglePhase) used.Count.ShouldBe(row.Volts == ConnectedVolts.Only ? 4 : 6, $"{row.Volts} {row.TurnWords}");
        }
    }

    private static Connection Row(LeadMarks leads, ConnectedVolts volts, string turn) => Connections.All.Single(row => row.Leads == leads && row.Volts == volts && row.TurnWords == turn);

    private static void Is(Connection row, string lines, string joined, SourceStatus status)
    {
        Text(row.Lines).ShouldBe(lines);
        Text(row.Joined).ShouldBe(joined);
        row.Source.Status.ShouldBe(status);
        row.Source.Text.ShouldNotBeNullOrWhiteSpace();
    }

    private static string Text(IReadOnlyList<IReadOnlyList<string>> groups) => string.Join(" | ", groups.Select(group => string.Join(' ', group)));

    private static IReadOnlyList<string> Sets(IReadOnlyList<IReadOnlyList<string>> groups, Func<string, string> change) => [.. groups.Select(group => string.Join(' ', group.Select(change).Order(StringComparer.Ordinal)))];
}
