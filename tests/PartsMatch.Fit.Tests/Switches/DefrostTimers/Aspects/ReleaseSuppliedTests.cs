using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>85 to 110 %: practice. 0.85 × 240 = 204, 1.1 × 240 = 264, worked by hand.</summary>
[Trait("Source", "defrostTimer.releaseSupplied")]
public sealed class ReleaseSuppliedTests : DefrostTimerAspectTests<ReleaseSupplied, CoilFacet>
{
    [Theory]
    [InlineData("203.9 V", "Fails")]
    [InlineData("204 V", "Meets")]
    [InlineData("204.1 V", "Meets")]
    [InlineData("263.9 V", "Meets")]
    [InlineData("264 V", "Meets")]
    [InlineData("264.1 V", "Fails")]
    public void A_solenoid_pulls_from_85_to_110_percent(string volts, string answer) =>
        Answer("", $"endedThereBy=temperature; releaseSupplyVolts={volts}; clockSupplyFrequency=60 Hz", "releaseVolts=240 V; releaseFrequency=60 Hz").ShouldBe(answer);

    [Theory]
    [InlineData("", "endedThereBy=time", "", "Meets")]
    [InlineData("", "endedThereBy=pressure", "releaseVolts=24 V", "Meets")]
    [InlineData("endedBy=time", "", "", "Meets")]
    [InlineData("endedBy=time, pressure", "", "", "Meets")]
    [InlineData("", "", "releaseVolts=240 V", "Unknown Site endedThereBy")]
    [InlineData("endedBy=temperature; clockVolts=240 V; clockFrequency=60 Hz", "", "endedBy=temperature; clockVolts=240 V; releaseVolts=240 V; clockFrequency=60 Hz", "Meets")] // both hung on the same line
    [InlineData("endedBy=temperature; clockVolts=240 V; clockFrequency=60 Hz", "", "endedBy=temperature; releaseVolts=120 V; clockFrequency=60 Hz", "Unknown Site releaseSupplyVolts")] // which is no reason to turn it away
    [InlineData("endedBy=temperature; clockVolts=240 V; clockFrequency=60 Hz", "", "endedBy=temperature; clockVolts=240 V; clockFrequency=60 Hz", "Unknown Part releaseVolts")]
    [InlineData("releaseVolts=240 V; clockFrequency=60 Hz", "", "releaseVolts=240 V; clockFrequency=60 Hz", "Meets")]
    [InlineData("releaseVolts=240 V; clockFrequency=60 Hz", "", "releaseVolts=120 V; clockFrequency=60 Hz", "Unknown Site endedThereBy")]
    [InlineData("endedBy=temperature; releaseVolts=240 V; clockFrequency=60 Hz", "", "releaseVolts=120 V; clockFrequency=60 Hz", "Fails")]
    [InlineData("endedBy=time, temperature; releaseVolts=240 V; clockFrequency=60 Hz", "", "releaseVolts=120 V; clockFrequency=60 Hz", "Unknown Site endedThereBy")]
    [InlineData("endedBy=time, temperature; releaseVolts=240 V; clockFrequency=60 Hz", "", "releaseVolts=240 V; clockFrequency=60 Hz", "Meets")]
    [InlineData("endedBy=temperature; releaseVolts=240 V; clockFrequency=60 Hz", "", "", "Unknown Part releaseVolts")]
    [InlineData("endedBy=temperature; releaseVolts=240 V; clockFrequency=60 Hz", "", "releaseVolts=240 V", "Unknown Part releaseFrequency")]
    public void It_matters_where_temperature_ends_the_defrost(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("releaseSupplyVolts=240 V", "releaseVolts=120/240 V; releaseFrequency=60 Hz", "MeetsWithChanges connectRelease")]
    [InlineData("releaseSupplyVolts=180 V", "releaseVolts=120/240 V; releaseFrequency=60 Hz", "Fails")]
    [InlineData("releaseSupplyVolts=240 V", "clockVolts=120/240 V; clockFrequency=60 Hz; endedBy=temperature", "Unknown Part releaseVolts")] // what the clock is connected for says nothing of it
    [InlineData("releaseSupplyVolts=240 V", "clockVolts=208-240 V; clockFrequency=60 Hz; endedBy=temperature", "Unknown Part releaseVolts")]
    [InlineData("releaseSupplyVolts=24 V", "clockVolts=208-240 V; clockFrequency=60 Hz; endedBy=temperature", "Unknown Part releaseVolts")] // nor does one for a single voltage
    public void A_solenoid_for_two_voltages_is_connected_for_one(string site, string part, string answer) => Answer("", $"endedThereBy=temperature; clockSupplyFrequency=60 Hz; {site}", part).ShouldBe(answer);

    [Fact]
    public void The_change_names_the_volts() =>
        Judge("", "endedThereBy=temperature; releaseSupplyVolts=236 V; clockSupplyFrequency=60 Hz", "releaseVolts=120/240 V; releaseFrequency=60 Hz").Changes.ShouldHaveSingleItem().Text.ShouldBe("connect its release solenoid for 240 V 60 Hz");

    /// <summary>Volts that were not measured are the old one's by its marking, and are said to be.</summary>
    [Theory]
    [InlineData("", "240 V there, as the old one's is marked; its release solenoid, 208-240 V 60 Hz, takes 176.8 to 264 V.")]
    [InlineData("releaseSupplyVolts=208 V", "208 V there; its release solenoid, 208-240 V 60 Hz, takes 176.8 to 264 V.")]
    public void Volts_by_the_old_ones_marking_are_told_from_measured_ones(string site, string sentence) =>
        Judge("endedBy=temperature; releaseVolts=240 V; clockVolts=240 V; clockFrequency=60 Hz", $"clockSupplyVolts=208 V; {site}", "endedBy=temperature; releaseVolts=208-240 V; releaseFrequency=60 Hz").Sentence.ShouldBe(sentence);

    [Fact]
    public void An_answer_that_rests_on_the_clocks_volts_says_so() =>
        Judge("endedBy=temperature; clockVolts=240 V; clockFrequency=60 Hz", "", "endedBy=temperature; releaseVolts=240 V; releaseFrequency=60 Hz").Sentence.ShouldBe("Its release solenoid, 240 V 60 Hz, takes all that the old one's, 240 V 60 Hz, could be fed. The old one's is not marked: the volts of its clock are taken.");
}
