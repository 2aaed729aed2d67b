using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>The questions asked of a contactor or relay, in order.</summary>
public static class ContactorAspects
{
    /// <summary>All of them; those that turn most parts away stand first, those with many facet values last.</summary>
    public static IReadOnlyList<Aspect> All { get; } =
    [
        new Poles(),
        new ActionOfContacts(),
        new Duty(),
        new HazardousPlace(),
        new PilotLoad(),
        new DirectCurrent(),
        new FullLoad(),
        new LockedRotor(),
        new Resistive(),
        new Coil(),
        new CoilPower(),
        new Continuous(),
        new Horsepower(),
        new Auxiliaries(),
        new Interlock(),
        new MountOfContactor(),
        new TerminalsOfContactor(),
    ];
}
