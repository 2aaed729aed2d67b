using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a valve's opening differential.</summary>
/// <param name="Most">The largest difference that it opens against, kPa; null where not given.</param>
/// <param name="Direct">The same with a coil for direct current, where that is given beside it, kPa.</param>
/// <param name="Coils">Its coils, without their numbers.</param>
public readonly record struct OpeningFacet(double? Most, double? Direct, CoilFacet Coils);

/// <summary>Does the valve open against the largest difference that the system sees?</summary>
/// <remarks>
/// Highest inlet less lowest outlet pressure; where these were not read, one that opens against no less than the old one did meets.
/// It is given for the coil that comes on the valve; where one for direct current stands beside it, and that coil's kind is not given, both have to be enough, but where alternating current is there. Where one for the other kind of current goes in, it tells as much as that direct current lifts less: what is too little with alternating current is too little with direct current, what is enough with direct current is enough with alternating current, and else it is unknown.
/// </remarks>
public sealed class OpensAgainst() : Aspect<SolenoidValveSpec, SolenoidValveSite, OpeningFacet>("Opening differential", isDeciding: true, SolenoidValveSources.OpeningDifferential, new(0.8, 0.5, 1.5))
{
    /// <summary>Up to this share of what it opens against nobody would give it a thought (practice).</summary>
    private const double Easy = 0.8;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a pressure difference", "of the most that it opens against", 100 * Easy, 100, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["openingDifferential", "directDifferential"], ["inletMost", "outletLeast"])
    {
        Besides = ["furtherCoils", "coilVolts", "coilFrequency", "coilCurrent", "coilSupplyVolts", "coilSupplyFrequency", "coilSupplyCurrent"],
    };

    /// <inheritdoc/>
    public override OpeningFacet Read(SolenoidValveSpec part) => new(
        Rounded.Kilopascal(part.OpeningDifferential),
        Rounded.Kilopascal(part.DirectDifferential),
        CoilFacet.Unnumbered(part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils));

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, OpeningFacet facet)
    {
        var supply = SolenoidCoils.Supply(need);
        var own = facet.Coils.Own.Count > 0 ? facet.Coils.Own[0].Current : null;
        var possible = CoilGoingIn.Possible(facet.Coils, supply, SolenoidCoils.Window);
        return OneVerdict.Of(
            possible.Select(coil => coil.IsOwn ? WithOwn(need, facet, own ?? OnAlternating(supply), coil) : With(need, OpensUpTo.With(facet.Most, facet.Direct, own, coil.Coil[0].Current!.Value), coil)),
            () => WhichOne(CoilOnSupply.MissingOf(possible[0].Coil, supply, SolenoidCoils.Window, SolenoidCoils.Names)));
    }

    /// <summary>A coil that runs on alternating current is for that; null where that is not known to be there.</summary>
    private static CoilCurrent? OnAlternating(CoilSupply supply) => supply.Current == CoilCurrent.Alternating ? CoilCurrent.Alternating : null;

    /// <summary>Of two figures, one for each kind of current, both are possible with a coil of which the kind is not given.</summary>
    private static Finding WithOwn(SolenoidNeed need, OpeningFacet facet, CoilCurrent? own, CoilChoice coil) => (own, facet) is (null, { Most: { } most, Direct: { } direct })
        ? OneVerdict.Of(
            ((CoilCurrent[])[CoilCurrent.Alternating, CoilCurrent.Direct]).Select(one => With(need, OpensUpTo.WithOwn(most, direct, one), coil)),
            () => Finding.Unknown(Side.Part, "coilCurrent", $"It opens against {new ShownPressure(most)}, and with direct current against {new ShownPressure(direct)}; for which its coil is made is not given."))
        : With(need, OpensUpTo.WithOwn(facet.Most, facet.Direct, own), coil);

    private static Finding With(SolenoidNeed need, OpensUpTo opens, CoilChoice coil)
    {
        if (opens.Most is not { } most) return Finding.Unknown(Side.Part, "openingDifferential", $"The largest differential that it opens against is not given.");
        if (opens.Bound == OpeningBound.Unknown) return Finding.Unknown(Side.Part, "coilCurrent", $"{new CoilName(coil.Coil[0])} would go in; for which kind of current the {new ShownPressure(most)} that it opens against are given is not known.");
        if (Rounded.Kilopascal(need.Site.InletMost) is { } inlet && Rounded.Kilopascal(need.Site.OutletLeast) is { } outlet)
        {
            var needed = inlet - outlet;
            Reason sentence = $"From {new ShownPressure(inlet)} before it to {new ShownPressure(outlet)} behind it are {new ShownPressure(needed)}; it opens against {new ShownPressure(most)} at most{new Though(opens.Bound)}.";
            var margin = new Margin(Math.Abs(most - needed) <= Rounded.OffBy(3) ? 0 : most - needed, "kPa");
            var isEnough = margin.Value >= 0;
            if (Gap(opens.Bound, isEnough) is { } gap) return Finding.Unknown(Side.Part, gap, $"{new CoilName(coil.Coil[0])} would go in; from {new ShownPressure(inlet)} before it to {new ShownPressure(outlet)} behind it are {new ShownPressure(needed)}, and what it opens against is given{new Kind(opens.Bound)} alone, {new ShownPressure(most)}.");
            return (isEnough ? Finding.Meets(sentence) : Finding.Fails(sentence)) with { Shortfall = Math.Max(0, ((needed / Math.Max(most, 1)) - Easy) / (1 - Easy)), Margin = margin };
        }

        var missing = need.Site.InletMost is null ? "inletMost" : "outletLeast";
        if (OfOld(need) is not { } old) return Finding.Unknown(Side.Site, missing, $"It opens against {new ShownPressure(most)}; the pressures before and behind it are not known.");
        var isNoLess = Within.AtLeast(most, old);
        if (Gap(opens.Bound, isNoLess) is { } lacks) return Finding.Unknown(Side.Part, lacks, $"{new CoilName(coil.Coil[0])} would go in; the old one opened against {new ShownPressure(old)}, and what this one opens against is given{new Kind(opens.Bound)} alone, {new ShownPressure(most)}.");
        return isNoLess
            ? Finding.Meets($"It opens against {new ShownPressure(most)}{new Though(opens.Bound)}, no less than the old one's {new ShownPressure(old)}.")
            : Finding.Unknown(Side.Site, missing, $"It opens against {new ShownPressure(most)}, less than the old one's {new ShownPressure(old)}; the pressures before and behind it are not known.") with { Shortfall = 1 };
    }

    /// <summary>The part's field that would tell; null where what is given tells already.</summary>
    private static string? Gap(OpeningBound bound, bool isEnough) => (bound, isEnough) switch
    {
        (OpeningBound.AtMost, true) => "directDifferential",
        (OpeningBound.AtLeast, false) => "openingDifferential",
        _ => null,
    };

    private static double? OfOld(SolenoidNeed need) => OpensUpTo.WithOwn(Rounded.Kilopascal(need.Plate.OpeningDifferential), Rounded.Kilopascal(need.Plate.DirectDifferential), need.Plate.CoilCurrent).Most;

    private static Finding WhichOne(Missing missing) => Finding.Unknown(missing.Side, missing.Field, $"Which of its coils goes in is not known, and so not what it opens against.");

    /// <summary>The kind of current that a figure is given with; formed only when it is shown.</summary>
    private readonly record struct Kind(OpeningBound Bound)
    {
        public override string ToString() => Bound == OpeningBound.AtMost ? " with alternating current" : " with direct current";
    }

    /// <summary>That a figure is given for the other kind of current, and tells nevertheless; formed only when it is shown.</summary>
    private readonly record struct Though(OpeningBound Bound)
    {
        public override string ToString() => Bound switch
        {
            OpeningBound.AtMost => " with alternating current, and less with its coil for direct current",
            OpeningBound.AtLeast => " with direct current, and no less with its coil for alternating current",
            _ => string.Empty,
        };
    }
}
