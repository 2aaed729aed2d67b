using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Is each of the thermostat's contacts marked for motors where a motor is on it?</summary>
public sealed class KindOfLoad() : EachContactAspect<KindOfLoadFacet>(KindOfLoadQuestion.Asked);
