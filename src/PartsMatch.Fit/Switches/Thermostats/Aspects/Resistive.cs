using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Does each of the thermostat's contacts carry the amps of all heaters on it?</summary>
public sealed class Resistive() : EachContactAspect<ContactAmpsFacet>(ResistiveQuestion.Asked);
