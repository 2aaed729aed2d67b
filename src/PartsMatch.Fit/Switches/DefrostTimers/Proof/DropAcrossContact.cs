using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Proof;

/// <summary>How many volts are lost across a closed contact?</summary>
/// <remarks>
/// More than 20 V (practice) no closed contact loses for long: they stand across one that is open, as the heater contact is by right where the timer was thrown back into cooling. So do fewer
/// where no more stand before it, or come by the line: across an open contact stands what the line brings, and where it brings nothing stray ones that no two readings show alike.
/// </remarks>
public sealed class DropAcrossContact() : ReadingRule<DefrostTimerCase>("Volts across a closed contact", ContactReadingSources.ContactDrop)
{
    private const double Open = 20;

    /// <summary>Two readings of the same volts are apart by this factor at most (practice).</summary>
    private const double Alike = 1.1;

    /// <inheritdoc/>
    public override Ruling? Judge(DefrostTimerCase one)
    {
        if (one.Readings.DropVolts?.Legs.Max(leg => leg.Volts) is not { } volts) return null;
        var before = one.BeforeHeaterContact;
        var areOfOpen = volts > Open || Alike * volts >= (before ?? one.HeaterLine);
        return (volts > ContactDrop.Bad, one.Readings.HeaterContactCloses) switch
        {
            (true, false) when before is { } come && volts > Alike * come => volts > Open
                ? Ruling.Bad($"{volts:0.#} V across it, and {come:0.#} V before it: one of the two was not measured where it should be.").ThenRead("commonVolts", "No more volts stand across an open contact than come to it: measure those at its common again, in defrost, to the heaters' other line.")
                : OfWhichContact(one, volts, come),
            (_, false) => null, // told with the contact
            (true, null) when areOfOpen || one.HeaterContactFeed != VoltsAt.Right => Ruling.CantTell($"{volts:0.#} V across it: so much may stand across an open contact.").ThenRead("heaterContactCloses", FirstReading.Advance),
            (true, true) when areOfOpen => Ruling.CantTell($"{volts:0.#} V across it: so much stands across an open contact, though its heater contact was seen to close.").ThenRead("dropVolts", "Measure again from the common to the heater terminal while that terminal is live: what opens in defrost, or was thrown back into cooling, has the line's volts across it."),
            _ => ContactDrop.Judge(one.Readings.DropVolts, isClosed: true),
        };
    }

    /// <summary>Stray volts, or what its other contact loses: an old one is not cleared before that is known; of a new one nothing is held against it.</summary>
    private static Ruling OfWhichContact(DefrostTimerCase one, double volts, double before)
    {
        FormattableString sentence = $"{volts:0.#} V across a contact, {before:0.#} V before its heater contact, which was not seen to close: stray ones, or those of its other contact.";
        return (one.New is null ? Ruling.Bad(sentence) : Ruling.CantTell(sentence)).ThenRead("dropVolts", "Measure again from the common to the fan terminal, with the fans running in cooling: across a heater contact that does not close stray volts stand.");
    }
}
