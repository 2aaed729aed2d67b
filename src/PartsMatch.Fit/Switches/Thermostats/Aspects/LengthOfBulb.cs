using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Thermostats.Aspects;

/// <summary>What the length of its bulb reads of a thermostat.</summary>
/// <param name="Millimetres">How long it is, mm; null when not known.</param>
/// <param name="HasNone">Whether it is a disc, or feels along its capillary.</param>
public readonly record struct BulbLengthFacet(double? Millimetres, bool HasNone);

/// <summary>Does its bulb go in where the old one was?</summary>
/// <remarks>No longer than the room for it, the edge included. Where that is not known, one no longer than the old one's meets; a longer one may still go in. Discs and averaging capillaries have none.</remarks>
public sealed class LengthOfBulb() : Aspect<ThermostatSpec, ThermostatSite, BulbLengthFacet>("Bulb length", isDeciding: false, ThermostatSources.BulbLength, new(0.3, 0.5, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["bulbLength"], ["bulbRoom"]) { Besides = ["bulb"] };

    /// <inheritdoc/>
    public override BulbLengthFacet Read(ThermostatSpec part) => new(Rounded.Millimetres(part.BulbLength), FormOfBulb.HasNoBulb(part.Bulb));

    /// <inheritdoc/>
    public override Finding Judge(ThermostatNeed need, BulbLengthFacet facet)
    {
        if (facet.HasNone) return Finding.Meets($"It has no bulb that needs a length.");
        var (room, old) = (Rounded.Millimetres(need.Site.BulbRoom), Rounded.Millimetres(need.Plate.BulbLength));
        if ((room ?? old) is not { } most) return Finding.Unknown(Side.Site, "bulbRoom", $"How much room there is for a bulb is not known.");
        if (facet.Millimetres is not { } length) return Finding.Unknown(Side.Part, "bulbLength", $"{(room is null ? "The old bulb is" : "There is room for")} {new Shown(most)}; how long its bulb is, is not known.");
        return (Within.AtMost(length, most), room) switch
        {
            (true, { }) => Finding.Meets($"Its bulb is {new Shown(length)} long; there is room for {new Shown(most)}.") with { Margin = new(most - length, "mm") },
            (false, { }) => Finding.Fails(new Margin(most - length, "mm"), $"Its bulb is {new Shown(length)} long; there is room for {new Shown(most)}."),
            (true, null) => Finding.Meets($"Its bulb is {new Shown(length)} long, the old one's {new Shown(most)}."),
            _ => Finding.Unknown(Side.Site, "bulbRoom", $"Its bulb is {new Shown(length)} long, the old one's {new Shown(most)}; whether there is room for it is not known."),
        };
    }
}
