using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors.Aspects;

/// <summary>What the strap reads of a capacitor.</summary>
/// <param name="Can">Round or oval; null when not known.</param>
/// <param name="Diameter">Across the can, the wider way, mm; null when not known.</param>
public readonly record struct CanFacet(CanShape? Can, double? Diameter);

/// <summary>Does the strap that is there hold the can?</summary>
/// <remarks>The same shape and within 1/16 in of its diameter; another strap is a change (practice).</remarks>
public sealed class Strap() : Aspect<CapacitorSpec, CapacitorSite, CanFacet>("Can and strap", isDeciding: false, CapacitorSources.CapacitorCan, new(0.3, 0.6, 0.4))
{
    /// <summary>1/16 in, in mm.</summary>
    private const double Tolerance = 1.59;

    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a can", "off the strap there", 0, Tolerance, "mm");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["can", "diameter"], ["strapHolds", "strapDiameter"]);

    /// <inheritdoc/>
    public override CanFacet Read(CapacitorSpec part) => new(part.Can, Rounded.Millimetres(part.Diameter));

    /// <inheritdoc/>
    public override Finding Judge(CapacitorNeed need, CanFacet facet)
    {
        var shape = need.Site.StrapHolds ?? need.Plate.Can;
        var diameter = Rounded.Millimetres(need.Site.StrapDiameter ?? need.Plate.Diameter);
        if (shape is { } round && facet.Can is { } can && can != round)
        {
            return Finding.MeetsWith([new(CapacitorChanges.FitStrap, $"fit a strap for {Across(can, facet.Diameter)}; the one there holds {Across(round, diameter)}") { Kit = [new($"strap for {Across(can, facet.Diameter)}")] }], $"Its can is {new Spelt<CanShape>(can)}; the strap there holds {Across(round, diameter)}.");
        }

        if (diameter is { } held && facet.Diameter is { } wide && !Within.AtMost(Math.Abs(wide - held), Tolerance))
        {
            return Finding.MeetsWith([new(CapacitorChanges.FitStrap, $"fit a strap for a can of {new Shown(wide)}; the one there holds {new Shown(held)}") { Kit = [new($"strap for a can of {new Shown(wide)}")] }], $"Its can is {new Shown(wide)} across; the strap there holds {new Shown(held)} within 1/16 in.");
        }

        return (shape, diameter, facet.Can, facet.Diameter) switch
        {
            (null, _, _, _) => Finding.Unknown(Side.Plate, "can", $"Whether the strap there holds a round or an oval can is not known."),
            (_, null, _, _) => Finding.Unknown(Side.Plate, "diameter", $"The diameter that the strap there holds is not known."),
            (_, _, null, _) => Finding.Unknown(Side.Part, "can", $"The strap there holds {Across(shape.Value, diameter)}; the can's shape is not known."),
            (_, _, _, null) => Finding.Unknown(Side.Part, "diameter", $"The strap there holds {Across(shape.Value, diameter)}; the can's diameter is not known."),
            ({ } same, { } there, _, { } across) => Finding.Meets($"Its can of {new Shown(across)} sits in the strap there, which holds {Across(same, there)} within 1/16 in.") with { Shortfall = Math.Abs(across - there) / Tolerance, Margin = new(Tolerance - Math.Abs(across - there), "mm") },
        };
    }

    private static CanAcross Across(CanShape shape, double? diameter) => new(shape, diameter);

    /// <summary>A can in a sentence, formed only when that is shown.</summary>
    private readonly record struct CanAcross(CanShape Shape, double? Diameter)
    {
        public override string ToString()
        {
            var can = Shape == CanShape.Oval ? "an oval can" : "a round can";
            return Diameter is { } across ? $"{can} of {new Shown(across)}" : can;
        }
    }
}
