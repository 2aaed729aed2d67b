using PartsMatch.Fit.Switches.DefrostTimers.Aspects;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers.Aspects;

/// <summary>What contacts of a timer are there for: practice.</summary>
[Trait("Source", "defrostTimer.contactsThere")]
public sealed class ContactsThereTests : DefrostTimerAspectTests<ContactsThere, TimerContactsFacet>
{
    [Theory]
    [InlineData("", "contactsNeeded=heater, fans", "contactsFor=heater, fans", "Meets")]
    [InlineData("", "contactsNeeded=heater, fans", "contactsFor=heater, fans, fan delay", "Meets")]
    [InlineData("", "contactsNeeded=heater, fans", "contactsFor=fans", "Fails")]
    [InlineData("", "contactsNeeded=heater, fans", "contactsFor=heater", "Fails")]
    [InlineData("", "contactsNeeded=heater, fans", "contactsFor=heater, compressor", "MeetsWithChanges shareTimerContact")]
    [InlineData("", "contactsNeeded=heater, compressor", "contactsFor=heater, fans", "MeetsWithChanges shareTimerContact")]
    [InlineData("", "contactsNeeded=heater, fans, fan delay", "contactsFor=heater, fans", "MeetsWithChanges addFanDelay")]
    [InlineData("", "contactsNeeded=heater, fans, pump-down", "contactsFor=heater, fans", "Fails")]
    [InlineData("", "contactsNeeded=heater, fans, pump-down", "contactsFor=heater, fans, pump-down", "Meets")]
    [InlineData("", "contactsNeeded=heater", "", "Unknown Part contactsFor")]
    [InlineData("contactsFor=heater, fans", "", "contactsFor=heater, fans", "Meets")]
    [InlineData("contactsFor=heater, fans", "", "contactsFor=heater", "Unknown Site contactsNeeded")]
    [InlineData("contactsFor=heater, fans, pump-down", "", "contactsFor=heater, fans", "Unknown Site contactsNeeded")] // it has one: whether it is wired nobody said
    [InlineData("contactsFor=heater, fans, pump-down", "contactsNeeded=heater, fans", "contactsFor=heater, fans", "Meets")]
    [InlineData("contactsFor=heater, fans, pump-down", "contactsNeeded=heater, fans, pump-down", "contactsFor=heater, fans", "Fails")]
    [InlineData("contactsFor=heater, fans, pump-down", "", "contactsFor=heater, compressor, pump-down", "MeetsWithChanges shareTimerContact")]
    [InlineData("contactsFor=heater, fans", "", "", "Unknown Part contactsFor")]
    public void Everything_that_is_wired_has_its_contact(string plate, string site, string part, string answer) => Answer(plate, site, part).ShouldBe(answer);

    [Fact]
    public void A_fan_delay_is_brought_along() => Judge("", "contactsNeeded=heater, fan delay", "contactsFor=heater, fans").Changes.ShouldHaveSingleItem().Kit.ShouldHaveSingleItem().What.ShouldContain("fan-delay switch");

    [Theory]
    [InlineData("", "contactsFor=heater, fans", "MeetsWithChanges checkTimerContacts")]
    [InlineData("", "contactsFor=heater, compressor", "MeetsWithChanges checkTimerContacts")]
    [InlineData("resistiveAmps=40 A; fullLoadAmps=20 A", "contactsFor=heater, fans, fan delay, pump-down", "MeetsWithChanges checkTimerContacts")]
    [InlineData("", "contactsFor=heater, fans, compressor, fan delay, pump-down", "Meets")]
    [InlineData("", "contactsFor=heater", "Unknown Site contactsNeeded")]
    [InlineData("", "contactsFor=fans, compressor", "Unknown Site contactsNeeded")]
    [InlineData("clockVolts=240 V", "clockVolts=240 V; resistiveAmps=40 A; fullLoadAmps=20 A", "Unknown Part contactsFor")]
    public void What_nobody_said_of_the_old_ones_wires_is_looked_for(string plate, string part, string answer) => Answer(plate, "", part).ShouldBe(answer);

    [Fact]
    public void The_check_names_what_the_new_one_lacks() => Judge("", "", "contactsFor=heater, fans, fan delay").Changes.ShouldHaveSingleItem().Text.ShouldContain("no contact for compressor or pump-down");
}
