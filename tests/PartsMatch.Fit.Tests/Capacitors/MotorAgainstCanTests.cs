using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Capacitors;

/// <summary>What is asked for where the old capacitor sat, against its marking. ±6 %: EIA-456-A practice; 1.06 × 7.5 = 7.95 worked by hand.</summary>
public sealed class MotorAgainstCanTests
{
    [Theory]
    [InlineData("rating=5 µF 370 V", "motorAsksFor=7.5 µF 370 V", "rating", "motorAsksFor", "marked 5 µF 370 V, the motor's plate asks for 7.5 µF 370 V: a wrong one was fitted")]
    [InlineData("rating=8 µF 370 V", "motorAsksFor=7.5 µF 370 V", "rating", "motorAsksFor", "marked 8 µF 370 V")]
    [InlineData("rating=5 µF 370 V", "motorAsksFor=none", "rating", "motorAsksFor", "asks for no run capacitor")]
    [InlineData("rating=5 µF 370 V", "motorAsksFor=5 µF 440 V", "rating", "motorAsksFor", "marked 370 V, the motor asks for 440 V")]
    [InlineData("rating=45+5 µF 440 V", "motorAsksFor=45 µF 440 V; secondMotorAsksFor=7.5 µF 370 V", "rating", "secondMotorAsksFor", "the second motor's plate asks for 7.5 µF 370 V")]
    [InlineData("rating=5 µF 370 V; frequency=50 Hz", "supplyFrequency=60 Hz", "frequency", "supplyFrequency", "marked 50 Hz, the supply has 60 Hz")]
    [InlineData("rating=5 µF 370 V; temperatureMost=70 °C", "airMost=75 °C", "temperatureMost", "airMost", "may have killed it")]
    [InlineData("can=oval", "strapHolds=round", "can", "strapHolds", "hold a round one")]
    public void What_does_not_go_with_the_old_marking_is_told(string plate, string site, string field, string siteField, string says)
    {
        var found = CapacitorFamily.Capacitor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Contradictions.ShouldHaveSingleItem();
        found.Fields.ShouldBe([field]);
        found.SiteFields.ShouldBe([siteField]);
        found.Sentence.ShouldContain(says);
    }

    [Theory]
    [InlineData("rating=5 µF 370 V", "")]
    [InlineData("rating=7.9 µF 370 V", "motorAsksFor=7.5 µF 370 V")]
    [InlineData("rating=5 µF 440 V", "motorAsksFor=5 µF 370 V")]
    [InlineData("rating=45+5 µF 440 V", "motorAsksFor=5 µF 370 V")]
    [InlineData("rating=45+5 µF 440 V", "motorAsksFor=45 µF 440 V; secondMotorAsksFor=5 µF 370 V")]
    [InlineData("frequency=50/60 Hz", "supplyFrequency=60 Hz")]
    [InlineData("frequency=60 Hz", "supplyFrequency=50 Hz")]
    [InlineData("temperatureMost=70 °C", "airMost=70 °C")]
    [InlineData("can=round", "strapHolds=round")]
    public void What_goes_with_it_is_not(string plate, string site) =>
        CapacitorFamily.Capacitor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site))).Contradictions.ShouldBeEmpty();
}
