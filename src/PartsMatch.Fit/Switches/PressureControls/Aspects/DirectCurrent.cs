using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>Does the control switch the direct current on it?</summary>
public sealed class DirectCurrent : DirectCurrentAspect<PressureControlSpec, PressureControlSite>;
