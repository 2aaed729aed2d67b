using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What follows for a contact from its ratings and from what is on it.</summary>
internal static class ContactDeductions
{
    /// <summary>The volts of systems that a row of the code's tables is for (notes to the tables): 110 to 120 V for 115, and so on.</summary>
    private static readonly (double Least, double Most, double Row)[] Systems = [(110, 120, 115), (200, 200, 200), (208, 208, 208), (220, 240, 230), (440, 480, 460), (550, 600, 575)];

    /// <summary>A horsepower rating stands for the full-load amps of the code's tables.</summary>
    /// <param name="volts">The rated volts.</param>
    /// <param name="power">Horsepower at each of them.</param>
    /// <param name="phases">Phases of the motor.</param>
    /// <param name="from">The field with the horsepower.</param>
    public static IEnumerable<Deduction> FullLoad(Figures<ElectricPotential>? volts, Figures<Power>? power, Phases phases, string from)
    {
        if (InAmps(volts, power, phases) is { } amps) yield return new(Side.Plate, "fullLoadAmps", Deducing.Text(amps), "its horsepower", [from, "ratedVolts"], ContactSources.HorsepowerInAmps);
    }

    /// <summary>Full-load amps that the code's tables have for horsepower; null where they lack it at any of the volts.</summary>
    /// <param name="volts">The rated volts.</param>
    /// <param name="power">Horsepower at each of them.</param>
    /// <param name="phases">Phases of the motor.</param>
    public static Figures<ElectricCurrent>? InAmps(Figures<ElectricPotential>? volts, Figures<Power>? power, Phases phases)
    {
        if (volts is null || power is null || !RatedAmps.Pair(volts.Count, power.Count)) return null;
        var amps = volts.Select((one, row) => Amps(phases, power.Of(row), one.Volts)).OfType<ElectricCurrent>().ToList();
        return amps.Count == volts.Count ? new(amps) : null;
    }

    /// <summary>What is named tells what is on the contact.</summary>
    public static IEnumerable<Deduction> Loads(ContactSite site)
    {
        List<ContactLoad> named =
        [
            .. site.Motors is not null || site.MotorPower is not null ? (ContactLoad[])[ContactLoad.Motor] : [],
            .. site.HeaterAmps is not null || site.HeaterPower is not null ? (ContactLoad[])[ContactLoad.Heater] : [],
            .. site.CoilsVa is not null || site.CoilsInrushVa is not null ? (ContactLoad[])[ContactLoad.Coil] : [],
        ];
        if (named.Count > 0) yield return new(Side.Site, "loads", Deducing.Text(new Choices<ContactLoad>(named)), "what is named is on it, and nothing else", ["motors", "heaterAmps", "coilsVa"], ContactSources.LoadsNamed);
    }

    /// <summary>Heaters of which no own volts are given are taken for ones that are made for the volts there; said as a deduction, so that whoever knows better can say so.</summary>
    public static IEnumerable<Deduction> HeaterVolts(ContactSite site)
    {
        if (site is { HeaterAmps: null, HeaterPower: not null, LoadVolts: { } there }) yield return new(Side.Site, "heaterOwnVolts", Deducing.Text(there), "no others are given: taken for the volts there", ["loadVolts"], ContactSources.HeaterVolts);
    }

    /// <summary>Amps of heaters follow from their watts and own volts, P / V, on three phases P / (√3 · V), and go with the volts there.</summary>
    public static IEnumerable<Deduction> HeaterAmps(ContactSite site)
    {
        if (site is not { HeaterPower: { } power, HeaterOwnVolts: { } own, LoadVolts: { } there, LoadPhase: { } phases }) yield break;
        var amps = (double)power.Watts / (own.Volts * (phases == Phases.Three ? Math.Sqrt(3) : 1)) * (there.Volts / own.Volts);
        yield return new(
            Side.Site,
            "heaterAmps",
            Deducing.Text(ElectricCurrent.FromAmperes(Math.Round(amps, 2))),
            $"{Deducing.Text(power)} over their own {Deducing.Text(own)}, at the {Deducing.Text(there)} there",
            ["heaterPower", "heaterOwnVolts", "loadVolts", "loadPhase"],
            ContactSources.HeaterAmps);
    }

    private static ElectricCurrent? Amps(Phases phases, Power power, double volts)
    {
        var row = Array.Find(Systems, system => Within.Span(volts, system.Least, system.Most)).Row;
        return FullLoadCurrents.All.Where(cell => cell.Phases == phases && cell.Volts.Volts.Equals(row) && cell.Power.Watts == power.Watts).Select(cell => (ElectricCurrent?)cell.Amps).FirstOrDefault();
    }
}
