using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>What a contact that feeds a coil does at some volts: what it is marked for, or what any with a pilot duty does.</summary>
/// <param name="Opens">VA of coils that it opens; null where only what it closes on is marked.</param>
/// <param name="Closes">VA of coils that it closes on, as they pull in.</param>
/// <param name="AreClosedGiven">Whether these are given: else they are taken by what it opens.</param>
/// <param name="MostVolts">The greatest volts; null where they are not part of its marking.</param>
internal readonly record struct FeedingContact(double? Opens, double Closes, bool AreClosedGiven, double? MostVolts)
{
    /// <summary>Up to as many VA a contact is taken to close on as much as one of classes D and E, above on as much as one of classes A to C (NEMA ICS 5).</summary>
    private const double SmallUpTo = 72;

    /// <summary>What contacts of classes D and E close on over what they open: 432 over 72 VA (NEMA ICS 5).</summary>
    private const double SmallTimes = 6;

    /// <summary>What it is marked for: by several marks the least of them; null where none holds for the kind of current.</summary>
    /// <remarks>VA and amps hold for what is there; a designation holds for its own kind of current alone. A coil for direct current takes no more as it pulls in. Without the volts the VA stand by themselves.</remarks>
    public static FeedingContact? Marked(SolenoidValveSite site, bool isDirect, double? volts)
    {
        var duty = volts is not { } there ? null : isDirect ? Of(site.ContactDirectDuty, there) : Of(site.ContactDuty, there);
        double?[] marks = [duty?.Opens, Rounded.Voltamperes(site.ContactVa), site.ContactAmps?.Amperes * volts];
        var opens = marks.Min();
        if (isDirect) return opens is { } direct ? new(direct, direct, AreClosedGiven: true, duty?.MostVolts) : null;
        double?[] closes = [duty?.Closes, Rounded.Voltamperes(site.ContactInrushVa)];
        return (opens, closes.Min()) switch
        {
            (_, { } given) => new(opens, given, AreClosedGiven: true, duty?.MostVolts),
            ({ } alone, null) => new(alone, ClosesOnTaken(alone), AreClosedGiven: false, duty?.MostVolts),
            _ => null,
        };
    }

    /// <summary>What a contact is taken to close on that opens some VA of coils.</summary>
    /// <param name="opens">VA that it opens.</param>
    public static double ClosesOnTaken(double opens) => opens * (Within.AtMost(opens, SmallUpTo) ? SmallTimes : OnTheContact.InrushTimes);

    /// <summary>Whether anything was read of its marking.</summary>
    public static bool IsMarked(SolenoidValveSite site) => site is not { ContactDuty: null, ContactDirectDuty: null, ContactVa: null, ContactInrushVa: null, ContactAmps: null };

    /// <summary>Whether it has a mark that only the volts tell something of.</summary>
    public static bool AsksForVolts(SolenoidValveSite site, bool isDirect) => site.ContactAmps is not null || (isDirect ? site.ContactDirectDuty is not null : site.ContactDuty is not null);

    /// <summary>What the weakest one with a pilot duty does; null where none is for as many volts.</summary>
    public static FeedingContact? Weakest(bool isDirect, double volts) => isDirect ? Of(DirectPilotDuty.WeakestAt(volts), volts) : Of(PilotDuty.WeakestAt(volts), volts);

    private static FeedingContact? Of(PilotDuty? duty, double volts) => duty is null ? null : new(duty.BreakVa * PilotDuty.ShareAt(volts), duty.MakeVa * PilotDuty.ShareAt(volts), AreClosedGiven: true, duty.MostVolts);

    private static FeedingContact? Of(DirectPilotDuty? duty, double volts) => duty is null ? null : new(duty.VaAt(volts), duty.VaAt(volts), AreClosedGiven: true, duty.MostVolts);
}
