using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>Does it move at the temperature that its function is about?</summary>
/// <remarks>
/// A box thermostat stops the cooling, a fan delay starts the fans, a defrost end ends the defrost, a limit trips: within 5 °F meets, up to 10 °F is a check, beyond fails; one that can be set is set.
/// Where nobody said at which temperature, nor that anything else is needed, one whose range holds the old one's is set as that was; where only the other temperature is known see <see cref="BesideTheOther"/>.
/// </remarks>
public sealed class SwitchingPoint() : Aspect<ThermostatSpec, ThermostatSite, TemperaturesFacet>("Switching temperature", isDeciding: true, ThermostatSources.Temperatures, new(2.5, 0.8, 1.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = TemperatureRule.Measure;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["range", "cutOut", "cutIn"], ["cutOutNeeded", "cutInNeeded", "sidesWired"]) { Besides = ["function", "action", "isAdjustable", "differential", "fanCutIn", "fanCutOut", "reset"] };

    /// <inheritdoc/>
    public override TemperaturesFacet Read(ThermostatSpec part) => TemperaturesFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, TemperaturesFacet facet)
    {
        var wanted = WantedPoints.Of(need);
        if (wanted.Function is null) return Finding.Unknown(Side.Plate, "function", $"What the old one was there for is not known, and so not which of its temperatures counts.");
        if (wanted.Disagrees) return Finding.Unknown(Side.Plate, "action", $"What the old contacts do, and which side of them is wired, do not go together.");
        if (wanted.MayBeOfEitherSide) return OnEitherSide(need, wanted, facet.For(wanted));
        var seen = facet.For(wanted);
        if (BesideTheOther.Fails(wanted, seen) is { } beyond) return beyond;
        if (wanted.Main.At(wanted.Tells) is not { } needed) return BesideTheOther.Counted(need, wanted, seen) ?? AsTheOldRange(need, wanted, seen);
        var found = TemperatureRule.Against(wanted, needed, seen, wanted.Tells);
        return found.Verdict == Verdict.Unknown && wanted.OldOfEitherSide is { } old && seen.EitherSide?.AreAs(old) == true ? MarkedAlike(old) : found;
    }

    private static Finding MarkedAlike(MarkedOfEitherSide old) => Finding.Meets($"Its change-over contacts are marked with {new ShownTemperature(old.Only!.Value)} and a differential as the old ones are: they do the same on either side.");

    private static Finding OnEitherSide(ThermostatNeed need, WantedPoints wanted, TemperaturesFacet seen)
    {
        if (wanted.StopsAt is { } stop && TemperatureRule.FailsEitherWay(wanted, stop, seen) is { } failure) return failure;
        if (wanted.OldOfEitherSide is { Only: { } set } old && seen.EitherSide is { } marked)
        {
            if (seen.Settable is { } range && range.Holds(set) && marked.CanDifferAs(old)) return Finding.MeetsWith([new(ThermostatChanges.SetThermostat, $"set it as the old one was set")], $"It can be set {ShownRange.Set(new ShownTemperature(range.Low), new ShownTemperature(range.High))}, and its differential as the old one's: so it does the same on either side.");
            if (marked.AreAs(old)) return MarkedAlike(old);
        }

        return need.Site.SidesWired is null
            ? Finding.Unknown(Side.Site, "sidesWired", $"The old contacts change over, and one temperature of theirs is known; which of their sides is wired, and so moves there, is not.")
            : Finding.Unknown(Side.Site, $"{wanted.Unread}Needed", $"Both sides of the old change-over contacts are wired, and one temperature of theirs is known; where they move the other way is not.");
    }

    private static Finding AsTheOldRange(ThermostatNeed need, WantedPoints wanted, TemperaturesFacet seen)
    {
        if (need.Plate.Range?.Celsius is not { } old || IsNeededOtherwise(need)) return TemperatureRule.NotKnown(wanted, wanted.Field(wanted.Tells), $"At which temperature it is to switch is not known.");
        if (seen.Settable is not { } range) return TemperatureRule.NotKnown(wanted, wanted.Field(wanted.Tells), $"The old one could be set {ShownRange.Set(new ShownTemperature(old.Low), new ShownTemperature(old.High))}; what it was set to is not known.");
        return range.Holds(old.Low) && range.Holds(old.High)
            ? Finding.MeetsWith([new(ThermostatChanges.SetThermostat, $"set it as the old one was set")], $"It can be set {ShownRange.Set(new ShownTemperature(range.Low), new ShownTemperature(range.High))}, wherever the old one could be set.")
            : TemperatureRule.NotKnown(wanted, wanted.Field(wanted.Tells), $"It can be set {ShownRange.Set(new ShownTemperature(range.Low), new ShownTemperature(range.High))}, the old one {ShownRange.Set(new ShownTemperature(old.Low), new ShownTemperature(old.High))}; what that was set to is not known.");
    }

    /// <summary>Whether a temperature is needed that is not one of the old one's.</summary>
    private static bool IsNeededOtherwise(ThermostatNeed need) => IsOther(need.Plate.CutOut, need.Site.CutOutNeeded) || IsOther(need.Plate.CutIn, need.Site.CutInNeeded);

    private static bool IsOther(Temperature? marked, Temperature? needed) => needed is not null && (marked is null || Degrees.AreOthers(marked, needed));
}
