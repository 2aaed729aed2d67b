using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Tests.Switches.PressureControls.Aspects;

/// <summary>High opens on rise, low on fall: published articles; fan cycling closes on rise: practice.</summary>
[Trait("Source", "pressureControl.contactsDo")]
public sealed class ContactsDoTests : PressureControlAspectTests<ContactsDo, PressureActionFacet>
{
    [Theory]
    [InlineData("function=high pressure", "action=opens on rise", "Meets")]
    [InlineData("function=high pressure", "action=opens on fall", "Unknown Plate action")] // nothing fails by what is taken
    [InlineData("function=high pressure; action=opens on rise", "action=opens on fall", "Fails")]
    [InlineData("function=low pressure", "function=low pressure", "Unknown Part action")] // it may change over
    [InlineData("function=low pressure", "action=opens on fall", "Meets")]
    [InlineData("function=fan cycling", "action=closes on rise", "Meets")]
    [InlineData("function=fan cycling; action=closes on rise", "action=opens on rise", "Fails")]
    [InlineData("function=low pressure", "action=SPDT", "MeetsWithChanges useOneSide")]
    [InlineData("action=SPDT", "action=opens on fall", "Unknown Site sidesWired")]
    [InlineData("", "action=opens on fall", "Unknown Plate action")]
    [InlineData("function=low pressure", "", "Unknown Part action")]
    public void They_open_the_same_way(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    /// <summary>What is wired is needed, and nothing else: practice.</summary>
    [Theory]
    [InlineData("action=SPDT", "opens on fall", "action=opens on fall", "Meets")]
    [InlineData("action=SPDT", "the one that closes on rise", "action=opens on rise", "Fails")]
    [InlineData("action=SPDT", "the one that opens on rise", "action=opens on rise", "Meets")]
    [InlineData("action=SPDT", "the one that opens on rise", "action=opens on fall", "Fails")]
    [InlineData("action=SPDT", "the one that opens on rise", "action=SPDT", "Meets")]
    [InlineData("action=SPDT", "both", "action=opens on rise", "Fails")]
    [InlineData("action=SPDT", "both", "action=SPDT", "Meets")]
    [InlineData("function=high pressure", "both", "action=opens on rise", "Fails")]
    [InlineData("", "the one that opens on rise", "action=SPDT", "MeetsWithChanges useOneSide")]
    public void What_is_wired_is_needed(string plate, string wired, string part, string answer) => Answer(plate, $"sidesWired={wired}", part).ShouldBe(answer);

    [Fact]
    public void What_was_taken_is_told() =>
        Judge("function=low pressure", "", "action=opens on fall").Sentence.ShouldBe("Its contacts do as the old ones did: opens on fall. What the old ones do is not marked: opens on fall is taken, as one for low pressure mostly does.");
}
