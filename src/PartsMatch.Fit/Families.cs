using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Switches.DefrostTimers;
using PartsMatch.Fit.Switches.PressureControls;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Valves.CondensingPressureValves;
using PartsMatch.Fit.Valves.ExpansionValves;
using PartsMatch.Fit.Valves.SolenoidValves;

namespace PartsMatch.Fit;

/// <summary>The kinds of part that PartsMatch knows. To add one: a folder here, a line below, its demo data and its tests.</summary>
public static class Families
{
    /// <summary>All of them, in the order in which they are shown.</summary>
    public static IReadOnlyList<Family> All { get; } =
    [
        MotorFamily.Motor,
        SolenoidValveFamily.SolenoidValve,
        ExpansionValveFamily.ExpansionValve,
        CondensingPressureValveFamily.CondensingPressureValve,
        PressureControlFamily.PressureControl,
        ThermostatFamily.Thermostat,
        ContactorFamily.Contactor,
        DefrostTimerFamily.DefrostTimer,
        CapacitorFamily.Capacitor,
    ];

    /// <summary>The family of a kind, in any case of letters; null when there is none.</summary>
    public static Family? Find(string kind) => All.FirstOrDefault(family => family.Kind.Equals(kind, StringComparison.OrdinalIgnoreCase));
}
