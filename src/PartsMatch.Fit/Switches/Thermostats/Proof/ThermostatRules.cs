using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats.Proof;

/// <summary>Are its contacts as they should be at this temperature?</summary>
/// <remarks>Within its differential either is right, and within 5 °F of a setting nothing is concluded (practice). A fan delay on a warm box is not judged, and one that is reset by hand is by where it opens alone. An old one that can be set is condemned by no setting alone.</remarks>
public sealed class ContactsAtTemperature() : ReadingRule<ThermostatCase>("Contacts at this temperature", ThermostatReadingSources.ThermostatContacts)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ThermostatCase one)
    {
        if (one.Readings.IsClosed is not { } closed || (one.IsWarm && one.Need.Plate.Function == ThermostatFunction.FanDelay)) return null;
        if (one.There is null) return Ruling.Read("bulbTemperature", "Measure the temperature at its bulb as well: contacts are right or wrong by the temperature there is.");
        return MeasuredSide.NotKnown(one) ?? By(one, one.Main, closed).UnlessRightAsMarked(one.AsMarked is { } marked ? By(one, marked, closed) : null, one.Seen(closed), one.Need.Plate.IsAdjustable);
    }

    private static Ruling By(ThermostatCase one, Points points, bool closed) => one.IsManual
        ? ResetByHand.Judge(one, points, one.OpensOnRise!.Value, closed)
        : AtTemperature.Judge(one, points, one.OpensOnRise!.Value, closed);
}

/// <summary>Are the fans' contacts of a switch with three wires as they should be at this temperature?</summary>
/// <remarks>As its other contacts are judged; on a warm box they are not.</remarks>
public sealed class FansContactsAtTemperature() : ReadingRule<ThermostatCase>("Fans' contacts at this temperature", ThermostatReadingSources.ThermostatContacts)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ThermostatCase one)
    {
        if (one.Readings.AreFansClosed is not { } closed || one.IsWarm || one.Need.Plate.Function != ThermostatFunction.FanDelayAndDefrostEnd) return null;
        return one.There is null
            ? Ruling.Read("bulbTemperature", "Measure the temperature at its bulb as well: contacts are right or wrong by the temperature there is.")
            : AtTemperature.JudgeFans(one, closed);
    }
}

/// <summary>Did it open where it should?</summary>
/// <remarks>Within 5 °F of its cut-out, edges included (practice).</remarks>
public sealed class OpensAtSetting() : ReadingRule<ThermostatCase>("Cut-out by the thermometer", ThermostatReadingSources.ThermostatSetting)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ThermostatCase one) => AtSetting.Judge(one, one.Readings.OpenedAt, one.OpensOnRise, "opened", one.AskedCutOut);
}

/// <summary>Did it close where it should?</summary>
/// <remarks>Within 5 °F of its cut-in, edges included (practice).</remarks>
public sealed class ClosesAtSetting() : ReadingRule<ThermostatCase>("Cut-in by the thermometer", ThermostatReadingSources.ThermostatSetting)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ThermostatCase one) => one.IsManual ? null : AtSetting.Judge(one, one.Readings.ClosedAt, !one.OpensOnRise, "closed", one.AskedCutIn);
}

/// <summary>How many volts are lost across its closed contacts?</summary>
/// <remarks>At most 0.5 V is good, over 1 V is bad (practice), as on any contact.</remarks>
public sealed class DropAcrossContacts() : ReadingRule<ThermostatCase>("Volts across it", ContactReadingSources.ContactDrop)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ThermostatCase one) => ContactDrop.Judge(one.Readings.DropVolts, one.Readings.IsClosed);
}

/// <summary>Does its bulb feel what it is to feel?</summary>
/// <remarks>One out of its place is mended first.</remarks>
public sealed class BulbInItsPlace() : ReadingRule<ThermostatCase>("Bulb in place", ThermostatReadingSources.ThermostatBulb)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ThermostatCase one) => one.Readings.BulbInPlace switch
    {
        true => Ruling.Good($"Its bulb sits where it belongs."),
        false => Ruling.Bad($"Its bulb is not where it belongs: it feels something else. Put it in place, and look again.").NotThePart(),
        null => null,
    };
}

/// <summary>Is it too early to judge a fan delay?</summary>
/// <remarks>On a warm box it keeps the fans off by design.</remarks>
public sealed class WarmBox() : ReadingRule<ThermostatCase>("Fan delay on a warm box", ThermostatReadingSources.FanDelayOnWarmBox)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ThermostatCase one) => one is { IsWarm: true, DelaysFans: true }
        ? Ruling.NotApplicable($"The box is warm: a fan delay keeps the fans off until the coil is cold. Judge nothing by them, and add no refrigerant.").ThenRead("boxIsCold", "Wait until the coil is cold, and look again.")
        : null;
}

/// <summary>Did the fans start after a defrost?</summary>
/// <remarks>Once the coil is cold; on a warm box they are not judged.</remarks>
public sealed class FansAfterDefrost() : ReadingRule<ThermostatCase>("Fans after a defrost", ThermostatReadingSources.FanDelayOnWarmBox)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ThermostatCase one)
    {
        if (!one.DelaysFans || one.IsWarm || one.Readings.FansStarted is not { } started) return null;
        if (started) return Ruling.Good($"The fans started by themselves after the defrost.");
        return one.Readings.BoxIsCold == true
            ? ThoughCold(one)
            : Ruling.CantTell($"The fans did not start; whether the coil is cold is not known.").ThenRead("boxIsCold", "Is the coil cold? Before that the fans stand still by design.");
    }

    private static Ruling ThoughCold(ThermostatCase one)
    {
        var (field, closed) = one.Need.Plate.Function == ThermostatFunction.FanDelay ? ("isClosed", one.Readings.IsClosed) : ("areFansClosed", one.Readings.AreFansClosed);
        return closed switch
        {
            null => Ruling.Bad($"The fans did not start, though the coil is cold: measure whether its contacts are closed, and whether the fans have volts.").ThenRead(field, "Are its contacts closed, and how cold is its bulb?"),
            true => Ruling.Bad($"The fans did not start, though the coil is cold and its contacts are closed: measure whether the fans have volts."),
            false => Ruling.CantTell($"The fans did not start, and its contacts are open: the temperature at its bulb tells whether they should be."),
        };
    }
}

/// <summary>What ended the defrost?</summary>
/// <remarks>Temperature is right; time is what a defrost end is to spare.</remarks>
public sealed class EndOfDefrost() : ReadingRule<ThermostatCase>("End of the defrost", ThermostatReadingSources.DefrostEnds)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ThermostatCase one) => (one.EndsDefrost, one.Readings.DefrostEnded) switch
    {
        (true, DefrostEndedBy.Temperature) => Ruling.Good($"It ended the defrost by temperature."),
        (true, DefrostEndedBy.Time) => ByTime(one),
        _ => null,
    };

    private static Ruling ByTime(ThermostatCase one)
    {
        var open = Ruling.CantTell($"The timer's minutes ended the defrost: its bulb did not come to its temperature in time, or its contacts did nothing.");
        return one.There is null ? open.ThenRead("bulbTemperature", "How warm does its bulb get by the end of a defrost, and do its contacts move there?") : open;
    }
}

/// <summary>Where does one begin?</summary>
public sealed class FirstReading() : ReadingRule<ThermostatCase>("First reading", ThermostatReadingSources.ThermostatContacts)
{
    /// <inheritdoc/>
    public override Ruling? Judge(ThermostatCase one) =>
        one is { New: null, IsWarm: false, Readings: { IsClosed: null, AreFansClosed: null, DropVolts: null, OpenedAt: null, ClosedAt: null } } ? Ruling.Read("isClosed", "See whether its contacts are closed, and measure the temperature at its bulb at once.") : null;
}

/// <summary>What both settings are measured by.</summary>
internal static class AtSetting
{
    /// <summary>A temperature at which it moved against the one that is asked for; null when nothing was read.</summary>
    public static Ruling? Judge(ThermostatCase one, Temperature? read, bool? isOnRise, string moved, (string Field, Side Side) asks)
    {
        if (Degrees.In(read) is not { } at) return null;
        if (MeasuredSide.NotKnown(one) is { } open) return open;
        if (one.Main.At(isOnRise!.Value ? Moving.OnRise : Moving.OnFall) is not { } right) return Ruling.CantTell($"It {moved} at {new ShownTemperature(at)}; where it should is not known.").ThenRead(asks.Field, "Find out where it is to do so: on its scale, or in the equipment's papers.", asks.Side);
        FormattableString limit = $"{new ShownTemperature(right)} within 5 °F (2.8 K)";
        return Degrees.AreNear(at, right)
            ? Ruling.Good($"It {moved} at {new ShownTemperature(at)}; {new ShownTemperature(right)} within 5 °F (2.8 K) is right.", limit)
            : MovedElsewhere.Judge($"It {moved} at {new ShownTemperature(at)}; {new ShownTemperature(right)} within 5 °F (2.8 K) is right", limit, "the thermometer", one.Measured.IsAdjustable, one.New is null);
    }
}
