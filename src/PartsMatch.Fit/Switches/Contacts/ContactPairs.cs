using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>Questions of a contact that may be worse together than each by itself, whatever switch it is in.</summary>
internal static class ContactPairs
{
    /// <summary>Amps of motors as they run, and as they start.</summary>
    public static AspectPair RunningAndStarting { get; } = new("fullLoad", "lockedRotor", "contacts that run warm, near their amps, weld soonest as a motor starts");

    /// <summary>Motors beside heaters.</summary>
    public static AspectPair MotorsAndHeaters { get; } = new("fullLoad", "resistive", "the heat of motors' and of heaters' amps adds up in one contact");
}
