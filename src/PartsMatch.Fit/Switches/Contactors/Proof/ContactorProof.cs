using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Proof;

/// <summary>Is it the contactor, and is the new one right?</summary>
public static class ContactorProof
{
    /// <summary>The rules, before and after alike: what condemns it by itself stands before what clears it, and both before what asks.</summary>
    public static IReadOnlyList<ReadingRule<ContactorCase>> Rules { get; } =
        [new LookAtContacts(), new OhmsOfCoil(), new PolesFollow(), new DropAcrossPoles(), new LetsGo(), new CalledFor(), new VoltsAtCoil(), new PullsIn(), new HoldsQuietly(), new AmpsOfLegs(), new HeatOfTerminals(), new FirstReading()];

    /// <summary>Whether the old one has failed.</summary>
    public static Diagnosis Diagnose(ContactorNeed need, ContactorReadings readings)
    {
        var one = new ContactorCase(need, readings);
        return Diagnosis.Of(Rules, one, [.. new[] { CoilFedWrong(one), TooMuchOnIt(need) }.OfType<MendFirst>()]) with { Drawings = Drawn(one) };
    }

    /// <summary>Whether the new one is fed and carries as it should.</summary>
    public static AfterSwapReport Report(ContactorNeed need, ContactorSpec part, ContactorReadings readings)
    {
        var one = new ContactorCase(need, readings, part);
        return new([.. Rules.Select(rule => rule.CheckOf(rule.Judge(one))).OfType<ReadingCheck>()], [], Drawn(one));
    }

    private static IReadOnlyList<Drawing> Drawn(ContactorCase one) => ContactorDrawings.CoilScale(one.Coil, one.Volts) is { } scale ? [scale] : [];

    private static MendFirst? CoilFedWrong(ContactorCase one) => one.IsFed == false && one.HasNoVolts != true && new VoltsAtCoil().Judge(one) is { } bad
        ? new("coilFedWrong", bad.Sentence, "Mend the control supply: a coil fed wrong burns out, or chatters until its contacts weld.", ContactorReadingSources.ContactorCoilVolts)
        : null;

    private static MendFirst? TooMuchOnIt(ContactorNeed need)
    {
        if (need.Site is not { LoadVolts: { } volts, Motors: { } motors } || RatedAmps.At(RatedAmps.Of(need.Plate.RatedVolts, need.Plate.AmpsFor(need.Site.Loads)), volts.Volts) is not { } carried || Within.AtMost(motors.FullLoad, carried)) return null;
        return new("tooMuchOnContact", FormattableString.Invariant($"{motors.FullLoad:0.##} A of motors are on it; the old one carried {carried:0.##} A at {volts.Volts:0.#} V."), "Fit one that carries what is on it, or take something off it.", ContactSources.FullLoad);
    }
}

/// <summary>Where does one begin?</summary>
public sealed class FirstReading() : ReadingRule<ContactorCase>("First reading", ContactorReadingSources.NotCalledFor)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ContactorCase one) => one switch
    {
        { New: not null } => null,
        { Readings: { CoilVolts: null, CoilOhms: null, IsBurnt: null, StaysIn: not true, PolesFollow: null, DropVolts: null } } => Ruling.Read("coilVolts", "Measure the volts at its coil while it is called for: with none there it is not the part."),
        { Readings.PullsIn: null, StaysIn: not true, IsFedEnough: true } => Ruling.Read("pullsIn", "There are volts enough at its coil: does it pull in, all the way?"),
        { Readings: { PullsIn: true, DropVolts: null, IsBurnt: null } } => AfterItPulledIn(one),
        _ => null,
    };

    private static Ruling? AfterItPulledIn(ContactorCase one) => one switch
    {
        { Action: null } => MeasuredPoles.SeeWhichSide(one),
        { Action: ContactAction.NormallyClosed, IsClosed: false, Readings.LegAmps: null } => Ruling.Read("legAmps", "It pulls in, which opens its normally closed poles: clamp each leg while it is in. What flows then flows through a welded one."),
        { Action: ContactAction.NormallyClosed, IsClosed: false } => Ruling.Read("circuitCalls", "Its normally closed poles are closed without power: turn the call off, and measure the volts at its coil again, and those across each pole."),
        _ => Ruling.Read("dropVolts", "It pulls in: measure the volts across each closed pole under load."),
    };
}
