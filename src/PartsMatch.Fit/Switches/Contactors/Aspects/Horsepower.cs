using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>A contactor's horsepower at one voltage.</summary>
/// <param name="Volts">Rated volts, V; null when not known.</param>
/// <param name="Power">Horsepower.</param>
public readonly record struct PowerAt(double? Volts, double Power);

/// <summary>What horsepower reads of a contactor.</summary>
/// <param name="Single">Of single-phase motors; empty when not known.</param>
/// <param name="Three">Of three-phase motors; empty when not known.</param>
public readonly record struct HorsepowerFacet(Sequence<PowerAt> Single, Sequence<PowerAt> Three);

/// <summary>Is the contactor rated for the motors' horsepower at their volts and phases?</summary>
/// <remarks>
/// Asked only where somebody gave horsepower. At the rated volts nearest to those that are switched, within a tenth: at lower volts the same horsepower takes more amps, so that a rating at higher volts says nothing. The edge meets.
/// </remarks>
public sealed class Horsepower() : Aspect<ContactorSpec, ContactorSite, HorsepowerFacet>("Horsepower", isDeciding: false, ContactorSources.Horsepower, new(0.3, 0.5, 0.4))
{
    private const double WattsAHorsepower = 746;

    /// <summary>A tenth either way of the rated volts (practice): 208 V is nearer to 200 than to 230.</summary>
    private const double VoltsOff = 0.1;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a motor load", "of the horsepower that it is rated for", 0, 100, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["threePhaseHorsepower", "singlePhaseHorsepower", "ratedVolts"], ["motorPower", "loadPhase", "loadVolts"]) { Besides = ["loadCurrent"] };

    /// <inheritdoc/>
    public override HorsepowerFacet Read(ContactorSpec part) => new(Of(part.RatedVolts, part.SinglePhaseHorsepower), Of(part.RatedVolts, part.ThreePhaseHorsepower));

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, HorsepowerFacet facet) => OnTheContact.Of(need).IsDirect ? DirectCurrentQuestion.Beside(OfAlternating(need, facet)) : OfAlternating(need, facet);

    private static Finding OfAlternating(ContactorNeed need, HorsepowerFacet facet)
    {
        if (need.Site.MotorPower is not { } power) return Finding.Meets($"No horsepower was named: its amps decide.");
        if (need.Site.LoadPhase is not { } phases) return Finding.Unknown(Side.Site, "loadPhase", $"Whether the motors are single-phase or three-phase is not known.");
        if (need.Site.LoadVolts is not { } load) return Finding.Unknown(Side.Site, "loadVolts", $"The motors' volts are not known.");
        var (asked, volts) = (In(power), Rounded.To(load.Volts, 1));
        var (rows, field) = phases == Phases.Three ? (facet.Three, "threePhaseHorsepower") : (facet.Single, "singlePhaseHorsepower");
        if (Nearest(rows, volts) is not { } row) return Finding.Unknown(Side.Part, field, $"The motors have {asked} hp; its {new Spelt<Phases>(phases)} horsepower at {volts} V is not known.");
        var margin = new Margin(row.Power - asked, "hp");
        return Within.AtMost(asked, row.Power)
            ? Finding.Meets($"It is rated for {row.Power} hp, {new Spelt<Phases>(phases)}, at {row.Volts} V; the motors have {asked} hp.") with { Margin = margin, Shortfall = asked / row.Power }
            : Finding.Fails(margin, $"It is rated for {row.Power} hp, {new Spelt<Phases>(phases)}, at {row.Volts} V; the motors have {asked} hp.");
    }

    private static PowerAt? Nearest(Sequence<PowerAt> rows, double volts)
    {
        PowerAt? nearest = null;
        foreach (var row in rows.AsSpan())
        {
            if (row.Volts is not { } rated || !Within.AtMost(Math.Abs(volts - rated), VoltsOff * rated)) continue;
            if (!(nearest?.Volts is { } before && Math.Abs(volts - before) <= Math.Abs(volts - rated))) nearest = row;
        }

        return nearest;
    }

    private static Sequence<PowerAt> Of(Figures<ElectricPotential>? volts, Figures<Power>? power)
    {
        if (power is null) return [];
        if (volts is null) return [.. power.Select(one => new PowerAt(null, In(one)))];
        return RatedAmps.Pair(volts.Count, power.Count) ? [.. volts.Select((one, row) => new PowerAt(Rounded.To(one.Volts, 1), In(power.Of(row))))] : [];
    }

    private static double In(Power power) => Rounded.To((double)power.Watts / WattsAHorsepower, 2);
}
