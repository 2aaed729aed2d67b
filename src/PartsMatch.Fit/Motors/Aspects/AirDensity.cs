using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the air's density reads of a motor.</summary>
/// <param name="AltitudeMost">Up to which altitude it carries its rating, m; null when not marked.</param>
/// <param name="AmbientMost">The hottest air marked, °C; null when not marked.</param>
/// <param name="ServiceFactor">Its service factor, to 0.01; 1 where none is marked.</param>
public readonly record struct DensityFacet(double? AltitudeMost, double? AmbientMost, double ServiceFactor);

/// <summary>Does the motor carry its rating in air as thin as there, and what does cold air do?</summary>
/// <remarks>
/// Thin air cools less: up to 1000 m nothing is asked. Above it the maker's word, or air cooler than the rated ambient by 10 K for each 1000 m (to 3000 m), or a service factor of 1.15
/// of which no use is made (to 9000 ft, in 40 °C): MG 1 14.4, from memory. Cold air is dense: a fan takes 17.8 % more power at −10 °F than at 70 °F. The old motor carried that too, so it is a caution.
/// </remarks>
public sealed class AirDensity() : Aspect<MotorSpec, MotorSite, DensityFacet>("Air density", isDeciding: false, PlaceSources.Altitude, new(0.4, 0.8, 0.3))
{
    /// <summary>Up to here motors carry their rating, m: 3300 ft in MG 1.</summary>
    internal const double UsualMost = 1000;

    private const double LowerAmbientMost = 3000;

    private const double MetresPerKelvin = 100;

    /// <summary>9000 ft in m.</summary>
    private const double ServiceFactorMost = 9000 * 0.3048;

    private const double ServiceFactor = 1.15;

    /// <summary>70 °F, the air that fans are rated in, in °C.</summary>
    private const double StandardAir = 38 / 1.8;

    /// <summary>Less than so much denser than standard air nobody gives a thought (practice).</summary>
    private const double MuchDenser = 1.1;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a place", "above what it is made for", 0, UsualMost, "m");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["altitudeMost", "ambientMost", "serviceFactor"], ["altitude", "airMost", "airLeast"]);

    /// <inheritdoc/>
    public override DensityFacet Read(MotorSpec part) => new(
        part.AltitudeMost is { } most ? Rounded.To(most.Meters, 0) : null,
        Rounded.Celsius(part.AmbientMost),
        Rounded.To(part.ServiceFactor ?? 1, 2));

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, DensityFacet facet) => InThinAir(need, facet) with { CautionWords = need.Once(static need => Denser(need.Site)) };

    private static Finding InThinAir(MotorNeed need, DensityFacet facet)
    {
        if (need.Once(static need => need.Site.Altitude is { } high ? Rounded.To(high.Meters, 0) : (double?)null) is not { } altitude) return Finding.Meets($"No altitude is given; up to 1000 m (3300 ft) any motor carries its rating.");
        var limit = facet.AltitudeMost ?? UsualMost;
        if (Within.AtMost(altitude, limit)) return Finding.Meets($"It carries its rating up to {new ShownAltitude(limit)}; the place lies at {new ShownAltitude(altitude)}.") with { Margin = new(limit - altitude, "m") };

        // The coolest that the air must stay for it.
        var cooler = Rounded.To((facet.AmbientMost ?? Ambient.UsualMost) - ((altitude - limit) / MetresPerKelvin), 1);
        return Within.AtMost(limit, UsualMost) && ByTheStandard(need, facet, altitude, cooler) is { } allowed
            ? allowed
            : Finding.MeetsWith(
                [new(PlaceChanges.AskAltitude, $"ask the maker whether it may run at {new ShownAltitude(altitude)}, or see that the air there stays below {new ShownAir(cooler)}")],
                $"It carries its rating up to {new ShownAltitude(limit)}; at {new ShownAltitude(altitude)} thin air cools it less, though it takes load off the fan as well.") with
            {
                Shortfall = Math.Min(1, (altitude - limit) / UsualMost),
                Margin = new(limit - altitude, "m"),
            };
    }

    /// <summary>What MG 1 14.4 allows above 1000 m without the maker's word; null when nothing.</summary>
    private static Finding? ByTheStandard(MotorNeed need, DensityFacet facet, double altitude, double cooler)
    {
        if (Within.AtMost(altitude, ServiceFactorMost) && Within.AtLeast(facet.ServiceFactor, ServiceFactor) && Within.AtMost(Ambient.HottestAir(need) ?? Ambient.UsualMost, Ambient.UsualMost))
        {
            return Finding.Meets($"Its service factor of {facet.ServiceFactor:0.##}, left unused, makes up for {new ShownAltitude(altitude)}; {new ShownAltitude(ServiceFactorMost)} is the limit.");
        }

        return Within.AtMost(altitude, LowerAmbientMost) && need.Once(static need => Rounded.Celsius(need.Site.AirMost)) is { } air && Within.AtMost(air, cooler)
            ? Finding.Meets($"At {new ShownAltitude(altitude)} it may sit in air up to {new ShownAir(cooler)}, 10 K less for each 1000 m over 1000 m; the air there gets to {new ShownAir(air)}.") with { Margin = new(cooler - air, "K") }
            : null;
    }

    /// <summary>What to mind of a fan that runs in cold air.</summary>
    private static FormattableString? Denser(MotorSite site)
    {
        if (Rounded.Celsius(site.AirLeast) is not { } cold) return null;
        var ratio = Air.Density(cold, site.Altitude?.Meters ?? 0) / Air.Density(StandardAir);
        return Within.AtMost(ratio, MuchDenser) ? null : (FormattableString)$"At {new ShownAir(cold)} the air is {(ratio - 1) * 100:0.0} % denser than at 70 °F, and the fan takes so much more power. Amps read while the air is still warm, as in a box that is being pulled down, say too little: read them again once it is cold.";
    }
}
