using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Closing, opening, changing over: practice. That main poles mostly close: practice, taken of an old one alone.</summary>
[Trait("Source", "contactor.actionOfContacts")]
public sealed class ActionOfContactsTests : ContactorAspectTests<ActionOfContacts, ActionFacet>
{
    [Theory]
    [InlineData("contactAction=NO", "contactAction=NO", "Meets")]
    [InlineData("contactAction=NO", "contactAction=NC", "Fails")]
    [InlineData("contactAction=NC", "contactAction=NO", "Fails")]
    [InlineData("contactAction=NO", "contactAction=change-over", "MeetsWithChanges useOneSide")]
    [InlineData("contactAction=NC", "contactAction=change-over", "MeetsWithChanges useOneSide")]
    [InlineData("contactAction=change-over", "contactAction=NO", "Unknown Plate contactAction")]
    [InlineData("poleCount=2P", "poleCount=2P", "Unknown Part contactAction")] // what most do tells nothing of this one
    [InlineData("poleCount=2P", "contactAction=NO", "Meets")]
    [InlineData("poleCount=2P", "contactAction=change-over", "MeetsWithChanges useOneSide")]
    [InlineData("poleCount=2P", "contactAction=NC", "Unknown Plate contactAction")] // nothing fails by what is taken
    [InlineData("", "contactAction=NO", "Unknown Plate contactAction")]
    [InlineData("contactAction=NO", "", "Unknown Part contactAction")]
    public void They_do_what_the_old_ones_did(string plate, string part, string answer) => Answer(plate, string.Empty, part).ShouldBe(answer);

    [Fact]
    public void What_was_taken_is_told() =>
        Judge("poleCount=2P", "", "contactAction=NO").Sentence.ShouldBe("Its contacts are normally open, as the old ones were. What the old ones do is not marked: normally open is taken, as most poles are.");
}
