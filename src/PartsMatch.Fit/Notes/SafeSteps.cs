using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Notes;

/// <summary>Making an electrical job safe: the same for every family that opens a circuit.</summary>
internal static class SafeSteps
{
    /// <summary>The resistor that capacitors are discharged through, Ω: 15 kΩ, 5 W, in the middle of the trade's 10 to 20 kΩ (practice).</summary>
    private const double ResistorOhms = 15_000;

    /// <summary>After five time constants 0.7 % is left: under 5 V of the 622 V peak of a 440 V capacitor (arithmetic).</summary>
    private const int TimeConstants = 5;

    /// <summary>Where the capacitor is not known: enough for 65 µF.</summary>
    private const double SecondsForAny = 5;

    public static Step LockOut { get; } = new(
        Stage.MakeSafe,
        "open the disconnect, lock it and tag it, and let the fan come to rest",
        $"A thermostat, pressure control or contactor that is off isolates nothing. {SafetySources.LockOut}; {SafetySources.ControlsIsolateNothing}.");

    public static Caution CodesFirst { get; } = new(
        Stage.MakeSafe,
        "Local codes, the equipment maker's instructions and licensed practice come before anything said here.");

    public static Caution Ladders { get; } = new(
        Stage.MakeSafe,
        "On a ladder, or near a roof's edge, make yourself safe from falling first.");

    public static Caution BladesStart { get; } = new(
        Stage.StartAndCheck,
        "Blades start without warning when a control or an overload protector resets: with the lock off, nobody reaches in.");

    public static KitItem LockAndTag { get; } = new($"lock and tag");

    public static KitItem Meter { get; } = new($"meter for volts and amps, and a live source to prove it on");

    public static KitItem Resistor { get; } = new($"resistor for discharging, 15 kΩ, 5 W, with insulated clips");

    public static KitItem Connectors(int count) => new($"wire connector", count);

    /// <summary>Proving the circuit dead.</summary>
    /// <param name="where">At what: "the motor's leads".</param>
    /// <param name="volts">What it was on, as text; null when not known.</param>
    public static Step ProveDead(string where, string? volts) => new(
        Stage.MakeSafe,
        $"prove it dead at {where}, with a meter that was proved live{(volts is null ? string.Empty : $"; it was on {volts}")}",
        $"Meter a live source, then line to line and each line to earth, then the live source again: a broken meter reads nothing too. {SafetySources.ProveDead}.");

    /// <summary>Discharging a capacitor.</summary>
    /// <param name="which">Which, with its marking: "the 5 µF run capacitor".</param>
    /// <param name="microfarads">All its sections together, µF; null when not known.</param>
    /// <param name="isShared">Whether it has two sections.</param>
    public static Step Discharge(string which, double? microfarads, bool isShared = false)
    {
        var constants = microfarads is { } known ? TimeConstants * ResistorOhms * known / 1e6 : SecondsForAny;
        return new(
            Stage.MakeSafe,
            FormattableString.Invariant($"discharge {which} through 15 kΩ, 5 W, for {Math.Max(1, Math.Ceiling(constants - 1e-9)):0} s at least, then meter it"),
            (isShared ? "Each terminal to the common one, and the two against each other. " : string.Empty)
            + (microfarads is null ? string.Empty : FormattableString.Invariant($"Five time constants are {constants:0.0#} s. "))
            + $"Many have no bleed resistor inside: never rely on one. {SafetySources.Discharge}; {SafetySources.DischargeResistor}.");
    }
}
