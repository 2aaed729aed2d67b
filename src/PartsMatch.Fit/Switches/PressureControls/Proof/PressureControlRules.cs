using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Switches.PressureControls.Proof;

/// <summary>Are its contacts as they should be at this pressure?</summary>
/// <remarks>5 psi about its settings decide nothing (practice); between cut-in and cut-out either is right, and one that is reset by hand cannot be reset there. An old one that can be set is condemned by no setting alone.</remarks>
public sealed class ContactsAtPressure() : ReadingRule<PressureControlCase>("Contacts at this pressure", PressureControlReadingSources.PressureContacts)
{
    /// <inheritdoc/>
    public override Ruling? Judge(PressureControlCase one) => one.Readings.IsClosed is { } closed
        ? At(one, closed).UnlessRightAsMarked(one.AsMarked is { } marked ? At(marked, closed) : null, one.Seen(closed), one.Need.Plate.IsAdjustable)
        : null;

    private static Ruling At(PressureControlCase one, bool closed)
    {
        if (one.Readings.PressureThere is null) return Ruling.Read("pressureThere", "Read the gauge as well: contacts are right or wrong by the pressure there is.");
        if ((MeasuredContacts.NotKnown(one) ?? MeasuredContacts.WayNotKnown(one)) is { } open) return open;
        if (one.CutOut is null || one.BeyondCutOut is not { } beyond) return Ruling.CantTell($"Where it is to open is not known.").ThenRead(one.AskedCutOut.Field, "Find out where it is to open: on its scale, or in the equipment's papers.", one.AskedCutOut.Side);
        if (beyond > Settings.Near)
        {
            return closed
                ? Ruling.Bad($"It is closed, {new ShownPressure(beyond)} beyond its cut-out: it does not open.").ThePartHasFailed()
                : Ruling.Good($"It is open, {new ShownPressure(beyond)} beyond its cut-out: it has done its work. Find out why the pressure is where it is.").NotThePart();
        }

        if (closed && beyond > 0) return Ruling.CantTell($"It is closed within 5 psi of its cut-out, where either is right.").ThenSeeItMove(one.Seen(closed), "Read the gauge as it opens.");
        if (closed) return Ruling.Good($"It is closed, and the pressure is not beyond its cut-out.");
        if (one.IsManual) return Manual(one);
        return one.BehindCutIn switch
        {
            null => Ruling.CantTell($"It is open; where it is to close is not known.").ThenRead(one.AskedCutIn.Field, "Find out where it is to close again.", one.AskedCutIn.Side),
            > Settings.Near and var behind => Ruling.Bad($"It is open, though the pressure is {new ShownPressure(behind)} past its cut-in: it does not close.").ThePartHasFailed(),
            _ => Ruling.CantTell($"It is open, and between its cut-out and cut-in either is right.").ThenSeeItMove(one.Seen(closed), "Bring the pressure past its cut-in, and read the gauge as it closes."),
        };
    }

    private static Ruling Manual(PressureControlCase one) => one.Readings.HoldsAfterReset switch
    {
        null => Ruling.CantTell($"It is open, and is reset by hand.").ThenRead("holdsAfterReset", "Press its button: does it stay closed?"),
        true => Ruling.Good($"It stays closed after its reset: it had tripped. Find out why.").NotThePart(),
        false => one.BehindReset switch
        {
            null when one.WrongWayRound is { } misread => Ruling.CantTell(misread).ThenRead(one.AskedCutIn.Field, "Look again where it closes, or can be reset: on its scale, or in the equipment's papers.", one.AskedCutIn.Side),
            null => Ruling.CantTell($"It does not stay closed after its reset; how far the pressure must come back before it can be reset is not known.").ThenRead(one.AskedCutIn.Field, "Find out where it can be reset: its cut-in, or its cut-out and differential.", one.AskedCutIn.Side),
            > Settings.Near and var behind => Ruling.Bad($"It does not stay closed after its reset, though the pressure is {new ShownPressure(behind)} past where it can be reset.").ThePartHasFailed(),
            _ => Ruling.CantTell($"It does not stay closed after its reset, and the pressure has not yet come back far enough for that.").ThenRead("pressureThere", FormattableString.Invariant($"Let the pressure come back more than 5 psi past {new ShownPressure(one.ResetsAt!.Value)}, press its button again, and read the gauge.")),
        },
    };
}

/// <summary>Did it open where it should?</summary>
/// <remarks>Within 5 psi of its cut-out, edges included (practice).</remarks>
public sealed class OpensAtSetting() : ReadingRule<PressureControlCase>("Cut-out by the gauge", PressureControlReadingSources.PressureSetting)
{
    /// <inheritdoc/>
    public override Ruling? Judge(PressureControlCase one) => Setting.Judge(one, one.Readings.OpenedAt, one.CutOut, "opened", one.AskedCutOut);
}

/// <summary>Did it close where it should?</summary>
/// <remarks>Within 5 psi of its cut-in, edges included (practice).</remarks>
public sealed class ClosesAtSetting() : ReadingRule<PressureControlCase>("Cut-in by the gauge", PressureControlReadingSources.PressureSetting)
{
    /// <inheritdoc/>
    public override Ruling? Judge(PressureControlCase one) => one.IsManual ? null : Setting.Judge(one, one.Readings.ClosedAt, one.CutIn, "closed", one.AskedCutIn);
}

/// <summary>How many volts are lost across its closed contacts?</summary>
/// <remarks>At most 0.5 V is good, over 1 V is bad (practice), as on any contact.</remarks>
public sealed class DropAcrossContacts() : ReadingRule<PressureControlCase>("Volts across it", ContactReadingSources.ContactDrop)
{
    /// <inheritdoc/>
    public override Ruling? Judge(PressureControlCase one) => ContactDrop.Judge(one.Readings.DropVolts, one.Readings.IsClosed);
}

/// <summary>Where does one begin?</summary>
public sealed class FirstReading() : ReadingRule<PressureControlCase>("First reading", PressureControlReadingSources.PressureContacts)
{
    /// <inheritdoc/>
    public override Ruling? Judge(PressureControlCase one) =>
        one is { New: null, Readings: { IsClosed: null, DropVolts: null, OpenedAt: null, ClosedAt: null } } ? Ruling.Read("isClosed", "See whether its contacts are closed, and read the gauge at once.") : null;
}

/// <summary>What both settings are measured by.</summary>
internal static class Setting
{
    /// <summary>A pressure at which it moved against the one that is asked for; null when nothing was read.</summary>
    public static Ruling? Judge(PressureControlCase one, UnitsNet.Pressure? read, double? asked, string moved, (string Field, Side Side) asks)
    {
        if (Settings.In(read) is not { } at) return null;
        if (MeasuredContacts.NotKnown(one) is { } open) return open;
        if (asked is not { } right) return Ruling.CantTell($"It {moved} at {new ShownPressure(at)}; where it should is not known.").ThenRead(asks.Field, "Find out where it is to do so: on its scale, or in the equipment's papers.", asks.Side);
        FormattableString limit = $"{new ShownPressure(right)} within 5 psi";
        return Within.AtMost(Math.Abs(at - right), Settings.Near)
            ? Ruling.Good($"It {moved} at {new ShownPressure(at)}; {new ShownPressure(right)} within 5 psi is right.", limit)
            : MovedElsewhere.Judge($"It {moved} at {new ShownPressure(at)}; {new ShownPressure(right)} within 5 psi is right", limit, "the gauge", one.Measured.IsAdjustable, one.New is null);
    }
}
