using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>Readings of an expansion valve and its place that cannot all be true.</summary>
public static class ExpansionValveContradictions
{
    /// <summary>How far the two figures of a limit may be apart, in K: plates round pressures to 5 psi, which is as much with a refrigerant of low pressure (practice).</summary>
    private const double LimitSlack = 4;

    /// <summary>On the plate alone.</summary>
    /// <param name="plate">The plate.</param>
    public static IReadOnlyList<Contradiction> OnPlate(ExpansionValveSpec plate) => [.. Range(plate), .. Limit(plate), .. LimitOfRefrigerant(plate)];

    /// <summary>Between plate and site. What was read at the site is judged by.</summary>
    /// <param name="plate">The old valve's plate.</param>
    /// <param name="site">The site.</param>
    public static IReadOnlyList<Contradiction> WithSite(ExpansionValveSpec plate, ExpansionValveSite site) => [.. Listed(plate, site), .. ValveOil.Unlisted(plate.Oils, site.Oil), .. Charge(plate, site), .. Tap(plate, site), .. Heads(site), .. Well(plate, site)];

    private static IEnumerable<Contradiction> Range(ExpansionValveSpec plate)
    {
        if (plate is { EvaporatingLeast: { } least, EvaporatingMost: { } most } && least.DegreesCelsius >= most.DegreesCelsius) yield return new(["evaporatingLeast", "evaporatingMost"], $"Its range goes from {Deducing.Text(least)} to {Deducing.Text(most)}: one of the two is misread.", ExpansionValveSources.ChargeRange);
    }

    private static IEnumerable<Contradiction> Limit(ExpansionValveSpec plate)
    {
        if (plate.Charge is { } charge && charge != BulbCharge.PressureLimited && ExpansionValveDeductions.LimitField(plate) is { } limit) yield return new([limit, "charge"], $"It has a limit at {(plate.LimitPressure is { } pressure ? Deducing.Text(pressure) : Deducing.Text(plate.LimitsAt!.Value))} and a {Deducing.Text(charge)}: only a pressure-limited charge has a limit.", ExpansionValveSources.PressureLimit);
    }

    private static IEnumerable<Contradiction> LimitOfRefrigerant(ExpansionValveSpec plate)
    {
        if (ExpansionValveDeductions.LimitDew(plate) is not { } dew) yield break;
        var there = $"vapour of {plate.Refrigerants![0].Name} has that pressure at {Deducing.Text(Temperature.FromDegreesFahrenheit(Math.Round(dew.DegreesFahrenheit)))}";
        if (!ExpansionValveVocabulary.MayBeLimit(dew)) yield return new(["limitPressure", "refrigerants"], $"Its limit is {Deducing.Text(plate.LimitPressure!.Value)}, and {there}, where no valve limits: one of the two is misread.", ExpansionValveSources.PressureLimit);
        else if (plate.LimitsAt is { } limit && Math.Abs(dew.Kelvins - limit.Kelvins) > LimitSlack) yield return new(["limitsAt", "limitPressure", "refrigerants"], $"Its limit is {Deducing.Text(limit)} and {Deducing.Text(plate.LimitPressure!.Value)}, and {there}: one of the three is misread.", ExpansionValveSources.PressureLimit);
    }

    private static IEnumerable<Contradiction> Listed(ExpansionValveSpec plate, ExpansionValveSite site)
    {
        if (plate.Refrigerants is { } listed && site.Refrigerant is { } there && !listed.Contains(there)) yield return new(["refrigerants"], $"The old valve is made for {Deducing.Text(listed)}, and {there.Name} is there: see what the system was filled with.", ExpansionValveSources.SameCharge) { SiteFields = ["refrigerant"] };
    }

    private static IEnumerable<Contradiction> Charge(ExpansionValveSpec plate, ExpansionValveSite site)
    {
        if (plate.Charge is { } charge && site.NeedsCharge is { } needed && charge != needed) yield return new(["charge"], $"The old valve had a {Deducing.Text(charge)}, and a {Deducing.Text(needed)} is said to be needed: it was the wrong one, or one of the two is misread.", ExpansionValveSources.SameCharge) { SiteFields = ["needsCharge"] };
    }

    private static IEnumerable<Contradiction> Tap(ExpansionValveSpec plate, ExpansionValveSite site)
    {
        if (plate.Equaliser == Equaliser.External && site.HasEqualiserTap == false) yield return new(["equaliser"], "The old valve's equaliser was external, and the suction pipe is said to have no tap for one: see where its line went.", ExpansionValveSources.Equaliser) { SiteFields = ["hasEqualiserTap"] };
        if (plate.Equaliser == Equaliser.Internal && site.HasDistributor == true) yield return new(["equaliser"], "The old valve's equaliser was internal, and a distributor follows it: it starved the coil, or one of the two is misread.", ExpansionValveSources.Equaliser) { SiteFields = ["hasDistributor"] };
    }

    private static IEnumerable<Contradiction> Well(ExpansionValveSpec plate, ExpansionValveSite site)
    {
        if (site is { BulbPlace: BulbPlace.StrappedOn, WellBore: { } bore }) yield return new([], $"The bulb is said to be strapped on, and to sit in a well of {Deducing.Text(bore)}: see where it is.", ExpansionValveSources.BulbInPlace) { SiteFields = ["bulbPlace", "wellBore"] };
        if (site is { BulbPlace: BulbPlace.InWell, WellBore: { } well } && plate.BulbDiameter is { } thick && !Within.AtMost(thick.Millimeters, well.Millimeters)) yield return new(["bulbDiameter"], $"The old bulb is said to be {Deducing.Text(thick)} thick, and to sit in a well of {Deducing.Text(well)}: one of the two is misread.", ExpansionValveSources.BulbInPlace) { SiteFields = ["wellBore"] };
    }

    private static IEnumerable<Contradiction> Heads(ExpansionValveSite site)
    {
        if (site is { CondensingLeast: { } least, CondensingMost: { } most } && !Within.AtMost(least.DegreesCelsius, most.DegreesCelsius)) yield return new([], $"The coldest condensing temperature, {Deducing.Text(least)}, is warmer than the warmest, {Deducing.Text(most)}: they are changed over, or one is misread.", ExpansionValveSources.Rating) { SiteFields = ["condensingLeast", "condensingMost"] };
    }
}
