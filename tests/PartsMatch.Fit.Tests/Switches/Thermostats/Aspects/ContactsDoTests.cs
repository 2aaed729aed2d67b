using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Tests.Switches.Thermostats.Aspects;

/// <summary>Open on rise, close on rise or change over: practice.</summary>
[Trait("Source", "thermostat.contactsDo")]
public sealed class ContactsDoTests : ThermostatAspectTests<ContactsDo, ThermostatActionFacet>
{
    [Theory]
    [InlineData("action=opens on rise", "", "action=opens on rise", "Meets")]
    [InlineData("action=opens on rise", "", "action=closes on rise", "Fails")]
    [InlineData("action=closes on rise", "", "action=change-over", "MeetsWithChanges useOneSide")]
    [InlineData("action=change-over", "", "action=change-over", "Meets")]
    [InlineData("action=change-over", "", "action=closes on rise", "Unknown Site sidesWired")]
    [InlineData("action=change-over", "sidesWired=the one that closes on rise", "action=closes on rise", "Meets")]
    [InlineData("action=change-over", "sidesWired=the one that opens on rise", "action=closes on rise", "Fails")]
    [InlineData("action=change-over", "sidesWired=both", "action=closes on rise", "Fails")]
    [InlineData("action=change-over", "sidesWired=both", "action=change-over", "Meets")]
    [InlineData("action=change-over", "sidesWired=the one that closes on rise", "action=change-over", "Meets")]
    [InlineData("", "sidesWired=the one that closes on rise", "action=closes on rise", "Meets")]
    [InlineData("function=fan delay", "sidesWired=both", "action=opens on rise", "Fails")]
    [InlineData("function=defrost end", "sidesWired=the one that opens on rise", "function=fan delay and defrost end", "Fails")]
    [InlineData("function=defrost end", "", "action=opens on rise", "Unknown Plate action")]
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "", "action=opens on rise", "Meets")]
    [InlineData("function=defrost end; cutOut=35 °F; cutIn=55 °F", "", "action=opens on rise", "Unknown Plate action")] // they may be of one side of two
    [InlineData("function=defrost end; cutOut=55 °F; cutIn=35 °F", "", "function=fan delay and defrost end", "Unknown Plate action")]
    [InlineData("action=opens on rise", "sidesWired=the one that closes on rise", "action=closes on rise", "Unknown Plate action")] // one of the two is misread
    [InlineData("function=fan delay", "", "function=fan delay and defrost end", "MeetsWithChanges useOneSide")]
    [InlineData("function=defrost end; action=closes on rise", "", "function=fan delay and defrost end", "MeetsWithChanges useOneSide")]
    [InlineData("function=defrost end; action=opens on rise", "", "function=fan delay and defrost end", "Fails")]
    [InlineData("function=defrost end; action=opens on rise", "", "function=defrost end; action=change-over", "MeetsWithChanges useOneSide")]
    [InlineData("function=fan delay", "", "", "Unknown Part action")]
    [InlineData("function=fan delay", "", "function=fan delay", "Unknown Part action")] // what most do tells nothing of this one
    [InlineData("function=box thermostat; action=closes on rise", "", "function=box thermostat; cutOut=39 °F; cutIn=35 °F", "Unknown Part action")] // those may be of one side of two
    [InlineData("function=box thermostat; action=change-over", "sidesWired=both", "function=box thermostat; cutOut=35 °F; cutIn=39 °F", "Unknown Part action")]
    [InlineData("function=fan delay", "", "action=opens on rise", "Meets")]
    [InlineData("function=fan delay", "", "action=closes on rise", "Unknown Plate action")] // nothing fails by what is taken
    [InlineData("function=box thermostat", "", "action=opens on rise", "Unknown Plate action")]
    [InlineData("function=box thermostat; cutOut=35 °F; cutIn=39 °F", "", "action=opens on rise", "Unknown Plate action")]
    [InlineData("function=box thermostat; action=closes on rise", "", "action=opens on rise", "Fails")] // one for heat
    [InlineData("function=high limit; cutOut=115 °F; cutIn=140 °F", "", "action=closes on rise", "Unknown Plate action")] // no high limit does
    [InlineData("function=high limit; cutOut=115 °F; cutIn=140 °F", "", "action=opens on rise", "Unknown Plate action")]
    [InlineData("action=opens on rise", "sidesWired=both", "action=opens on rise", "Unknown Plate action")] // it has no two sides
    [InlineData("action=opens on rise", "sidesWired=both", "action=change-over", "Unknown Plate action")]
    public void They_do_as_the_old_ones_did(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Theory]
    [InlineData("action=opens on rise", "Its contacts do as the old ones did: opens on rise. What the old ones do is not marked: opens on rise is taken, as a fan delay mostly does.")]
    [InlineData("", "The old contacts: opens on rise; what this one's do is not known. What the old ones do is not marked: opens on rise is taken, as a fan delay mostly does.")]
    [InlineData("action=closes on rise", "The old contacts: opens on rise; this one's: closes on rise. What the old ones do is not marked: opens on rise is taken, as a fan delay mostly does.")]
    public void What_was_taken_is_told(string part, string sentence) => Judge("function=fan delay", "", part).Sentence.ShouldBe(sentence);
}
