using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Does it come back at the other of its two temperatures?</summary>
/// <remarks>As the switching temperature is judged. One that can be set comes back by its differential, which is looked at by itself; one that is reset by hand does not come back.</remarks>
public sealed class ReturnPoint() : Aspect<ThermostatSpec, ThermostatSite, TemperaturesFacet>("Temperature of return", isDeciding: false, ThermostatSources.Temperatures, new(1.2, 0.6, 0.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = TemperatureRule.Measure;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["range", "cutIn", "cutOut"], ["cutInNeeded", "cutOutNeeded"]) { Besides = ["sidesWired", "function", "action", "isAdjustable", "differential", "fanCutIn", "fanCutOut", "reset"] };

    /// <inheritdoc/>
    public override TemperaturesFacet Read(ThermostatSpec part) => TemperaturesFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, TemperaturesFacet facet)
    {
        var wanted = WantedPoints.Of(need);
        var seen = facet.For(wanted);
        if (facet.IsManual) return Finding.Meets($"It is reset by hand, and comes back at no temperature.");
        if (seen.Settable is not null) return Finding.Meets($"It can be set, and comes back by its differential.");
        if (wanted.Function is null) return Finding.Unknown(Side.Plate, "function", $"What the old one was there for is not known, and so not which of its temperatures is which.");
        if (wanted.Disagrees) return Finding.Unknown(Side.Plate, "action", $"What the old contacts do, and which side of them is wired, do not go together.");
        if (wanted is { MayBeOfEitherSide: true, StartsAt: { } start } && TemperatureRule.FailsEitherWay(wanted, start, seen) is { } failure) return failure;
        if (wanted.OldOfEitherSide is { } old && seen.EitherSide?.AreAs(old) == true) return Finding.Meets($"Its change-over contacts are marked as the old ones are: they come back at the same on either side.");
        return wanted.Main.At(wanted.Other) is { } needed
            ? TemperatureRule.Against(wanted, needed, seen, wanted.Other)
            : TemperatureRule.NotKnown(wanted, wanted.MayBeOfEitherSide ? $"{wanted.Unread}Needed" : wanted.Field(wanted.Other), $"At which temperature it is to come back is not known.");
    }
}
