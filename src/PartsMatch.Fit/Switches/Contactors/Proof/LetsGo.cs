using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Proof;

/// <summary>Does it let go?</summary>
/// <remarks>Under 20 % of its volts one for alternating current must, under 10 % one for direct current (IEC 60947-4-1, from memory). Normally closed contacts are closed then, and show no weld by it.</remarks>
public sealed class LetsGo() : ReadingRule<ContactorCase>("Lets go", ContactorReadingSources.ContactsWelded)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one) => one.Action switch
    {
        ContactAction.NormallyOpen => OfNormallyOpen(one),
        ContactAction.NormallyClosed => OfNormallyClosed(one),
        ContactAction.ChangeOver => one.Readings.StaysIn == true ? Ruling.CantTell($"A normally open and a normally closed side of its contacts are wired, and one of them is always closed.") : null,
        _ => one.StaysIn == true || one.AmpsUnheld is not null ? Ruling.CantTell($"Contacts are closed without power; whether the side of them that is wired is to be open then is not known.").ThenSeeWhichSide(one) : null,
    };

    private static Ruling? OfNormallyOpen(ContactorCase one) => (one.StaysIn, one.CannotHold) switch
    {
        (true, null) when one.Volts is not null => MadeFor.Ask(one, Ruling.CantTell($"There are volts at its coil, and what it is made for is not known: they may hold it in.")),
        (true, false) when one.Readings.CircuitCalls == false => Ruling.CantTell($"There are volts at its coil: that holds it in.").ThenRead("coilVolts", "It stays in, with volts at its coil though nothing calls for it: take off what feeds it, measure them again, and see whether it lets go."),
        (true, false) => Ruling.CantTell($"There are volts at its coil: that holds it in.").ThenRead("circuitCalls", "It stays in, with volts at its coil: turn the call off, and measure them again. Volts there without a call come from the circuit."),
        (true, _) when one.Volts is > 0 and var volts => Ruling.Bad($"Its contacts stay closed with {volts:0.#} V at the coil, which hold none in: they are welded, or the armature sticks.").ThePartHasFailed(),
        (true, _) => Ruling.Bad($"Its contacts stay closed with no volts at the coil: they are welded, or the armature sticks.").ThePartHasFailed(),
        _ when one.AmpsUnheld is { } amps => Unheld(one, amps),
        (false, true) when one.Readings.LegAmps is { } amps && amps.Legs.Any(leg => leg.Amperes > 0) => Ruling.Good($"It lets go with its coil off: what flows then flows through the shunt round its pole."),
        (false, _) => Ruling.Good($"It lets go with its coil off."),
        _ => null,
    };

    /// <summary>Of contacts that are closed without power the armature that stays in leaves them open.</summary>
    private static Ruling? OfNormallyClosed(ContactorCase one) => NotSeenClosed(one)
        ?? (one is { Readings.StaysIn: true, CannotHold: not false } ? Ruling.Good($"Its contacts are closed with its coil off, as normally closed ones are to be.") : null);

    /// <summary>What is asked of normally closed contacts that were not seen closed with its coil off; null where they were, or nobody looked.</summary>
    /// <param name="one">The case.</param>
    internal static Ruling? NotSeenClosed(ContactorCase one) => one switch
    {
        not { Action: ContactAction.NormallyClosed, Readings.StaysIn: not true, CannotHold: not false } => null,
        _ when IsHardlyAcrossUnseen(one) => MayBeOpen(one),
        { Readings: { StaysIn: false, DropVolts: null } } => Ruling.CantTell($"With its coil off its normally closed contacts are to be closed, and were not seen so.").ThenRead("dropVolts", "Its normally closed contacts were not seen closed with its coil off: measure the volts across each of them then. Line volts across one are an open contact, or the armature sticks in."),
        _ => null,
    };

    /// <summary>Whether hardly any volts stand across contacts that were seen open without power, or only with an armature that was in, and nothing shows them closed.</summary>
    private static bool IsHardlyAcrossUnseen(ContactorCase one) =>
        (one.Readings.StaysIn == false || one is { CannotHold: true, Readings.PullsIn: true })
        && one is { AmpsFlowing: null, Readings: { PolesFollow: null, DropVolts: { } drop } }
        && drop.Legs.All(leg => Within.AtMost(leg.Volts, ContactDrop.Bad));

    /// <summary>Few volts stand across an open pole as well, behind a line or before a load that is cut off.</summary>
    private static Ruling MayBeOpen(ContactorCase one)
    {
        var open = Ruling.CantTell($"With its coil off its normally closed contacts are to be closed, and were not seen so; few volts stand across open ones as well where nothing flows.");
        return one.Readings.LegAmps is null
            ? open.ThenRead("legAmps", "Its normally closed contacts were not seen closed with its coil off: clamp each leg. What flows then flows through closed ones.")
            : open.ThenRead("polesFollow", "Nothing flows, and its normally closed contacts were not seen closed with its coil off. Power off, wires off: measure ohms through each pole, at rest and with the armature pressed in by hand.");
    }

    private static Ruling Unheld(ContactorCase one, double amps) => (one.StaysIn, one.Need.Site.ShuntFeedsHeat) switch
    {
        (null, _) => Ruling.CantTell($"{amps:0.##} A flow, and nothing holds it in: one of its poles is welded, or a shunt goes round it.").ThenRead("staysIn", FormattableString.Invariant($"{amps:0.##} A flow though nothing holds it in: does one of its contacts stay closed? A shunt round a pole, which heats a crankcase, passes a little as well.")),
        (_, null) => Ruling.CantTell($"{amps:0.##} A flow, though no contact stays closed: a shunt that heats a crankcase goes round a pole, or they flow past it.").ThenRead("shuntFeedsHeat", FormattableString.Invariant($"{amps:0.##} A flow though no contact stays closed: see whether a shunt goes round one of its poles, to heat a crankcase."), Side.Site),
        _ => PastIt(one, amps),
    };

    /// <summary>Across an open pole the line's volts stand, across a welded one hardly any: over 1 V no more than a bad contact loses (practice).</summary>
    private static Ruling PastIt(ContactorCase one, double amps) => one.LeastAcross switch
    {
        null => Ruling.CantTell($"{amps:0.##} A flow, though no contact stays closed and no shunt goes round a pole.").ThenRead("dropVolts", FormattableString.Invariant($"{amps:0.##} A cannot flow through open poles without a shunt: measure the volts across each pole. Across an open one the line's volts stand, across a welded one hardly any.")),
        { } least when Within.AtMost(least, ContactDrop.Bad) => Ruling.Bad($"{amps:0.##} A flow, and {least:0.##} V across a pole are those of a closed one, though nothing holds it in: it is welded.").ThePartHasFailed(),
        { } least when one.HasShunt => Ruling.Bad($"{amps:0.##} A flow, and {least:0.##} V stand across the pole beside its shunt, so that it is open: what flows goes past it. Look for what else feeds the load.").NotThePart(),
        { } least => Ruling.Bad($"{amps:0.##} A flow, and {least:0.##} V at least stand across its poles, so that they are open: what flows goes past it. Look for what else feeds the load.").NotThePart(),
    };
}
