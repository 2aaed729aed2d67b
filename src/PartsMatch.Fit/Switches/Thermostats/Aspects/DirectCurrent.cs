using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Does each of the thermostat's contacts switch the direct current on it?</summary>
public sealed class DirectCurrent() : EachContactAspect<ContactAmpsFacet>(DirectCurrentQuestion.Asked);
