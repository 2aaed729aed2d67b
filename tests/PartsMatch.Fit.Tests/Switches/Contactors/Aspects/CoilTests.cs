using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>85 to 110 %: IEC 60947-4-1, NEMA ICS 2, from memory; 0.85 x 24 = 20.4, 1.1 x 24 = 26.4, 0.85 x 208 = 176.8, 1.1 x 240 = 264 V and 0.95 x 60 = 57 Hz, 1.05 x 60 = 63 Hz worked by hand. 5 % of the frequency: practice.</summary>
[Trait("Source", "contactor.coil")]
public sealed class CoilTests : ContactorAspectTests<Coil, CoilFacet>
{
    [Theory]
    [InlineData("24 V", "20.4 V", "Meets")]
    [InlineData("24 V", "20.3 V", "Fails")]
    [InlineData("24 V", "26.4 V", "Meets")]
    [InlineData("24 V", "26.5 V", "Fails")]
    [InlineData("208-240 V", "176.8 V", "Meets")]
    [InlineData("208-240 V", "176.7 V", "Fails")]
    [InlineData("208-240 V", "264 V", "Meets")]
    [InlineData("208-240 V", "264.1 V", "Fails")]
    [InlineData("120 V", "24 V", "Fails")]
    [InlineData("120/240 V", "240 V", "MeetsWithChanges connectContactorCoil")]
    [InlineData("120/240 V", "180 V", "Fails")]
    public void A_coil_works_from_85_to_110_percent(string coil, string volts, string answer) => Answer("", $"controlVolts={volts}; controlFrequency=60 Hz", $"coilVolts={coil}; coilFrequency=50/60 Hz").ShouldBe(answer);

    [Theory]
    [InlineData("60 Hz", "60 Hz", "Meets")]
    [InlineData("60 Hz", "57 Hz", "Meets")]
    [InlineData("60 Hz", "57.1 Hz", "Meets")]
    [InlineData("60 Hz", "62.9 Hz", "Meets")]
    [InlineData("60 Hz", "63 Hz", "Meets")]
    [InlineData("60 Hz", "63.1 Hz", "Fails")]
    [InlineData("60 Hz", "56.9 Hz", "Fails")]
    [InlineData("60 Hz", "50 Hz", "Fails")]
    [InlineData("50 Hz", "60 Hz", "Fails")]
    [InlineData("50/60 Hz", "50 Hz", "Meets")]
    public void It_is_for_its_frequency(string coil, string there, string answer) => Answer("", $"controlVolts=24 V; controlFrequency={there}", $"coilVolts=24 V; coilFrequency={coil}").ShouldBe(answer);

    [Theory]
    [InlineData("coilVolts=24 V; coilFrequency=60 Hz", "", "coilVolts=24 V; coilFrequency=50/60 Hz", "Meets")]
    [InlineData("coilVolts=208-240 V; coilFrequency=60 Hz", "", "coilVolts=230 V; coilFrequency=60 Hz", "Meets")] // 195.5 to 253 V hold 208 and 240 V
    [InlineData("coilVolts=208-240 V; coilFrequency=60 Hz", "", "coilVolts=277 V; coilFrequency=60 Hz", "Unknown Site controlVolts")] // 235.5 to 304.7 V
    [InlineData("coilVolts=24 V; coilFrequency=60 Hz", "", "coilVolts=120 V; coilFrequency=60 Hz", "Fails")]
    [InlineData("", "", "coilVolts=24 V; coilFrequency=60 Hz", "Unknown Site controlVolts")]
    [InlineData("coilVolts=24 V", "", "coilVolts=24 V; coilFrequency=50/60 Hz", "Unknown Site controlCurrent")] // for any mains, but for no direct current
    [InlineData("coilVolts=24 V; coilCurrent=AC", "", "coilVolts=24 V; coilFrequency=50/60 Hz", "Meets")]
    [InlineData("coilVolts=120/240 V; coilFrequency=60 Hz", "", "coilVolts=120/240 V; coilFrequency=60 Hz", "MeetsWithChanges connectContactorCoil")]
    [InlineData("coilVolts=120/240 V; coilFrequency=60 Hz", "", "coilVolts=120 V; coilFrequency=60 Hz", "Unknown Site controlVolts")]
    [InlineData("coilVolts=24 V; coilFrequency=50/60 Hz", "", "coilVolts=24 V; coilFrequency=60 Hz", "Unknown Site controlFrequency")]
    [InlineData("coilVolts=24 V", "controlVolts=24 V", "coilVolts=24 V; coilFrequency=60 Hz", "Unknown Site controlFrequency")]
    [InlineData("coilVolts=24 V; coilFrequency=60 Hz", "", "coilFrequency=60 Hz", "Unknown Part coilVolts")]
    [InlineData("coilVolts=24 V; coilFrequency=60 Hz", "", "coilVolts=24 V", "Unknown Part coilFrequency")]
    public void Without_a_reading_the_old_coil_tells(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("controlVolts=24 V; controlFrequency=60 Hz", "MeetsWithChanges changeContactorCoil")]
    [InlineData("controlVolts=120 V; controlFrequency=60 Hz", "Meets")]
    [InlineData("controlVolts=480 V; controlFrequency=60 Hz", "Fails")]
    [InlineData("controlVolts=24 V; controlFrequency=50 Hz", "Fails")]
    [InlineData("controlVolts=24 V", "Unknown changeContactorCoil Site controlFrequency")]
    public void Another_coil_that_the_body_takes_is_a_change(string site, string answer) =>
        Answer("", site, "coilVolts=120 V; coilFrequency=60 Hz; furtherCoils=24 V 60 Hz = QV-24").ShouldBe(answer);

    [Fact]
    public void Its_number_goes_into_the_kit()
    {
        var change = Judge("", "controlVolts=24 V; controlFrequency=60 Hz", "coilVolts=120 V; coilFrequency=60 Hz; furtherCoils=24 V 60 Hz = QV-24").Changes.ShouldHaveSingleItem();
        change.Text.ShouldBe("put on coil QV-24, 24 V 60 Hz, in place of the one for 120 V 60 Hz");
        change.Kit.ShouldHaveSingleItem().What.ShouldBe("coil QV-24, 24 V 60 Hz");
    }

    [Fact]
    public void The_sentence_names_the_window_and_the_shortfall_is_1_at_its_edge()
    {
        var edge = Judge("", "controlVolts=20.4 V; controlFrequency=60 Hz", "coilVolts=24 V; coilFrequency=60 Hz");
        edge.Sentence.ShouldBe("20.4 V there; its coil, 24 V 60 Hz, takes 20.4 to 26.4 V.");
        edge.Shortfall.ShouldBe(1, 1e-9);
        Judge("", "controlVolts=24 V; controlFrequency=60 Hz", "coilVolts=24 V; coilFrequency=60 Hz").Shortfall.ShouldBe(0);
    }

    [Theory]
    [InlineData("", "controlVolts=24 V; controlCurrent=DC", "coilVolts=24 V; coilCurrent=DC", "Meets")]
    [InlineData("", "controlVolts=24 V; controlCurrent=DC", "coilVolts=24 V; coilFrequency=60 Hz", "Fails")]
    [InlineData("", "controlVolts=24 V; controlFrequency=60 Hz", "coilVolts=24 V; coilCurrent=DC", "Fails")]
    [InlineData("", "controlVolts=24 V", "coilVolts=24 V; coilCurrent=DC", "Unknown Site controlCurrent")] // it has no frequency to ask for
    [InlineData("", "controlVolts=24 V", "coilVolts=24 V; coilFrequency=60 Hz", "Unknown Site controlFrequency")]
    [InlineData("", "controlVolts=24 V", "coilVolts=24 V", "Unknown Part coilFrequency")]
    [InlineData("", "controlVolts=24 V; controlCurrent=DC", "coilVolts=24 V", "Unknown Part coilCurrent")]
    [InlineData("coilVolts=24 V; coilCurrent=DC", "", "coilVolts=24 V; coilCurrent=DC", "Meets")]
    [InlineData("coilVolts=24 V; coilCurrent=DC", "", "coilVolts=24 V; coilFrequency=50/60 Hz", "Fails")]
    [InlineData("coilVolts=24 V; coilCurrent=DC", "", "coilVolts=24 V; coilFrequency=60 Hz; furtherCoils=24 V DC = QV-24D", "MeetsWithChanges changeContactorCoil")]
    [InlineData("coilVolts=24 V; coilFrequency=60 Hz", "", "coilVolts=120 V; coilFrequency=60 Hz; furtherCoils=24 V DC = QV-24D", "Fails")]
    public void A_coil_is_for_its_kind_of_current(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);
}
