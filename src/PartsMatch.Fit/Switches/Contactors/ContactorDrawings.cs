using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>What is drawn of a contactor: the control volts in the coil's window, and each kind of amps against its rating.</summary>
public static class ContactorDrawings
{
    /// <summary>A scale of amps goes this share beyond the greater of load and rating.</summary>
    private const double Beyond = 1.2;

    /// <summary>For a part: what was measured of the control circuit, and what is on the contact.</summary>
    public static IReadOnlyList<Drawing> Of(ContactorNeed need, ContactorSpec part)
    {
        var on = OnTheContact.Of(need);
        return
        [
            .. new[]
            {
                CoilScale(ContactorCoils.Chosen(need, part), Rounded.Volts(need.Site.ControlVolts)),
                AmpsScale("fullLoadAmps", "Full-load amps", on, on.FullLoad, RatedAmps.Of(part.RatedVolts, part.FullLoadAmps)),
                AmpsScale("lockedRotorAmps", "Locked-rotor amps", on, on.LockedRotor, RatedAmps.Of(part.RatedVolts, part.LockedRotorAmps)),
                AmpsScale("resistiveAmps", "Resistive amps", on, on.Heater, RatedAmps.Of(part.RatedVolts, part.ResistiveAmps)),
            }.OfType<Drawing>(),
        ];
    }

    /// <summary>Volts in the window of a coil; null where either is not known.</summary>
    internal static Scale? CoilScale(Sequence<CoilMade> coil, double? volts)
    {
        if (volts is not { } there || coil.Count == 0) return null;
        var made = coil.OrderBy(one => Math.Abs(there - ((one.Low + one.High) / 2))).First();
        var good = ContactorCoils.Window.Of(made);
        var range = new Band(Math.Min(there, good.Low) * 0.9, Math.Max(there, good.High) * 1.05);
        return new(
            "coilVolts",
            "Volts at the coil",
            FormattableString.Invariant($"The coil for {made} works from {good.Low:0.#} to {good.High:0.#} V; {there:0.#} V are there, {(good.Holds(there) ? "within them" : "outside them")}."),
            "V",
            range,
            [new("too low", Role.Bad, new(range.Low, good.Low)), new("pulls in and holds", Role.Good, good), new("too high", Role.Bad, new(good.High, range.High))],
            [new(FormattableString.Invariant($"there: {there:0.#} V"), Role.New, Band.Exactly(there))]);
    }

    private static Scale? AmpsScale(string name, string title, OnTheContact on, double? load, Sequence<AmpsAt> rows)
    {
        if (load is not { } amps || on.Volts is not { } volts || RatedAmps.At(rows, volts) is not { } carries) return null;
        var range = new Band(0, Math.Max(amps, carries) * Beyond);
        return new(
            name,
            FormattableString.Invariant($"{title} at {volts:0.#} V"),
            FormattableString.Invariant($"It carries {carries:0.##} A; {amps:0.##} A are on it, {(Within.AtMost(amps, carries) ? "within that" : "over that")}."),
            "A",
            range,
            [new("carries", Role.Good, new(0, carries)), new("too much", Role.Bad, new(carries, range.High))],
            [new(FormattableString.Invariant($"on it: {amps:0.##} A"), Role.Load, Band.Exactly(amps)), new(FormattableString.Invariant($"rated: {carries:0.##} A"), Role.Limit, Band.Exactly(carries))]);
    }
}
