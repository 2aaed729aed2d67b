using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.CondensingPressureValves.Proof;

/// <summary>Does a differential check valve let hot gas by above its difference, and none below?</summary>
/// <remarks>The difference is the hot gas's pressure less the receiver's, by two gauges. Within 5 psi (34 kPa) of its setting, edges included, the by-pass may be hot or cold (practice).</remarks>
public sealed class DifferenceHeld() : ReadingRule<CondensingPressureValveCase>("Difference and by-pass", CondensingPressureValveReadingSources.HeadDifference)
{
    /// <summary>5 psi (practice), and what rounding three pressures may add, kPa.</summary>
    private static double Near { get; } = 34.47 + Rounded.OffBy(3);

    /// <inheritdoc/>
    public override Ruling? Judge(CondensingPressureValveCase one)
    {
        if (one.How != Arrangement.DifferentialCheck) return null;
        if (one.HotGas is not { } hotGas) return Missing(one, "hotGasPressure", "Read the gauge pressure of the hot gas before it, running steadily: less that at the receiver it is the difference that opens it.");
        if (one.Head is not { } receiver) return Missing(one, "headPressure", "Read the gauge pressure at the receiver: the hot gas's less that is the difference that opens it.");
        var difference = hotGas - receiver;
        if (difference < -Near) return Ruling.CantTell($"The hot gas is said to be at {new ShownPressure(hotGas)}, under the {new ShownPressure(receiver)} at the receiver: one of the two gauges is misread.").ThenRead("hotGasPressure", "One of the two gauges is misread: read both again, at one time and running steadily.");
        if (one.Setting is not { } setting) return Ruling.CantTell($"{new ShownPressure(difference)} are across it; at which difference it is to open is not known.").ThenRead("settingNeeded", "Read the difference on the valve, or in the unit's papers.", Side.Site);
        FormattableString limit = $"hot gas goes by above {new ShownPressure(setting)}, and none below";
        if (one.Readings.BypassHot is not { } isHot) return Ruling.CantTell($"{new ShownPressure(difference)} are across it, and it is to open at {new ShownPressure(setting)}.", limit).ThenRead("bypassHot", "See by a thermometer whether the pipe behind it is clearly hotter than the condenser's drain: it should be above its difference, and not below.");
        var (isOver, isUnder) = (difference > setting + Near, difference < setting - Near);
        if (isOver && !isHot) return WrongBySetting.Judge(one, Ruling.Bad($"{new ShownPressure(difference)} are across it, more than the {new ShownPressure(setting)} that open it, and no hot gas goes by: {new OrNotSet(one, "it is stuck shut")}.", limit));
        if (isUnder && isHot) return WrongBySetting.Judge(one, Ruling.Bad($"{new ShownPressure(difference)} are across it, less than the {new ShownPressure(setting)} that open it, and hot gas goes by: {new OrNotSet(one, "it does not close")}.", limit));
        return RightBySetting.Judge(one, $"{new ShownPressure(difference)} are across it, {new ShownPressure(setting)} open it, and {(isHot ? "hot gas goes by" : "none goes by")}.", limit);
    }

    private static Ruling Missing(CondensingPressureValveCase one, string field, string why) => one.Head is null && one.HotGas is null && one.Readings.BypassHot is null
        ? Ruling.Read(field, why)
        : Ruling.CantTell($"It opens at a difference of pressures{(one.Setting is { } setting ? FormattableString.Invariant($", {new ShownPressure(setting)}") : string.Empty)}, of which one pressure and the by-pass alone say nothing.").ThenRead(field, why);
}
