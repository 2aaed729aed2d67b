using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>Does the control bear the locked-rotor amps of all motors on it?</summary>
public sealed class LockedRotor() : LockedRotorAspect<PressureControlSpec, PressureControlSite>(ContactSources.LockedRotor);
