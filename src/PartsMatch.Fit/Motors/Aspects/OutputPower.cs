using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the output power aspect reads.</summary>
/// <param name="Watts">Power at high speed, by frequency; empty when unknown.</param>
/// <param name="Meaning">Whether it is at the shaft; null when unknown.</param>
public readonly record struct OutputPowerFacet(Sequence<AtFrequency> Watts, PowerMeaning? Meaning);

/// <summary>Does the motor give at least the old one's shaft power, and not far more?</summary>
/// <remarks>
/// High speed against high speed, at the site's frequency. Equal or one step up in the standard series is ordinary, two steps or more are to be checked (practice).
/// Input watts are an upper bound of the shaft's: they can show that a part is too small, never that it is large enough.
/// </remarks>
public sealed class OutputPower() : Aspect<MotorSpec, MotorSite, OutputPowerFacet>("Output power", isDeciding: true, MotorSources.NotLessPower, new(0.8, 0.5, 1.2))
{
    /// <inheritdoc/>
    public override OutputPowerFacet Read(MotorSpec part) => new(HighSpeed.Watts(part), part.PowerMeaning);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, OutputPowerFacet facet)
    {
        if (facet.Watts.Count == 0) return Finding.Unknown(Side.Part, "power", $"The part's power is not given.");
        var oldWatts = HighSpeed.Watts(need.Plate);
        if (oldWatts.Count == 0) return Finding.Unknown(Side.Plate, "power", $"The part gives {new RatedWatts(facet.Watts[0].Value)}; the old motor's power is not known.");
        var hertz = need.Site.SupplyFrequency?.Hertz;
        var olds = HighSpeed.At(oldWatts, hertz);
        var news = HighSpeed.At(facet.Watts, hertz);
        return OneVerdict.Of(
            olds.SelectMany(old => news.Select(watts => Compare(need.Plate.PowerMeaning, old, facet.Meaning, watts))),
            () => hertz is null ? Finding.Unknown(Side.Site, "supplyFrequency", $"The powers differ between 50 and 60 Hz, and the supply's frequency is not known.")
                : olds.Count > 1 ? Finding.Unknown(Side.Plate, "frequency", $"Whether the old powers are two speeds or two frequencies is not known.")
                : Finding.Unknown(Side.Part, "frequency", $"Whether the part's powers are two speeds or two frequencies is not given."));
    }

    private static Finding Compare(PowerMeaning? oldMeaning, double old, PowerMeaning? newMeaning, double watts)
    {
        var least = old * (1 - HorsepowerSeries.SameRating);
        if (!Within.AtLeast(watts, least))
        {
            return oldMeaning == PowerMeaning.Output
                ? Finding.Fails($"{new RatedWatts(watts)} is less than the old motor's {new RatedWatts(old)}.") with { Shortfall = (old - watts) / (old - least), Margin = new(watts - least, "W") }
                : Finding.Unknown(Side.Plate, oldMeaning is null ? "powerMeaning" : "power", $"The old motor's {new RatedWatts(old)} may be what it took, not what it gave: its shaft power is not known.");
        }

        if (newMeaning != PowerMeaning.Output)
        {
            return Finding.Unknown(Side.Part, newMeaning is null ? "powerMeaning" : "power", $"The part's {new RatedWatts(watts)} may be what it takes, not what it gives: its shaft power is not given.");
        }

        if (oldMeaning != PowerMeaning.Output)
        {
            Change check = new(SupplyChanges.CheckOversize, $"see that {new RatedWatts(watts)} is not far more than the fan needs");
            return Finding.MeetsWith([check], $"{new RatedWatts(watts)} at the shaft is not below the {new RatedWatts(old)} that the old motor took at most.");
        }

        return AtLeastAsMuch(old, watts);
    }

    private static Finding AtLeastAsMuch(double old, double watts)
    {
        var steps = HorsepowerSeries.StepsUp(old, watts);
        FormattableString sentence = steps == 0
            ? (FormattableString)$"{new RatedWatts(watts)}, and the old motor gave {new RatedWatts(old)}; not less is the limit."
            : $"{new RatedWatts(watts)} is {steps} standard size{(steps == 1 ? string.Empty : "s")} over the old {new RatedWatts(old)}; one is ordinary.";
        Change[] changes = steps > 1 ? [new(SupplyChanges.CheckOversize, $"see that circuit, mount and low speed suit {new RatedWatts(watts)} in place of {new RatedWatts(old)}")] : [];

        // Just under the old figure counts as the same rating; over it each size makes a poorer match: worse power factor, more weight.
        var under = Math.Max(0, (old - watts) / (old * HorsepowerSeries.SameRating));
        return Finding.MeetsWith(changes, sentence) with { Shortfall = steps > 0 ? Math.Min(1, 0.3 * steps) : Math.Min(1, under), Margin = new(watts - (old * (1 - HorsepowerSeries.SameRating)), "W") };
    }
}
