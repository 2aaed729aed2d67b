using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>Design pressure and 90 % of the relief: ASHRAE 15, from memory; 0.9 x 450 = 405 psi worked by hand.</summary>
[Trait("Source", "pressureControl.highSetting")]
public sealed class HighSettingTests : PressureControlAspectTests<HighSetting, HighSettingFacet>
{
    [Theory]
    [InlineData("405 psi", "designPressure=450 psi; reliefSetting=450 psi", "range=100 to 405 psi", "Meets")]
    [InlineData("405.1 psi", "designPressure=450 psi; reliefSetting=450 psi", "range=100 to 405 psi", "Fails")]
    [InlineData("400 psi", "designPressure=400 psi; reliefSetting=450 psi", "range=100 to 400 psi", "Meets")]
    [InlineData("400.1 psi", "designPressure=400 psi; reliefSetting=450 psi", "range=100 to 400 psi", "Fails")]
    [InlineData("400 psi", "designPressure=450 psi; reliefSetting=450 psi", "range=100 to 405.1 psi", "MeetsWithChanges fitStop")]
    [InlineData("400 psi", "designPressure=450 psi", "range=100 to 450 psi", "Unknown Site reliefSetting")]
    [InlineData("400 psi", "designPressure=420 psi; reliefSetting=400 psi", "range=100 to 450 psi", "Fails")] // 0.9 x 400 = 360 psi
    [InlineData("400 psi", "designPressure=390 psi", "range=100 to 450 psi", "Fails")]
    [InlineData("400 psi", "designPressure=450 psi", "", "Unknown Part range")]
    [InlineData("400 psi", "reliefSetting=450 psi", "range=100 to 400 psi", "Unknown Site designPressure")]
    [InlineData("400 psi", "", "range=100 to 400 psi", "Unknown Site designPressure")]
    public void It_opens_before_design_and_relief(string cutOut, string site, string part, string answer) =>
        Answer("function=high pressure", $"cutOutNeeded={cutOut}; {site}", part).ShouldBe(answer);

    /// <summary>No relief valve limits nothing; a setting that stands beside "none" is judged by.</summary>
    [Theory]
    [InlineData("450 psi", "range=100 to 450 psi", "Meets")]
    [InlineData("400 psi", "range=100 to 450.1 psi", "MeetsWithChanges fitStop")]
    [InlineData("450.1 psi", "range=100 to 450 psi", "Fails")]
    [InlineData("450 psi; reliefSetting=450 psi", "range=100 to 450 psi", "Fails")] // 0.9 x 450 = 405 psi
    public void Where_no_relief_valve_is_the_design_pressure_alone_limits(string cutOut, string part, string answer) =>
        Answer("function=high pressure", $"designPressure=450 psi; hasRelief=no; cutOutNeeded={cutOut}", part).ShouldBe(answer);

    [Fact]
    public void A_relief_valve_that_is_there_is_asked_for_its_setting() =>
        Answer("function=high pressure", "designPressure=450 psi; hasRelief=yes; cutOutNeeded=400 psi", "range=100 to 450 psi").ShouldBe("Unknown Site reliefSetting");

    [Fact]
    public void No_relief_valve_with_a_setting_is_a_contradiction() =>
        Families.Find("pressureControl")!.ReadNeed(new(null, [], [new("hasRelief", "no"), new("reliefSetting", "450 psi")])).Contradictions.ShouldHaveSingleItem().Sentence.ShouldContain("no relief valve");

    /// <summary>The limit that binds is named, and no other: one that is not known binds nothing, and is named as missing only where it may be there.</summary>
    [Theory]
    [InlineData("designPressure=390 psi", "390 psi (2689 kPa) is the most, by the design pressure")]
    [InlineData("designPressure=390 psi; reliefSetting=450 psi", "390 psi (2689 kPa) is the most, by the design pressure")]
    [InlineData("designPressure=450 psi; reliefSetting=400 psi", "360 psi (2482 kPa) is the most, by 90 % of the relief's setting")]
    [InlineData("reliefSetting=400 psi", "360 psi (2482 kPa) is the most, by 90 % of the relief's setting")]
    [InlineData("hasRelief=no", "The design pressure of the high side is not known.")]
    [InlineData("", "The design pressure of the high side, and the relief's setting, are not known.")]
    public void Only_a_limit_that_is_known_is_named(string site, string said)
    {
        var sentence = Judge("function=high pressure", $"cutOutNeeded=400 psi; {site}", "range=100 to 450 psi").Sentence;
        sentence.ShouldContain(said);
        sentence.Contains("design", StringComparison.Ordinal).ShouldBe(said.Contains("design", StringComparison.Ordinal), sentence);
        sentence.Contains("relief", StringComparison.Ordinal).ShouldBe(said.Contains("relief", StringComparison.Ordinal), sentence);
    }

    /// <summary>A stop that the design pressure asks for is told beside the relief that is to be seen.</summary>
    [Fact]
    public void A_relief_valve_of_which_nothing_is_known_is_asked_for()
    {
        var finding = Judge("function=high pressure", "cutOutNeeded=400 psi; designPressure=420 psi", "range=100 to 450 psi");
        finding.Missing.ShouldHaveSingleItem().Field.ShouldBe("reliefSetting");
        finding.Changes.ShouldHaveSingleItem().Text.ShouldStartWith("fit a stop at 420 psi");
    }

    [Theory]
    [InlineData("cutOutNeeded=450 psi; designPressure=450 psi; reliefSetting=500 psi", "cutOut=450 psi", "Meets")]
    [InlineData("cutOutNeeded=450 psi; designPressure=450 psi", "cutOut=450 psi", "Unknown Site reliefSetting")]
    [InlineData("cutOutNeeded=450 psi; designPressure=450 psi", "cutOut=455 psi", "Fails")]
    [InlineData("cutOutNeeded=402 psi; designPressure=500 psi; reliefSetting=450 psi", "cutOut=405 psi", "Meets")]
    [InlineData("cutOutNeeded=402 psi; designPressure=500 psi; reliefSetting=450 psi", "cutOut=405.1 psi", "Fails")]
    [InlineData("designPressure=450 psi", "cutOut=455 psi", "Fails")]
    [InlineData("cutOutNeeded=400 psi; reliefSetting=450 psi", "cutOut=400 psi", "Unknown Site designPressure")]
    [InlineData("cutOutNeeded=400 psi; designPressure=450 psi", "", "Unknown Part cutOut")]
    [InlineData("cutOutNeeded=400 psi; designPressure=450 psi; reliefSetting=500 psi", "range=400 psi", "Meets")]
    [InlineData("cutOutNeeded=400 psi; designPressure=450 psi", "range=455 psi", "Unknown Part cutOut")]
    public void One_that_cannot_be_set_is_judged_by_where_it_opens_itself(string site, string part, string answer) => Answer("function=high pressure", site, $"isAdjustable=no; {part}").ShouldBe(answer);

    [Theory]
    [InlineData("function=low pressure", "Meets")]
    [InlineData("", "Unknown Plate function")]
    [InlineData("function=high pressure", "Unknown Site cutOutNeeded")]
    public void Only_a_high_pressure_control_is_asked(string plate, string answer) => Answer(plate, "designPressure=450 psi", "range=100 to 500 psi").ShouldBe(answer);

    [Fact]
    public void The_stop_stands_at_the_limit() =>
        Judge("function=high pressure", "cutOutNeeded=400 psi; designPressure=450 psi; reliefSetting=450 psi", "range=100 to 500 psi").Changes.ShouldHaveSingleItem().Text
            .ShouldBe("fit a stop at 405 psi (2792 kPa): it could be set to 500 psi (3447 kPa)");
}
