using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>What the shop is told in one sentence: does anything need changing before the part goes out?</summary>
public sealed class FitSheetSummaryTests
{
    private const string Plate = "HP 1/3 RPM 1075 V 208-230 PH 1 HZ 60 A 2.1 ROT CWSE PSC CAP 5/370 TEAO SHAFT 1/2 IN";

    private static string Summary(string part)
    {
        var family = Families.Find("motor")!;
        var need = family.ReadNeed(new(Plate, [], [new("volts", "202 V"), new("bladeStays", "yes"), new("drive", "direct"), new("turnNeeded", "CW shaft end")])).Need;
        return family.Judge(need, family.ReadNameplate(part).Plate).Summary;
    }

    [Fact]
    public void The_change_of_tap_and_of_turn_are_named_with_what_to_do() =>
        Summary("HP 1/3 RPM 1075 V 208-230 PH 1 HZ 60 A 2.1 ROT CCWSE REVERSIBLE PSC CAP 5/370 TEAO SHAFT 1/2 IN").ShouldContain("otation (");

    [Fact]
    public void Without_measured_volts_the_tap_that_it_ships_connected_for_is_named()
    {
        var family = Families.Find("motor")!;
        var need = family.ReadNeed(new("HP 1/3 RPM 1075 V 208-230 PH 1 HZ 60 A 2.1 PSC CAP 5/370", [], [])).Need;
        var part = family.ReadSpec([new("type", "PSC"), new("power", "1/3 hp"), new("speed", "1075 rpm"), new("voltage", "115/208-230 V"), new("connectedFor", "115 V"), new("phase", "1"), new("frequency", "60 Hz")]).Spec;
        var summary = family.Judge(need, part).Summary;
        summary.ShouldStartWith("Change supply voltage (the old motor was for 208-230 V: set the 208-230 V tap; it ships connected for 115 V; measure the supply)");
        summary.ShouldContain("not known yet: supply voltage");
    }

    [Fact]
    public void What_stands_in_the_way_is_named() =>
        Summary("HP 1/3 RPM 1075 V 460 PH 3 HZ 60 ROT CWSE SHAFT 5/8 IN").ShouldStartWith("It does not fit: ");

    [Fact]
    public void Nothing_needs_changing_on_a_drop_in()
    {
        var sheet = new FitSheet([new(Families.Find("motor")!.Aspects[0], Finding.Meets($"It is."))]);
        sheet.Summary.ShouldBe("Nothing needs changing.");
    }

    [Fact]
    public void Changes_checks_and_what_is_open_stand_in_that_order()
    {
        var aspects = Families.Find("motor")!.Aspects;
        var rotation = aspects.Single(one => one.Name == "rotation");
        var mount = aspects.Single(one => one.Name == "mount");
        var capacitor = aspects.Single(one => one.Name == "runCapacitor");
        Change swap = new(Fit.Motors.BodyChanges.Reverse, $"swap the plug");
        Change look = new(Fit.Motors.BodyChanges.CompareMount, $"hold it against the place");
        new FitSheet([new(rotation, Finding.MeetsWith([swap], $"It can.")), new(mount, Finding.MeetsWith([look], $"It may.")), new(capacitor, Finding.Unknown(Side.Part, "runCapacitor", $"Not given."))])
            .Summary.ShouldBe("Change rotation (swap the plug); check mount (hold it against the place); to be seen: run capacitor.");
        new FitSheet([new(rotation, Finding.Unknown(Side.Plate, "rotation", $"Not known."))]).Summary.ShouldBe("Nothing needs changing; not known yet: rotation.");
    }
}
