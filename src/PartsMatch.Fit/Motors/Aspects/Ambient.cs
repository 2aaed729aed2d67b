using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the ambient reads of a motor; °C.</summary>
/// <param name="Most">The hottest air marked; null when not marked.</param>
/// <param name="Least">The coldest air marked; null when not marked.</param>
/// <param name="UsualLeast">What the standards take where no coldest air is marked.</param>
public readonly record struct AmbientFacet(double? Most, double? Least, double UsualLeast);

/// <summary>Does the motor bear the air that it sits in, in heat and in cold?</summary>
/// <remarks>
/// Hotter or colder air than is marked fails. Where nothing is marked, the standards take 40 °C at most and −15 °C at least (IEC motors below 600 W: 5 °C); beyond that, ask.
/// With the air not known, a motor marked for at least as much as the old one is no worse; one marked for less is a check.
/// </remarks>
public sealed class Ambient() : Aspect<MotorSpec, MotorSite, AmbientFacet>("Ambient", isDeciding: false, PlaceSources.Ambient, new(0.5, 1, 0.6))
{
    /// <summary>Where no ambient is marked, °C: NEMA MG 1 14.2, IEC 60034-1 clause 6.</summary>
    internal const double UsualMost = 40;

    /// <summary>IEC 60034-1 clause 6 from 600 W; NEMA MG 1 14.2, from memory.</summary>
    private const double UsualLeast = -15;

    private const double UsualLeastOfSmallIec = 5;

    /// <summary>IEC 60034-1 splits at this power, W.</summary>
    private const decimal SmallIec = 600;

    /// <summary>So many kelvins under the old motor's ambient are a shortfall of 1 (practice): class B in place of F bears 25 K less.</summary>
    private const double FarBelow = 20;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("an ambient", "under the old motor's", 0, FarBelow, "K");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["ambientMost", "ambientLeast"], ["airMost", "airLeast"]);

    /// <inheritdoc/>
    public override AmbientFacet Read(MotorSpec part)
    {
        var isSmall = part.Standard == PlateStandard.Iec && part.Power?.Max(power => power.Watts) < SmallIec;
        return new(Rounded.Celsius(part.AmbientMost), Rounded.Celsius(part.AmbientLeast), isSmall ? UsualLeastOfSmallIec : UsualLeast);
    }

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, AmbientFacet facet)
    {
        var heat = InHeat(need, facet);
        if (InCold(need, facet) is not { } cold || heat.Verdict > cold.Verdict) return heat;
        if (cold.Verdict > heat.Verdict) return cold;
        return heat.Verdict == Verdict.MeetsWithChanges
            ? Finding.MeetsWith(
                [new(PlaceChanges.CheckAir, $"see that the air round the motor stays between {new ShownAir(facet.Least ?? facet.UsualLeast)} and {new ShownAir(facet.Most ?? UsualMost)}")],
                $"It is made for less heat and for less cold than the old motor; how hot and cold the air there gets is not given.") with
            { Shortfall = heat.Shortfall, Margin = heat.Margin }
            : (need.Site.AirMost is null && need.Site.AirLeast is not null ? cold : heat) with { CautionWords = cold.CautionWords, CautionAt = Stage.Bench };
    }

    /// <summary>The hottest air there, °C: measured, else what the old motor was made for; null when neither is known.</summary>
    internal static double? HottestAir(MotorNeed need) => need.Once(static need => Rounded.Celsius(need.Site.AirMost ?? need.Plate.AmbientMost));

    /// <summary>The coldest air there, °C, likewise.</summary>
    private static double? ColdestAir(MotorNeed need) => need.Once(static need => Rounded.Celsius(need.Site.AirLeast ?? need.Plate.AmbientLeast));

    private static Finding InHeat(MotorNeed need, AmbientFacet facet)
    {
        var rated = facet.Most ?? UsualMost;
        FormattableString bears = facet.Most is null ? (FormattableString)$"Its highest ambient is not marked; the standards then take {new ShownAir(UsualMost)}" : $"It is made for air up to {new ShownAir(rated)}";
        if (HottestAir(need) is not { } air)
        {
            return Within.AtLeast(rated, UsualMost)
                ? Finding.Meets($"{bears}; how hot the air there gets is not given, and {new ShownAir(UsualMost)} is usual.")
                : Finding.MeetsWith([new(PlaceChanges.CheckAir, $"see that the air round the motor stays below {new ShownAir(rated)}")], $"{bears}; how hot the air there gets is not given.");
        }

        FormattableString there = need.Site.AirMost is null ? (FormattableString)$"the old motor was made for {new ShownAir(air)}" : $"the air there gets to {new ShownAir(air)}";
        var margin = new Margin(rated - air, "K");
        if (Within.AtMost(air, rated)) return Finding.Meets($"{bears}; {there}.") with { Margin = margin };
        if (facet.Most is null) return Finding.Unknown(Side.Part, "ambientMost", $"{bears}; {there}.");
        return need.Site.AirMost is not null
            ? Finding.Fails($"{bears}; {there}.") with { Margin = margin }
            : Finding.MeetsWith([new(PlaceChanges.CheckAir, $"see that the air round the motor stays below {new ShownAir(rated)}; a condenser's leaving air counts")], $"{bears}; {there}.") with { Shortfall = Math.Min(1, (air - rated) / FarBelow), Margin = margin };
    }

    /// <summary>The answer for the cold; null when neither the air nor the old motor says anything of it.</summary>
    private static Finding? InCold(MotorNeed need, AmbientFacet facet)
    {
        if (ColdestAir(need) is not { } air) return null;
        var least = facet.Least ?? facet.UsualLeast;
        FormattableString bears = facet.Least is null ? (FormattableString)$"Its lowest ambient is not marked; the standards then take {new ShownAir(least)}" : $"It is made for air down to {new ShownAir(least)}";
        FormattableString there = need.Site.AirLeast is null ? (FormattableString)$"the old motor was made for {new ShownAir(air)}" : $"the air there gets to {new ShownAir(air)}";
        var margin = new Margin(air - least, "K");
        if (Within.AtLeast(air, least)) return Finding.Meets($"{bears}; {there}.") with { Margin = margin };
        if (need.Site.AirLeast is not null)
        {
            return facet.Least is null
                ? Finding.Unknown(Side.Part, "ambientLeast", $"{bears}; {there}.")
                : Finding.Fails($"{bears}; {there}.") with { Margin = margin };
        }

        // That the old motor could have borne more cold does not say that it is cold there: a catalogue's silence is only mentioned.
        return facet.Least is null
            ? Finding.Meets($"{bears}; {there}.") with { CautionWords = $"{bears}; {there}: ask before it goes into a freezer." }
            : Finding.MeetsWith([new(PlaceChanges.CheckAir, $"see that the air round the motor stays above {new ShownAir(least)}")], $"{bears}; {there}.");
    }
}
