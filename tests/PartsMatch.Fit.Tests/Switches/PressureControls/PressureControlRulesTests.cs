using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Switches.PressureControls;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Switches.PressureControls;

/// <summary>What follows from a pressure control's plate, what contradicts, how it is written and drawn. The example 30 psi - 20 psi = 10 psi is a published article's; the rest is worked by hand.</summary>
public sealed class PressureControlRulesTests
{
    [Theory]
    [InlineData("function=low pressure; cutIn=30 psi; differential=20 psi", "cutOut=10 psi")]
    [InlineData("function=low pressure; cutOut=10 psi; differential=20 psi", "cutIn=30 psi")]
    [InlineData("function=high pressure; cutOut=400 psi; differential=100 psi", "cutIn=300 psi")]
    [InlineData("function=fan cycling; cutIn=250 psi; differential=80 psi", "cutOut=170 psi")]
    [InlineData("function=low pressure; cutIn=2 bar; differential=0.7 bar", "cutOut=1.3 bar")]
    [InlineData("function=low pressure; cutIn=30 psi; differential=10 to 40 psi", "")]
    [InlineData("range=10 to 100 psi", "isAdjustable=yes")]
    [InlineData("function=low pressure; isAdjustable=no; cutOut=10 psi; cutIn=30 psi", "differential=20 psi")]
    [InlineData("function=high pressure; isAdjustable=no; cutOut=400 psi; cutIn=300 psi", "differential=100 psi")]
    [InlineData("function=low pressure; isAdjustable=no; cutOut=10 inHg; cutIn=0 inHg", "differential=4.911542 psi")] // 33.86389 / 6.894757
    [InlineData("function=low pressure; isAdjustable=no; cutOut=30 psi; cutIn=10 psi", "")] // the wrong way round
    [InlineData("function=low pressure; cutOut=10 psi; cutIn=30 psi", "")] // as it is set, if it can be
    [InlineData("function=low pressure; cutOut=10 psi; cutIn=30 psi; range=5 to 100 psi", "isAdjustable=yes")]
    [InlineData("cutIn=30 psi; differential=20 psi", "")]
    public void Two_of_cut_in_cut_out_and_differential_tell_the_third(string plate, string deduced) =>
        string.Join("; ", PressureControlFamily.PressureControl.Deduce(Named.Record<PressureControlSpec>(plate)).Deductions.Select(one => $"{one.Field}={one.Text}")).ShouldBe(deduced);

    [Fact]
    public void The_old_settings_are_what_is_needed()
    {
        var need = Read("function=low pressure; cutIn=30 psi; differential=20 psi");
        string.Join("; ", need.Deductions.Where(one => one.Side == Side.Site).Select(one => $"{one.Field}={one.Text}")).ShouldBe("cutOutNeeded=10 psi; cutInNeeded=30 psi");
    }

    /// <summary>Who wants it to open elsewhere hardly wants it to close where the old one did: at 250 and 300 psi no high-pressure control can. Within 5 psi it does the same (practice).</summary>
    [Theory]
    [InlineData("cutOutNeeded=250 psi", "")]
    [InlineData("cutInNeeded=380 psi", "")]
    [InlineData("cutOutNeeded=405 psi", "cutInNeeded=300 psi")]
    [InlineData("cutOutNeeded=405.1 psi", "")]
    [InlineData("cutInNeeded=295 psi", "cutOutNeeded=400 psi")]
    public void One_of_the_old_settings_is_needed_no_more_where_the_other_is_to_be_another(string site, string deduced) =>
        string.Join("; ", Read("function=high pressure; cutOut=400 psi; cutIn=300 psi", site).Deductions.Where(one => one.Side == Side.Site).Select(one => $"{one.Field}={one.Text}")).ShouldBe(deduced);

    [Theory]
    [InlineData("function=high pressure; action=opens on fall", "", "function, action", "does not open on fall")]
    [InlineData("action=opens on rise; cutOut=300 psi; cutIn=400 psi", "", "cutOut, cutIn", "is not above its cut-in")]
    [InlineData("action=opens on fall; cutOut=30 psi; cutIn=10 psi", "", "cutOut, cutIn", "is not below its cut-in")]
    [InlineData("cutOut=10 psi; cutIn=60 psi; differential=20 psi", "", "cutOut, cutIn, differential", "another distance")]
    [InlineData("cutOut=10 psi", "cutOutNeeded=20 psi", "cutOut", "was set to 10 psi, and 20 psi")]
    [InlineData("function=high pressure", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "function", "opens on rise, and the cut-out of 250 psi that is needed is not above the cut-in of 300 psi")]
    [InlineData("action=opens on fall", "cutOutNeeded=40 psi; cutInNeeded=30 psi", "action", "opens on fall, and the cut-out of 40 psi that is needed is not below the cut-in of 30 psi")]
    [InlineData("action=change-over", "cutOutNeeded=40 psi; cutInNeeded=30 psi; sidesWired=opens on fall", "", "opens on fall, and the cut-out of 40 psi that is needed is not below the cut-in of 30 psi")]
    [InlineData("action=opens on rise", "sidesWired=opens on fall", "action", "said to be wired: the side that opens on fall of change-over contacts")]
    [InlineData("pressureMost=325 psi", "testPressure=475 psi", "pressureMost", "bore 325 psi, and its side is tested at 475 psi")]
    public void What_disagrees_is_told(string plate, string site, string fields, string says)
    {
        var found = Read(plate, site).Contradictions.ShouldHaveSingleItem();
        string.Join(", ", found.Fields).ShouldBe(fields);
        found.Sentence.ShouldContain(says);
    }

    [Theory]
    [InlineData("function=high pressure; cutOut=400 psi; cutIn=300 psi; differential=100 psi", "cutOutNeeded=405 psi")]
    [InlineData("function=low pressure; cutOut=10 psi; cutIn=30 psi; differential=10 to 40 psi", "")]
    public void What_agrees_is_not(string plate, string site) => Read(plate, site).Contradictions.ShouldBeEmpty();

    [Theory]
    [InlineData("100 to 400 psi", "100 to 400 psi")]
    [InlineData("100-400 PSIG", "100 to 400 psi")]
    [InlineData("-0.3 to 7 bar", "-0.3 to 7 bar")]
    [InlineData("20 psi", "20 psi")]
    [InlineData("20 in Hg to 100 psi", "20 inHg to 100 psi")]
    [InlineData("20 in. Hg-100 psig", "20 inHg to 100 psi")]
    [InlineData("20 to 10 inHg vac", "20 to 10 inHg")]
    [InlineData("10 in Hg", "10 inHg")]
    public void Pressures_are_read_from_one_to_another(string text, string written)
    {
        PressureSpan.Form.Write(PressureSpan.Form.Read(text).Value!).ShouldBe(written);
        PressureSpan.Form.Read(written).Value.ShouldBe(PressureSpan.Form.Read(text).Value);
    }

    [Theory]
    [InlineData("400 to 100 psi", "the lower pressure stands first")]
    [InlineData("10 to 20 in Hg", "the lower pressure stands first")]
    [InlineData("30 in Hg", "outside")] // 29.92 in Hg are all there is
    [InlineData("5 bar to 100 psi", "not gauge pressures")]
    [InlineData("100 to 400", "not gauge pressures")]
    [InlineData("psi", "not gauge pressures")]
    [InlineData("1 to 99999 psi", "outside")]
    [InlineData("", "nothing is written")]
    public void What_is_no_range_is_refused(string text, string wrong) => PressureSpan.Form.Read(text).Wrong!.ShouldContain(wrong);

    [Fact]
    public void Cut_out_and_cut_in_are_drawn_in_the_range()
    {
        var need = Read("", "cutOutNeeded=10 psi; cutInNeeded=110 psi").Need;
        var scale = (Scale)PressureControlFamily.PressureControl.Drawings(need, Named.Record<PressureControlSpec>("range=5 to 100 psi")).ShouldHaveSingleItem();
        scale.Zones.Single(zone => zone.Role == Role.Good).Span.ShouldSatisfyAllConditions(span => span.Low.ShouldBe(34.5, 0.05), span => span.High.ShouldBe(689.5, 0.05)); // 6.8948 kPa a psi
        scale.Marks.Count.ShouldBe(2);
        scale.Words.ShouldContain("not within it");
        PressureControlFamily.PressureControl.Drawings(need, Named.Record<PressureControlSpec>("")).ShouldBeEmpty();
    }

    private static NeedReading Read(string plate, string site = "") => PressureControlFamily.PressureControl.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));

    /// <summary>1 in Hg = 3.386 kPa (published: ISO 80000-4), so that 20 in Hg of vacuum are 67.7 kPa, or 9.8 psi, under the air: worked by hand.</summary>
    [Theory]
    [InlineData("20 in Hg", -67.7)]
    [InlineData("-20 inHg", -67.7)]
    [InlineData("0 inHg", 0)]
    public void Inches_of_mercury_are_a_vacuum(string text, double kilopascals)
    {
        var cutOut = Named.Record<PressureControlSpec>($"cutOut={text}").CutOut!.Value;
        cutOut.Kilopascals.ShouldBe(kilopascals, 0.05);
        Deduced($"function=low pressure; cutOut={text}; differential=20 psi").ShouldContain(text == "0 inHg" ? "cutIn=20 psi" : "cutIn=10.1"); // 20 − 9.82 = 10.18 psi
    }

    private static string Deduced(string plate) => string.Join("; ", PressureControlFamily.PressureControl.Deduce(Named.Record<PressureControlSpec>(plate)).Deductions.Select(one => $"{one.Field}={one.Text}"));
}
