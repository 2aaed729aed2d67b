using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Is the coil, or another one that the body takes, made for the control circuit's volts and frequency?</summary>
/// <remarks>
/// From 85 % of its volts to 110 %, of a span from 85 % of the lower end to 110 % of the higher; within 5 % of its frequency, or direct current for such; edges included. Another coil listed for the body is a change, with its number in the kit.
/// Where no volts were measured, a coil for all volts that the old one was marked for meets, and one that none of them could feed fails.
/// </remarks>
public sealed class Coil() : Aspect<ContactorSpec, ContactorSite, CoilFacet>("Coil", isDeciding: true, ContactorSources.Coil, new(0.6, 0.7, 1.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = CoilOnSupply.Measure(ContactorCoils.Window, ContactorCoils.Names);

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["coilVolts", "coilFrequency", "furtherCoils"], ["controlVolts", "controlFrequency", "controlCurrent"]) { Besides = ["coilCurrent"] };

    /// <inheritdoc/>
    public override CoilFacet Read(ContactorSpec part) => CoilFacet.Of(part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, CoilFacet facet) => CoilOnSupply.Judge(facet, ContactorCoils.Supply(need), ContactorCoils.Window, ContactorCoils.Names);
}
