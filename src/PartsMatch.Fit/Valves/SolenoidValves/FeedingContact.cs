using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>What a contact that feeds a coil does at some volts: what it is marked for, or what any with a pilot duty does.</summary>
/// <param name="Opens">VA of coils that it opens.</param>
/// <param name="Closes">VA of coils that it closes on, as they pull in.</param>
/// <param name="AreClosedGiven">Whether these are given: else they are taken as ten times what it opens, as in pilot duty of classes A to C.</param>
/// <param name="MostVolts">The greatest volts; null where they are not part of its marking.</param>
internal readonly record struct FeedingContact(double Opens, double Closes, bool AreClosedGiven, double? MostVolts)
{
    /// <summary>What it is marked for: by several marks the least of them; null where none holds for the kind of current.</summary>
    /// <remarks>VA and amps hold for what is there; a designation holds for its own kind of current alone. A coil for direct current takes no more as it pulls in.</remarks>
    public static FeedingContact? Marked(SolenoidValveSite site, bool isDirect, double? volts)
    {
        var duty = volts is not { } there ? null : isDirect ? Of(site.ContactDirectDuty, there) : Of(site.ContactDuty, there);
        double?[] marks = [duty?.Opens, Rounded.Voltamperes(site.ContactVa), site.ContactAmps?.Amperes * volts];
        if (marks.Min() is not { } opens) return null;
        if (isDirect) return new(opens, opens, AreClosedGiven: true, duty?.MostVolts);
        double?[] closes = [duty?.Closes, Rounded.Voltamperes(site.ContactInrushVa)];
        return new(opens, closes.Min() ?? (opens * OnTheContact.InrushTimes), closes.Min() is not null, duty?.MostVolts);
    }

    /// <summary>Whether anything was read of its marking.</summary>
    public static bool IsMarked(SolenoidValveSite site) => site is not { ContactDuty: null, ContactDirectDuty: null, ContactVa: null, ContactAmps: null };

    /// <summary>Whether it has a mark that only the volts tell something of.</summary>
    public static bool AsksForVolts(SolenoidValveSite site, bool isDirect) => site.ContactAmps is not null || (isDirect ? site.ContactDirectDuty is not null : site.ContactDuty is not null);

    /// <summary>What the weakest one with a pilot duty does; null where none is for as many volts.</summary>
    public static FeedingContact? Weakest(bool isDirect, double volts) => isDirect ? Of(DirectPilotDuty.WeakestAt(volts), volts) : Of(PilotDuty.WeakestAt(volts), volts);

    private static FeedingContact? Of(PilotDuty? duty, double volts) => duty is null ? null : new(duty.BreakVa * PilotDuty.ShareAt(volts), duty.MakeVa * PilotDuty.ShareAt(volts), AreClosedGiven: true, duty.MostVolts);

    private static FeedingContact? Of(DirectPilotDuty? duty, double volts) => duty is null ? null : new(duty.VaAt(volts), duty.VaAt(volts), AreClosedGiven: true, duty.MostVolts);
}
