using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors.Aspects;

/// <summary>What the height reads of a capacitor.</summary>
/// <param name="Height">Of the can without terminals, mm; null when not known.</param>
public readonly record struct HeightFacet(double? Height);

/// <summary>Is there room for the can's height, with terminals and wires on it?</summary>
/// <remarks>3/4 in is left over the can for them (practice). Without a measured room, a can no taller than the old one meets.</remarks>
public sealed class CanHeight() : Aspect<CapacitorSpec, CapacitorSite, HeightFacet>("Can height", isDeciding: false, CapacitorSources.CapacitorCan, new(0.3, 0.5, 0.4))
{
    /// <summary>Terminals and wires over the can, 3/4 in, in mm (practice).</summary>
    private const double Terminals = 19.05;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["height"], ["heightRoom"]);

    /// <inheritdoc/>
    public override HeightFacet Read(CapacitorSpec part) => new(Rounded.Millimetres(part.Height));

    /// <inheritdoc/>
    public override Finding Judge(CapacitorNeed need, HeightFacet facet)
    {
        var room = Rounded.Millimetres(need.Site.HeightRoom);
        var old = Rounded.Millimetres(need.Plate.Height);
        return (room, old, facet.Height) switch
        {
            (null, null, _) => Finding.Unknown(Side.Site, "heightRoom", $"The room for the can's height, or the old can's height, is not known."),
            (_, _, null) => Finding.Unknown(Side.Part, "height", $"The can's height is not known."),
            ({ } most, _, { } height) when Within.AtMost(height + Terminals, most) => Finding.Meets($"Its can of {new Shown(height)}, with 3/4 in for the terminals, goes into {new Shown(most)}.") with { Margin = new(most - height - Terminals, "mm") },
            ({ } most, _, { } height) => Finding.Fails($"Its can of {new Shown(height)}, with 3/4 in for the terminals, does not go into {new Shown(most)}.") with { Margin = new(most - height - Terminals, "mm") },
            (null, { } before, { } height) when Within.AtMost(height, before) => Finding.Meets($"Its can of {new Shown(height)} is no taller than the old one of {new Shown(before)}."),
            (null, { } before, { } height) => Finding.Unknown(Side.Site, "heightRoom", $"Its can of {new Shown(height)} is taller than the old one of {new Shown(before)}; the room there is not known."),
        };
    }
}
