using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a valve's working pressure.</summary>
/// <param name="Most">Gauge pressure that its body may hold, kPa; null where not given.</param>
public readonly record struct PressureFacet(double? Most);

/// <summary>May the body hold the design pressure of its side?</summary>
/// <remarks>At least the design pressure, edge included; where that was not read, no less than the old one's meets.</remarks>
public sealed class BodyPressure() : Aspect<SolenoidValveSpec, SolenoidValveSite, PressureFacet>("Working pressure", isDeciding: true, ValveSources.WorkingPressure, new(0.3, 0.5, 1.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["workingPressure"], ["designPressure"]);

    /// <inheritdoc/>
    public override PressureFacet Read(SolenoidValveSpec part) => new(Rounded.Kilopascal(part.WorkingPressure));

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, PressureFacet facet)
    {
        if (facet.Most is not { } most) return Finding.Unknown(Side.Part, "workingPressure", $"The pressure that its body may hold is not given.");
        if (Rounded.Kilopascal(need.Site.DesignPressure) is { } design)
        {
            FormattableString sentence = $"Its body may hold {new ShownPressure(most)}; its side is designed for {new ShownPressure(design)}.";
            return (Within.AtLeast(most, design) ? Finding.Meets(sentence) : Finding.Fails(sentence)) with { Margin = new(most - design, "kPa") };
        }

        if (Rounded.Kilopascal(need.Plate.WorkingPressure) is not { } old) return Finding.Unknown(Side.Site, "designPressure", $"Its body may hold {new ShownPressure(most)}; the design pressure there is not known.");
        return Within.AtLeast(most, old)
            ? Finding.Meets($"Its body may hold {new ShownPressure(most)}, no less than the old one's {new ShownPressure(old)}.")
            : Finding.Unknown(Side.Site, "designPressure", $"Its body may hold {new ShownPressure(most)}, less than the old one's {new ShownPressure(old)}; the design pressure there is not known.") with { Shortfall = 1 };
    }
}
