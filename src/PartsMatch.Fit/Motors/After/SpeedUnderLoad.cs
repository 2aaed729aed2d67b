using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.After;

/// <summary>Does it run at the speed of its plate?</summary>
/// <remarks>
/// Not more than 5 % under the rated speed nearest to it: slower, it is overloaded or underfed. Faster, up to synchronous speed, it is lightly loaded. Between the speeds of a motor that
/// has several nothing follows, and an electronically commutated one runs at what it is told.
/// </remarks>
public sealed class SpeedUnderLoad() : ReadingRule<SwapCase>("Speed", MotorReadingSources.RunningSpeed)
{
    private const double MostUnder = 0.05;

    /// <inheritdoc/>
    public override Ruling? Judge(SwapCase one)
    {
        if (one.Readings.RunningSpeed?.RevolutionsPerMinute is not { } rpm) return null;
        if (one.StandsStill == true) return Ruling.NotApplicable($"It is said to stand still: {rpm:0} rpm is no speed of its own.");
        if (one.Part.Type == MotorType.ElectronicallyCommutated) return Ruling.NotApplicable($"{rpm:0} rpm: an electronically commutated motor runs at what it is told.");
        if (one.Part.Speed is not { } speeds) return Ruling.CantTell($"{rpm:0} rpm; the plate's speed is not known.");
        var rated = speeds.Select(speed => speed.RevolutionsPerMinute).MinBy(speed => Math.Abs(speed - rpm));
        FormattableString limit = $"at least {rated * (1 - MostUnder):0} rpm";
        if (Synchronous(one) is { } synchronous && !Within.AtMost(rpm, synchronous)) return Ruling.CantTell($"{rpm:0} rpm is over the {synchronous:0} rpm of its field: no loaded induction motor runs so fast. Measure again.", limit);
        if (Within.AtLeast(rpm, rated * (1 - MostUnder))) return Ruling.Good($"{rpm:0} rpm; {rated:0} rpm is on the plate, and {MostUnder * 100} % under it still passes.", limit);
        return speeds.Count > 1 || one.Part.Speeds is > 1
            ? Ruling.CantTell($"{rpm:0} rpm lies between the speeds of its plate: which one is connected?", limit)
            : Ruling.Bad($"{rpm:0} rpm is more than {MostUnder * 100} % under the plate's {rated:0} rpm: {(one.AsMotor.HasCapacitor == false ? "too much load or low volts" : "too much load, low volts or a weak capacitor")}.", limit);
    }

    private static double? Synchronous(SwapCase one) =>
        one.Part.Poles is { } poles && (one.Need.Site.SupplyFrequency ?? (one.Part.Frequency is { Count: 1 } only ? only[0] : (UnitsNet.Frequency?)null)) is { } frequency ? 120 * frequency.Hertz / poles : null;
}
