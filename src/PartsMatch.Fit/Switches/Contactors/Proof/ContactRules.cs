using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Proof;

/// <summary>Is a pole burnt?</summary>
public sealed class LookAtContacts() : ReadingRule<ContactorCase>("Look", ContactorReadingSources.ContactsLook)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one) => one.Readings.IsBurnt switch
    {
        true => Ruling.Bad($"A pole or terminal is burnt: replace it, and see why: a loose terminal, chatter, or too much on it.").ThePartHasFailed(),
        false => Ruling.Good($"No pole or terminal is burnt."),
        null => null,
    };
}

/// <summary>Does each pole open and close with the armature?</summary>
public sealed class PolesFollow() : ReadingRule<ContactorCase>("Poles follow by hand", ContactorReadingSources.PolesFollow)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one) => one.Readings.PolesFollow switch
    {
        false => Ruling.Bad($"A pole does not open and close with its armature: it is welded or burnt, or the armature sticks.").ThePartHasFailed(),
        true => Ruling.Good($"Its poles open and close with its armature."),
        null => null,
    };
}

/// <summary>How many volts are lost across each closed pole?</summary>
/// <remarks>At most 0.5 V is good, over 1 V is bad, and between the two the faces are looked at (practice). Only of closed poles: across open ones the line's volts stand, and hardly any do where one is welded. Without current a closed one loses none to speak of, and line volts across one that is in are an open contact, which on a single-phase load stops all of it.</remarks>
public sealed class DropAcrossPoles() : ReadingRule<ContactorCase>("Volts across each pole", ContactReadingSources.ContactDrop)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one)
    {
        if (one.Readings.DropVolts is not { } drop) return null;
        if (one is { AmpsUnheld: not null, StaysIn: not true }) return null; // told with what flows though nothing holds it in
        var most = drop.Legs.Max(leg => leg.Volts);
        FormattableString limit = $"at most {ContactDrop.Good} V";
        if (one is { Readings.Chatters: true, IsFed: not true } && !Within.AtMost(most, ContactDrop.Bad)) return Ruling.CantTell($"{most:0.##} V across the worst pole of one that chatters say nothing of its contact, unless its coil has its volts.", limit);
        if (one.HardlyAcrossOpen is { } least) return MayBeWelded(one, least, limit);
        if (one.IsClosed == false) return Ruling.NotApplicable($"{(one.Action == ContactAction.NormallyClosed ? "It is in, which opens its poles" : "It is not in")}: what stands across open poles says nothing of their contacts.", limit);
        if (one.HasNoCurrent && Within.AtMost(most, ContactDrop.Bad)) return Ruling.NotApplicable($"No current flows: {most:0.##} V across the worst pole then say nothing of its contact.", limit);
        if (one is { HasNoCurrent: true, IsClosed: null }) return Ruling.NotApplicable($"No current flows, and whether its poles are to be closed is not known: across open poles the line's volts stand.", limit).ThenSeeWhetherClosed(one, "Does it pull in? Line volts across a pole of one that is in are an open contact.");
        if (Within.AtMost(most, ContactDrop.Good)) return Ruling.Good($"{most:0.##} V across the worst pole; a good contact loses {ContactDrop.Good} V at most.", limit);
        if (!Within.AtMost(most, ContactDrop.Bad) && one.IsClosed is null) return Ruling.CantTell($"{most:0.##} V across the worst pole; whether it is to be closed is not known.", limit).ThenSeeWhetherClosed(one, "Does it pull in? Only closed poles are judged by the volts across them.");
        return Within.AtMost(most, ContactDrop.Bad)
            ? LookAt(one, Ruling.CantTell($"{most:0.##} V across the worst pole lie between {ContactDrop.Good} and {ContactDrop.Bad} V.", limit))
            : Ruling.Bad($"{most:0.##} V across the worst pole are over {ContactDrop.Bad} V: its contact is burnt, or does not close.", limit).ThePartHasFailed();
    }

    private static Ruling MayBeWelded(ContactorCase one, double least, FormattableString limit)
    {
        var open = Ruling.CantTell($"{least:0.##} V stand across a pole that is to be open: across an open one the line's volts stand, across a welded one hardly any, or across one behind which the load is cut off.", limit);
        if (one is { Action: ContactAction.NormallyClosed, HasNoCurrent: true }) return open.ThenRead("polesFollow", FormattableString.Invariant($"{least:0.##} V stand across a normally closed pole of one that is in, and nothing flows: it is welded, or its load is cut off. Power off, wires off, press the armature in by hand, and measure ohms through each pole."));
        return one.Action == ContactAction.NormallyClosed
            ? open.ThenRead("legAmps", FormattableString.Invariant($"It is in, which is to open its normally closed poles, and {least:0.##} V stand across one: clamp each leg while it is in. What flows then flows through a welded one."))
            : open.ThenRead("staysIn", FormattableString.Invariant($"Nothing holds it in, and {least:0.##} V stand across a pole: does one of its contacts stay closed? Power off, wires off, and measure ohms through each."));
    }

    private static Ruling LookAt(ContactorCase one, Ruling open) => one.Readings.IsBurnt is null ? open.ThenRead("isBurnt", "A pole loses more than a good one: power off, and look at its contact faces and terminals.") : open;
}

/// <summary>Do the amps of the legs stay within what a pole carries?</summary>
/// <remarks>A leg without current beside one with is open somewhere, but not where both sides of contacts are wired, or a pole of each kind: one of the two is always open.</remarks>
public sealed class AmpsOfLegs() : ReadingRule<ContactorCase>("Amps of each leg", ContactorReadingSources.ContactAmps)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one)
    {
        if (one.Readings.LegAmps is not { } amps) return null;
        var (most, least) = (amps.Legs.Max(leg => leg.Amperes), amps.Legs.Min(leg => leg.Amperes));
        if (one.HasNoCurrent) return None(one);
        if (one.AmpsThroughOpened is { } through) return Opened(one, through);
        if (least <= 0 && one.Action is null) return Ruling.CantTell($"One leg carries no current, and another {most:0.##} A; whether the contacts in it are to be closed is not known.").ThenSeeWhichSide(one);
        if (least <= 0 && one.Action != ContactAction.ChangeOver) return AskedAcross(one, Ruling.Bad($"One leg carries no current, and another {most:0.##} A: a pole, a fuse or a line is open."), "One leg is dead: measure across each closed pole. Line volts across one are an open contact.");
        if (one.Carries is not { } carries) return Ask(one, Ruling.CantTell($"{most:0.##} A in the worst leg; what a pole carries at the volts there is not known."));
        FormattableString limit = $"at most {carries:0.##} A";
        return Within.AtMost(most, carries)
            ? Ruling.Good($"{most:0.##} A in the worst leg; a pole carries {carries:0.##} A.", limit)
            : Ruling.Bad($"{most:0.##} A in the worst leg are over the {carries:0.##} A that a pole carries: what hangs on it takes too much, or it is too small.", limit);
    }

    private static Ruling None(ContactorCase one) => one.IsClosed switch
    {
        false => Ruling.NotApplicable($"Its poles are to be open: none is to flow through them."),
        null => Ruling.CantTell($"No current flows; whether its poles are to be closed is not known.").ThenSeeWhetherClosed(one, "No current flows: does it pull in, all the way?"),
        true => AskedAcross(one, Ruling.Bad($"No current flows, though its poles are to be closed: a pole, a fuse or a line is open, or what hangs on it takes none."), "No current flows though its poles are to be closed: measure across each of them. Line volts across one are an open contact."),
    };

    /// <summary>What flows through normally closed poles while it is in: they are welded, unless it was clamped before it was called for.</summary>
    private static Ruling Opened(ContactorCase one, double amps) => (one.Readings.CircuitCalls, one.Volts) switch
    {
        (null, _) => Ruling.CantTell($"{amps:0.##} A flow, and it was seen to pull in.").ThenRead("circuitCalls", FormattableString.Invariant($"{amps:0.##} A flow through poles that are closed only without power: is it called for while they flow?")),
        (true, null) => Ruling.CantTell($"{amps:0.##} A flow, and it was seen to pull in.").ThenRead("coilVolts", FormattableString.Invariant($"{amps:0.##} A flow through poles that are closed only without power: measure the volts at its coil while they flow.")),
        (true, _) when one.IsFedEnough == true => Ruling.Bad($"{amps:0.##} A flow through its normally closed poles though it is in, which is to open them: one is welded.").ThePartHasFailed(),
        _ => Ruling.CantTell($"{amps:0.##} A flow, and it was seen to pull in; whether they flow while it is in is not known."),
    };

    private static Ruling AskedAcross(ContactorCase one, Ruling open, string why) => one.Readings.DropVolts is null ? open.ThenRead("dropVolts", why) : open;

    /// <summary>Asks for what is missing of its rating; nothing where it is rated for lower volts than those there.</summary>
    private static Ruling Ask(ContactorCase one, Ruling open) => (one.Ratings.Count, one.Need.Site.LoadVolts, RatedAmps.MostVolts(one.Ratings)) switch
    {
        (0, _, _) when one.Measured.AmpsFor(one.Need.Site.Loads) is not null => open.ThenRead("ratedVolts", "Its volts and its amps do not pair: read on it at which volts a pole carries which amps.", Side.Plate),
        (0, _, _) => open.ThenRead(one.Measured.FullLoadAmps is null ? "fullLoadAmps" : "acEightAmps", "Read on it how many amps of what hangs on it a pole carries.", Side.Plate),
        (_, _, null) => open.ThenRead("ratedVolts", "Read on it at which volts a pole carries its amps.", Side.Plate),
        (_, null, _) => open.ThenRead("loadVolts", "Measure the volts that it switches: its poles carry other amps at other volts.", Side.Site),
        _ => open,
    };
}

/// <summary>Do its terminals stay cool enough?</summary>
/// <remarks>At most 65 K over the air round it (IEC 60947-1 table 2, bare copper and tin: from memory).</remarks>
public sealed class HeatOfTerminals() : ReadingRule<ContactorCase>("Heat of terminals", ContactorReadingSources.TerminalHeat)
{
    private const double MostRise = 65;

    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one)
    {
        if (one.Readings.TerminalTemperature is not { } terminal) return null;
        FormattableString limit = $"at most {MostRise} K over the air";
        if (one.Readings.BoxAir is not { } air) return Ruling.CantTell($"The hottest terminal has {terminal.DegreesCelsius:0.#} °C; the air round it is not known.", limit).ThenRead("boxAir", "Measure the air in the box as well: a terminal is judged by what it has over it.");
        var rise = terminal.DegreesCelsius - air.DegreesCelsius;
        return Within.AtMost(rise, MostRise)
            ? Ruling.Good($"The hottest terminal is {rise:0.#} K over the air; {MostRise} K are the limit.", limit)
            : Ruling.Bad($"The hottest terminal is {rise:0.#} K over the air, and {MostRise} K are the limit: tighten it, and look at its contact.", limit);
    }
}
