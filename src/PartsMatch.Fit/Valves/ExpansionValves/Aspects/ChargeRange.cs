using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>What is read of a charge's range.</summary>
/// <param name="Least">Coldest evaporating temperature, °C; null where not given.</param>
/// <param name="Most">Warmest, °C; null where not given.</param>
/// <param name="Limit">Evaporating temperature of its pressure limit, °C; null where it has none or it is not given.</param>
/// <param name="IsLimited">Whether its charge is pressure-limited.</param>
public readonly record struct ChargeRangeFacet(double? Least, double? Most, double? Limit, bool IsLimited);

/// <summary>Does the charge work at the evaporating temperature there, and does its limit leave room?</summary>
/// <remarks>Inside the range, edges included; a pressure limit lies at least 5 °F (2.8 K) over the design. A valve without a limit in place of one with a limit is a check of the compressor's start.</remarks>
public sealed class ChargeRange() : Aspect<ExpansionValveSpec, ExpansionValveSite, ChargeRangeFacet>("Evaporating range", isDeciding: false, ExpansionValveSources.PressureLimit, new(0.5, 0.5, 0.6))
{
    /// <summary>5 °F, in K.</summary>
    private const double Room = 5 / 1.8;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["evaporatingLeast", "evaporatingMost", "limitsAt"], ["evaporatingAt"]) { Besides = ["charge"] };

    /// <inheritdoc/>
    public override ChargeRangeFacet Read(ExpansionValveSpec part) => new(Rounded.Celsius(part.EvaporatingLeast), Rounded.Celsius(part.EvaporatingMost), Rounded.Celsius(part.LimitsAt), part.Charge == BulbCharge.PressureLimited);

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, ChargeRangeFacet facet)
    {
        if (Rounded.Celsius(need.Site.EvaporatingAt) is not { } evaporating) return Finding.Unknown(Side.Site, "evaporatingAt", $"The evaporating temperature there is not known.");
        if (facet.Least is { } coldest && !Within.AtLeast(evaporating, coldest)) return Finding.Fails(new(evaporating - coldest, "K"), $"Evaporating at {new ShownTemperature(evaporating)} is colder than the {new ShownTemperature(coldest)} that its charge goes down to.");
        if (facet.Most is { } warmest && !Within.AtMost(evaporating, warmest)) return Finding.Fails(new(warmest - evaporating, "K"), $"Evaporating at {new ShownTemperature(evaporating)} is warmer than the {new ShownTemperature(warmest)} that its charge goes up to.");
        if (facet.Limit is { } limit && !Within.AtLeast(limit, evaporating + Room - Rounded.OffBy(2))) return Finding.Fails(new(limit - evaporating - Room, "K"), $"Its limit at {new ShownTemperature(limit)} lies less than 5 °F (2.8 K) over evaporating at {new ShownTemperature(evaporating)}: it would starve the coil.");
        if (facet.Least is null || facet.Most is null) return Finding.Unknown(Side.Part, facet.Least is null ? "evaporatingLeast" : "evaporatingMost", $"The range of its charge is not given.");
        if (facet is { IsLimited: true, Limit: null }) return Finding.Unknown(Side.Part, "limitsAt", $"Its charge limits the pressure; at what is not given.");
        Reason sentence = $"Evaporating at {new ShownTemperature(evaporating)} lies inside {new ShownTemperature(facet.Least.Value)} to {new ShownTemperature(facet.Most.Value)}{(facet.Limit is { } at ? $", and its limit is {new ShownTemperature(at)}" : string.Empty)}.";
        return need.Plate.LimitsAt is not null && facet.Limit is null
            ? Finding.MeetsWith([new(ExpansionValveChanges.CheckWarmStart, $"see that the compressor bears a warm start: the old valve limited the pressure, this one does not")], sentence)
            : Finding.Meets(sentence);
    }
}
