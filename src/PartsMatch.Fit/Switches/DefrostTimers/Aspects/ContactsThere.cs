using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.DefrostTimers.Aspects;

/// <summary>What the contacts read of a timer: what they are there for.</summary>
/// <param name="For">Heaters, fans, compressor, fan delay, pump-down.</param>
public readonly record struct TimerContactsFacet(ChoiceSet<TimerContact> For);

/// <summary>Has it a contact for everything that is wired to it?</summary>
/// <remarks>Fans and compressor share a contact that opens in defrost, and a fan delay can be added at the coil: changes. No heater contact, no contact that opens, or no pump-down fails. Contacts that the old one has may be unused: by them alone nothing fails.
/// Where nobody said what is wired, nor what the old one's contacts are for, one with a heater contact and one that opens is taken, which hardly a timer is without; what it lacks besides is looked for at the old one: a check.</remarks>
public sealed class ContactsThere() : Aspect<DefrostTimerSpec, DefrostTimerSite, TimerContactsFacet>("Contacts", isDeciding: true, DefrostTimerSources.ContactsFor, new(0.3, 0.7, 1))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["contactsFor"], ["contactsNeeded"]);

    /// <inheritdoc/>
    public override TimerContactsFacet Read(DefrostTimerSpec part) => new(ChoiceSet<TimerContact>.Of(part.ContactsFor));

    /// <inheritdoc/>
    public override Finding Judge(DefrostTimerNeed need, TimerContactsFacet facet)
    {
        if ((need.Site.ContactsNeeded ?? need.Plate.ContactsFor) is not { } contacts) return AsUsual(facet);
        var needed = ChoiceSet<TimerContact>.Of(contacts);
        if (facet.For.IsUnknown) return Finding.Unknown(Side.Part, "contactsFor", $"Contacts are needed for {new Joined(needed)}; what this one's are for is not known.");
        var changes = new List<Change>();
        foreach (var lacking in contacts)
        {
            if (facet.For.Has(lacking)) continue;
            if (Instead(lacking, facet) is not { } change)
            {
                return need.Site.ContactsNeeded is null
                    ? Finding.Unknown(Side.Site, "contactsNeeded", $"The old one has contacts for {new Joined(needed)}, this one for {new Joined(facet.For)} alone; which of the old one's are wired is not known.")
                    : Finding.Fails($"Contacts are needed for {new Joined(needed)}; this one has them for {new Joined(facet.For)} alone.");
            }

            changes.Add(change);
        }

        return Finding.MeetsWith(changes, $"Contacts are needed for {new Joined(needed)}; this one has them for {new Joined(facet.For)}.");
    }

    private static Finding AsUsual(TimerContactsFacet facet)
    {
        if (facet.For.IsUnknown) return Finding.Unknown(Side.Part, "contactsFor", $"What is wired to the old one's contacts, and what this one's are for, is not known.");
        if (!facet.For.Has(TimerContact.Heater) || !(facet.For.Has(TimerContact.Fans) || facet.For.Has(TimerContact.Compressor)))
        {
            return Finding.Unknown(Side.Site, "contactsNeeded", $"It has contacts for {new Joined(facet.For)} alone; what is wired to the old one's is not known.");
        }

        var lacking = ChoiceSet<TimerContact>.Of(new(Enum.GetValues<TimerContact>().Where(kind => !facet.For.Has(kind))));
        return lacking.IsUnknown
            ? Finding.Meets($"It has contacts for {new Joined(facet.For)}: for all that can be wired to a timer.")
            : Finding.MeetsWith(
                [new(DefrostTimerChanges.CheckContacts, $"see that no contact for {lacking} is in use on the old one: nothing says so")],
                $"It has contacts for {new Joined(facet.For)}, as hardly a timer is without; what is wired to the old one's is not known.");
    }

    private static Change? Instead(TimerContact lacking, TimerContactsFacet facet) => lacking switch
    {
        TimerContact.Fans when facet.For.Has(TimerContact.Compressor) => new(DefrostTimerChanges.ShareContact, $"wire the fans to its compressor contact, which opens in defrost alike"),
        TimerContact.Compressor when facet.For.Has(TimerContact.Fans) => new(DefrostTimerChanges.ShareContact, $"wire the compressor's circuit to its fan contact, which opens in defrost alike"),
        TimerContact.FanDelay => new(DefrostTimerChanges.AddFanDelay, $"add a fan-delay switch on the coil: the timer has none") { Kit = [new($"fan-delay switch for the coil, with strap")] },
        _ => null,
    };

    /// <summary>All of them, side by side; formed only when they are shown.</summary>
    private readonly record struct Joined(ChoiceSet<TimerContact> Contacts)
    {
        public override string ToString() => Deducing.Text(new Choices<TimerContact>(Enum.GetValues<TimerContact>().Where(Contacts.Has)));
    }
}
