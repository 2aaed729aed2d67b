using PartsMatch.Fit.Valves.SolenoidValves.Aspects;

namespace PartsMatch.Fit.Tests.Valves.SolenoidValves.Aspects;

/// <summary>
/// NEMA ICS 5, published: from 120 V up A opens 720 VA and closes on 7200, C 180 and 1800, D 72 and 432, E 36 and 216; of direct current N 275, P 138, Q 69, R 28 VA up to 300 V.
/// Below 120 V the amps of 120 V hold (from memory): at 24 V a fifth, C 36 and 360, D 14.4 and 86.4, E 7.2 and 43.2 VA. Of direct current the VA hold there as far as the amps carried all day: at 24 V P 120, R 24 VA.
/// </summary>
[Trait("Source", "solenoidValve.coilContact")]
public sealed class CoilContactTests : SolenoidAspectTests<CoilContact, CoilContactFacet>
{
    [Theory]
    [InlineData("C300", "24 V", "coilPower=36 VA", "Meets")]
    [InlineData("C300", "24 V", "coilPower=36.1 VA", "Fails")]
    [InlineData("C300", "120 V", "coilPower=180 VA", "Meets")]
    [InlineData("C300", "120 V", "coilPower=180.1 VA", "Fails")]
    [InlineData("C300", "240 V", "coilPower=180 VA", "Meets")] // VA are the same from 120 V up
    [InlineData("C300", "300 V", "coilPower=10 VA", "Meets")]
    [InlineData("C300", "300.1 V", "coilPower=10 VA", "Fails")]
    [InlineData("C150", "240 V", "coilPower=10 VA", "Fails")]
    [InlineData("D300", "24 V", "coilPower=14.4 VA; coilInrush=86.4 VA", "Meets")]
    [InlineData("D300", "24 V", "coilPower=14.4 VA; coilInrush=86.5 VA", "Fails")]
    [InlineData("D300", "24 V", "coilPower=8.6 VA", "Meets")] // ten times are 86 VA
    [InlineData("D300", "24 V", "coilPower=8.7 VA", "Unknown Part coilInrush")]
    [InlineData("D300", "24 V", "coilPower=14.5 VA", "Fails")]
    [InlineData("C300", "24 V", "", "Unknown Part coilPower")]
    public void A_pilot_duty_holds_at_its_volts(string duty, string volts, string part, string answer) =>
        Answer("", $"contactDuty={duty}; coilSupplyVolts={volts}; coilSupplyFrequency=60 Hz", part).ShouldBe(answer);

    [Theory]
    [InlineData("contactDirectDuty=R300", "24 V", "coilPower=24 VA", "Meets")] // 1 A all day
    [InlineData("contactDirectDuty=R300", "24 V", "coilPower=24.1 VA", "Fails")]
    [InlineData("contactDirectDuty=R300", "28 V", "coilPower=28 VA", "Meets")]
    [InlineData("contactDirectDuty=R300", "125 V", "coilPower=28 VA", "Meets")]
    [InlineData("contactDirectDuty=R300", "125 V", "coilPower=28.1 VA", "Fails")]
    [InlineData("contactDirectDuty=P300", "24 V", "coilPower=120 VA", "Meets")] // 5 A all day, not the 5.75 A of 138 VA
    [InlineData("contactDirectDuty=P300", "24 V", "coilPower=120.1 VA", "Fails")]
    [InlineData("contactDirectDuty=R150", "200 V", "coilPower=10 VA", "Fails")]
    [InlineData("contactDirectDuty=N600", "500 V", "coilPower=200 VA", "Meets")] // 0.4 A
    [InlineData("contactDirectDuty=N600", "500 V", "coilPower=200.1 VA", "Fails")]
    [InlineData("contactDuty=A300", "24 V", "coilPower=30 VA", "Unknown Site contactDirectDuty")] // marked for alternating current, which says nothing
    [InlineData("contactDuty=C300", "24 V", "coilPower=20 VA", "Unknown Site contactDirectDuty")] // no weakest pilot duty stands for it
    [InlineData("contactDuty=C300; contactVa=20 VA", "24 V", "coilPower=20 VA", "Meets")] // VA are of what is there
    public void A_coil_for_direct_current_goes_by_columns_of_its_own(string contact, string volts, string part, string answer) =>
        Answer("", $"{contact}; coilSupplyVolts={volts}; coilSupplyCurrent=DC", $"{part}; coilCurrent=DC").ShouldBe(answer);

    /// <summary>Worked by hand: 1 A × 24 V = 24 VA; six times what it opens up to 72 VA where nothing else is said, ten times above (pilot duty of classes D and E, and of A to C).</summary>
    [Theory]
    [InlineData("contactVa=15 VA", "coilPower=9 VA", "Meets")] // ten times are the 90 VA that are taken
    [InlineData("contactVa=15 VA", "coilPower=15 VA", "Unknown Part coilInrush")]
    [InlineData("contactVa=15 VA", "coilPower=15.1 VA", "Fails")]
    [InlineData("contactVa=15 VA; contactInrushVa=40 VA", "coilPower=15 VA; coilInrush=40 VA", "Meets")]
    [InlineData("contactVa=15 VA; contactInrushVa=40 VA", "coilPower=15 VA; coilInrush=40.1 VA", "Fails")]
    [InlineData("contactVa=15 VA; contactInrushVa=40 VA", "coilPower=10 VA", "Unknown Part coilInrush")]
    [InlineData("contactVa=15 VA", "coilPower=15 VA; coilInrush=90 VA", "Meets")]
    [InlineData("contactVa=15 VA", "coilPower=15 VA; coilInrush=90.1 VA", "Unknown Site contactInrushVa")] // six times are what is taken, not what is known
    [InlineData("contactVa=72 VA", "coilPower=72 VA; coilInrush=432 VA", "Meets")]
    [InlineData("contactVa=72 VA", "coilPower=72 VA; coilInrush=432.1 VA", "Unknown Site contactInrushVa")]
    [InlineData("contactVa=72.1 VA", "coilPower=72 VA; coilInrush=721 VA", "Meets")]
    [InlineData("contactVa=180 VA", "coilPower=180 VA; coilInrush=1800.1 VA", "Unknown Site contactInrushVa")]
    [InlineData("contactAmps=1 A", "coilPower=24 VA; coilInrush=144 VA", "Meets")]
    [InlineData("contactAmps=1 A", "coilPower=24.1 VA; coilInrush=144 VA", "Fails")]
    [InlineData("contactInrushVa=40 VA", "coilPower=15 VA; coilInrush=150 VA", "Fails")] // a marking as well, of what it closes on alone
    [InlineData("contactInrushVa=40 VA", "coilPower=15 VA; coilInrush=40 VA", "MeetsWithChanges checkCoilContact")] // what it opens is not known
    [InlineData("contactInrushVa=40 VA", "coilPower=15 VA", "Unknown Part coilInrush")]
    [InlineData("contactInrushVa=14 VA", "coilPower=15 VA", "Fails")] // it pulls in by no less than it holds
    [InlineData("contactVa=15 VA; contactDuty=A300", "coilPower=16 VA", "Fails")] // the least of two marks
    [InlineData("contactVa=45 VA; contactDuty=C300", "coilPower=36.1 VA", "Fails")]
    public void Va_and_amps_of_its_marking_hold_as_they_stand(string contact, string part, string answer) =>
        Answer("", $"{contact}; coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", part).ShouldBe(answer);

    [Theory]
    [InlineData("contactOtherCoils=21 VA", "coilPower=15 VA; coilInrush=40 VA", "Meets")] // 36 VA, and 250 VA as they pull in
    [InlineData("contactOtherCoils=21.1 VA", "coilPower=15 VA; coilInrush=40 VA", "Fails")]
    [InlineData("contactOtherCoils=21 VA; contactInrushVa=249 VA", "coilPower=15 VA; coilInrush=40 VA", "MeetsWithChanges checkCoilContact")] // ten times are what is taken of the others
    [InlineData("contactOtherCoils=21 VA; contactInrushVa=60 VA", "coilPower=15 VA; coilInrush=40 VA", "Fails")] // 61 VA at the very least
    public void The_other_coils_on_the_contact_are_added(string others, string part, string answer) =>
        Answer("", $"contactDuty=C300; coilSupplyCurrent=AC; {others}; coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", part).ShouldBe(answer);

    [Theory]
    [InlineData("coilPower=15 VA", "", "coilPower=15 VA", "Meets")]
    [InlineData("coilPower=15 VA", "coilSupplyVolts=24 V", "coilPower=15 VA", "Meets")]
    [InlineData("coilPower=15 VA", "coilSupplyVolts=24 V", "coilPower=15.1 VA", "MeetsWithChanges checkCoilContact")]
    [InlineData("", "", "coilPower=15 VA", "MeetsWithChanges checkCoilContact")] // at which volts is not known either
    [InlineData("", "coilSupplyVolts=24 V", "coilPower=7.2 VA; coilInrush=43.2 VA", "Meets")] // the weakest pilot duty, E150
    [InlineData("", "coilSupplyVolts=24 V", "coilPower=7.3 VA; coilInrush=43.2 VA", "MeetsWithChanges checkCoilContact")]
    [InlineData("", "coilSupplyVolts=24 V", "coilPower=7.2 VA; coilInrush=43.3 VA", "MeetsWithChanges checkCoilContact")]
    [InlineData("", "coilSupplyVolts=120 V", "coilPower=21.6 VA", "Meets")] // ten times are the 216 VA that E150 closes on
    [InlineData("", "coilSupplyVolts=120 V", "coilPower=21.7 VA", "MeetsWithChanges checkCoilContact")]
    [InlineData("", "coilSupplyVolts=240 V", "coilPower=43.2 VA", "Meets")] // the weakest for 240 V is D300
    [InlineData("", "coilSupplyVolts=120 V; contactOtherCoils=10 VA", "coilPower=21.6 VA", "MeetsWithChanges checkCoilContact")]
    [InlineData("", "coilSupplyVolts=24 V; coilSupplyCurrent=DC", "coilCurrent=DC; coilPower=24 VA", "Meets")] // R150
    [InlineData("", "coilSupplyVolts=24 V; coilSupplyCurrent=DC", "coilCurrent=DC; coilPower=24.1 VA", "MeetsWithChanges checkCoilContact")]
    [InlineData("coilPower=15 VA; coilInrush=30 VA", "coilSupplyVolts=24 V", "coilPower=15 VA; coilInrush=30 VA", "Meets")]
    [InlineData("coilPower=15 VA; coilInrush=30 VA", "coilSupplyVolts=24 V", "coilPower=15 VA; coilInrush=30.1 VA", "MeetsWithChanges checkCoilContact")]
    [InlineData("coilPower=15 VA; coilInrush=30 VA", "coilSupplyVolts=24 V", "coilPower=15 VA", "MeetsWithChanges checkCoilContact")] // ten times are taken
    [InlineData("coilPower=15 VA; coilInrush=30 VA", "coilSupplyVolts=24 V; contactInrushVa=40 VA", "coilPower=15 VA; coilInrush=40 VA", "Meets")] // that it closes on that is marked
    [InlineData("coilPower=15 VA", "coilSupplyVolts=24 V", "coilPower=15 VA; coilInrush=90 VA", "Meets")] // no worse for being given: six times what the contact opened
    [InlineData("coilPower=15 VA", "coilSupplyVolts=24 V", "coilPower=15 VA; coilInrush=90.1 VA", "MeetsWithChanges checkCoilContact")]
    [InlineData("coilPower=73 VA", "coilSupplyVolts=24 V", "coilPower=73 VA; coilInrush=730 VA", "Meets")] // ten times above 72 VA
    [InlineData("coilPower=73 VA", "coilSupplyVolts=24 V", "coilPower=73 VA; coilInrush=730.1 VA", "MeetsWithChanges checkCoilContact")]
    [InlineData("coilPower=15 VA", "coilSupplyVolts=24 V; coilSupplyCurrent=DC", "coilPower=15 VA; coilInrush=150 VA", "Meets")] // of direct current it takes no more as it pulls in
    [InlineData("coilPower=30 VA; coilCurrent=DC", "coilSupplyVolts=24 V; coilSupplyCurrent=DC; contactDuty=C300", "coilCurrent=DC; coilPower=30 VA", "Meets")] // it carried the old one
    [InlineData("coilPower=30 VA; coilCurrent=AC", "coilSupplyVolts=24 V; coilSupplyCurrent=DC", "coilCurrent=DC; coilPower=30 VA", "MeetsWithChanges checkCoilContact")] // a contact that broke alternating current
    public void Where_its_marking_is_not_known_the_old_coil_and_the_weakest_pilot_duty_stand_for_it(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    /// <summary>What a contact closes on is often taken by what it opens; that it carried the old coil says more. What is marked outranks both.</summary>
    [Theory]
    [InlineData("coilPower=15 VA", "contactAmps=1 A", "coilPower=15 VA", "Meets")]
    [InlineData("coilPower=15 VA", "contactVa=15 VA", "coilPower=15 VA", "Meets")]
    [InlineData("coilPower=15 VA", "contactVa=15 VA; contactInrushVa=90 VA", "coilPower=15 VA", "Unknown Part coilInrush")]
    [InlineData("coilPower=14 VA", "contactVa=15 VA", "coilPower=15 VA", "Unknown Part coilInrush")]
    [InlineData("coilPower=15 VA; coilInrush=60 VA", "contactVa=15 VA", "coilPower=15 VA", "Unknown Part coilInrush")] // ten times are more than that took
    [InlineData("coilPower=15 VA", "contactVa=15 VA", "coilPower=15 VA; coilInrush=100 VA", "Unknown Site contactInrushVa")] // what that took as it pulled in is not known
    [InlineData("coilPower=15 VA; coilInrush=100 VA", "contactVa=15 VA", "coilPower=15 VA; coilInrush=100 VA", "Meets")]
    [InlineData("coilPower=15 VA; coilInrush=100 VA", "contactVa=15 VA", "coilPower=15 VA; coilInrush=101 VA", "Unknown Site contactInrushVa")]
    [InlineData("coilPower=15 VA; coilCurrent=DC", "contactVa=15 VA", "coilPower=15 VA", "Unknown Part coilInrush")] // that took no more as it pulled in
    [InlineData("coilPower=15 VA", "contactVa=14 VA", "coilPower=15 VA", "Fails")]
    public void Where_what_it_closes_on_is_only_taken_no_more_than_the_old_coil_meets(string plate, string contact, string part, string answer) =>
        Answer(plate, $"{contact}; coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz; coilSupplyCurrent=AC", part).ShouldBe(answer);

    [Theory]
    [InlineData("coilVolts=208-240 V", "", "coilPower=14 VA", "Meets")]
    [InlineData("coilVolts=24/120 V", "", "coilPower=14 VA", "Unknown Site coilSupplyVolts")] // at 24 V a check, at 120 V enough
    [InlineData("coilVolts=24 V", "contactDuty=C300", "coilPower=30.6 VA", "Meets")] // 20.4 V, 85 % of 24 V, are 17 % of 120 V
    [InlineData("coilVolts=24 V", "contactDuty=C300", "coilPower=30.7 VA", "Unknown Site coilSupplyVolts")]
    [InlineData("coilVolts=24 V", "contactDuty=C300", "coilPower=39.6 VA", "Unknown Site coilSupplyVolts")] // 26.4 V, 110 %, are 22 %
    [InlineData("coilVolts=24 V", "contactDuty=C300", "coilPower=39.7 VA", "Fails")]
    [InlineData("", "contactDuty=C300", "coilVolts=24 V; coilPower=14 VA", "Unknown Site coilSupplyVolts")]
    [InlineData("", "contactVa=15 VA", "coilVolts=24 V; coilPower=15 VA; coilInrush=90 VA", "Meets")]
    [InlineData("", "contactVa=15 VA", "coilVolts=24 V; coilPower=15.1 VA", "Fails")]
    [InlineData("", "contactVa=100 VA; contactDuty=D300", "coilVolts=24 V; coilPower=90 VA", "Unknown Site coilSupplyVolts")] // D300 opens 72 VA at most
    [InlineData("", "contactVa=100 VA; contactDuty=D300", "coilVolts=24 V; coilPower=100.1 VA", "Fails")] // whatever the volts are
    [InlineData("", "contactVa=100 VA; contactAmps=1 A", "coilVolts=24 V; coilPower=50 VA", "Unknown Site coilSupplyVolts")]
    [InlineData("", "contactInrushVa=40 VA; contactDuty=D300", "coilVolts=24 V; coilPower=15 VA; coilInrush=41 VA", "Fails")]
    [InlineData("", "contactInrushVa=40 VA", "coilVolts=24 V; coilPower=15 VA; coilInrush=40 VA", "MeetsWithChanges checkCoilContact")]
    public void Without_the_volts_there_all_that_the_old_coil_may_have_been_fed_stands(string plate, string site, string part, string answer) => Answer(plate, $"coilSupplyCurrent=AC; {site}", part).ShouldBe(answer);

    [Theory]
    [InlineData("contactDuty=C300", "coilPower=30 VA", "Unknown Site coilSupplyCurrent")] // over the 24 VA of the weakest for direct current
    [InlineData("contactDuty=C300", "coilPower=24 VA", "Unknown Site coilSupplyCurrent")]
    [InlineData("contactDuty=C300; contactDirectDuty=R300", "coilPower=24 VA", "Meets")]
    [InlineData("contactDuty=C300; coilSupplyCurrent=AC", "coilPower=30 VA", "Meets")]
    [InlineData("contactVa=15 VA", "coilPower=9 VA", "Meets")] // whichever it is
    [InlineData("contactVa=15 VA", "coilPower=15 VA", "Unknown Site coilSupplyCurrent")] // of direct current it takes no more as it pulls in
    public void Whether_it_is_for_direct_current_is_asked_where_that_matters(string site, string part, string answer) => Answer("", $"{site}; coilSupplyVolts=24 V", part).ShouldBe(answer);

    /// <summary>A body whose own coil takes 10 VA at 120 V; that for 24 V takes 40 VA, over the 36 VA of C300 there.</summary>
    [Theory]
    [InlineData("120 V", "Meets")]
    [InlineData("24 V", "Fails")]
    public void The_coil_that_goes_in_counts(string volts, string answer) =>
        Answer("", $"contactDuty=C300; coilSupplyVolts={volts}; coilSupplyFrequency=60 Hz", "coilVolts=120 V; coilFrequency=60 Hz; coilPower=10 VA; furtherCoils=24 V 60 Hz 40 VA = QC-24").ShouldBe(answer);

    /// <summary>As with the transformer: what was read of the contact outranks that the old coil was carried.</summary>
    [Fact]
    public void A_contact_that_is_marked_for_less_fails_though_the_old_coil_took_as_much() =>
        Answer("coilPower=15 VA", "contactDuty=D300; coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz", "coilPower=15 VA").ShouldBe("Fails");

    [Fact]
    public void The_nearer_to_what_the_contact_opens_the_more_it_costs()
    {
        const string There = "contactDuty=C300; coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz";
        Judge("", There, "coilPower=18 VA; coilInrush=40 VA").Shortfall.ShouldBe(0.5, 1e-9);
        Judge("", There, "coilPower=36 VA; coilInrush=40 VA").Shortfall.ShouldBe(1, 1e-9);
    }

    [Fact]
    public void What_is_taken_is_said()
    {
        const string There = "coilSupplyVolts=24 V; coilSupplyFrequency=60 Hz";
        Judge("", $"contactVa=15 VA; {There}", "coilPower=9 VA").Sentence.ShouldContain("is taken to close on 90 VA of coils, 6 times what it opens");
        Judge("", $"contactVa=100 VA; {There}", "coilPower=9 VA").Sentence.ShouldContain("is taken to close on 1000 VA of coils, 10 times what it opens");
        Judge("", $"contactVa=15 VA; contactInrushVa=90 VA; {There}", "coilPower=9 VA").Sentence.ShouldContain("closes on 90 VA of coils");
        Judge("coilPower=15 VA", There, "coilPower=15 VA").Sentence.ShouldEndWith("which its contact carried; as they pull in the two are taken for alike.");
        Judge("coilPower=15 VA", There, "coilPower=15 VA; coilInrush=60 VA").Sentence.ShouldContain("it takes 60 VA as it pulls in, and the contact is taken to close on 90 VA");
        Judge("coilPower=15 VA; coilInrush=60 VA", There, "coilPower=15 VA; coilInrush=60 VA").Sentence.ShouldEndWith("which its contact carried.");
        Judge("", There, "coilPower=4 VA").Sentence.ShouldContain("is marked for is not known, and a pilot duty is taken");
        Judge("", $"contactInrushVa=40 VA; {There}", "coilPower=15 VA; coilInrush=20 VA").Sentence.ShouldContain("closes on 40 VA of coils at 24 V, and what it opens is not known");
        Judge("", $"contactDuty=C300; contactOtherCoils=21 VA; contactInrushVa=249 VA; {There}", "coilPower=15 VA; coilInrush=40 VA").Sentence.ShouldContain("250 VA with ten times the holding VA of the others, which is taken");
    }

    [Fact]
    public void What_the_contact_is_checked_for_is_a_step_that_names_it()
    {
        Judge("", "coilSupplyVolts=24 V", "coilPower=15 VA; coilInrush=150 VA").Changes.Single().Text.ShouldBe("see that the contact which feeds its coil is marked for 15 VA of coils, and for closing on 150 VA");
        var change = Judge("", "coilSupplyVolts=24 V; contactOtherCoils=5 VA", "coilPower=15 VA").Changes.ShouldHaveSingleItem();
        change.Text.ShouldBe("see that the contact which feeds its coil is marked for 20 VA of coils");
    }

    [Fact]
    public void What_pulls_in_by_less_than_it_holds_is_misread()
    {
        var family = Families.Find("solenoidValve")!;
        family.ReadNeed(new(null, [new("coilPower", "15 VA"), new("coilInrush", "10 VA")], [])).Contradictions.Single().Fields.ShouldBe(["coilPower", "coilInrush"]);
        family.ReadNeed(new(null, [], [new("contactVa", "15 VA"), new("contactInrushVa", "10 VA")])).Contradictions.Single().SiteFields.ShouldBe(["contactVa", "contactInrushVa"]);
        family.ReadNeed(new(null, [new("coilPower", "15 VA"), new("coilInrush", "15 VA")], [new("contactVa", "15 VA"), new("contactInrushVa", "15 VA")])).Contradictions.ShouldBeEmpty();
    }
}
