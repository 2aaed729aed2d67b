using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What a contact bears of motors whose rotor is locked.</summary>
/// <param name="Rows">The amps at each rated voltage; empty when not known.</param>
/// <param name="Taken">What they are taken as where none are marked; null where they are.</param>
public readonly record struct BorneAmps(Sequence<AmpsAt> Rows, StartingRating? Taken);

/// <summary>What the locked-rotor amps of a contact are taken as by its standard where none are marked.</summary>
public enum StartingRating
{
    /// <summary>Of an automatic control (UL/IEC 60730-1, from memory).</summary>
    [Words("six times its full-load amps")]
    FullLoad,

    /// <summary>Of a contactor for motors, which closes on ten times them and opens eight times (IEC 60947-4-1 table 7, from memory).</summary>
    [Words("eight times its AC-3 amps")]
    AcThree,

    /// <summary>Of one for hermetic compressors, which closes on them and opens them (the same).</summary>
    [Words("six times its AC-8 amps")]
    AcEight,

    /// <summary>Of one by horsepower, which closes on them and opens them (UL 60947-4-1, from memory).</summary>
    [Words("six times the full-load amps of its horsepower")]
    Horsepower,
}

/// <summary>What locked-rotor amps read of a contact: marked ones are for motors of any kind.</summary>
/// <param name="Motors">Of motors that are no hermetic compressors.</param>
/// <param name="Compressors">Of hermetic compressors.</param>
public readonly record struct LockedRotorFacet(BorneAmps Motors, BorneAmps Compressors)
{
    /// <summary>What counts where nobody named what is on it: that of motors; that of compressors where there is no other.</summary>
    internal BorneAmps Any => Motors.Rows.Count > 0 ? Motors : Compressors;

    /// <summary>What they are for a part.</summary>
    internal static LockedRotorFacet Of(ContactSpec part) => Of(part, amps => RatedAmps.Of(part.RatedVolts, amps));

    /// <summary>What they are for a part whose amps stand at volts that are told besides.</summary>
    /// <param name="part">The part.</param>
    /// <param name="at">Puts its amps beside the volts.</param>
    internal static LockedRotorFacet Of(ContactSpec part, Func<Figures<ElectricCurrent>?, Sequence<AmpsAt>> at)
    {
        if (at(part.LockedRotorAmps) is { Count: > 0 } marked) return new(new(marked, null), new(marked, null));
        return new(Borne(part.StartsMotors), Borne(part.StartsCompressors));

        BorneAmps Borne(StartedBy? rating) => rating is null ? default : new([.. at(rating.Amps).Select(row => row with { Amps = Rounded.To(row.Amps * rating.Times, 2) })], rating.Rating);
    }
}

/// <summary>A rating by which a contact starts motors where its locked-rotor amps are not marked.</summary>
/// <param name="Amps">The rating.</param>
/// <param name="Times">How many times as much its standard has it close on and open.</param>
/// <param name="Rating">Which one it is.</param>
internal sealed record StartedBy(Figures<ElectricCurrent> Amps, double Times, StartingRating Rating)
{
    /// <summary>By the full-load amps of an automatic control; null where they are not known.</summary>
    public static StartedBy? FullLoad(Figures<ElectricCurrent>? amps) => amps is null ? null : new(amps, OnTheContact.LockedRotorTimes, StartingRating.FullLoad);
}

/// <summary>Does the contact bear the locked-rotor amps of all motors on it as they start together?</summary>
/// <remarks>
/// A rating of its own, added up by itself. Unmarked, only what the standard of such a switch tells of it is taken, which the finding says: what is enough by that meets, what is not stays unknown until they are read; and where no standard tells any, they are unknown. Of compressors and other motors together the lower of the two ratings is taken.
/// </remarks>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
/// <param name="source">What tells of those that are not marked.</param>
public abstract class LockedRotorAspect<TSpec, TSite>(Source source) : ContactAspect<TSpec, TSite, LockedRotorFacet>(LockedRotorQuestion.Asked with { Source = source })
    where TSpec : ContactSpec
    where TSite : ContactSite;

/// <summary>The question of one contact.</summary>
internal static class LockedRotorQuestion
{
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
        true when on.HasCompressorAndMotor => AgainstLoad(on, facet.Compressors).OrWorse(AgainstLoad(on, facet.Motors)),
        true => AgainstLoad(on, on.HasCompressor ? facet.Compressors : facet.Motors),
        null => AgainstOld(on, facet.Any),
    };

    private static Finding AgainstLoad(OnTheContact on, BorneAmps bears)
    {
        var found = ContactAmps.LockedRotor.AgainstLoad(on, on.LockedRotor, bears.Rows);
        if (found.Verdict != Verdict.Fails || found.Margin is null) return Told(found, bears, on is { LockedRotor: not null, IsLockedRotorGiven: false } ? (FormattableString)$"The motors' are not all given: six times their full-load amps are taken for them." : null);
        if (!on.IsLockedRotorGiven) return Finding.Unknown(Side.Site, "motors", $"Six times the full-load amps would be {on.LockedRotor} A with the rotor locked, more than it bears: the motors' own locked-rotor amps are not known.");
        return bears.Taken is { } taken ? Finding.Unknown(Side.Part, "lockedRotorAmps", $"{on.LockedRotor} locked-rotor amps are on it, more than {new Spelt<StartingRating>(taken)}: its own are not known.") : found;
    }

    /// <summary>An old one for motors that is not known to start any asks for what it bore; one that was for none asks for nothing.</summary>
    private static Finding AgainstOld(OnTheContact on, BorneAmps bears)
    {
        if (on.OldLockedRotor.Rows.Count == 0 && (RatedAmps.MostAmps(on.OldFullLoad) ?? RatedAmps.MostAmps(on.OldCompressor)) is { } carried) return Finding.Unknown(Side.Plate, "lockedRotorAmps", $"The old one carried {carried} A of full-load amps; its locked-rotor amps, and those of what is on it, are not known.");
        return Told(ContactAmps.LockedRotor.AgainstOld(on, on.OldLockedRotor.Rows, bears.Rows, isAsked: on.AsksForMotors), bears, on.OldLockedRotor.Taken is { } taken ? (FormattableString)$"The old one's are not marked: {new Spelt<StartingRating>(taken)} are taken for them." : null);
    }

    /// <summary>An answer that rests on what was taken says so.</summary>
    /// <param name="found">The answer.</param>
    /// <param name="bears">What the part bears.</param>
    /// <param name="others">What was taken of that which it must bear; null where nothing was.</param>
    private static Finding Told(Finding found, BorneAmps bears, FormattableString? others)
    {
        if (found.Verdict != Verdict.Meets) return found;
        var told = bears.Taken is { } taken ? found.Then($"Its own are not marked: {new Spelt<StartingRating>(taken)} are taken for them.") : found;
        return others is null ? told : told.Then(others);
    }
}
