using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Does each of the thermostat's contacts carry the full-load amps of all motors on it?</summary>
public sealed class FullLoad() : EachContactAspect<FullLoadFacet>(FullLoadQuestion.Asked);
