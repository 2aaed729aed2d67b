using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Does the contactor bear the locked-rotor amps of all motors on it?</summary>
public sealed class LockedRotor : LockedRotorAspect<ContactorSpec, ContactorSite>;
