using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.DefrostTimers;

/// <summary>The steps of every defrost timer's job round its changes.</summary>
internal static class DefrostTimerSteps
{
    /// <summary>What every such job is made of.</summary>
    public static JobSteps Of(DefrostTimerNeed need, DefrostTimerSpec part) => new(
        [
            SafeSteps.LockOut,
            SafeSteps.ProveDead("its terminals, clock and heaters each", need.Site.LoadVolts is { } volts ? QuantityForms.Volts.Write(volts) : null),
            new(Stage.ProveThePart, "see that its clock has volts and stands still, or that its contacts do not follow as it is advanced by hand, before it is condemned", "A clock without volts stands still, too, and a contact without them feeds nothing: a fuse, or a contact before it. On a warm coil what ends the defrost throws a good timer back as it is advanced."),
            new(Stage.NoteWhatIsThere, "photograph its dial, pins and terminals, and note the starts and the fail-safe as they are set", null),
            new(Stage.Bench, FormattableString.Invariant($"set its starts{Starts(need)}, spread over the day, and its fail-safe{FailSafe(need)}"), "Longer than the usual defrost, so that the switch on the coil ends it first; where time alone ends it, no longer than the coil takes."),
        ],
        [
            new(Stage.Wire, "put each wire where its function is, and pull at it", "Heater terminals carry the most amps and burn first: cut back to bright copper."),
            new(Stage.StartAndCheck, "set the time of day, turning the dial one way alone, and see that it moves", null),
            new(Stage.StartAndCheck, FormattableString.Invariant($"advance it by hand into defrost: heaters on{Amps(need)}, fans off"), "Amps by a clamp in a line; a heater that is open shows as amps that lack."),
            new(Stage.StartAndCheck, part.KnownEnds?.Contains(DefrostEnd.Temperature) == true ? "see that the switch on the coil ends it before the fail-safe, and that the fans start after their delay" : "see that it ends by itself, and that the fans start after their delay", null),
            new(Stage.Record, "write down its number, the starts, the fail-safe and the heater amps, and see the next defrost through", null),
        ])
    {
        Kit = [SafeSteps.LockAndTag, SafeSteps.Meter],
        Cautions = [SafeSteps.CodesFirst, .. RefrigerantCautions.Of(need.Site.Hazard, need.Site.Refrigerant, opensCircuit: false), SafeSteps.BladesStart, new(Stage.MakeSafe, "Clock and heaters may hang on two circuits: both are locked, and both are proved dead.")],
    };

    private static string Starts(DefrostTimerNeed need) => need.Site.StartsNeeded is { } starts ? FormattableString.Invariant($" to {starts} a day") : " as the old one's were";

    private static string FailSafe(DefrostTimerNeed need) => need.Site.MinutesNeeded is { } minutes ? $" to {DefrostMinutes.Form.Write(minutes)} at least" : " as the old one's was";

    private static string Amps(DefrostTimerNeed need) => need.Site.HeaterAmps is { } amps ? $" with {QuantityForms.Amps.Write(amps)}" : string.Empty;
}
