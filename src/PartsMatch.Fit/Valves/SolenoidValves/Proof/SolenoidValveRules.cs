using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Valves.SolenoidValves.Proof;

/// <summary>Does it leak outward?</summary>
public sealed class LeakOutward() : ReadingRule<SolenoidValveCase>("Leak outward", SolenoidValveReadingSources.ValveSigns)
{
    /// <inheritdoc/>
    public override Ruling? Judge(SolenoidValveCase one) => one.Readings.LeaksOutward switch
    {
        true when one.New is null => Ruling.Bad($"It leaks outward: tighten or seal the joint if it is one, or replace the valve.").ThePartHasFailed(),
        true => Ruling.Bad($"It leaks outward: recover, make the joint anew, and test again."),
        false => Ruling.Good($"No leak outward was found."),
        null => null,
    };
}

/// <summary>Has its coil neither a break nor a short?</summary>
/// <remarks>Under 1 Ω is a short, open a break (practice).</remarks>
public sealed class CoilResistance() : ReadingRule<SolenoidValveCase>("Ohms of the coil", SolenoidValveReadingSources.ValveCoilOhms)
{
    private const double Shorted = 1;

    /// <inheritdoc/>
    public override Ruling? Judge(SolenoidValveCase one) => one.Readings.CoilOhms switch
    {
        null => null,
        { IsOpen: true } => Failed(one, Ruling.Bad($"The coil is open: replace it; the valve's body may well be good.", $"some ohms")),
        { } ohms when ohms.Value < Shorted => Failed(one, Ruling.Bad($"{ohms.Value:0.##} Ω: the coil is shorted, and may have taken the transformer or fuse with it.", $"at least {Shorted} Ω")),
        { } ohms => Ruling.Good($"{ohms.Text}: neither open nor shorted.", $"at least {Shorted} Ω"),
    };

    private static Ruling Failed(SolenoidValveCase one, Ruling bad) => one.New is null ? bad.ThePartHasFailed() : bad;
}

/// <summary>Are there volts at the coil within its window while it is called for?</summary>
/// <remarks>Too few, or those of the other kind of current, clear it, but not where it passes and its state is not known: a normally closed one has failed then; nor where a normally open one does not pass, which needs none for that. Too many excuse nothing, and may have burnt its coil.</remarks>
public sealed class VoltsAtCoil() : ReadingRule<SolenoidValveCase>("Volts at the coil", SolenoidValveReadingSources.ValveCoilVolts)
{
    /// <inheritdoc/>
    public override Ruling? Judge(SolenoidValveCase one)
    {
        if (one.Readings.CircuitCalls == false)
        {
            var uncalled = Ruling.CantTell($"Nothing calls for it: {(one.IsSupplied == true ? "volts at its coil come from something that feeds it without a call" : "volts at its coil say nothing yet")}.");
            return one.IsSeenShut ? uncalled : uncalled.ThenRead("circuitCalls", "Make the circuit call: turn its thermostat or control until it calls for the valve.");
        }

        if (one.Volts is not { } volts) return Ruling.Read("coilVolts", "Measure the volts at the coil's leads while the circuit calls: without them it is not the valve.");
        if (one.Coil is not { } coil) return volts > 0 ? Ruling.CantTell($"{volts:0.#} V at the coil; what it is marked for is not known.").ThenRead("coilVolts", "Read the volts on the coil.", Side.Plate) : Cleared(one, None(volts));
        var (least, most) = (coil.Low * SolenoidCoils.Window.Least, coil.High * SolenoidCoils.Window.Most);
        FormattableString limit = $"{least:0.#} to {most:0.#} V";
        if (one.IsSupplied == false) return Cleared(one, None(volts));
        if (one is { IsOnOtherCurrent: true, Need.Site.CoilSupplyCurrent: { } there }) return Cleared(one, Ruling.Bad($"{new OtherCurrent(volts, there)}. Look up what feeds it, or fit the coil for what is there.", limit));
        return Within.Span(volts, least, most)
            ? Ruling.Good($"{volts:0.#} V at the coil; one for {coil} works from {least:0.#} to {most:0.#} V.", limit)
            : Cleared(one, Ruling.Bad($"{volts:0.#} V at the coil; one for {coil} works from {least:0.#} to {most:0.#} V: mend the supply or fit the right coil.", limit));
    }

    private static Ruling Cleared(SolenoidValveCase one, Ruling bad) => one is { IsFedOver: true } or { IsSeenShut: true } or { Readings.PassesWhenShut: true, State: null } ? bad : bad.NotThePart();

    private static Ruling None(double volts) => Ruling.Bad($"{volts:0.#} V at its coil while it is called for: look up the circuit, from thermostat and timer over safeties to transformer and fuse.", $"its marked volts");
}

/// <summary>Is the contact that feeds its coil good?</summary>
/// <remarks>It is no part of the valve, and condemns none: a burnt one takes volts from the coil. It is told while called for, and by the volts that it leaves the coil: all of them across it mean that it is open.</remarks>
public sealed class DropAcrossItsContact() : ReadingRule<SolenoidValveCase>("Volts across its contact", ContactReadingSources.ContactDrop)
{
    /// <inheritdoc/>
    public override Ruling? Judge(SolenoidValveCase one)
    {
        if (one.Readings.CircuitCalls == false || one.Readings.ContactDropVolts is not { } drop) return null;
        if (one.Readings.CircuitCalls == true && one.IsSupplied == true) return ContactDrop.Across(drop, isClosed: true);
        var across = drop.Legs.Max(leg => leg.Volts);
        return one.IsSupplied switch
        {
            null => Ruling.CantTell($"{across:0.##} V across it; whether it is closed shows at the coil.").ThenRead("coilVolts", "Measure the volts at the coil's leads while the circuit calls: where there are none, the contact is open, or no current flows."),
            false => Ruling.CantTell($"{across:0.##} V across it, and {one.Volts:0.#} V at the coil: no current flows, for it or something else in the circuit is open, and no burnt contact is told by that."),
            true => Ruling.CantTell($"{across:0.##} V across it; whether it is to be closed is not known.").ThenRead("circuitCalls", "See whether the thermostat, timer or control that drives it is calling."),
        };
    }
}

/// <summary>Does its magnet pull?</summary>
/// <remarks>It has to from the coil's least volts on: stray ones, or too low ones, move no good magnet either. Above its window its ohms are read as well.</remarks>
public sealed class Magnet() : ReadingRule<SolenoidValveCase>("Magnet", SolenoidValveReadingSources.ValveSigns)
{
    /// <inheritdoc/>
    public override Ruling? Judge(SolenoidValveCase one)
    {
        if (one.Volts is not > 0) return null;
        return one.Readings.MagnetPulls switch
        {
            true => Ruling.Good($"Its magnet pulls."),
            null when one is { IsFed: false, IsFedOver: false } => null,
            false when one is { IsFedOver: true, New: null } => Over(one),
            false when one.IsFed != true => Ruling.CantTell($"Its magnet does not pull: that tells something once the coil is called for, and has the volts that it works at."),
            false when one.New is null => Ruling.Bad($"With volts at it, its magnet does not pull: the coil is dead.").ThePartHasFailed(),
            false => Ruling.Bad($"With volts at it, its magnet does not pull: see the coil's leads and its volts."),
            null => Ruling.Read("magnetPulls", "Hold a steel screwdriver near the coil's nut while it is energised: is it pulled?"),
        };
    }

    private static Ruling Over(SolenoidValveCase one) => one.Readings.CoilOhms is null
        ? Ruling.CantTell($"With more volts at it than it is made for, its magnet does not pull: they have burnt the coil, or it is not connected.").ThenRead("coilOhms", "Its magnet does not pull, though there are volts more than enough: power off, wires off, and measure the ohms of its coil.")
        : Ruling.Bad($"With more volts at it than it is made for, and ohms through it, its magnet does not pull: the coil is dead.").ThePartHasFailed();
}

/// <summary>Does it pass what it should while it is open?</summary>
/// <remarks>In a liquid line: 3 °F (1.7 K) colder behind than before it is a throttled valve, and as much warmer one through which nothing flows, which may be the line's doing, or clamps that are swapped (practice). It condemns only one that its coil leaves open. Which line it is in is asked first: of one for gas no pipe tells.</remarks>
public sealed class PassesWhenOpen() : ReadingRule<SolenoidValveCase>("Pipe before and behind it", SolenoidValveReadingSources.ValveDropWhenOpen)
{
    private const string WhichLine = "See which line it is in, liquid, suction or hot gas: only of a liquid line does the pipe before and behind it tell.";

    /// <inheritdoc/>
    public override Ruling? Judge(SolenoidValveCase one)
    {
        if (one.Need.Site.Line is RefrigerantLine.Suction or RefrigerantLine.HotGas) return null;
        if (one.KelvinsLost is not { } drop) return Asked(one);
        FormattableString limit = $"under 3 °F (1.7 K)";
        if (one.Need.Site.Line is null) return Ruling.CantTell($"The pipe is {new BehindIt(drop)}; that tells of a liquid line alone, and which line it is in is not known.", limit).ThenRead("line", WhichLine, Side.Site);
        if (one.IsWarmerBehind) return Warmer(one, Ruling.CantTell($"The pipe is {new BehindIt(drop)}, and liquid that flows gets no warmer: nothing flows, or the clamps are swapped.", limit));
        if (!one.Throttles) return Ruling.Good($"The pipe is {new BehindIt(drop)}: it is open.", limit);
        var bad = Ruling.Bad($"The pipe is {new BehindIt(drop)}: it does not open, or is plugged or too small.", limit);
        return one switch
        {
            { IsLeftOpen: true, New: null } => bad.ThePartHasFailed(),
            { State: NormalState.Open, IsLeftOpen: not true } => Ruling.CantTell($"The pipe is {new BehindIt(drop)}, and power shuts a normally open valve.").ThenTakeItsPower(one, "clamp the pipe before and behind it again"),
            { State: null, Readings.MagnetPulls: true, New: null } => bad.ThenRead("normalState", PassesGas.WhichState, Side.Plate),
            _ => bad,
        };
    }

    private static Ruling Warmer(SolenoidValveCase one, Ruling open) => one switch
    {
        { State: NormalState.Open, IsLeftOpen: not true } => open.ThenTakeItsPower(one, "clamp the pipe before and behind it again"),
        { Readings.PassesWhenOpen: null } => open.ThenRead("passesWhenOpen", "The pipe is warmer behind it, as liquid that flows does not get: watch the suction pressure, with its coil as it opens it and the compressor running. It stays up where liquid passes, and else the low side pumps down."),
        { Readings.PassesWhenOpen: true } => open.ThenRead("temperatureBehind", "Liquid passes, and gets no warmer: the clamps are swapped, and it throttles, or one of them reads wrong. Clamp the pipe before and behind it again."),
        _ => open,
    };

    private static Ruling? Asked(SolenoidValveCase one) => one switch
    {
        { Readings.MagnetPulls: not true } or { OpensWithPower: false } or { Readings.PassesWhenShut: not null, New: null } or { Need.Site.Line: null, Readings.PassesWhenOpen: not null } => null,
        { Need.Site.Line: null } => Ruling.Read("line", WhichLine, Side.Site),
        _ => Ruling.Read(one.Readings.TemperatureBefore is null ? "temperatureBefore" : "temperatureBehind", "Clamp the pipe before and behind the valve while it is energised: a valve that throttles is colder behind."),
    };
}

/// <summary>A normally open valve without its power as what to look at next.</summary>
internal static class WithoutPower
{
    /// <summary>The same, and its power is taken off: the call first, and where nothing calls, what feeds it all the same.</summary>
    /// <param name="open">What is not known.</param>
    /// <param name="one">The case.</param>
    /// <param name="again">What is done again then.</param>
    public static Ruling ThenTakeItsPower(this Ruling open, SolenoidValveCase one, string again) => one.Readings.CircuitCalls == false
        ? open.ThenRead("coilVolts", $"Measure the volts at its coil while nothing calls for it, take off what feeds it, and {again}: without power a normally open valve is to pass.")
        : open.ThenRead("circuitCalls", $"Let nothing call for it, so that its coil has no power, and {again}: without power a normally open valve is to pass.");
}

/// <summary>Does it hold when shut?</summary>
/// <remarks>What passes tells something of its seat only where its coil leaves it shut: power holds a normally closed one open, and alone shuts a normally open one.</remarks>
public sealed class HoldsWhenShut() : ReadingRule<SolenoidValveCase>("When shut", SolenoidValveReadingSources.ValveSigns)
{
    /// <inheritdoc/>
    public override Ruling? Judge(SolenoidValveCase one) => (one.Readings.PassesWhenShut, one.IsLeftShut) switch
    {
        (null, _) => null,
        (false, _) => Ruling.Good($"It holds when shut."),
        (_, false) => Ruling.Bad($"It passes, and its coil has power though nothing calls for it: that holds it open. {(one.Volts is null ? "Measure the volts at its coil, find" : "Find")} the contact that feeds it, and look again.").NotThePart(),
        (_, null) when one.State is null => Ruling.CantTell($"It passes; whether it is shut with power or without is not known.").ThenRead("normalState", "Read whether it is normally closed or normally open.", Side.Plate),
        (_, null) when one is { OpensWithPower: true, Readings.MagnetPulls: null } => Ruling.CantTell($"It passes, with {one.Volts:0.#} V at its coil though nothing calls for it; whether they hold it open is not known.").ThenRead("magnetPulls", FormattableString.Invariant($"There are {one.Volts:0.#} V at its coil though nothing calls for it, which an electronic switch may leak: hold a steel screwdriver near the coil's nut. Where it is pulled they hold the valve open; where it is not, its seat passes.")),
        (_, null) => Ruling.CantTell($"It passes; whether its coil leaves it shut is not known: power holds a normally closed valve open, and alone shuts a normally open one."),
        _ when one.New is null => Ruling.Bad($"It passes when it should be shut: dirt or wear at its seat, or it is put in backwards{(one.OpensWithPower ? string.Empty : ", or its coil does not pull it shut")}.").ThePartHasFailed(),
        _ => Ruling.Bad($"It passes when it should be shut: see its arrow, and flush brazing dirt from its seat."),
    };
}
