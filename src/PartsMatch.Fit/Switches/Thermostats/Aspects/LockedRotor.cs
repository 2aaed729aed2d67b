using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Does the thermostat bear the locked-rotor amps of all motors on it?</summary>
public sealed class LockedRotor() : EachContactAspect<LockedRotorFacet>(LockedRotorQuestion.Asked);
