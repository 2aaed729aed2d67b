using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Physics;

namespace PartsMatch.Fit.Ignition;

/// <summary>What a refrigerant makes of its place.</summary>
internal static class BurningRefrigerant
{
    /// <summary>A refrigerant that burns is taken to reach what is put in there, until somebody says that it cannot. Ammonia, which burns too (B2L), is not: whether its room is classified follows from how that is aired and watched.</summary>
    /// <param name="refrigerant">It; null when not known.</param>
    public static IEnumerable<Deduction> Hazard(Refrigerant? refrigerant)
    {
        Hazard? hazard = refrigerant?.SafetyClass switch
        {
            "A2L" => Motors.Hazard.A2L,
            "A2" or "A3" => Motors.Hazard.A3,
            _ => null,
        };
        if (hazard is { } burns) yield return new(Side.Site, "hazard", Deducing.Text(burns), $"{refrigerant!.Name} is of class {refrigerant.SafetyClass} and burns", ["refrigerant"], IgnitionSources.Hazard);
    }

    /// <summary>The strictest of what is said of a place. A propane unit that somebody calls mildly flammable is one that burns well; that nothing of it can reach the part is another matter, and whoever says so is believed.</summary>
    /// <param name="said">What was said of the place, or follows from its refrigerant; null for nothing.</param>
    /// <param name="refrigerant">What is there; null when not known.</param>
    public static Hazard? Strictest(Hazard? said, Refrigerant? refrigerant) => IsUnderstated(said, refrigerant) ? Motors.Hazard.A3 : said;

    /// <summary>A place that is called milder than its refrigerant.</summary>
    public static IEnumerable<Contradiction> Understated(Hazard? said, Refrigerant? refrigerant)
    {
        if (IsUnderstated(said, refrigerant)) yield return new([], $"{refrigerant!.Name} is of class {refrigerant.SafetyClass} and burns well, and a mildly flammable one (A2L) is said to be there: the stricter is taken.", IgnitionSources.Hazard) { SiteFields = ["hazard", "refrigerant"] };
    }

    private static bool IsUnderstated(Hazard? said, Refrigerant? refrigerant) => said == Motors.Hazard.A2L && refrigerant is { SafetyClass: "A2" or "A3" };
}
