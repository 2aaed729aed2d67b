using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors.Running;
using PartsMatch.Fit.Quantities;
using UnitsNet;
using UnitsNet.Units;

namespace PartsMatch.Fit.Motors;

/// <summary>The equipment's own plate against the old motor's: the old motor may itself have been a wrong replacement.</summary>
internal static class EquipmentPlate
{
    /// <summary>Both plates say the same when the larger figure is at most so many times the smaller (practice).</summary>
    private const double SameRatio = 1.1;

    /// <summary>All that disagrees.</summary>
    public static IEnumerable<Contradiction> Against(MotorNeed need) => [.. Amps(need), .. Watts(need)];

    private static IEnumerable<Contradiction> Amps(MotorNeed need)
    {
        if (need.Site.EquipmentFanAmps?.Amperes is not { } amps || SiteAgainstPlate.PlateAmps(need) is not { Count: > 0 } plate || plate.Any(one => Within.Ratio(one, amps, SameRatio))) yield break;
        var nearest = plate.MinBy(one => Math.Abs(one - amps));
        yield return Differ("fullLoadAmps", "equipmentFanAmps", FormattableString.Invariant($"{amps:0.##} A"), FormattableString.Invariant($"{nearest:0.##} A"));
    }

    private static IEnumerable<Contradiction> Watts(MotorNeed need)
    {
        if (need is not { Plate.Power: { } power, Site.EquipmentFanPower: { } equipment } || AreSame(need.Plate, power, equipment)) yield break;
        yield return Differ("power", "equipmentFanPower", Deducing.Text(equipment), Deducing.Text(power));
    }

    /// <summary>Figures of one kind are compared as they stand. Watts beside horsepower may be what the motor takes: then the type's efficiency leaves room.</summary>
    private static bool AreSame(MotorSpec plate, Figures<Power> power, Power equipment)
    {
        if (IsHorsepower(equipment) == power.All(IsHorsepower)) return HighSpeed.Watts(plate).Any(one => Within.Ratio(one.Value, (double)equipment.Watts, SameRatio));
        var shown = plate with { Power = new(equipment), PowerMeaning = IsHorsepower(equipment) ? PowerMeaning.Output : null };
        return AtShaft(plate).Any(one => AtShaft(shown).Any(other => new Band(other.Low / SameRatio, other.High * SameRatio).Shared(one) is not null));
    }

    private static Sequence<Band> AtShaft(MotorSpec motor) => RatedPoint.ShaftWattsOf(RunningFacet.Of(motor with { FullLoadAmps = null }), supplyHertz: null);

    private static bool IsHorsepower(Power power) => power.Unit is PowerUnit.ElectricalHorsepower;

    private static Contradiction Differ(string field, string siteField, string equipment, string old) => new(
        [field],
        $"The equipment's plate says {equipment} for the fan, the old motor's {old}: more than 10 % apart. The old motor may itself have been a wrong replacement: see which of them the fan was made for.",
        MotorSources.EquipmentPlate)
    { SiteFields = [siteField] };
}
