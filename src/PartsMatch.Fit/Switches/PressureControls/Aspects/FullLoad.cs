using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>Does the control carry the full-load amps of all motors on it?</summary>
public sealed class FullLoad : FullLoadAspect<PressureControlSpec, PressureControlSite>;
