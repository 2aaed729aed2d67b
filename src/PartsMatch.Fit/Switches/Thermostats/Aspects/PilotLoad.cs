using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Does the thermostat switch the coils on it?</summary>
public sealed class PilotLoad() : EachContactAspect<PilotDutyFacet>(PilotLoadQuestion.Asked);
