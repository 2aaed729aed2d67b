using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>What is read of a valve while it is off.</summary>
/// <param name="By">What lets pressures equalise; null where not given.</param>
public readonly record struct OffTimeFacet(OffTimeWay? By);

/// <summary>Do the pressures come together where the compressor starts only then?</summary>
/// <remarks>A compressor of low starting torque behind a valve with neither a bleed port nor another way does not start: it fails.</remarks>
public sealed class OffTimeEqualising() : Aspect<ExpansionValveSpec, ExpansionValveSite, OffTimeFacet>("Equalising when off", isDeciding: false, ExpansionValveSources.OffTimeEqualising, new(0.3, 0.4, 0.6))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["equalisesOff"], ["lowStartingTorque"]);

    /// <inheritdoc/>
    public override OffTimeFacet Read(ExpansionValveSpec part) => new(part.EqualisesOff);

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, OffTimeFacet facet) => (need.Site.LowStartingTorque, facet.By) switch
    {
        (_, OffTimeWay.BleedPort) => Finding.Meets($"It has a bleed port: the pressures come together while it is off."),
        (_, OffTimeWay.Quick) => Finding.Meets($"Its charge or a passage in it lets the pressures come together quickly while it is off."),
        (false, _) => Finding.Meets($"The compressor starts against the difference of pressures."),
        (true, OffTimeWay.None) => Finding.Fails($"The compressor starts only once the pressures have come together; with neither a bleed port nor another way they do not."),
        (true, _) => Finding.Unknown(Side.Part, "equalisesOff", $"The compressor starts only once the pressures have come together; whether this one lets them is not given."),
        (null, _) when need.Plate.EqualisesOff is OffTimeWay.BleedPort or OffTimeWay.Quick => Finding.Unknown(Side.Site, "lowStartingTorque", $"The old valve let the pressures come together while it was off, this one {(facet.By is null ? "is not said to" : "does not")}; whether the compressor needs it is not known."),
        _ => Finding.Meets($"Nothing says that the compressor needs the pressures to come together."),
    };
}
