using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>Is the timer no source of ignition where something could burn?</summary>
public sealed class HazardousPlace : HazardAspect<DefrostTimerSpec, DefrostTimerSite>;
