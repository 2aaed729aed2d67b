using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Closing, opening, changing over: practice. That main poles close unless marked otherwise: practice.</summary>
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
    [InlineData("poleCount=2P", "poleCount=2P", "Meets")]
    [InlineData("", "contactAction=NO", "Unknown Plate contactAction")]
    [InlineData("contactAction=NO", "", "Unknown Part contactAction")]
    public void They_do_what_the_old_ones_did(string plate, string part, string answer) => Answer(plate, string.Empty, part).ShouldBe(answer);
}
