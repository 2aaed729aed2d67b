using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the cooling air reads of a motor.</summary>
/// <param name="IsAirOver">Whether it is cooled by the fan that it drives; null when its enclosure is not known.</param>
public readonly record struct CoolingFacet(bool? IsAirOver);

/// <summary>Does the motor get the air that cools it?</summary>
/// <remarks>An air-over motor has no rating outside its own fan's air. Where the old motor was one, or a propeller sits on the shaft, that air is taken to be there.</remarks>
public sealed class MotorCooling() : Aspect<MotorSpec, MotorSite, CoolingFacet>("Cooling air", isDeciding: false, PlaceSources.AirOver, new(0, 0.5, 0.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["enclosure"], ["coolingAir"]);

    /// <inheritdoc/>
    public override CoolingFacet Read(MotorSpec part) => new(part.Enclosure is { } enclosure ? PlaceDeductions.IsAirOver(enclosure) : null);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, CoolingFacet facet) => (facet.IsAirOver, need.Site.CoolingAir) switch
    {
        (false, _) => Finding.Meets($"It cools without the air of the fan that it drives."),
        (_, CoolingAir.InAirstream) => Finding.Meets($"It sits in its own fan's air, which cools any motor."),
        (true, CoolingAir.StillAir) => Finding.Fails($"It is an air-over motor: it carries its rating only in its own fan's air, and here it would sit outside it."),
        (true, _) => Finding.Unknown(Side.Site, "coolingAir", $"It is an air-over motor: it carries its rating only in its own fan's air."),
        (null, _) => Finding.Unknown(Side.Part, "enclosure", $"Whether it is an air-over motor, for its own fan's air only, is not known."),
    };
}
