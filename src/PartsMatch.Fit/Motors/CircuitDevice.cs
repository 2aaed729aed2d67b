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

    /// <summary>Contact and cycling switch with their full-load amps, where given.</summary>
    public static IReadOnlyList<CircuitDevice> FullLoad(MotorSite site) =>
    [
        .. Rated("contact", "contactFullLoadAmps", site.ContactFullLoadAmps, null, site.OtherFullLoadAmps, null),
        .. Rated("cycling switch", "cyclingSwitchFullLoadAmps", site.CyclingSwitchFullLoadAmps, null, null, null),
    ];

    /// <summary>Contact and cycling switch with their locked-rotor amps, marked or taken as 6 times the full-load ones.</summary>
    public static IReadOnlyList<CircuitDevice> LockedRotor(MotorSite site) =>
    [
        .. Rated("contact", "contactLockedRotorAmps", site.ContactLockedRotorAmps, site.ContactFullLoadAmps, site.OtherLockedRotorAmps, site.OtherFullLoadAmps),
        .. Rated("cycling switch", "cyclingSwitchLockedRotorAmps", site.CyclingSwitchLockedRotorAmps, site.CyclingSwitchFullLoadAmps, null, null),
    ];

    /// <summary>The device that decides: one that never takes the amps, else the one nearest to its rating or furthest over it; null when none is rated.</summary>
    public static CircuitDevice? Deciding(IEnumerable<CircuitDevice> devices, AmpsThere amps) =>
        devices.OrderByDescending(device => device.NeverTakes(amps.Least)).ThenByDescending(device => device.Shortfall(amps.Most)).FirstOrDefault();

    /// <summary>Whether it carries so many amps of the motor beside the others'.</summary>
    public bool Takes(double amps) => Within.AtMost(amps + Others, Carries);

    /// <summary>Whether it cannot, whatever is still unmarked turns out to be.</summary>
    public bool NeverTakes(double amps) => IsMarked && !Within.AtMost(amps + (OthersAreMarked ? Others : 0), Carries);

    /// <summary>0 up to an easy share of its rating, 1 at the rating, and on beyond it.</summary>
    public double Shortfall(double amps) => Math.Max(0, (((amps + Others) / Carries) - EasyShare) / (1 - EasyShare));

    /// <summary>The load in words: "4.2 A, 7.2 A with the other motors".</summary>
    public string Load(double amps) => Others > 0 ? FormattableString.Invariant($"{amps:0.##} A, {amps + Others:0.##} A with the other motors") : FormattableString.Invariant($"{amps:0.##} A");

    private static IEnumerable<CircuitDevice> Rated(string name, string field, ElectricCurrent? marked, ElectricCurrent? sixth, ElectricCurrent? others, ElectricCurrent? othersSixth)
    {
        if ((marked?.Amperes ?? sixth?.Amperes * LockedRotorTimes) is not { } carries) yield break;
        yield return new(name, field, carries, marked is not null, others?.Amperes ?? (othersSixth?.Amperes * LockedRotorTimes) ?? 0, others is not null || othersSixth is null);
    }
}
