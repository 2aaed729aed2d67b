using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Published;
using static PartsMatch.Fit.Tests.Notes.NotesCases;

namespace PartsMatch.Fit.Tests.Notes;

/// <summary>Drawings stand in the step that sets a tap or a turn, where a standard marks the leads.</summary>
public sealed class ConnectionDiagramTests
{
    private const string CapacitorStart = "type=capacitor start; power=1/3 hp; speed=1725 rpm; voltage=115/230 V; connectedFor=115 V; phase=1; frequency=60 Hz; rotation=CW shaft end; reversing=by leads";

    private const string NineLeads = "type=three-phase induction; power=1 hp; speed=1725 rpm; voltage=230/460 V; connectedFor=460 V; phase=3; frequency=60 Hz";

    [Fact]
    public void A_nema_single_phase_motor_that_is_set_to_high_volts_is_drawn_for_the_turn_it_needs() =>
        OfMotor(CapacitorStart, "volts=230 V; turnNeeded=CW shaft end", CapacitorStart).Single(SupplyChanges.SetTap).Diagram.ShouldBe(
            """
            Leads T1 to T8, high volts
            clockwise facing the shaft
            L1 ──── T1
            L2 ──┬─ T4
                 └─ T5
            join ┬─ T2
                 ├─ T3
                 └─ T8
            NEMA MG 1 Part 2
            The motor's own diagram outranks this.
            """);

    [Theory]
    [InlineData($"{CapacitorStart}", "volts=115 V; turnNeeded=CW shaft end", "Leads T1 to T8, low volts\nclockwise facing the shaft\nL1 ──┬─ T1")]
    [InlineData("type=capacitor start; voltage=115 V; phase=1", "volts=115 V; turnNeeded=CCW shaft end", "Leads T1 to T8\ncounterclockwise facing the shaft\nL1 ──┬─ T1")]
    [InlineData($"{NineLeads}", "volts=460 V; supplyPhase=3", "Leads T1 to T9, wye inside, high volts")]
    [InlineData("type=three-phase induction; voltage=230/400 V; connectedFor=400 V; phase=3; standard=IEC", "volts=400 V; supplyPhase=3", "join ┬─ U2")]
    [InlineData("type=PSC; voltage=230 V; phase=1; standard=IEC", "volts=230 V", "U1 ──┤├── Z1  run capacitor")]
    public void Leads_that_are_joined_at_the_site_are_drawn_though_nothing_is_set(string motor, string site, string drawn) =>
        Joining(OfMotor(motor, site, motor)).Diagram.ShouldNotBeNull().ShouldContain(drawn);

    [Theory]
    [InlineData(Motor, "volts=230 V")]
    [InlineData("type=PSC; voltage=230 V; phase=1; standard=IEC; leadMarks=coloured", "volts=230 V")]
    [InlineData("type=capacitor start; voltage=115 V; phase=1; leadMarks=coloured", "volts=115 V")]
    [InlineData("type=three-phase induction; voltage=230 V; phase=3", "volts=230 V; supplyPhase=3")]
    public void Leads_that_no_standard_marks_or_that_leave_nothing_to_choose_are_not_drawn(string motor, string site) =>
        Joining(OfMotor(motor, site, motor)).Diagram.ShouldBeNull();

    [Fact]
    public void A_drawing_that_stands_at_the_tap_is_not_repeated_where_the_leads_are_joined()
    {
        var notes = OfMotor(CapacitorStart, "volts=230 V; turnNeeded=CW shaft end", CapacitorStart);
        notes.Steps.Count(step => step.Diagram is not null).ShouldBe(1);
        Joining(notes).Diagram.ShouldBeNull();
    }

    [Fact]
    public void Where_the_turn_is_not_known_both_are_drawn() =>
        OfMotor("voltage=115/230 V", "volts=230 V", CapacitorStart).Single(SupplyChanges.SetTap).Diagram!.ShouldSatisfyAllConditions(
            diagram => diagram.ShouldContain("\nclockwise facing the shaft"),
            diagram => diagram.ShouldContain("\ncounterclockwise facing the shaft"));

    [Fact]
    public void Nine_leads_at_low_volts_are_drawn_for_a_wye_and_for_a_delta_inside()
    {
        var notes = OfMotor(NineLeads, "volts=230 V; supplyPhase=3", NineLeads);
        notes.Single(SupplyChanges.SetTap).Diagram!.ShouldSatisfyAllConditions(
            diagram => diagram.ShouldContain("wye inside, low volts"),
            diagram => diagram.ShouldContain("delta inside, low volts"),
            diagram => diagram.ShouldContain("(from memory)"));

        // Three lines, and T4 T5 T6 of a wye.
        notes.Kit.Single(item => item.What == "wire connector").Quantity.ShouldBe(4);
    }

    [Fact]
    public void A_three_phase_motor_is_reversed_by_two_lines() =>
        OfMotor(NineLeads, "volts=460 V; supplyPhase=3; turnNeeded=CCW shaft end", With(NineLeads, "rotation", "CW shaft end")).Single(BodyChanges.Reverse).Diagram!.ShouldSatisfyAllConditions(
            diagram => diagram.ShouldContain("as it was\nL1 ──── T1\nL2 ──── T2\nL3 ──── T3"),
            diagram => diagram.ShouldContain("reversed\nL1 ──── T2\nL2 ──── T1\nL3 ──── T3"));

    [Fact]
    public void Delta_and_star_on_the_plate_are_drawn_with_iec_terminals_unless_the_leads_are_named_otherwise()
    {
        const string marked = "type=three-phase induction; power=0.37 kW; speed=1380 rpm; voltage=230/400 V; starDelta=yes; phase=3; frequency=50 Hz";
        OfMotor(marked, "volts=400 V; supplyPhase=3", marked).Single(SupplyChanges.CheckTap).Diagram!.ShouldContain("join ┬─ U2\n     ├─ V2\n     └─ W2");
        OfMotor(marked, "volts=400 V; supplyPhase=3", $"{marked}; leadMarks=coloured").Single(SupplyChanges.CheckTap).Diagram.ShouldBeNull();
    }

    [Fact]
    public void An_iec_motor_for_230_and_400_volts_is_drawn_as_delta_on_230()
    {
        const string iec = "type=three-phase induction; power=0.37 kW; speed=1380 rpm; voltage=230/400 V; connectedFor=400 V; phase=3; frequency=50 Hz; standard=IEC";
        OfMotor(iec, "volts=230 V; supplyPhase=3", iec).Single(SupplyChanges.SetTap).Diagram!.ShouldContain("L1 ──┬─ U1\n     └─ W2");
    }

    [Fact]
    public void An_iec_capacitor_motor_is_reversed_at_its_auxiliary_winding()
    {
        const string iec = "type=PSC; voltage=230 V; phase=1; frequency=50 Hz; standard=IEC; rotation=CW shaft end; reversing=by leads";
        OfMotor(iec, "volts=230 V; turnNeeded=CCW shaft end", iec).Single(BodyChanges.Reverse).Diagram!.ShouldContain("U1 ──┤├── Z2  run capacitor");
    }

    [Fact]
    public void The_lead_marks_on_the_plate_stand_before_the_habits_of_its_standard()
    {
        const string part = "type=three-phase induction; power=0.37 kW; speed=1380 rpm; voltage=230/400 V; connectedFor=400 V; phase=3; frequency=50 Hz";
        OfMotor(part, "volts=230 V; supplyPhase=3", part).Single(SupplyChanges.SetTap).Diagram.ShouldBeNull();
        OfMotor(part, "volts=230 V; supplyPhase=3", $"{part}; leadMarks=IEC terminals").Single(SupplyChanges.SetTap).Diagram!.ShouldContain("L1 ──┬─ U1\n     └─ W2");
        OfMotor(part, "volts=230 V; supplyPhase=3", $"{part}; standard=IEC; leadMarks=coloured").Single(SupplyChanges.SetTap).Diagram.ShouldBeNull();
    }

    [Fact]
    public void Coloured_leads_of_a_fan_motor_are_not_drawn_and_the_step_says_to_follow_the_motor()
    {
        var step = OfMotor(part: With(With(Motor, "voltage", "115/230 V"), "connectedFor", "115 V")).Single(SupplyChanges.SetTap);
        step.Diagram.ShouldBeNull();
        step.Detail!.ShouldContain("the motor's own diagram");
        step.Detail!.ShouldContain("makers' custom");
    }

    private static Step Joining(InstallNotes notes) => notes.Steps.Single(step => step.Words.StartsWith("earth it first", StringComparison.Ordinal));

    [Fact]
    public void No_drawing_is_wider_than_a_phone_and_each_yields_to_the_motors_own()
    {
        foreach (var marks in Enum.GetValues<LeadMarks>())
        {
            var drawing = ConnectionDrawing.Of([.. Connections.All.Where(row => row.Leads == marks)]);
            drawing.Split('\n').ShouldAllBe(line => line.Length <= Step.DiagramColumns);
            drawing.ShouldEndWith("The motor's own diagram outranks this.");
        }
    }
}
