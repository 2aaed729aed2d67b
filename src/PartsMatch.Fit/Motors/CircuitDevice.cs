using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors;

/// <summary>A contact or switch that a motor's amps go through, with what it carries and what else goes through it.</summary>
/// <param name="Name">What it is called: contact, cycling switch.</param>
/// <param name="Field">The site's field with its rating.</param>
/// <param name="Carries">Amps that it carries.</param>
/// <param name="IsMarked">Whether it is marked so; else taken as 6 times its full-load amps.</param>
/// <param name="Others">Amps of the other motors on it, 0 when none are named.</param>
/// <param name="OthersAreMarked">Whether those are given; else taken as 6 times their full-load amps.</param>
public sealed record CircuitDevice(string Name, string Field, double Carries, bool IsMarked, double Others, bool OthersAreMarked)
{
    /// <summary>Locked-rotor amps where only full-load amps are marked (UL/IEC 60730-1, from memory).</summary>
    public const double LockedRotorTimes = 6;

    /// <summary>Up to this share of its rating nobody gives a contact a thought (practice).</summary>
    private const double EasyShare = 0.8;

    /// <summary>What a shortfall is in amps.</summary>
    public static OwnMeasure Measure { get; } = new("a draw of", "of what carries it", 100 * EasyShare, 100, "%");

    /// <summary>Contact and cycling switch with their full-load amps, where given.</summary>
    public static CircuitDevice[] FullLoad(MotorNeed need) => need.Once(static need => (CircuitDevice[])
    [
        .. Rated("contact", "contactFullLoadAmps", need.Site.ContactFullLoadAmps, null, need.Site.OtherFullLoadAmps, null),
        .. Rated("cycling switch", "cyclingSwitchFullLoadAmps", need.Site.CyclingSwitchFullLoadAmps, null, null, null),
    ]);

    /// <summary>Contact and cycling switch with their locked-rotor amps, marked or taken as 6 times the full-load ones.</summary>
    public static CircuitDevice[] LockedRotor(MotorNeed need) => need.Once(static need => (CircuitDevice[])
    [
        .. Rated("contact", "contactLockedRotorAmps", need.Site.ContactLockedRotorAmps, need.Site.ContactFullLoadAmps, need.Site.OtherLockedRotorAmps, need.Site.OtherFullLoadAmps),
        .. Rated("cycling switch", "cyclingSwitchLockedRotorAmps", need.Site.CyclingSwitchLockedRotorAmps, need.Site.CyclingSwitchFullLoadAmps, null, null),
    ]);

    /// <summary>The device that decides: one that never takes the amps, else the one nearest to its rating or furthest over it; null when none is rated.</summary>
    public static CircuitDevice? Deciding(CircuitDevice[] devices, AmpsThere amps)
    {
        CircuitDevice? deciding = null;
        foreach (var device in devices)
        {
            if (deciding is null || device.IsTighterThan(deciding, amps)) deciding = device;
        }

        return deciding;
    }

    /// <summary>Whether it carries so many amps of the motor beside the others'.</summary>
    public bool Takes(double amps) => Within.AtMost(amps + Others, Carries);

    /// <summary>Whether it cannot, whatever is still unmarked turns out to be.</summary>
    public bool NeverTakes(double amps) => IsMarked && !Within.AtMost(amps + (OthersAreMarked ? Others : 0), Carries);

    /// <summary>0 up to an easy share of its rating, 1 at the rating, and on beyond it.</summary>
    public double Shortfall(double amps) => Math.Max(0, (((amps + Others) / Carries) - EasyShare) / (1 - EasyShare));

    private bool IsTighterThan(CircuitDevice other, AmpsThere amps)
    {
        var (never, otherNever) = (NeverTakes(amps.Least), other.NeverTakes(amps.Least));
        return never == otherNever ? Shortfall(amps.Most) > other.Shortfall(amps.Most) : never;
    }

    private static IEnumerable<CircuitDevice> Rated(string name, string field, ElectricCurrent? marked, ElectricCurrent? sixth, ElectricCurrent? others, ElectricCurrent? othersSixth)
    {
        if ((marked?.Amperes ?? sixth?.Amperes * LockedRotorTimes) is not { } carries) yield break;
        yield return new(name, field, carries, marked is not null, others?.Amperes ?? (othersSixth?.Amperes * LockedRotorTimes) ?? 0, others is not null || othersSixth is null);
    }
}

/// <summary>What goes through a contact or switch: "4.2 A, 7.2 A with the other motors"; formed only when it is shown.</summary>
/// <param name="Device">The contact or switch.</param>
/// <param name="Amps">Amps of the motor.</param>
internal readonly record struct DeviceLoad(CircuitDevice Device, double Amps)
{
    /// <inheritdoc/>
    public override string ToString() => Device.Others > 0
        ? FormattableString.Invariant($"{Amps:0.##} A, {Amps + Device.Others:0.##} A with the other motors")
        : FormattableString.Invariant($"{Amps:0.##} A");
}
