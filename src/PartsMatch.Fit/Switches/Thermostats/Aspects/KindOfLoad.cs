using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Is the thermostat marked for motors where a motor is on it?</summary>
public sealed class KindOfLoad : KindOfLoadAspect<ThermostatSpec, ThermostatSite>;
