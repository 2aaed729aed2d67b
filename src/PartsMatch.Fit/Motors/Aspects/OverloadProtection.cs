using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What overload protection reads of a motor.</summary>
/// <param name="Inside">What guards its winding; null when unknown.</param>
public readonly record struct ProtectionFacet(Protection? Inside);

/// <summary>Is the winding guarded against overload, in the motor or in the circuit, and does it come back as the old one did?</summary>
/// <remarks>
/// None in the motor and none in the circuit fails. A setting of an overload device in the circuit says that there is one.
/// An automatic protector where the old was manual restarts without warning; a manual one where the old was not, or is not known, must be within somebody's reach.
/// </remarks>
public sealed class OverloadProtection() : Aspect<MotorSpec, MotorSite, ProtectionFacet>("Overload protection", isDeciding: false, CircuitSources.Overload, new(0.4, 0.5, 0.4))
{
    /// <summary>A restart nobody expects is no limit passed, but a worse match (practice).</summary>
    private const double RestartsUnexpected = 0.5;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["protection"], ["overloadInCircuit", "overloadSetting"]);

    /// <inheritdoc/>
    public override ProtectionFacet Read(MotorSpec part) => new(part.Protection);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, ProtectionFacet facet) => facet.Inside switch
    {
        null => Finding.Unknown(Side.Part, "protection", $"Whether a protector is inside this motor is not given; with none, the circuit needs an overload device."),
        Protection.None => InCircuit(need.Site),
        Protection.Impedance => Finding.Meets($"Its winding bears a locked rotor without a protector."),
        Protection.Manual => need.Plate.Protection == Protection.Manual
            ? Finding.Meets($"Its protector is reset by hand, as the old one's was.")
            : Finding.MeetsWith([new(CircuitChanges.CheckReset, $"see that somebody can reach the protector's button: it stays off until it is pressed")], $"Its protector is reset by hand: once tripped, the fan stays off until somebody comes."),
        Protection.Automatic => BySelf(need, $"Its protector resets by itself.", $"Its protector resets by itself, the old one's was reset by hand: it restarts without warning."),
        _ => BySelf(need, $"It has a thermal protector.", $"How its thermal protector resets is not given, and the old one's was reset by hand: it may restart without warning."),
    };

    private static Finding BySelf(MotorNeed need, Reason sentence, FormattableString caution) =>
        need.Plate.Protection == Protection.Manual ? Finding.Meets(sentence) with { CautionWords = caution, Shortfall = RestartsUnexpected } : Finding.Meets(sentence);

    private static Finding InCircuit(MotorSite site) => (site.OverloadInCircuit ?? (site.OverloadSetting is null ? null : true)) switch
    {
        true => Finding.Meets($"It has no protector inside; the overload device in the circuit guards it."),
        false => Finding.Fails($"It has no protector inside, and there is no overload device in the circuit: one of the two is needed."),
        null => Finding.Unknown(Side.Site, "overloadInCircuit", $"It has no protector inside, so an overload device in the circuit must guard it."),
    };
}
