using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Capacitors;

/// <summary>µF on a scale. 6 % of 5 µF is 0.3 µF, of 45 µF 2.7 µF: by hand.</summary>
public sealed class CapacitorDrawingsTests
{
    [Theory]
    [InlineData("rating=7.5/370", 7.5, "marked: 7.5 µF")]
    [InlineData("rating=5/440", 5, "marked: 5 µF")]
    public void A_part_s_microfarads_stand_against_what_is_asked_for(string part, double has, string label)
    {
        var scale = Draw("rating=5/370", part).ShouldHaveSingleItem();
        scale.Zones[1].Span.Low.ShouldBe(4.7, 1e-9);
        scale.Zones[1].Span.High.ShouldBe(5.3, 1e-9);
        scale.Zones.Select(zone => zone.Role).ShouldBe([Role.Bad, Role.Good, Role.Bad]);
        var mark = scale.Marks.Single(one => one.Role == Role.New);
        (mark.At.Low, mark.Label).ShouldBe((has, label));
        scale.Range.Holds(has).ShouldBeTrue();
    }

    [Fact]
    public void A_closer_marking_of_the_old_one_makes_the_zone_narrower() => Draw("rating=5/370; tolerance=4 %", "rating=5/370").Single().Zones[1].Span.High.ShouldBe(5.2, 1e-9);

    [Fact]
    public void Each_section_stands_against_the_motor_that_it_serves_whichever_way_round_it_is_listed()
    {
        var scales = Draw("rating=45+5/440", "rating=5+45/440");
        scales.Select(scale => scale.Name).ShouldBe(["capacitance", "secondCapacitance"]);
        scales.Select(scale => scale.Marks[0].At.Low).ShouldBe([45, 5]);
    }

    [Theory]
    [InlineData("", "rating=5/370")]
    [InlineData("rating=5/370", "")]
    public void Nothing_is_drawn_of_what_is_not_known(string plate, string part) => Draw(plate, part).ShouldBeEmpty();

    [Fact]
    public void Nothing_is_drawn_where_the_motor_asks_for_none() => Draw("rating=5/370", "rating=5/370", "motorAsksFor=none").ShouldBeEmpty();

    // µF = 10⁶ · I / (2π f V): 0.7 A at 370 V and 60 Hz are 5.02 µF, by hand.
    [Theory]
    [InlineData("microfarads=4.9 µF", 4.9)]
    [InlineData("acrossVolts=370 V; leadAmps=0.7 A", 5.018)]
    public void After_the_swap_it_is_what_was_measured(string readings, double microfarads)
    {
        var mark = After(readings).ShouldHaveSingleItem().ShouldBeOfType<Scale>().Marks[0];
        mark.At.Low.ShouldBe(microfarads, 0.001);
        mark.Label.ShouldStartWith("measured: ");
        // At the old one as at the new one.
        Before(readings).ShouldHaveSingleItem().ShouldBeOfType<Scale>().Marks[0].ShouldBe(mark);
    }

    [Fact]
    public void With_nothing_measured_nothing_is_drawn_after_the_swap() => After("bulges=no").Concat(Before("bulges=no")).ShouldBeEmpty();

    private static IReadOnlyList<Drawing> Before(string readings) => CapacitorFamily.Capacitor.BeforeCondemning(
        CapacitorFamily.Capacitor.ReadNeed(new(null, Named.Texts("rating=5/370"), Named.Texts("supplyFrequency=60 Hz"))).Need,
        Named.Record<CapacitorReadings>(readings)).Drawings;

    private static IReadOnlyList<Drawing> After(string readings) => CapacitorFamily.Capacitor.AfterSwap(
        CapacitorFamily.Capacitor.ReadNeed(new(null, Named.Texts("rating=5/370"), Named.Texts("supplyFrequency=60 Hz"))).Need,
        Named.Record<CapacitorSpec>("rating=5/370"),
        Named.Record<CapacitorReadings>(readings)).Drawings;

    private static List<Scale> Draw(string plate, string part, string site = "") =>
        [.. CapacitorFamily.Capacitor.Drawings(new(Named.Record<CapacitorSpec>(plate), Named.Record<CapacitorSite>(site)), Named.Record<CapacitorSpec>(part)).Cast<Scale>()];
}
