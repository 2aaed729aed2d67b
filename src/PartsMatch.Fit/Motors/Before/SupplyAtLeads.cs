using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Before;

/// <summary>Does a tap of the motor take the volts at its leads?</summary>
/// <remarks>Within 10 % of the tap that it is connected for; of any tap where that is not known (NEMA MG 1 12.44).</remarks>
public sealed class SupplyAtLeads() : ReadingRule<MotorCase>("Supply against the plate", MotorSources.Running)
{
    /// <inheritdoc/>
    public override Ruling? Judge(MotorCase one)
    {
        if (one.HasVolts != true) return null;
        if (one.HasLostLeg) return Ruling.NotApplicable($"A leg is lost: the mean of the three says nothing about the tap.");
        var volts = one.Volts.Average();
        if (one.Taps.Count == 0) return Ruling.CantTell($"{volts:0.#} V at its leads; the plate's volts are not known.");
        var tap = one.Taps.MinBy(each => each.Off(volts));
        FormattableString limit = $"{tap.Least:0.#} to {tap.Most:0.#} V";
        return tap.Takes(volts)
            ? Ruling.Good($"{volts:0.#} V at its leads; the {tap} tap takes {tap.Least:0.#} to {tap.Most:0.#} V.", limit)
            : Ruling.Bad($"{volts:0.#} V at its leads; the {tap} tap takes {tap.Least:0.#} to {tap.Most:0.#} V. {(IsFarOff(one) ? $"A {tap} motor does not belong on {volts:0.#} V: find out why it was there" : "Mend the supply or set the right tap")} first.", limit).NotThePart();
    }

    /// <summary>Whether the volts are so far off every tap that it cannot have run on them: then plate, supply or meter is wrong.</summary>
    internal static bool IsFarOff(MotorCase one) => one is { HasVolts: true, HasLostLeg: false } && one.Taps.Count > 0 && !Within.AtMost(one.Taps.Min(tap => tap.Off(one.Volts.Average())), SupplyWindows.FurthestOff);
}
