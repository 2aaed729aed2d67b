using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>Is the control marked for motors where a motor is on it?</summary>
public sealed class KindOfLoad : KindOfLoadAspect<PressureControlSpec, PressureControlSite>;
