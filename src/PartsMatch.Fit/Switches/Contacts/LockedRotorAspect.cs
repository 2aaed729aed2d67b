using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What locked-rotor amps read of a contact.</summary>
/// <param name="Marked">The locked-rotor amps at each rated voltage; empty when not marked.</param>
/// <param name="FullLoad">The full-load amps at each, of which six times are taken where none are marked.</param>
/// <param name="Compressors">The same of hermetic compressors.</param>
public readonly record struct LockedRotorFacet(Sequence<AmpsAt> Marked, Sequence<AmpsAt> FullLoad, Sequence<AmpsAt> Compressors)
{
    /// <summary>Marked ones, or six times the full-load amps; those of compressors where there are no others.</summary>
    internal Sequence<AmpsAt> Rows => Marked.Count > 0 ? Marked : [.. (FullLoad.Count > 0 ? FullLoad : Compressors).Select(row => row with { Amps = Rounded.To(row.Amps * OnTheContact.LockedRotorTimes, 2) })];

    /// <summary>What they are for a part.</summary>
    internal static LockedRotorFacet Of(ContactSpec part) => RatedAmps.Of(part.RatedVolts, part.LockedRotorAmps) is { Count: > 0 } marked
        ? new(marked, [], [])
        : new([], RatedAmps.Of(part.RatedVolts, part.FullLoadAmps), RatedAmps.Of(part.RatedVolts, part.CompressorAmps));

    /// <summary>What of it counts for compressors: nothing that is rated for other motors.</summary>
    internal LockedRotorFacet ForCompressors => this with { FullLoad = Compressors };

    /// <summary>What of it counts for other motors.</summary>
    internal LockedRotorFacet ForMotors => this with { Compressors = [] };
}

/// <summary>Does the contact bear the locked-rotor amps of all motors on it as they start together?</summary>
/// <remarks>
/// A rating of its own, added up by itself. Unmarked on either side, six times the full-load amps are taken, which the finding says: what is enough by them meets, what is not stays unknown until they are read. Of compressors and other motors together the lower of the two ratings is taken.
/// </remarks>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
public abstract class LockedRotorAspect<TSpec, TSite>() : ContactAspect<TSpec, TSite, LockedRotorFacet>(LockedRotorQuestion.Asked)
    where TSpec : ContactSpec
    where TSite : ContactSite;

/// <summary>The question of one contact.</summary>
internal static class LockedRotorQuestion
{
    private const string OldOnes = "the old one's";
    private const string Motors = "the motors'";

    /// <summary>The question.</summary>
    public static ContactQuestion<LockedRotorFacet> Asked { get; } = new(
        "Locked-rotor amps",
        ContactSources.LockedRotor,
        new(0.6, 0.5, 0.8),
        new(["lockedRotorAmps", "fullLoadAmps", "ratedVolts"], ["motors", "loadVolts"]) { Besides = ["loads", "loadCurrent", "resistiveAmps", "pilotDuty"] },
        LockedRotorFacet.Of,
        Judge)
    {
        Measure = ContactAmps.LockedRotor.Measure,
    };

    private static Finding Judge(OnTheContact on, LockedRotorFacet facet) => on.HasMotor switch
    {
        false => Finding.Meets($"No motor is on it."),
        true when on.HasCompressorAndMotor => AgainstLoad(on, facet.ForCompressors).OrWorse(AgainstLoad(on, facet.ForMotors)),
        true => AgainstLoad(on, on.HasCompressor ? facet.ForCompressors : facet.ForMotors),
        null => Told(ContactAmps.LockedRotor.AgainstOld(on, on.OldLockedRotor, facet.Rows, isAsked: on.AsksForMotors), facet, on.IsOldLockedRotorTaken ? OldOnes : null),
    };

    private static Finding AgainstLoad(OnTheContact on, LockedRotorFacet facet)
    {
        var found = ContactAmps.LockedRotor.AgainstLoad(on, on.LockedRotor, facet.Rows);
        if (found.Verdict != Verdict.Fails || found.Margin is null) return Told(found, facet, on is { LockedRotor: not null, IsLockedRotorGiven: false } ? Motors : null);
        if (!on.IsLockedRotorGiven) return Finding.Unknown(Side.Site, "motors", $"Six times the full-load amps would be {on.LockedRotor} A with the rotor locked, more than it bears: the motors' own locked-rotor amps are not known.");
        return facet.Marked.Count > 0 ? found : Finding.Unknown(Side.Part, "lockedRotorAmps", $"{on.LockedRotor} locked-rotor amps are on it, more than six times its full-load amps: its own are not known.");
    }

    /// <summary>An answer that rests on six times the full-load amps says so.</summary>
    /// <param name="found">The answer.</param>
    /// <param name="facet">The part.</param>
    /// <param name="whose">Whose locked-rotor amps, of those that it must bear, were taken so; null when none were.</param>
    private static Finding Told(Finding found, LockedRotorFacet facet, string? whose) => (found.Verdict == Verdict.Meets, facet is { Marked.Count: 0, FullLoad.Count: > 0 }, whose) switch
    {
        (true, true, { } theirs) => found.Then($"Neither its own nor {theirs} are marked: six times the full-load amps are taken for both."),
        (true, true, null) => found.Then($"Its own are not marked: six times its full-load amps are taken for them."),
        (true, false, OldOnes) => found.Then($"The old one's are not marked: six times its full-load amps are taken for them."),
        (true, false, Motors) => found.Then($"The motors' are not all given: six times their full-load amps are taken for them."),
        _ => found,
    };
}
