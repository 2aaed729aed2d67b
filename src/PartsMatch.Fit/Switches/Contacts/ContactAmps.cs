using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>One kind of amps: ratings of one kind never stand in for another.</summary>
/// <param name="Amps">What they are called: "full-load amps".</param>
/// <param name="Load">What takes them: "motor".</param>
/// <param name="Kind">The same as a kind of load, by whose volts they are judged.</param>
/// <param name="PartField">The part's field.</param>
/// <param name="SiteField">The site's field.</param>
internal sealed record ContactAmps(string Amps, string Load, ContactLoad Kind, string PartField, string SiteField)
{
    /// <summary>Up to this share of its rating nobody gives a contact a thought (practice).</summary>
    private const double EasyShare = 0.8;

    /// <summary>Amps of motors at full load.</summary>
    public static ContactAmps FullLoad { get; } = new("full-load amps", "motor", ContactLoad.Motor, "fullLoadAmps", "motors");

    /// <summary>Amps of hermetic compressors, and of all motors beside them, where a category of its own rates them.</summary>
    public static ContactAmps Compressor { get; } = new("full-load amps of a compressor", "motor", ContactLoad.Motor, "acEightAmps", "motors");

    /// <summary>Amps of motors as they start.</summary>
    public static ContactAmps LockedRotor { get; } = new("locked-rotor amps", "motor", ContactLoad.Motor, "lockedRotorAmps", "motors");

    /// <summary>Amps of heaters.</summary>
    public static ContactAmps Resistive { get; } = new("resistive amps", "heater", ContactLoad.Heater, "resistiveAmps", "heaterAmps");

    /// <summary>What a shortfall in them is.</summary>
    public OwnMeasure Measure { get; } = new("a load", $"of its {Amps}", 100 * EasyShare, 100, "%");

    /// <summary>Ratings against what is named as being on the contact.</summary>
    /// <param name="on">What is on it.</param>
    /// <param name="load">Amps of this kind, all added up; null when not known.</param>
    /// <param name="rows">The part's ratings.</param>
    public Finding AgainstLoad(OnTheContact on, double? load, Sequence<AmpsAt> rows)
    {
        if (load is not { } amps) return Finding.Unknown(Side.Site, SiteField, $"The {Amps} of what is on the contact are not known.");
        if (RatedAmps.MostAmps(rows) is not { } most) return Finding.Unknown(Side.Part, PartField, $"{amps} {Amps} are on the contact; what it is rated for is not known.");
        if (!Within.AtMost(amps, most)) return Finding.Fails(new Margin(most - amps, "A"), $"{amps} {Amps} are on the contact; it carries {most} A at most, whatever the volts.");
        if (RatedAmps.MostVolts(rows) is not { } mostVolts) return Finding.Unknown(Side.Part, "ratedVolts", $"{amps} {Amps} are on the contact; it carries {most} A, at which volts is not known.");
        if (on.At(Kind) is not { Figure: { } volts }) return Finding.Unknown(Side.Site, on.At(Kind).Field, $"{amps} {Amps} are on the contact; it carries {most} A at most, and at which volts it switches is not known.");
        if (RatedAmps.At(rows, volts) is not { } carries) return Finding.Fails($"It is rated up to {mostVolts} V, which goes to {mostVolts * RatedAmps.Wander:0.#} V; it is to switch {volts} V.");
        return Within.AtMost(amps, carries)
            ? Finding.Meets($"It carries {carries} A of {Amps} at {volts} V; {amps} A are on it.") with { Shortfall = Shortfall(amps, carries), Margin = new(carries - amps, "A") }
            : Finding.Fails(new Margin(carries - amps, "A"), $"It carries {carries} A of {Amps} at {volts} V; {amps} A are on it.");
    }

    /// <summary>Ratings against the old contact's, where nobody named what is on it. Less than the old one's may still be enough.</summary>
    /// <param name="on">What is known besides.</param>
    /// <param name="old">The old part's ratings.</param>
    /// <param name="rows">The part's ratings.</param>
    /// <param name="isAsked">Whether it must be known: else an old part without such a rating asks for none.</param>
    public Finding AgainstOld(OnTheContact on, Sequence<AmpsAt> old, Sequence<AmpsAt> rows, bool isAsked)
    {
        if (old.Count == 0)
        {
            return isAsked
                ? Finding.Unknown(Side.Site, SiteField, $"What is on the contact, and what the old one was rated for, is not known.")
                : Finding.Meets($"No {Load} is named, and the old part was not marked for one.");
        }

        if (RatedAmps.MostAmps(rows) is null) return Finding.Unknown(Side.Part, PartField, $"The old part carried {RatedAmps.MostAmps(old)} A of {Amps}; what this one is rated for is not known.");
        if (RatedAmps.MostVolts(rows) is null) return Finding.Unknown(Side.Part, "ratedVolts", $"At which volts this one carries its {RatedAmps.MostAmps(rows)} A is not known.");
        if (RatedAmps.MostVolts(old) is null) return Finding.Unknown(Side.Plate, "ratedVolts", $"At which volts the old part carried its {RatedAmps.MostAmps(old)} A is not known.");
        foreach (var row in old.AsSpan())
        {
            var volts = on.At(Kind).Figure ?? row.Volts!.Value;
            var needed = RatedAmps.At(old, volts) ?? row.Amps;
            if (RatedAmps.At(rows, volts) is { } carries && Within.AtMost(needed, carries)) continue;
            return Finding.Unknown(Side.Site, SiteField, $"At {volts} V the old part carried {needed} A of {Amps}, this one {new CarriedAt(rows, volts)}: whether that is enough is not known without what is on it.");
        }

        var found = Finding.Meets($"It carries the {RatedAmps.MostAmps(old)} A of {Amps} that the old part was rated for.");
        return on.AreOldVoltsTaken ? found.Then($"The old one's volts are not marked: {RatedAmps.MostVolts(old)} V are taken.") : found;
    }

    private static double Shortfall(double amps, double carries) => Math.Max(0, ((amps / carries) - EasyShare) / (1 - EasyShare));

    /// <summary>What a contact carries at some volts, in words; formed only when it is shown.</summary>
    private readonly record struct CarriedAt(Sequence<AmpsAt> Rows, double Volts)
    {
        public override string ToString() => RatedAmps.At(Rows, Volts) is { } amps ? FormattableString.Invariant($"{amps} A") : "is not rated for as much";
    }
}
