using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Does the thermostat carry the full-load amps of all motors on it?</summary>
public sealed class FullLoad : FullLoadAspect<ThermostatSpec, ThermostatSite>;
