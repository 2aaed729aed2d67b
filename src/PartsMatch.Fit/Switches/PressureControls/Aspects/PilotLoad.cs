using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>Does the control switch the coils on it?</summary>
public sealed class PilotLoad : PilotLoadAspect<PressureControlSpec, PressureControlSite>;
