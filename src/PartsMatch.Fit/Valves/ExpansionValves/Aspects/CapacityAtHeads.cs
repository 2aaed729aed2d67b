using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>Is the valve neither too small nor too large at the least and at the greatest head?</summary>
/// <remarks>
/// 100 to 130 % of the load at both heads meets; down to 90 and up to 150 % is a check; beyond it fails, for a valve that is too large hunts and floods as surely as one that is too small starves. Edges belong to the milder side.
/// Where the load was not given, one of the old one's rating at the same conditions, within 10 %, meets.
/// </remarks>
public sealed class CapacityAtHeads() : Aspect<ExpansionValveSpec, ExpansionValveSite, RatingFacet>("Capacity", isDeciding: true, ExpansionValveSources.Rating, new(1.2, 0.6, 1.5))
{
    private const double LeastShare = 1;
    private const double MostShare = 1.3;
    private const double LeastChecked = 0.9;
    private const double MostChecked = 1.5;

    /// <summary>Off the old one's rating (practice).</summary>
    private const double OffOld = 0.1;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a capacity", "under the load", 100 * (1 - LeastShare), 100 * (1 - LeastChecked), "%") { Or = new("one", "over it", 100 * (MostShare - 1), 100 * (MostChecked - 1), "%") };

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["ratedCapacity", "ratedEvaporatingAt", "ratedDrop"], ["load", "condensingLeast", "condensingMost"])
    {
        Besides = ["refrigerant", "evaporatingAt", "subcooling", "lineLoss", "hasDistributor", "distributorLoss", "ratedWith", "ratedLiquidAt", "refrigerants"],
    };

    /// <inheritdoc/>
    public override RatingFacet Read(ExpansionValveSpec part) => RatingFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, RatingFacet facet)
    {
        if (facet.Missing is { } gap) return Finding.Unknown(Side.Part, gap, $"Its capacity, or a condition that it was given for, is not known.");
        var (heads, missing) = ExpansionCapacity.HeadsAt(need);
        if (need.Site.Load?.Watts is not { } load || heads is null) return AgainstOld(need, facet, need.Site.Load is null ? "load" : missing);
        var refrigerant = need.Site.Refrigerant!;
        if (!Refrigerants.All[facet.With].HasStates) return Finding.Unknown(Side.Part, "ratedWith", $"It is rated with {Refrigerants.All[facet.With].Name}, of which nothing can be computed here: size it by its maker's tables.");
        if (heads[0].Drop <= 0) return Finding.Fails($"At {new ShownTemperature(heads[0].Condensing)} condensing nothing drives refrigerant through any valve: the losses are larger than the difference of pressures.");
        if (ExpansionCapacity.Watts(facet, refrigerant, heads[0]) is not { } least || ExpansionCapacity.Watts(facet, refrigerant, heads[1]) is not { } most) return Finding.Unknown(Side.Site, "condensingMost", $"Its capacity cannot be computed at these temperatures.");
        var shares = Band.Around(least / load, most / load);
        var sentence = new Words(least, most, load, heads, shares);
        var shortfall = Math.Max(shares.Low < LeastShare ? (LeastShare - shares.Low) / (LeastShare - LeastChecked) : 0, shares.High > MostShare ? (shares.High - MostShare) / (MostChecked - MostShare) : 0);
        var margin = new Margin(Math.Min(shares.Low - LeastChecked, MostChecked - shares.High) * 100, "%");
        if (!Within.AtLeast(shares.Low, LeastChecked)) return Finding.Fails(margin, $"{sentence}: under {LeastChecked * 100} % it is too small.") with { Shortfall = shortfall };
        if (!Within.AtMost(shares.High, MostChecked)) return Finding.Fails(margin, $"{sentence}: over {MostChecked * 100} % it is too large.") with { Shortfall = shortfall };
        return Within.AtLeast(shares.Low, LeastShare) && Within.AtMost(shares.High, MostShare)
            ? Finding.Meets($"{sentence}: {LeastShare * 100} to {MostShare * 100} % are right.") with { Margin = margin }
            : Finding.MeetsWith([new(ExpansionValveChanges.CheckSuperheat, $"check superheat at both heads: it passes {shares.Low * 100:0} to {shares.High * 100:0} % of the load")], $"{sentence}: {LeastShare * 100} to {MostShare * 100} % are right, {LeastChecked * 100} to {MostChecked * 100} % are to be checked.") with { Shortfall = shortfall, Margin = margin };
    }

    private static Finding AgainstOld(ExpansionNeed need, RatingFacet facet, string unread)
    {
        var old = need.Once(static need => RatingFacet.Of(need.Plate));
        var bare = Uncomputable.Of(need.Site.Refrigerant);
        var missing = bare is null ? unread : "refrigerant";
        if (bare is not null && old.Watts is null) return Finding.Unknown(Side.Site, missing, $"It is rated {new ShownCapacity(facet.Watts!.Value)}; what a load asks for {bare}.");
        if (old.Missing is not null || old with { Watts = null } != facet with { Watts = null })
        {
            return Finding.Unknown(Side.Site, missing, bare is null
                ? (Reason)$"It is rated {new ShownCapacity(facet.Watts!.Value)}; the load or a condition there is not known."
                : $"It is rated {new ShownCapacity(facet.Watts!.Value)}, the old one is not known to be at the same conditions; what a load asks for {bare}.");
        }

        var off = Math.Abs((facet.Watts!.Value / old.Watts!.Value) - 1);
        if (Within.AtMost(off, OffOld)) return Finding.Meets($"It is rated {new ShownCapacity(facet.Watts.Value)}, the old one {new ShownCapacity(old.Watts.Value)} at the same conditions: within {OffOld * 100} %.") with { Shortfall = off / OffOld };
        return Finding.Unknown(Side.Site, missing, bare is null
            ? (Reason)$"It is rated {new ShownCapacity(facet.Watts.Value)}, the old one {new ShownCapacity(old.Watts.Value)} at the same conditions: over {OffOld * 100} % off, so the load has to be known."
            : $"It is rated {new ShownCapacity(facet.Watts.Value)}, the old one {new ShownCapacity(old.Watts.Value)} at the same conditions: over {OffOld * 100} % off, and what a load asks for {bare}.") with
        { Shortfall = 1 };
    }

    /// <summary>Capacities at both heads; formed only when they are shown.</summary>
    private readonly record struct Words(double Least, double Most, double Load, IReadOnlyList<Head> Heads, Band Shares)
    {
        public override string ToString() => FormattableString.Invariant(
            $"It passes {new ShownCapacity(Least)} at {new ShownTemperature(Heads[0].Condensing)} condensing and {new ShownCapacity(Most)} at {new ShownTemperature(Heads[1].Condensing)}, {Shares.Low * 100:0} to {Shares.High * 100:0} % of the load of {new ShownCapacity(Load)}");
    }
}
