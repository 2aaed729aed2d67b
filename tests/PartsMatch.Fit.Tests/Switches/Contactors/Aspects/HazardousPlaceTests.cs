using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Contactors.Aspects;

/// <summary>Open contacts are a source of ignition: ASHRAE 15, IEC 60335-2-40 and -2-89, from memory.</summary>
[Trait("Source", "contactor.hazardousPlace")]
public sealed class HazardousPlaceTests : ContactorAspectTests<HazardousPlace, IgnitionFacet>
{
    [Theory]
    [InlineData("hazard=A2L", "contacts=open", "Fails")]
    [InlineData("hazard=A2L", "contacts=open; hazards=A2L", "Fails")]
    [InlineData("hazard=A3", "contacts=sealed; hazards=A3", "Meets")]
    [InlineData("hazard=A3", "contacts=sealed; hazards=A2L", "MeetsWithChanges checkListing")]
    [InlineData("hazard=A2L", "contacts=sealed", "MeetsWithChanges checkListing")]
    [InlineData("hazard=A2L", "contacts=solid state", "MeetsWithChanges checkListing")]
    [InlineData("hazard=A2L", "hazards=A3", "Meets")]
    [InlineData("hazard=A2L", "", "Unknown Part contacts")]
    [InlineData("hazard=class I division 2", "contacts=sealed", "Unknown Part hazards")]
    [InlineData("hazard=class I division 2", "hazards=C1D1; contacts=sealed", "Meets")]
    [InlineData("hazard=class I division 1", "hazards=C1D1; contacts=sealed", "Meets")]
    [InlineData("hazard=class I division 1", "hazards=C1D2; contacts=sealed", "Unknown Part hazards")]
    [InlineData("hazard=class I division 1", "hazards=C1D1; contacts=open", "Fails")]
    [InlineData("hazard=A2L", "contacts=sealed; hazards=ordinary places", "Fails")]
    [InlineData("hazard=A2L", "contacts=sealed; hazards=ordinary places, A2L", "Meets")]
    [InlineData("hazard=none", "contacts=open", "Meets")]
    public void Open_contacts_spark(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    [Theory]
    [InlineData("", "contacts=open", "Meets")]
    [InlineData("contacts=sealed", "contacts=open", "Unknown Site hazard")]
    [InlineData("contacts=sealed", "contacts=sealed", "Meets")]
    [InlineData("hazards=A2L; contacts=sealed", "contacts=sealed", "Unknown Site hazard")]
    public void Where_no_hazard_is_named_the_old_one_tells(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Theory]
    [InlineData("hazards=A2L; contacts=sealed", "contacts=sealed", "Meets")]
    [InlineData("hazards=C1D2; contacts=sealed", "contacts=sealed", "Unknown Site hazard")] // which a refrigerant does not make
    [InlineData("contacts=sealed", "contacts=open", "Unknown Site hazard")]
    public void Marks_for_flammable_refrigerants_are_of_no_matter_beside_one_that_does_not_burn(string plate, string part, string answer) => Answer(plate, "refrigerant=R-404A", part).ShouldBe(answer);

    [Fact]
    public void A_place_of_which_nothing_is_said_is_told_to_be_taken_for_an_ordinary_one() =>
        Judge("", "", "contacts=open").Sentence.ShouldStartWith("Taken for an ordinary place, since nothing says otherwise");

    /// <summary>ASHRAE 34: R-404A is A1, R-32 A2L, R-290 A3, R-717 B2L (published).</summary>
    [Theory]
    [InlineData("refrigerant=R-404A", "contacts=open", "Meets")]
    [InlineData("refrigerant=R-32", "contacts=open", "Fails")]
    [InlineData("refrigerant=R-32", "contacts=sealed", "MeetsWithChanges checkListing")]
    [InlineData("refrigerant=R-32", "contacts=sealed; hazards=A2L", "Meets")]
    [InlineData("refrigerant=R-290", "contacts=sealed; hazards=A2L", "MeetsWithChanges checkListing")]
    [InlineData("refrigerant=R-290", "contacts=sealed; hazards=A3", "Meets")]
    [InlineData("refrigerant=R-290; hazard=A2L", "contacts=sealed; hazards=A2L", "MeetsWithChanges checkListing")] // the stricter of the two is taken
    [InlineData("refrigerant=R-290; hazard=A2L", "contacts=sealed; hazards=A3", "Meets")]
    [InlineData("refrigerant=R-290", "", "Unknown Part contacts")]
    [InlineData("refrigerant=R-290; hazard=none", "contacts=open", "Meets")] // it cannot reach the switch
    [InlineData("refrigerant=R-717", "contacts=open", "Meets")] // its room is classified or not, which is said by itself
    public void A_refrigerant_that_burns_allows_no_open_contacts(string site, string part, string answer) => Answer("", site, part).ShouldBe(answer);

    /// <summary>R-717 is of class B2L (ASHRAE 34, published); what its room is follows from codes and is not computed.</summary>
    [Fact]
    public void Beside_ammonia_it_is_said_that_the_room_may_be_classified() =>
        Judge("", "refrigerant=R-717", "contacts=open").Caution.ShouldNotBeNull().ShouldStartWith("R-717 burns (class B2L): whether its room is a classified area");

    [Fact]
    public void A_place_called_milder_than_its_refrigerant_is_a_contradiction() =>
        Families.Find("contactor")!.ReadNeed(new(null, [], [new("refrigerant", "R-290"), new("hazard", "A2L")])).Contradictions.Single().Sentence.ShouldStartWith("R-290 is of class A3 and burns well");
}
