using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>Where the limits of readings at thermostats come from.</summary>
public static class ThermostatReadingSources
{
    /// <summary>Contacts at a temperature.</summary>
    public static Source ThermostatContacts { get; } = new("A thermostat is judged by the temperature at its bulb: within its differential, and within 5 °F (2.8 K) of a setting, nothing is concluded; one that is reset by hand can be reset at its cut-in, or its differential past its cut-out, and where neither is marked 50 °F (27.8 K) below it, or 20 °F (11.1 K) above it where it opens on fall", SourceStatus.Practice);

    /// <summary>Settings by the thermometer.</summary>
    public static Source ThermostatSetting { get; } = new("A thermostat moves within 5 °F (2.8 K) of its setting by a thermometer at its bulb", SourceStatus.Practice);

    /// <summary>Bulb in place.</summary>
    public static Source ThermostatBulb { get; } = new("A bulb that hangs loose feels the wrong thing: it is put in place before the thermostat is judged", SourceStatus.Practice);

    /// <summary>Fans of a warm box.</summary>
    public static Source FanDelayOnWarmBox { get; } = new("A fan delay keeps the fans off until the coil is cold: on a warm box it is not judged, and no refrigerant added", SourceStatus.Practice);

    /// <summary>End of a defrost.</summary>
    public static Source DefrostEnds { get; } = new("A defrost ends by temperature; its time is for when that fails", SourceStatus.Practice);
}
