using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>Where the limits of readings come from of pressure controls.</summary>
public static class PressureControlReadingSources
{
    /// <summary>Contacts at a pressure.</summary>
    public static Source PressureContacts { get; } = new("A pressure control is judged by the gauge beside it: open beyond its cut-out it has done its work; within 5 psi of a setting nothing is concluded", SourceStatus.Practice);

    /// <summary>Settings by the gauge.</summary>
    public static Source PressureSetting { get; } = new("A pressure control moves within 5 psi of its setting by the gauge", SourceStatus.Practice);
}
