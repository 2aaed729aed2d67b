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
    [InlineData("contactAction=change-over", "contactAction=change-over", "Meets")]
    [InlineData("contactAction=change-over", "contactAction=NO", "Unknown Site sidesWired")]
    [InlineData("poleCount=2P", "poleCount=2P", "Unknown Part contactAction")] // what most do tells nothing of this one
    [InlineData("poleCount=2P", "contactAction=NO", "Meets")]
    [InlineData("poleCount=2P", "contactAction=change-over", "MeetsWithChanges useOneSide")]
    [InlineData("poleCount=2P", "contactAction=NC", "Unknown Plate contactAction")] // nothing fails by what is taken
    [InlineData("", "contactAction=NO", "Unknown Plate contactAction")]
    [InlineData("contactAction=NO", "", "Unknown Part contactAction")]
    public void They_do_what_the_old_ones_did(string plate, string part, string answer) => Answer(plate, string.Empty, part).ShouldBe(answer);

    /// <summary>What is wired is needed, and nothing else: practice.</summary>
    [Theory]
    [InlineData("contactAction=change-over", "NO", "contactAction=NO", "Meets")]
    [InlineData("contactAction=change-over", "NO", "contactAction=NC", "Fails")]
    [InlineData("contactAction=change-over", "the normally closed one", "contactAction=NC", "Meets")]
    [InlineData("contactAction=change-over", "the normally closed one", "contactAction=NO", "Fails")]
    [InlineData("contactAction=change-over", "NO", "contactAction=change-over", "Meets")] // it is used as the old one was
    [InlineData("contactAction=change-over", "both", "contactAction=NO", "Fails")]
    [InlineData("contactAction=change-over", "both", "contactAction=change-over", "Meets")]
    [InlineData("contactAction=change-over", "both", "", "Unknown Part contactAction")]
    [InlineData("", "NC", "contactAction=NC", "Meets")] // whatever the old one could do besides
    [InlineData("", "NC", "contactAction=NO", "Fails")]
    [InlineData("", "NC", "contactAction=change-over", "MeetsWithChanges useOneSide")]
    [InlineData("poleCount=2P", "both", "contactAction=NO", "Fails")]
    [InlineData("contactAction=NO", "both", "contactAction=NO", "Unknown Plate contactAction")] // single ones have not two sides: one of the two is misread
    [InlineData("contactAction=NO", "both", "contactAction=change-over", "Unknown Plate contactAction")]
    [InlineData("contactAction=NO", "NC", "contactAction=NO", "Unknown Plate contactAction")]
    public void What_is_wired_is_needed(string plate, string wired, string part, string answer) => Answer(plate, $"sidesWired={wired}", part).ShouldBe(answer);

    /// <summary>A pole that closes and one that opens do for one line, and for another such pair, but neither for two lines nor for a change-over contact's two sides: what the words mean.</summary>
    [Theory]
    [InlineData("contactAction=one of each", "", "contactAction=one of each", "Meets")]
    [InlineData("contactAction=one of each", "sidesWired=both", "contactAction=one of each", "Meets")]
    [InlineData("contactAction=one of each", "sidesWired=NO", "contactAction=one of each", "Meets")]
    [InlineData("contactAction=one of each", "", "contactAction=change-over", "MeetsWithChanges useOneSide")]
    [InlineData("contactAction=one of each", "sidesWired=NC", "contactAction=change-over", "MeetsWithChanges useOneSide")]
    [InlineData("contactAction=one of each", "", "contactAction=NO", "Unknown Site sidesWired")]
    [InlineData("contactAction=one of each", "sidesWired=NO", "contactAction=NO", "Meets")]
    [InlineData("contactAction=one of each", "sidesWired=NO", "contactAction=NC", "Fails")]
    [InlineData("contactAction=one of each", "sidesWired=both", "contactAction=NO", "Fails")]
    [InlineData("contactAction=one of each", "", "", "Unknown Part contactAction")]
    [InlineData("poleCount=1P; contactAction=NO", "", "contactAction=one of each", "MeetsWithChanges usePoleThatDoes")]
    [InlineData("poleCount=1P; contactAction=NC", "", "contactAction=one of each", "MeetsWithChanges usePoleThatDoes")]
    [InlineData("poleCount=2P; contactAction=NO", "", "contactAction=one of each", "Fails")]
    [InlineData("poleCount=2P; contactAction=NC", "", "contactAction=one of each", "Fails")]
    [InlineData("poleCount=2P; contactAction=NO", "linesSwitched=1", "contactAction=one of each", "MeetsWithChanges usePoleThatDoes")]
    [InlineData("contactAction=NO", "", "contactAction=one of each", "Unknown Plate poleCount")]
    [InlineData("poleCount=2P; contactAction=change-over", "sidesWired=both", "contactAction=one of each", "Fails")]
    [InlineData("poleCount=1P; contactAction=change-over", "sidesWired=both", "contactAction=one of each", "Fails")]
    [InlineData("poleCount=2P; contactAction=change-over", "", "contactAction=one of each", "Unknown Site sidesWired")]
    [InlineData("poleCount=1P; contactAction=change-over", "sidesWired=NO", "contactAction=one of each", "MeetsWithChanges usePoleThatDoes")]
    [InlineData("poleCount=1P; contactAction=NO", "sidesWired=NC", "contactAction=one of each", "Unknown Plate contactAction")]
    [InlineData("poleCount=1P", "", "contactAction=one of each", "MeetsWithChanges usePoleThatDoes")]
    [InlineData("poleCount=2P", "sidesWired=NO", "contactAction=one of each", "Unknown Plate contactAction")] // the old one may be so made, too
    [InlineData("poleCount=2P", "sidesWired=both", "contactAction=one of each", "Unknown Plate contactAction")]
    [InlineData("poleCount=2P", "", "contactAction=one of each", "Unknown Plate contactAction")] // nothing fails by what is taken
    [InlineData("", "", "contactAction=one of each", "Unknown Plate contactAction")]
    public void One_of_each_is_neither_two_of_one_kind_nor_a_change_over_contact(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("contactAction=change-over", "sidesWired=NO", "contactAction=NO", "Of the old change-over contacts the normally open side is wired, and its contacts do as that does.")]
    [InlineData("contactAction=change-over", "sidesWired=NO", "contactAction=NC", "The old contacts: normally open, the side of them that is wired; this one's: normally closed.")]
    [InlineData("contactAction=change-over", "sidesWired=NO", "contactAction=change-over", "Its contacts change over as the old ones did, of which the normally open side is wired.")]
    [InlineData("contactAction=NO", "sidesWired=both", "contactAction=NO", "The old contacts: normally open; said to be wired: both sides. One of the two is misread.")]
    [InlineData("contactAction=NO", "", "contactAction=change-over", "Its contacts change over; the old ones: normally open.")]
    public void The_side_is_named(string plate, string site, string part, string sentence) => Judge(plate, site, part).Sentence.ShouldBe(sentence);

    [Fact]
    public void The_change_names_the_side_to_use() => Judge("contactAction=NC", "", "contactAction=change-over").Changes.ShouldHaveSingleItem().Text.ShouldBe("use the normally closed side, and leave the other unused");

    [Theory]
    [InlineData("2 POLE COIL 24V", "Meets")]
    [InlineData("RELAY DPST 2 NC COIL 24V", "Unknown")]
    [InlineData("2 POLE NC INTERLOCK COIL 24V", "Unknown")]
    public void Nothing_is_taken_of_a_plate_that_says_something_of_it(string plate, string verdict) =>
        $"{new ActionOfContacts().Judge(new(Fit.Switches.Contactors.ContactorFamily.Contactor.ReadNeed(new(plate, [], [])).Need), new(Fit.Switches.Contactors.ContactAction.NormallyOpen)).Verdict}".ShouldBe(verdict);

    [Theory]
    [InlineData("contactAction=NO", "Its contacts do as the old ones did: normally open. What the old ones do is not marked: normally open is taken, as a contactor's pole mostly does.")]
    [InlineData("", "The old contacts: normally open; what this one's do is not known. What the old ones do is not marked: normally open is taken, as a contactor's pole mostly does.")]
    public void What_was_taken_is_told(string part, string sentence) => Judge("poleCount=2P", "", part).Sentence.ShouldBe(sentence);
}
