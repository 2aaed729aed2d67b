using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>Does the control carry the amps of all heaters on it?</summary>
public sealed class Resistive : ResistiveAspect<PressureControlSpec, PressureControlSite>;
