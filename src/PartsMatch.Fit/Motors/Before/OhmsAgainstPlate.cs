using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Have its windings as many ohms as a motor of its volts and amps must have?</summary>
/// <remarks>
/// Windings that go with one another may still be shorted: run to start is the sum of both however few turns are left, and a shaded-pole motor has only one. Far below what any sound motor
/// of its size has, a winding is shorted; between that and what is surely sound the ohms do not clear it.
/// </remarks>
public sealed class OhmsAgainstPlate() : ReadingRule<MotorCase>("Ohms against the plate", MotorReadingSources.LeastOhms)
{
    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one.IsElectronic) return null;
        Ohms?[] singles = one.IsThreePhase == true ? [] : [one.Readings.OhmsCommonToRun, one.Readings.OhmsCommonToStart, one.Readings.OhmsRunToStart];
        Ohms?[] threes = one.IsThreePhase == false ? [] : [one.Readings.OhmsOneToTwo, one.Readings.OhmsTwoToThree, one.Readings.OhmsOneToThree];
        var isThree = singles.All(ohms => ohms is null);
        if ((isThree ? threes : singles).Where(ohms => ohms is { IsOpen: false }).Min(ohms => ohms?.Value) is not { } least) return null;
        return LeastOhms.Of(one.Need.Plate, isThree) is { } limits ? Against(least, limits) : least > 0 ? null : Nothing(one.Need.Plate);
    }

    private static Ruling Against(double least, LeastOhms limits)
    {
        FormattableString limit = $"under {limits.Shorted:0.###} Ω it is shorted, from {limits.Sound:0.###} Ω on as a sound one";
        return !Within.AtLeast(least + MeterSlack.Step, limits.Shorted)
            ? Ruling.Bad($"A winding shows {least:0.###} Ω; by the plate's volts and amps no sound one has less than {limits.Shorted:0.###} Ω: it is shorted.", limit).ThePartHasFailed()
            : Within.AtLeast(least - MeterSlack.Leads, limits.Sound)
                ? Ruling.Good($"The least of the windings, {least:0.###} Ω, is as a sound one's: by the plate's volts and amps {limits.Sound:0.###} Ω are enough, beside the {MeterSlack.Leads} Ω that a meter's leads may show.", limit)
                : Ruling.CantTell($"A winding shows {least:0.###} Ω. By the plate's volts and amps a sound one surely has {limits.Sound:0.###} Ω, beside the {MeterSlack.Leads} Ω that a meter's leads may show, and a shorted one under {limits.Shorted:0.###} Ω: it is neither cleared nor condemned by that. {MeterSlack.Advice} Hold it against a sister motor's.", limit);
    }

    /// <summary>A large motor's winding shows nothing either, so that nothing is condemned before its size is known.</summary>
    private static Ruling Nothing(MotorSpec plate) =>
        Ruling.CantTell($"A winding shows 0 Ω: it is shorted, if the motor is not so large that its windings have less than a meter shows.")
            .ThenRead(plate.Voltage is null ? "voltage" : "fullLoadAmps", "A winding shows 0 Ω. Read volts and full-load amps on the plate: they tell how many ohms it must have.", Side.Plate);
}
