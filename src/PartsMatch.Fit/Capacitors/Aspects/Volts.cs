using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors.Aspects;

/// <summary>What volts read of a capacitor.</summary>
/// <param name="Marked">The marked volts; null when not known.</param>
public readonly record struct VoltsFacet(double? Marked);

/// <summary>Is the capacitor made for at least the volts that the motor's plate asks for?</summary>
/// <remarks>Exactly the plate's volts meet; more is as good; less fails, whatever the line has.</remarks>
public sealed class Volts() : Aspect<CapacitorSpec, CapacitorSite, VoltsFacet>("Capacitor volts", isDeciding: true, CapacitorSources.CapacitorVolts, new(0.5, 1, 4))
{
    /// <summary>Too few volts burst it: without them a part rather does not fit (practice).</summary>
    public override double OpenReadingPenalty => DefaultWeight.Unknown;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["rating"], ["motorAsksFor", "secondMotorAsksFor"]);

    /// <inheritdoc/>
    public override VoltsFacet Read(CapacitorSpec part) => new(Rounded.Volts(part.Rating?.Volts));

    /// <inheritdoc/>
    public override Finding Judge(CapacitorNeed need, VoltsFacet facet)
    {
        var asked = Asked.Of(need);
        if (asked.LeastVolts is not { } least) return Finding.Unknown(Side.Plate, "rating", $"The volts that the motor asks for are not known.");
        if (facet.Marked is not { } marked) return Finding.Unknown(Side.Part, "rating", $"The motor asks for {least} V at least; the capacitor's volts are not known.");
        if (!Within.AtLeast(marked, least)) return Finding.Fails($"It is made for {marked} V; the motor asks for {least} V at least.") with { Margin = new(marked - least, "V") };
        return asked.Volts is null
            ? Finding.Unknown(Side.Site, need.Site.SecondMotorAsksFor is { Volts: null, IsNone: false } ? "secondMotorAsksFor" : "motorAsksFor", $"It is made for {marked} V; the volts that one of the motors asks for are not known.")
            : Finding.Meets($"It is made for {marked} V; the motor asks for {least} V at least.") with { Margin = new(marked - least, "V") };
    }
}
