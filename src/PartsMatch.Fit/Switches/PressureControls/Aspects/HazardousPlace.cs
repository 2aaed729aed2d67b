using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>Is the control no source of ignition where something could burn?</summary>
public sealed class HazardousPlace : HazardAspect<PressureControlSpec, PressureControlSite>;
