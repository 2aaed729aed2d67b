using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Switches.PressureControls;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Tests.Notes;

namespace PartsMatch.Fit.Tests.Switches.PressureControls;

/// <summary>Pressure controls before they are condemned, and after the swap. 5 psi about a setting, 0.5 and 1 V: practice.</summary>
[Trait("Source", "reading.pressureContacts")]
[Trait("Source", "reading.pressureSetting")]
public sealed class PressureControlProofTests
{
    private const string High = "function=high pressure; reset=automatic; cutOut=400 psi; cutIn=300 psi";
    private const string Low = "function=low pressure; reset=automatic; cutOut=10 psi; cutIn=30 psi";

    [Theory]
    [InlineData(High, "", Conclusion.ReadNext, "isClosed")]
    [InlineData(High, "isClosed=no", Conclusion.ReadNext, "pressureThere")]
    [InlineData(High, "isClosed=no; pressureThere=405.1 psi", Conclusion.NotThePart, null)]
    [InlineData(High, "isClosed=yes; pressureThere=405.1 psi", Conclusion.PartHasFailed, null)]
    [InlineData(High, "isClosed=yes; pressureThere=405 psi", Conclusion.ReadNext, "openedAt")]
    [InlineData(High, "isClosed=yes; pressureThere=400 psi", Conclusion.NothingWrongFound, null)]
    [InlineData(High, "isClosed=no; pressureThere=294.9 psi", Conclusion.PartHasFailed, null)]
    [InlineData(High, "isClosed=no; pressureThere=350 psi", Conclusion.ReadNext, "closedAt")]
    [InlineData(High, "isClosed=yes; pressureThere=250 psi", Conclusion.NothingWrongFound, null)]
    [InlineData(Low, "isClosed=no; pressureThere=4 psi", Conclusion.NotThePart, null)]
    [InlineData(Low, "isClosed=yes; pressureThere=4 psi", Conclusion.PartHasFailed, null)]
    [InlineData(Low, "isClosed=no; pressureThere=60 psi", Conclusion.PartHasFailed, null)]
    [InlineData("function=high pressure; reset=manual; cutOut=400 psi", "isClosed=no; pressureThere=200 psi", Conclusion.ReadNext, "holdsAfterReset")]
    [InlineData("function=high pressure; reset=manual; cutOut=400 psi", "isClosed=no; pressureThere=200 psi; holdsAfterReset=yes", Conclusion.NotThePart, null)]
    [InlineData("function=high pressure; reset=manual; cutOut=400 psi", "isClosed=no; pressureThere=200 psi; holdsAfterReset=no", Conclusion.ReadNext, "cutInNeeded")]
    [InlineData("function=high pressure; reset=manual; cutOut=400 psi; cutIn=300 psi", "isClosed=no; pressureThere=390 psi; holdsAfterReset=no", Conclusion.ReadNext, "pressureThere")]
    [InlineData("function=high pressure; reset=manual; cutOut=400 psi; cutIn=300 psi", "isClosed=no; pressureThere=295 psi; holdsAfterReset=no", Conclusion.ReadNext, "pressureThere")]
    [InlineData("function=high pressure; reset=manual; cutOut=400 psi; cutIn=300 psi", "isClosed=no; pressureThere=294.9 psi; holdsAfterReset=no", Conclusion.PartHasFailed, null)]
    [InlineData("function=high pressure; reset=manual; cutOut=400 psi; differential=60 to 100 psi", "isClosed=no; pressureThere=295 psi; holdsAfterReset=no", Conclusion.ReadNext, "pressureThere")]
    [InlineData("function=high pressure; reset=manual; cutOut=400 psi; differential=60 to 100 psi", "isClosed=no; pressureThere=294.9 psi; holdsAfterReset=no", Conclusion.PartHasFailed, null)]
    [InlineData("function=low pressure; reset=manual; cutOut=10 psi; cutIn=30 psi", "isClosed=no; pressureThere=12 psi; holdsAfterReset=no", Conclusion.ReadNext, "pressureThere")]
    [InlineData("function=low pressure; reset=manual; cutOut=10 psi; cutIn=30 psi", "isClosed=no; pressureThere=40 psi; holdsAfterReset=no", Conclusion.PartHasFailed, null)]
    [InlineData("", "isClosed=no; pressureThere=200 psi", Conclusion.ReadNext, "action")]
    [InlineData("function=low pressure", "isClosed=no; pressureThere=200 psi", Conclusion.ReadNext, "cutOutNeeded")]
    [InlineData(High, "dropVolts=0.5 V", Conclusion.NothingWrongFound, null)]
    [InlineData(High, "dropVolts=1.01 V; isClosed=yes; pressureThere=200 psi", Conclusion.PartHasFailed, null)]
    [InlineData(High, "dropVolts=1.01 V", Conclusion.ReadNext, "isClosed")]
    public void The_gauge_decides(string plate, string readings, Conclusion conclusion, string? next)
    {
        var need = PressureControlFamily.PressureControl.ReadNeed(new(null, Named.Texts(plate), []));
        var diagnosis = PressureControlFamily.PressureControl.BeforeCondemning(need.Need, Named.Record<PressureControlReadings>(readings));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>A control with setting screws is marked as it was shipped: set to what is needed it does as it should by that. It is condemned where it is wrong by both, over 5 psi (practice) beside either.</summary>
    [Theory]
    [InlineData("function=high pressure; range=100 to 450 psi; cutOut=300 psi; cutIn=220 psi", "cutOutNeeded=400 psi; cutInNeeded=320 psi", "isClosed=yes; pressureThere=340 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("function=high pressure; range=100 to 450 psi; cutOut=300 psi; cutIn=220 psi", "cutOutNeeded=400 psi; cutInNeeded=320 psi", "isClosed=yes; pressureThere=405.1 psi", Conclusion.PartHasFailed, null)]
    [InlineData("function=high pressure; range=100 to 450 psi; cutOut=300 psi; cutIn=220 psi", "cutOutNeeded=400 psi; cutInNeeded=320 psi", "isClosed=no; pressureThere=250 psi", Conclusion.ReadNext, "closedAt")] // between as it is marked
    [InlineData("function=high pressure; range=100 to 450 psi; cutOut=300 psi; cutIn=220 psi", "cutOutNeeded=400 psi; cutInNeeded=320 psi", "isClosed=no; pressureThere=214.9 psi", Conclusion.PartHasFailed, null)]
    [InlineData("function=high pressure; range=100 to 450 psi; cutOut=300 psi; cutIn=220 psi", "cutOutNeeded=400 psi; cutInNeeded=320 psi", "openedAt=400 psi; closedAt=320 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("function=high pressure; isAdjustable=no; cutOut=300 psi; cutIn=220 psi", "cutOutNeeded=400 psi; cutInNeeded=320 psi", "isClosed=yes; pressureThere=340 psi", Conclusion.PartHasFailed, null)]
    [InlineData("function=low pressure; range=0 to 100 psi; cutOut=10 psi; cutIn=30 psi", "cutOutNeeded=35 psi; cutInNeeded=55 psi", "isClosed=no; pressureThere=42 psi", Conclusion.ReadNext, "closedAt")] // between as it is needed
    [InlineData("function=low pressure; range=0 to 100 psi; cutOut=10 psi; cutIn=30 psi", "cutOutNeeded=35 psi; cutInNeeded=55 psi", "isClosed=yes; pressureThere=20 psi", Conclusion.ReadNext, "openedAt")] // right as it is marked
    [InlineData("function=low pressure; range=0 to 100 psi; cutOut=10 psi; cutIn=30 psi", "cutOutNeeded=35 psi; cutInNeeded=55 psi", "isClosed=no; pressureThere=61 psi", Conclusion.PartHasFailed, null)]
    [InlineData("function=low pressure; range=0 to 100 psi; cutOut=10 psi; cutIn=30 psi", "cutOutNeeded=35 psi", "isClosed=no; pressureThere=61 psi", Conclusion.ReadNext, "cutInNeeded")]
    public void An_old_one_that_can_be_set_is_condemned_by_no_setting_alone(string plate, string site, string readings, Conclusion conclusion, string? next)
    {
        var need = PressureControlFamily.PressureControl.ReadNeed(new(null, Named.Texts($"{plate}; reset=automatic"), Named.Texts(site))).Need;
        var diagnosis = PressureControlFamily.PressureControl.BeforeCondemning(need, Named.Record<PressureControlReadings>(readings));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>One that cannot be set and opened or closed over 5 psi (practice) beside its setting has failed, whatever else it did rightly: what condemns stands before what clears.</summary>
    [Theory]
    [InlineData("reset=automatic", "pressureThere=420 psi; isClosed=no; openedAt=330 psi", Conclusion.PartHasFailed, null)]
    [InlineData("reset=automatic", "pressureThere=420 psi; isClosed=no; openedAt=395 psi", Conclusion.NotThePart, null)]
    [InlineData("reset=automatic", "pressureThere=420 psi; isClosed=no; closedAt=250 psi", Conclusion.PartHasFailed, null)]
    [InlineData("reset=manual", "pressureThere=200 psi; isClosed=no; holdsAfterReset=yes; openedAt=330 psi", Conclusion.PartHasFailed, null)]
    [InlineData("reset=manual", "pressureThere=200 psi; isClosed=no; holdsAfterReset=yes; openedAt=405 psi", Conclusion.NotThePart, null)]
    [InlineData("reset=automatic", "isClosed=no; openedAt=395 psi", Conclusion.ReadNext, "pressureThere")]
    public void One_that_cannot_be_set_and_moves_elsewhere_is_cleared_by_nothing_else(string plate, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Before($"function=high pressure; isAdjustable=no; cutOut=400 psi; cutIn=300 psi; {plate}", "", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>A setting over 5 psi off (practice) is set anew where it can be, and condemns where it cannot; which of the two is asked, whatever else would clear it.</summary>
    [Theory]
    [InlineData("HIGH PRESSURE CUT-OUT 400 PSI CUT-IN 300 PSI", "openedAt=340 psi", Conclusion.ReadNext, "isAdjustable")]
    [InlineData("HIGH PRESSURE CUT-OUT 400 PSI CUT-IN 300 PSI", "openedAt=340 psi; isClosed=no; pressureThere=420 psi", Conclusion.ReadNext, "isAdjustable")]
    [InlineData("HIGH PRESSURE CUT-OUT 400 PSI CUT-IN 300 PSI", "openedAt=395 psi; isClosed=no; pressureThere=420 psi", Conclusion.NotThePart, null)]
    [InlineData("HIGH PRESSURE FIXED CUT-OUT 400 PSI CUT-IN 300 PSI", "openedAt=340 psi", Conclusion.PartHasFailed, null)]
    [InlineData("HIGH PRESSURE ADJUSTABLE CUT-OUT 400 PSI CUT-IN 300 PSI", "openedAt=340 psi", Conclusion.NotThePart, null)]
    [InlineData("HIGH PRESSURE RANGE 100-450 PSI CUT-OUT 400 PSI CUT-IN 300 PSI", "openedAt=340 psi; isClosed=no; pressureThere=420 psi", Conclusion.NotThePart, null)]
    public void Whether_it_can_be_set_is_asked_before_it_is_set_anew(string plate, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = PressureControlFamily.PressureControl.BeforeCondemning(PressureControlFamily.PressureControl.ReadNeed(new(plate, [], [])).Need, Named.Record<PressureControlReadings>(readings));
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
        if (conclusion == Conclusion.ReadNext) diagnosis.Next!.Side.ShouldBe(Side.Plate);
    }

    /// <summary>Once it was seen where contacts move, that says whether they do where they should; nothing is asked twice.</summary>
    [Theory]
    [InlineData("range=0 to 100 psi", "isClosed=yes; pressureThere=25 psi; openedAt=35 psi; closedAt=55 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("range=0 to 100 psi", "isClosed=yes; pressureThere=25 psi; openedAt=10 psi", Conclusion.NotThePart, null)] // to be set anew
    [InlineData("range=0 to 100 psi", "isClosed=no; pressureThere=42 psi; closedAt=55 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("", "isClosed=yes; pressureThere=25 psi", Conclusion.ReadNext, "isAdjustable")]
    [InlineData("isAdjustable=no", "isClosed=yes; pressureThere=8 psi; openedAt=10 psi", Conclusion.NothingWrongFound, null)]
    [InlineData("isAdjustable=no", "isClosed=no; pressureThere=20 psi; closedAt=30 psi", Conclusion.NothingWrongFound, null)]
    public void Where_contacts_moved_is_asked_once(string plate, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Before($"function=low pressure; reset=automatic; cutOut=10 psi; cutIn=30 psi; {plate}", "cutOutNeeded=35 psi; cutInNeeded=55 psi", readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>A button holds once the pressure is past where it can be reset as it is marked, too: 5 psi (practice) past its cut-in, or its greatest differential past its cut-out.</summary>
    [Theory]
    [InlineData("differential=60 psi", "cutOutNeeded=400 psi", "pressureThere=250 psi", Conclusion.ReadNext, "pressureThere")]
    [InlineData("differential=60 psi", "cutOutNeeded=400 psi", "pressureThere=234.9 psi", Conclusion.PartHasFailed, null)]
    [InlineData("", "cutOutNeeded=400 psi; cutInNeeded=320 psi", "pressureThere=250 psi", Conclusion.ReadNext, "cutIn")]
    [InlineData("", "cutOutNeeded=400 psi; cutInNeeded=320 psi", "pressureThere=310 psi", Conclusion.ReadNext, "pressureThere")] // tripped rightly as it is marked
    public void A_button_that_does_not_hold_is_pressed_again_past_where_it_is_marked(string plate, string site, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Before($"function=high pressure; reset=manual; range=100 to 450 psi; cutOut=300 psi; {plate}", site, $"isClosed=no; holdsAfterReset=no; {readings}");
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>300 psi less 60 psi as it is marked, whatever is needed: worked by hand.</summary>
    [Fact]
    public void How_far_the_pressure_is_to_come_back_is_said() =>
        Before("function=high pressure; reset=manual; range=100 to 450 psi; cutOut=300 psi; differential=60 psi", "cutOutNeeded=400 psi", "isClosed=no; holdsAfterReset=no; pressureThere=250 psi").Sentence.ShouldBe("Let the pressure come back more than 5 psi past 240 psi (1655 kPa), press its button again, and read the gauge.");

    /// <summary>Contacts that open on rise open above where they close, and those that open on fall below: where it is said to be the other way round one of the two is misread, and nothing is judged by them. With a button the cut-in is of no matter, but nor does it tell where the button holds.</summary>
    [Theory]
    [InlineData("function=high pressure; range=100 to 450 psi", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "isClosed=no; pressureThere=200 psi", Conclusion.ReadNext, "cutOutNeeded")]
    [InlineData("function=high pressure; range=100 to 450 psi", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "isClosed=yes; pressureThere=320 psi", Conclusion.ReadNext, "cutOutNeeded")]
    [InlineData("function=high pressure; range=100 to 450 psi", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "openedAt=300 psi", Conclusion.ReadNext, "cutOutNeeded")]
    [InlineData("function=low pressure; range=0 to 100 psi; cutOut=10 psi; cutIn=30 psi", "cutOutNeeded=35 psi; cutInNeeded=20 psi", "isClosed=no; pressureThere=28 psi", Conclusion.ReadNext, "cutOutNeeded")]
    [InlineData("function=low pressure; isAdjustable=no; cutOut=30 psi; cutIn=10 psi", "", "isClosed=no; pressureThere=60 psi", Conclusion.ReadNext, "cutOut")]
    [InlineData("function=low pressure; reset=manual", "cutOutNeeded=35 psi; cutInNeeded=30 psi", "isClosed=no; pressureThere=20 psi", Conclusion.NotThePart, null)]
    [InlineData("function=low pressure; reset=manual", "cutOutNeeded=35 psi; cutInNeeded=30 psi", "isClosed=no; pressureThere=37 psi; holdsAfterReset=no", Conclusion.ReadNext, "cutInNeeded")]
    public void By_settings_that_are_misread_nothing_is_judged(string plate, string site, string readings, Conclusion conclusion, string? next)
    {
        var diagnosis = Before(plate, site, readings);
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    [Theory]
    [InlineData("function=high pressure; reset=manual; range=100 to 450 psi", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "isClosed=no; pressureThere=200 psi; holdsAfterReset=no", "Look again")]
    [InlineData("function=high pressure; reset=manual; range=100 to 450 psi", "cutOutNeeded=250 psi", "isClosed=no; pressureThere=200 psi; holdsAfterReset=no", "Find out")]
    public void A_cut_in_that_is_misread_is_looked_at_again(string plate, string site, string readings, string why)
    {
        var next = Before(plate, site, readings).Next;
        (next?.Field).ShouldBe("cutInNeeded");
        next!.Why.ShouldStartWith(why);
    }

    [Theory]
    [InlineData("automatic", 0)]
    [InlineData("manual", 1)] // of which only the cut-out counts
    public void What_is_misread_made_nothing_trip(string reset, int mends) =>
        Before($"function=high pressure; range=100 to 450 psi; reset={reset}", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "isClosed=no; pressureThere=320 psi").MendFirst.Count.ShouldBe(mends);

    [Fact]
    public void A_new_one_is_not_bad_by_settings_that_are_misread() =>
        After("function=high pressure", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "function=high pressure; action=opens on rise; range=100 to 450 psi", "isClosed=no; pressureThere=200 psi").ShouldBe(ReadingVerdict.CantTell);

    /// <summary>Of change-over contacts the wired side is measured: its pressure is past its cut-in, or beyond its cut-out, by over 5 psi (practice). Which is wired is asked where it would be guessed.</summary>
    [Theory]
    [InlineData("function=low pressure; action=change-over", "sidesWired=the one that closes on rise", Conclusion.PartHasFailed, null)]
    [InlineData("function=low pressure; action=change-over", "sidesWired=both", Conclusion.PartHasFailed, null)]
    [InlineData("function=low pressure; action=change-over", "", Conclusion.ReadNext, "sidesWired")]
    [InlineData("action=change-over", "sidesWired=both", Conclusion.ReadNext, "function")]
    [InlineData("", "sidesWired=the one that closes on rise", Conclusion.PartHasFailed, null)]
    [InlineData("", "", Conclusion.ReadNext, "action")]
    [InlineData("function=low pressure; action=change-over", "sidesWired=the one that opens on rise", Conclusion.NothingWrongFound, null)] // its two pressures are those of the other side
    public void Of_change_over_contacts_the_side_that_is_wired_is_judged(string plate, string site, Conclusion conclusion, string? next)
    {
        var diagnosis = Before($"cutOut=10 psi; cutIn=30 psi; {plate}", site, "isClosed=no; pressureThere=80 psi");
        diagnosis.Conclusion.ShouldBe(conclusion, diagnosis.Sentence);
        (diagnosis.Next?.Field).ShouldBe(next, diagnosis.Sentence);
    }

    /// <summary>The change says which side of the new one to use, and that is measured.</summary>
    [Theory]
    [InlineData("isClosed=yes; pressureThere=350 psi", ReadingVerdict.Good)]
    [InlineData("isClosed=yes; pressureThere=410 psi", ReadingVerdict.Bad)]
    public void Of_new_change_over_contacts_in_the_place_of_single_ones_the_side_that_is_used_is_judged(string readings, ReadingVerdict verdict) =>
        After("action=opens on rise; cutOut=400 psi; cutIn=300 psi", "", "action=change-over; range=100 to 450 psi", readings).ShouldBe(verdict);

    [Theory]
    [InlineData("openedAt=405 psi", ReadingVerdict.Good)]
    [InlineData("openedAt=405.1 psi", ReadingVerdict.Bad)]
    [InlineData("openedAt=395 psi", ReadingVerdict.Good)]
    [InlineData("openedAt=394.9 psi", ReadingVerdict.Bad)]
    [InlineData("closedAt=305 psi", ReadingVerdict.Good)]
    [InlineData("closedAt=305.1 psi", ReadingVerdict.Bad)]
    public void A_new_one_moves_within_5_psi_of_what_is_needed(string readings, ReadingVerdict verdict)
    {
        var need = PressureControlFamily.PressureControl.ReadNeed(new(null, Named.Texts(High), [])).Need;
        PressureControlFamily.PressureControl.AfterSwap(need, Named.Record<PressureControlSpec>("function=high pressure; range=100 to 450 psi"), Named.Record<PressureControlReadings>(readings))
            .Readings.ShouldHaveSingleItem().Verdict.ShouldBe(verdict);
    }

    [Fact]
    public void What_made_it_trip_is_to_be_found()
    {
        var need = PressureControlFamily.PressureControl.ReadNeed(new(null, Named.Texts(High), [])).Need;
        PressureControlFamily.PressureControl.BeforeCondemning(need, Named.Record<PressureControlReadings>("isClosed=no; pressureThere=420 psi")).MendFirst.ShouldHaveSingleItem().Mend.ShouldContain("condenser fan");
    }

    [Fact]
    public void Notes_set_it_stop_it_and_prove_it_by_the_gauge()
    {
        const string plate = High + "; poles=1; pressureMost=475 psi; connection=capillary";
        var notes = NotesCases.Of("pressureControl", plate, "designPressure=450 psi; reliefSetting=450 psi", "function=high pressure; reset=automatic; poles=1; range=100 to 450 psi; differential=50 to 120 psi; pressureMost=475 psi; connection=capillary").Notes;
        notes.Single(PressureControlChanges.SetControl).Words.ShouldBe("set it to cut-out 400 psi (2758 kPa), cut-in 300 psi (2068 kPa)");
        notes.Single(PressureControlChanges.FitStop).Stage.ShouldBe(Stage.Bench);
        notes.Steps.ShouldContain(step => step.Words == "make it open by the gauge at 400 psi, and close again at 300 psi");
        notes.Cautions.ShouldContain(caution => caution.Words.StartsWith("Refrigerant under pressure", StringComparison.Ordinal));
        notes.Steps.Select(step => step.Stage).ShouldBeInOrder();
    }

    private static Diagnosis Before(string plate, string site, string readings) =>
        PressureControlFamily.PressureControl.BeforeCondemning(PressureControlFamily.PressureControl.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Need, Named.Record<PressureControlReadings>(readings));

    private static ReadingVerdict After(string plate, string site, string part, string readings) =>
        PressureControlFamily.PressureControl.AfterSwap(PressureControlFamily.PressureControl.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Need, Named.Record<PressureControlSpec>(part), Named.Record<PressureControlReadings>(readings)).Readings.ShouldHaveSingleItem().Verdict;
}
