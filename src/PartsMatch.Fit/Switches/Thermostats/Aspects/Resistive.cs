using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Does the thermostat carry the amps of all heaters on it?</summary>
public sealed class Resistive : ResistiveAspect<ThermostatSpec, ThermostatSite>;
