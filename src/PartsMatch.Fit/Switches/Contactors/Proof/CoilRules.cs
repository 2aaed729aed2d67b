using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contactors.Proof;

/// <summary>Is it called for at all?</summary>
/// <remarks>Where it is not, nothing is to feed it: what does is looked for first, unless with volts enough it does not pull in either, or chatters with good ones. One that is in without volts that hold it in is welded or stuck, and one that is out with volts that pull none in is out for want of a call. Contacts that are closed without one are looked at then.</remarks>
public sealed class CalledFor() : ReadingRule<ContactorCase>("Called for", ContactorReadingSources.NotCalledFor)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one)
    {
        if (one.Readings.CircuitCalls != false || one.AmpsUnheld is not null || one.HardlyAcrossOpen is not null) return null;
        return (one.CannotHold, one.Volts, one is { IsSeenIn: true, StaysIn: not false } or { AmpsWithPower: not null }) switch
        {
            (false, not null, false) when one is { Action: not ContactAction.NormallyOpen, IsFedEnough: false, Readings.Chatters: not true } => AtRest(one),
            (false, { } volts, false) when one is { IsFedEnough: false, Readings.Chatters: not true } => Ruling.Bad($"It is not called for: look up the circuit, from the thermostat over pressure controls and delays, and find what keeps it out. {volts:0.#} V at its coil pull none in; see what feeds it those all the same, as an electronic switch leaks a few.").NotThePart(),
            (false, { } volts, _) => Fed(one, Ruling.Bad($"It is not called for, and has {volts:0.#} V at its coil: look for what feeds it, a contact that sticks, wires that touch, or a jumper.")),
            (null, { } volts, _) => MadeFor.Ask(one, Ruling.CantTell($"It is not called for, and has {volts:0.#} V at its coil; what that is made for is not known.")),
            (_, null, true) when one is { IsSeenIn: not true, AmpsWithPower: { } amps } => Ruling.CantTell($"It is not called for, and {amps:0.##} A flow: one of its poles is closed, or a shunt passes them.").ThenRead("coilVolts", FormattableString.Invariant($"{amps:0.##} A flow without a call: measure the volts at its coil. With volts there look for what feeds it; without them one of its poles is welded, or a shunt passes a little.")),
            (_, null, true) => Ruling.CantTell($"It is not called for, and it is in.").ThenRead("coilVolts", "It is in without a call: measure the volts at its coil. With volts there look for what feeds it; without them it is welded or stuck."),
            (true or null, _, _) when one.Action != ContactAction.NormallyOpen => AtRest(one),
            (true, _, true) => Ruling.CantTell($"It is not called for, has no volts at its coil that hold it in, and was seen in.").ThenRead("staysIn", "There are no volts at its coil that hold it in: do its contacts stay closed?"),
            _ => Ruling.NotApplicable($"It is not called for: look up the circuit, from the thermostat over pressure controls and delays, and find what keeps it out.").NotThePart(),
        };
    }

    /// <summary>What is closed without a call may be open though it should not: that clears no contacts which are to be closed then.</summary>
    private static Ruling AtRest(ContactorCase one) => one switch
    {
        { Action: null } => Ruling.CantTell($"It is not called for; whether the side of its contacts that is wired is to be closed then is not known.").ThenSeeWhichSide(one),
        { Readings: { DropVolts: null, IsBurnt: null } } => Ruling.CantTell($"It is not called for, and its normally closed contacts are to be closed.").ThenRead("dropVolts", "It is not called for: measure the volts across each of its normally closed contacts, which are closed then. Line volts across one are an open contact."),
        _ => Ruling.NotApplicable($"It is not called for, and its normally closed contacts are to be closed then."),
    };

    private static Ruling Fed(ContactorCase one, Ruling bad) => one is { IsFedEnough: true, Readings.PullsIn: false } or { IsFed: true, Readings.Chatters: true } ? bad : bad.NotThePart();
}

/// <summary>Asks for what its coil is made for, by which the volts there are judged: its volts, or whether they alternate.</summary>
internal static class MadeFor
{
    /// <summary>The same ruling with the question.</summary>
    /// <param name="one">The case.</param>
    /// <param name="open">What is not known.</param>
    public static Ruling Ask(ContactorCase one, Ruling open) => one.Coil.Count == 0
        ? open.ThenRead("coilVolts", "Read the coil's volts off the coil: the volts there are judged by them.", Side.Plate)
        : open.ThenRead("coilCurrent", "Read off the coil whether it is for alternating or direct current: on the second few volts hold it in.", Side.Plate);
}

/// <summary>Are the volts at the coil within its window?</summary>
/// <remarks>85 to 110 % of its marked volts (IEC 60947-4-1, from memory), edges included. Of one that is not called for only good ones are told: others are none that it should work at. Too few, or those of the other kind of current, clear it unless it was seen to stay in, current flows all the same, one of its poles looks closed, or normally closed ones were seen open without them.</remarks>
public sealed class VoltsAtCoil() : ReadingRule<ContactorCase>("Volts at the coil", ContactorReadingSources.ContactorCoilVolts)
{
    /// <summary>Right volts without the coil condemn it not yet: a bad joint loses none either while nothing flows.</summary>
    private const string WithoutTheCoil = " With the power off and proved dead take a wire off the coil, and measure again with the power back on: volts that stay low are not drawn down by the coil. Where they are right, measure its ohms as well, and see whether its armature moves freely.";

    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one)
    {
        if (one.Volts is not { } volts || one is { Readings.CircuitCalls: false, IsFed: not true }) return null;
        if (one.HasNoVolts == true)
        {
            return one.Readings.CircuitCalls == true
                ? Cleared(one, Ruling.Bad($"It is called for, and {volts:0.#} V at the coil are none: look up the circuit, the control fuse and the transformer."))
                : Ruling.CantTell($"{volts:0.#} V at the coil are none.").ThenRead("circuitCalls", "There are no volts at the coil: is it called for at all?");
        }

        if (one.Coil.Count == 0) return Ruling.CantTell($"{volts:0.#} V at the coil; what it is made for is not known.").ThenRead("coilVolts", "Read the coil's volts off the coil: the volts there are judged by them.", Side.Plate);
        FormattableString limit = $"{new WorkingVolts(one.Coil)}";
        if (one.IsFed == true) return Ruling.Good($"{volts:0.#} V at the coil; for {new ListedCoils(one.Coil)} it works {new WorkingVolts(one.Coil)}.", limit);
        if (one is { IsOnOtherCurrent: true, Need.Site.ControlCurrent: { } there }) return Cleared(one, Ruling.Bad($"{new OtherCurrent(volts, there)}. Look up what feeds it, or fit the coil for what is there.", limit));
        return volts < one.Coil.Min(coil => ContactorCoils.Window.Of(coil).Low)
            ? Cleared(one, Ruling.Bad($"{volts:0.#} V at the coil are too low; for {new ListedCoils(one.Coil)} it works {new WorkingVolts(one.Coil)}: look for a loaded transformer, a bad joint or a long thin wire.{(one.Readings.CoilOhms is null ? WithoutTheCoil : "")}", limit))
            : Ruling.Bad($"{volts:0.#} V at the coil are not what it is made for; for {new ListedCoils(one.Coil)} it works {new WorkingVolts(one.Coil)}.", limit);
    }

    private static Ruling Cleared(ContactorCase one, Ruling bad) => one is { AmpsUnheld: null, StaysIn: not true, HardlyAcrossOpen: null } && LetsGo.NotSeenClosed(one) is null ? bad.NotThePart() : bad;
}

/// <summary>Has the coil its ohms?</summary>
/// <remarks>Open or under 1 Ω has failed; where its ohms are marked, within a fifth of them (practice), for they change with its heat.</remarks>
public sealed class OhmsOfCoil() : ReadingRule<ContactorCase>("Ohms of the coil", ContactorReadingSources.ContactorCoilOhms)
{
    private const double Shorted = 1;

    private const double PercentOff = 20;

    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one)
    {
        if (one.Readings.CoilOhms is not { } ohms) return null;
        if (ohms.IsOpen) return Ruling.Bad($"The coil is open: change it, or the contactor.", $"not open").ThePartHasFailed();
        if (one.Measured.CoilOhms is { IsOpen: false } marked && one.Coil is [] or [{ Number.Count: 0 }, ..])
        {
            var (low, high) = (marked.Value * (1 - (PercentOff / 100)), marked.Value * (1 + (PercentOff / 100)));
            FormattableString limit = $"{low:0.##} to {high:0.##} Ω";
            return Within.Span(ohms.Value, low, high)
                ? Ruling.Good($"{ohms.Text} through the coil; {marked.Text} ±{PercentOff} % are marked.", limit)
                : Ruling.Bad($"{ohms.Text} through the coil; {marked.Text} ±{PercentOff} % are marked: turns are {(ohms.Value < low ? "shorted" : "broken or a joint is bad")}.", limit).ThePartHasFailed();
        }

        return Within.AtLeast(ohms.Value, Shorted)
            ? Ruling.Good($"{ohms.Text} through the coil: neither open nor shorted.", $"at least {Shorted} Ω, not open")
            : Ruling.Bad($"{ohms.Text} through the coil are a short.", $"at least {Shorted} Ω, not open").ThePartHasFailed();
    }
}

/// <summary>Does it pull in with good volts at its coil?</summary>
/// <remarks>With too many it has to as well: they burn the coil.</remarks>
public sealed class PullsIn() : ReadingRule<ContactorCase>("Pulls in", ContactorReadingSources.ContactorPullsIn)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one) => (one.Readings.PullsIn, one.IsFedEnough, one.Readings.CoilOhms) switch
    {
        (true, _, _) => Ruling.Good($"It pulls in."),
        (false, null, _) when one.Volts is null => Ruling.Read("coilVolts", "It does not pull in: measure the volts at its coil while it is called for."),
        (false, true, null) => Ruling.CantTell($"There are volts enough at its coil, and it does not pull in.").ThenRead("coilOhms", "There are volts enough and it does not pull in: power off, wires off, and measure the ohms of its coil."),
        (false, true, { IsOpen: false }) => Ruling.Bad($"There are volts enough at its coil, which is neither open nor shorted, and it does not pull in: its armature is stuck or broken.").ThePartHasFailed(),
        _ => null,
    };
}

/// <summary>Does it hold without chatter?</summary>
public sealed class HoldsQuietly() : ReadingRule<ContactorCase>("Hums or chatters", ContactorReadingSources.ContactorChatters)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one) => (one.Readings.Chatters, one.IsFed) switch
    {
        (false, _) => Ruling.Good($"It holds quietly."),
        (true, null) when one.Volts is null => Ruling.Read("coilVolts", "It hums or chatters: measure the volts at its coil while it does; low volts do that, too."),
        (true, true) => Ruling.Bad($"It hums or chatters with good volts at its coil: its faces are dirty or worn, or its shading ring is broken.").ThePartHasFailed(),
        _ => null,
    };
}
