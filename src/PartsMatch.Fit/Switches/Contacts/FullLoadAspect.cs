using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What amps of one kind read of a contact.</summary>
/// <param name="Rows">The amps at each rated voltage; empty when not known.</param>
public readonly record struct ContactAmpsFacet(Sequence<AmpsAt> Rows);

/// <summary>What full-load amps read of a contact.</summary>
/// <param name="Motors">The amps of motors at each rated voltage; empty when not known.</param>
/// <param name="Compressors">The same of hermetic compressors; empty where it is not known to be for any.</param>
public readonly record struct FullLoadFacet(Sequence<AmpsAt> Motors, Sequence<AmpsAt> Compressors)
{
    /// <summary>Whether compressors have amps of their own, or none though other motors have.</summary>
    internal bool AreCompressorsApart => !Compressors.Equals(Motors);
}

/// <summary>Does the contact carry the full-load amps of all motors on it?</summary>
/// <remarks>
/// Added up, at the volts that it switches: what it is marked for there, or at higher volts, edges included; above its highest marked volts, a tenth over them for a supply that wanders, it is not rated at all.
/// A hermetic compressor is carried by the amps of compressors, where a category of its own rates them. Which of several motors are compressors is not told: it meets where, whichever are, compressors and others each stay within their own rating, fails where none can, and is left open else. All together stay within the higher of the two, as it is one contact that carries them (practice).
/// Where nobody named what is on it, the old part's rating is enough.
/// </remarks>
/// <typeparam name="TSpec">The family's spec.</typeparam>
/// <typeparam name="TSite">The family's site.</typeparam>
public abstract class FullLoadAspect<TSpec, TSite>() : ContactAspect<TSpec, TSite, FullLoadFacet>(FullLoadQuestion.Asked)
    where TSpec : ContactSpec
    where TSite : ContactSite;

/// <summary>The question of one contact.</summary>
internal static class FullLoadQuestion
{
    /// <summary>The question.</summary>
    public static ContactQuestion<FullLoadFacet> Asked { get; } = new(
        "Full-load amps",
        ContactSources.FullLoad,
        new(0.8, 0.5, 1),
        new(["fullLoadAmps", "ratedVolts"], ["motors", "loadVolts"]) { Besides = ["loads", "loadCurrent", "resistiveAmps", "pilotDuty"] },
        part => new(RatedAmps.Of(part.RatedVolts, part.FullLoadAmps), RatedAmps.Of(part.RatedVolts, part.CompressorAmps)),
        Judge)
    {
        Measure = ContactAmps.FullLoad.Measure,
    };

    private static Finding Judge(OnTheContact on, FullLoadFacet facet) => on.HasMotor switch
    {
        false => Finding.Meets($"No motor is on it."),
        true when on.HasCompressorAndMotor && facet.AreCompressorsApart => AgainstBoth(on, facet),
        true when on.HasCompressor && facet.AreCompressorsApart => ContactAmps.Compressor.AgainstLoad(on, on.FullLoad, facet.Compressors),
        true => ContactAmps.FullLoad.AgainstLoad(on, on.FullLoad, facet.Motors),
        null => AgainstOld(on, facet),
    };

    /// <summary>At least one of the motors is a compressor and one is not: the smallest is the least that either rating must carry, and all but the smallest the most.</summary>
    private static Finding AgainstBoth(OnTheContact on, FullLoadFacet facet)
    {
        var (one, other) = OnEach(on.FullLoad);
        var worse = one.OrWorse(other);
        var better = ReferenceEquals(worse, one) ? other : one;
        if (on.FullLoad is not { } all || worse.Verdict != Verdict.Fails || better.Verdict == Verdict.Fails) return worse;
        if (Worse(on.LeastMotor) is { Verdict: Verdict.Fails } least) return least.Then($"That is the smallest of the motors, and one of them at least hangs on that rating.");
        if (better.Verdict == Verdict.Unknown) return better;
        return Worse(all - on.LeastMotor) is { Verdict: Verdict.Meets } most
            ? Finding.Meets($"It carries the {all} A that are on it by one of its ratings, and whichever of the motors is the compressor, it and the others each stay within their own.") with { Shortfall = Math.Max(better.Shortfall, most.Shortfall) }
            : Finding.Unknown(Side.Site, "motors", $"{all} full-load amps are on the contact, and the lower of its ratings, for a compressor and for other motors, bears less: which of the motors is the compressor, and so whether each stays within its own, is not known.");

        (Finding Compressors, Finding Motors) OnEach(double? amps) => (ContactAmps.Compressor.AgainstLoad(on, amps, facet.Compressors), ContactAmps.FullLoad.AgainstLoad(on, amps, facet.Motors));

        Finding Worse(double amps)
        {
            var (compressors, motors) = OnEach(Rounded.To(amps, 2));
            return compressors.OrWorse(motors);
        }
    }

    /// <summary>The old one may have had a compressor on it, if it was made for any.</summary>
    private static Finding AgainstOld(OnTheContact on, FullLoadFacet facet)
    {
        var forCompressors = on.WasForCompressors && (facet.AreCompressorsApart || !on.OldCompressor.Equals(on.OldFullLoad));
        if (forCompressors && on.OldFullLoad.Count == 0) return ContactAmps.Compressor.AgainstOld(on, on.OldCompressor, facet.Compressors, isAsked: false);
        var found = ContactAmps.FullLoad.AgainstOld(on, on.OldFullLoad, facet.Motors, isAsked: on.AsksForMotors);
        return forCompressors ? found.OrWorse(ContactAmps.Compressor.AgainstOld(on, on.OldCompressor, facet.Compressors, isAsked: false)) : found;
    }
}
