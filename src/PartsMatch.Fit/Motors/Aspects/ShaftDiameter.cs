using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the shaft's diameter reads of a motor.</summary>
/// <param name="Millimetres">The diameter; null when not known.</param>
public readonly record struct DiameterFacet(double? Millimetres);

/// <summary>Does the shaft go into the fan's hub without play?</summary>
/// <remarks>Equal within 0.04 mm meets; smaller by a stocked bushing is a change, smaller otherwise and larger fail.</remarks>
public sealed class ShaftDiameter() : Aspect<MotorSpec, MotorSite, DiameterFacet>("Shaft diameter", isDeciding: true, BodySources.ShaftDiameter, new(0.3, 1, 1.2))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a shaft", "off the hub's bore", 0, ShaftBushings.Tolerance, "mm");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["shaftDiameter"], ["hubBore", "newBladeBore", "bladeStays"]);

    /// <inheritdoc/>
    public override DiameterFacet Read(MotorSpec part) => new(Rounded.Millimetres(part.ShaftDiameter));

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, DiameterFacet facet)
    {
        // Where the blade goes, its hub goes with it.
        var goes = need.Site.BladeStays == false;
        if (goes && need.Site.NewBladeBore is null) return Finding.Unknown(Side.Site, "newBladeBore", $"The old blade goes, and the shaft must fit the new one's bore.");
        if (need.Once(static need => Rounded.Millimetres(need.Site.BladeStays == false ? need.Site.NewBladeBore : need.Site.HubBore ?? need.Plate.ShaftDiameter)) is not { } bore) return Finding.Unknown(Side.Plate, "shaftDiameter", $"The bore of the hub, or the old shaft's diameter, is not known.");
        if (facet.Millimetres is not { } shaft) return Finding.Unknown(Side.Part, "shaftDiameter", $"The hub takes {new Shown(bore)}; the motor's shaft diameter is not known.");
        if (ShaftBushings.Agree(shaft, bore))
        {
            var apart = Math.Abs(shaft - bore);
            return Finding.Meets($"Its shaft of {new Shown(shaft)} fits the hub's {new Shown(bore)}, within 0.04 mm.") with
            {
                Shortfall = apart / ShaftBushings.Tolerance,
                Margin = new(ShaftBushings.Tolerance - apart, "mm"),
            };
        }

        if (shaft > bore) return Finding.Fails($"Its shaft of {new Shown(shaft)} does not go into the hub's {new Shown(bore)}; at most 0.04 mm over would.");
        return ShaftBushings.Takes(shaft, bore)
            ? Finding.MeetsWith([new(BodyChanges.FitBushing, $"fit a bushing from a {new Shown(shaft)} shaft to a {new Shown(bore)} hub") { Kit = [new($"bushing, {new Shown(shaft)} bore, {new Shown(bore)} outside")] }], $"Its shaft of {new Shown(shaft)} is smaller than the hub's {new Shown(bore)}; a bushing of that size is stocked.")
            : Finding.Fails($"Its shaft of {new Shown(shaft)} has play in the hub's {new Shown(bore)}, and no bushing of that size is stocked.");
    }
}
