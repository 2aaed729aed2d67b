using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors.Aspects;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>The steps of every contactor's job round its changes: two circuits to make dead, the line's and the control's.</summary>
internal static class ContactorSteps
{
    /// <summary>What every contactor's job is made of.</summary>
    public static JobSteps Of(ContactorNeed need, ContactorSpec part)
    {
        var coil = ContactorCoils.Chosen(need, part);
        return new(
        [
            SafeSteps.LockOut,
            SafeSteps.ProveDead("both sides of its poles and at its coil: the control circuit may be fed from elsewhere", need.Site.LoadVolts is { } volts ? QuantityForms.Volts.Write(volts) : null),
            SafeSteps.Discharge("the run capacitors behind it", null),
            new(
                Stage.ProveThePart,
                "measure the ohms of the old coil, wires off",
                $"{Window(ContactorCoils.Own(need.Plate), "Volts at its coil, read with the call on before the lock went on")}. Volts there and it did not pull in: the contactor. No volts there: look up the circuit, the contactor is not the part."),
            new(Stage.NoteWhatIsThere, "photograph it, and mark each wire: line, load, coil, auxiliaries", "See for what killed it: insects, a loose terminal, low control volts, short cycling."),
        ],
        [
            new(Stage.Mount, "mount it as the old one sat, and work the armature by hand: it moves freely all the way", null),
            .. need.Site.IsInterlocked == true ? (Step[])[new(Stage.Mount, "join its interlock to the second contactor, and push one armature in: the other must not go in", "Try it both ways round before anything is live: both in together are a short between lines.")] : [],
            new(Stage.Wire, FormattableString.Invariant($"put each wire back where its mark says{Lines(part)}, tighten as marked on it, and pull at each"), "A loose terminal burns the pole. Copper alone on terminals that are not marked for aluminium."),
            new(Stage.StartAndCheck, Window(coil, "call for it, and meter its coil while it is in"), "Low volts make it chatter, and chatter welds its contacts."),
            new(Stage.StartAndCheck, "measure the volts across each closed pole under load: at most 0.5 V (practice)", "Line side to load side of the same pole. More is a bad contact or a loose terminal."),
            new(Stage.StartAndCheck, Amps(need, part), null),
            new(Stage.StartAndCheck, "after half an hour point a thermometer at it, guards on: no terminal over 65 K above the air in the box", "Never by hand. IEC 60947-1, from memory."),
            new(Stage.Record, "write down its number, the volts at its coil, across its poles, the amps of each leg and the date", null),
        ])
        {
            Kit = [SafeSteps.Resistor, SafeSteps.LockAndTag, SafeSteps.Meter],
            Cautions = [SafeSteps.CodesFirst, SafeSteps.Ladders, .. RefrigerantCautions.Of(need.Site.Hazard, need.Site.Refrigerant, opensCircuit: false), SafeSteps.BladesStart],
        };
    }

    private static string Window(Sequence<CoilMade> coil, string what) => coil.Count == 0
        ? $"{what}: 85 to 110 % of its marked volts"
        : $"{what}: {string.Join(" or ", coil.Select(ContactorCoils.Window.Of).Select(takes => FormattableString.Invariant($"{takes.Low:0.#} to {takes.High:0.#} V")))} are right";

    private static string Lines(ContactorSpec part) => part.PoleCount is { } poles && Poles.Switched(poles) == 3 ? ", the three lines in their order: two changed over turn three-phase motors backwards" : string.Empty;

    private static string Amps(ContactorNeed need, ContactorSpec part) =>
        need.Site.LoadVolts is { } volts && Contacts.RatedAmps.At(Contacts.RatedAmps.Of(part.RatedVolts, part.FullLoadAmps), volts.Volts) is { } carries
            ? FormattableString.Invariant($"measure the amps of each leg: at most {carries:0.##} A through its poles, and what the plates of what hangs on it say")
            : "measure the amps of each leg against its rating and against the plates of what hangs on it";
}
