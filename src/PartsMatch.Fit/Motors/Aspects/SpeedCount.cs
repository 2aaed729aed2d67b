using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>As many speeds as are used, and what becomes of the others.</summary>
internal static class SpeedCount
{
    /// <summary>The unknown that stands in the way when the old motor had several speeds; null when nothing does.</summary>
    public static Finding? Missing(MotorNeed need, SpeedFacet facet)
    {
        var used = need.Site.SpeedsUsed;
        var wanted = used ?? need.Plate.Speeds;
        if (wanted > 1 && facet.Speeds is null) return Finding.Unknown(Side.Part, "speeds", $"{wanted} speeds are wanted; how many the part has is not given.");
        return used is null && facet.Speeds < wanted
            ? Finding.Unknown(Side.Site, "speedsUsed", $"The old motor had {wanted} speeds and the part has {facet.Speeds}.") with { Shortfall = 1 }
            : null;
    }

    /// <summary>What the number of speeds asks for.</summary>
    public static IReadOnlyList<Change> Changes(MotorNeed need, SpeedFacet facet)
    {
        var wanted = need.Site.SpeedsUsed ?? need.Plate.Speeds;
        List<Change> changes = [];
        if (facet.Speeds > (wanted ?? 1)) changes.Add(new(SupplyChanges.CapSpeedLeads, $"cap the unused speed leads one by one: it has {facet.Speeds} speeds") { Kit = [SafeSteps.Connectors(facet.Speeds.Value - (wanted ?? 1))] });
        if (wanted > 1 && facet.Means == SpeedMeans.TappedWinding && need.Plate.SpeedMeans == SpeedMeans.SeparateWindings && SpeedPairs.Of(need, facet.Lower, facet.Means).Count == 0)
        {
            changes.Add(new(SupplyChanges.CheckLowSpeed, $"check its low speed: the old motor had a winding of its own for it, this one a tap that slips more"));
        }

        return changes;
    }
}
