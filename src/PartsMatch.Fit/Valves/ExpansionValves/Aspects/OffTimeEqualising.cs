using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>What is read of a valve's bleed port.</summary>
/// <param name="Bleeds">Whether it lets pressures equalise while it is off; null where not given.</param>
public readonly record struct BleedFacet(bool? Bleeds);

/// <summary>Do the pressures come together where the compressor starts only then?</summary>
/// <remarks>A compressor of low starting torque behind a valve without a bleed port does not start: it fails.</remarks>
public sealed class OffTimeEqualising() : Aspect<ExpansionValveSpec, ExpansionValveSite, BleedFacet>("Equalising when off", isDeciding: false, ExpansionValveSources.OffTimeEqualising, new(0.3, 0.4, 0.6))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["bleedPort"], ["lowStartingTorque"]);

    /// <inheritdoc/>
    public override BleedFacet Read(ExpansionValveSpec part) => new(part.BleedPort);

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, BleedFacet facet) => (need.Site.LowStartingTorque, facet.Bleeds) switch
    {
        (_, true) => Finding.Meets($"It has a bleed port: the pressures come together while it is off."),
        (false, _) => Finding.Meets($"The compressor starts against the difference of pressures."),
        (true, false) => Finding.Fails($"The compressor starts only once the pressures have come together; without a bleed port they do not."),
        (true, null) => Finding.Unknown(Side.Part, "bleedPort", $"The compressor starts only once the pressures have come together; whether it has a bleed port is not given."),
        (null, _) when need.Plate.BleedPort == true => Finding.Unknown(Side.Site, "lowStartingTorque", $"The old valve had a bleed port, this one is not said to have; whether the compressor needs it is not known."),
        _ => Finding.Meets($"Nothing says that the compressor needs the pressures to come together."),
    };
}
