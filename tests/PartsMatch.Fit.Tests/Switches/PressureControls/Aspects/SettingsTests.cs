using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>The range holds both: practice; 5 psi: practice. The example 30 psi - 20 psi = 10 psi is a published article's.</summary>
[Trait("Source", "pressureControl.settings")]
public sealed class SettingsTests : PressureControlAspectTests<Settings, SettingsFacet>
{
    private const string Part = "function=low pressure; range=10 to 100 psi; differential=10 to 40 psi";

    [Theory]
    [InlineData("10 psi", "30 psi", "MeetsWithChanges setControl")]
    [InlineData("9.9 psi", "30 psi", "Fails")]
    [InlineData("10.1 psi", "30 psi", "MeetsWithChanges setControl")]
    [InlineData("60 psi", "100 psi", "MeetsWithChanges setControl")]
    [InlineData("60 psi", "100.1 psi", "Fails")]
    [InlineData("10 psi", "", "Unknown Site cutInNeeded")]
    [InlineData("", "30 psi", "Unknown Site cutOutNeeded")]
    public void The_range_holds_cut_out_and_cut_in(string cutOut, string cutIn, string answer) =>
        Answer("", $"{(cutOut.Length > 0 ? $"cutOutNeeded={cutOut}; " : "")}{(cutIn.Length > 0 ? $"cutInNeeded={cutIn}" : "")}", Part).ShouldBe(answer);

    [Theory]
    [InlineData("cutIn=30 psi; differential=20 psi", "MeetsWithChanges setControl")] // opens at 10 psi
    [InlineData("cutIn=30 psi; differential=20.1 psi", "Fails")] // at 9.9 psi
    public void The_cut_out_of_a_low_pressure_control_is_its_cut_in_less_its_differential(string plate, string answer) => Answer($"function=low pressure; {plate}", "", Part).ShouldBe(answer);

    [Theory]
    [InlineData("isAdjustable=no; cutOut=405 psi; cutIn=300 psi", "Meets")]
    [InlineData("isAdjustable=no; cutOut=405.1 psi; cutIn=300 psi", "Fails")]
    [InlineData("isAdjustable=no; cutOut=395 psi; cutIn=305 psi", "Meets")]
    [InlineData("isAdjustable=no; cutOut=400 psi; cutIn=294.9 psi", "Fails")]
    [InlineData("isAdjustable=no; cutOut=400 psi", "Unknown Part cutIn")]
    [InlineData("isAdjustable=no; cutOut=400 psi; reset=manual", "Meets")]
    [InlineData("cutOut=405 psi; cutIn=295 psi", "Meets")] // whether it can be set or not, and to whatever
    [InlineData("cutOut=405.1 psi; cutIn=300 psi", "Unknown Part range")]
    [InlineData("cutOut=400 psi; cutIn=294.9 psi", "Unknown Part range")]
    [InlineData("cutOut=400 psi", "Unknown Part range")]
    [InlineData("cutOut=405 psi; reset=manual", "Meets")]
    [InlineData("isAdjustable=yes; cutOut=400 psi; cutIn=300 psi", "Meets")]
    [InlineData("range=100 to 450 psi; cutOut=400 psi; cutIn=300 psi", "Meets")]
    [InlineData("range=100 to 450 psi; cutOut=400 psi; cutIn=306 psi", "MeetsWithChanges setControl")]
    [InlineData("range=100 to 450 psi; reset=manual", "MeetsWithChanges setControl")]
    public void One_that_cannot_be_set_is_within_5_psi_of_both(string part, string answer) => Answer("", "cutOutNeeded=400 psi; cutInNeeded=300 psi", part).ShouldBe(answer);

    /// <summary>A high-pressure control closes below where it opens, a low-pressure one above.</summary>
    [Theory]
    [InlineData("function=high pressure; cutOut=400 psi; cutIn=300 psi", "cutOutNeeded=250 psi", "Unknown Site cutInNeeded")]
    [InlineData("function=low pressure; cutOut=40 psi; cutIn=60 psi", "cutInNeeded=30 psi", "Unknown Site cutOutNeeded")]
    [InlineData("function=high pressure", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "Unknown Site cutOutNeeded")]
    [InlineData("function=high pressure", "cutOutNeeded=300 psi; cutInNeeded=300 psi", "Unknown Site cutOutNeeded")]
    [InlineData("function=low pressure", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "MeetsWithChanges setControl")]
    [InlineData("action=change-over", "cutOutNeeded=250 psi; cutInNeeded=300 psi; sidesWired=opens on rise", "Unknown Site cutOutNeeded")]
    [InlineData("action=change-over", "cutOutNeeded=250 psi; cutInNeeded=300 psi", "MeetsWithChanges setControl")] // of which side, nobody said
    [InlineData("function=high pressure", "cutOutNeeded=500 psi; cutInNeeded=520 psi", "Unknown Site cutOutNeeded")]
    public void Settings_the_wrong_way_round_are_set_on_none(string plate, string site, string answer) => Answer(plate, site, "range=20 to 450 psi; differential=20 to 120 psi").ShouldBe(answer);

    /// <summary>With a button the cut-in is of no matter, wherever it is said to lie.</summary>
    [Fact]
    public void With_manual_reset_a_cut_in_that_cannot_be_is_of_no_matter() =>
        Answer("function=low pressure; reset=manual", "cutOutNeeded=35 psi; cutInNeeded=30 psi", "range=20 to 450 psi; reset=manual").ShouldBe("MeetsWithChanges setControl");

    [Fact]
    public void The_change_names_both() =>
        Judge("", "cutOutNeeded=10 psi; cutInNeeded=30 psi", Part).Changes.ShouldHaveSingleItem().Text.ShouldBe("set it to cut-out 10 psi (69 kPa), cut-in 30 psi (207 kPa)");
}
