using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves;

/// <summary>What is read of a valve's working pressure.</summary>
/// <param name="Most">Gauge pressure that its body may hold, kPa; null where not given.</param>
public readonly record struct PressureFacet(double? Most);

/// <summary>May a valve's body hold the design pressure of its side?</summary>
internal static class ValvePressure
{
    /// <summary>At least the design pressure, edge included; where that was not read, no less than the old one's meets.</summary>
    /// <param name="facet">The part's.</param>
    /// <param name="designed">The design pressure there, kPa gauge; null where not known.</param>
    /// <param name="oldMost">The old one's, kPa gauge; null where not known.</param>
    public static Finding Judge(PressureFacet facet, double? designed, double? oldMost)
    {
        if (facet.Most is not { } most) return Finding.Unknown(Side.Part, "workingPressure", $"The pressure that its body may hold is not given.");
        if (designed is { } design)
        {
            Reason sentence = $"Its body may hold {new ShownPressure(most)}; its side is designed for {new ShownPressure(design)}.";
            return (Within.AtLeast(most, design) ? Finding.Meets(sentence) : Finding.Fails(sentence)) with { Margin = new(most - design, "kPa") };
        }

        if (oldMost is not { } old) return Finding.Unknown(Side.Site, "designPressure", $"Its body may hold {new ShownPressure(most)}; the design pressure there is not known.");
        return Within.AtLeast(most, old)
            ? Finding.Meets($"Its body may hold {new ShownPressure(most)}, no less than the old one's {new ShownPressure(old)}.")
            : Finding.Unknown(Side.Site, "designPressure", $"Its body may hold {new ShownPressure(most)}, less than the old one's {new ShownPressure(old)}; the design pressure there is not known.") with { Shortfall = 1 };
    }
}
