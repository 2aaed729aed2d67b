using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Is the thermostat no source of ignition where something could burn?</summary>
public sealed class HazardousPlace : HazardAspect<ThermostatSpec, ThermostatSite>;
