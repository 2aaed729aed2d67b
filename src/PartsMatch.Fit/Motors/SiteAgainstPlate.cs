using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors;

/// <summary>What was measured where the old motor ran, and does not go with its plate. Neither is picked: a reading, the plate or the old motor itself may be the wrong one.</summary>
public static class SiteAgainstPlate
{
    /// <summary>Tachometers and mains frequency are true within so much (practice).</summary>
    private const double TachometerOff = 0.005;

    /// <summary>Amps up to so many times the plate's are explained by service factor, low volts and a clamp meter's error (practice).</summary>
    private const double OrdinaryAmps = 1.25;

    private static readonly Func<MotorNeed, IEnumerable<Contradiction>>[] Rules = [Phase, Volts, Neutral, Frequency, Rotation, Hub, Room, Speed, Amps];

    /// <summary>All that disagrees.</summary>
    /// <param name="plate">The old motor, with what was deduced.</param>
    /// <param name="site">The site; what was deduced for it from the plate agrees with the plate.</param>
    public static IReadOnlyList<Contradiction> Find(MotorSpec plate, MotorSite site)
    {
        var need = new MotorNeed(plate, site);
        return [.. Rules.SelectMany(rule => rule(need)), .. EquipmentPlate.Against(need)];
    }

    /// <summary>The full-load amps that the plate may mean here, A: those of the tap in use where that is known.</summary>
    internal static IReadOnlyList<double> PlateAmps(MotorNeed need)
    {
        var tap = ChosenTap.Of(need, need.Plate)?.Tap;
        return [.. MotorAmps.FullLoad(need.Plate).Rows.Where(row => tap is null || row.Tap is null || row.Tap == tap).SelectMany(row => (double[])[row.AtLow, row.AtHigh])];
    }

    private static IEnumerable<Contradiction> Phase(MotorNeed need)
    {
        if (need is not { Plate.Phase: Phases.Three, Site.SupplyPhase: Phases.Single }) yield break;
        var field = need.Site.SupplyArrangement == SupplyArrangement.SinglePhase ? "supplyArrangement" : "supplyPhase";
        yield return new(["phase"], "Three-phase plate, single-phase supply: it cannot have run there. Check the plate, and how many wires reach the motor.", MotorSources.PhaseCount) { SiteFields = [field] };
    }

    private static IEnumerable<Contradiction> Volts(MotorNeed need)
    {
        if (OffPlate(need) is not { } choice) yield break;
        var (tap, supply) = choice;
        var isLow = supply.Volts < tap.Low;
        var (where, field) = supply.Between == Between.Lines ? ("measured", "volts") : ("measured to neutral", "neutralVolts");
        var advice = isLow ? "check the tap in use and the supply before the motor is blamed" : "check where the volts were measured, the tap in use and the supply before a motor is put on it";
        yield return new(["voltage"], FormattableString.Invariant($"{tap} plate, {supply.Volts:0.#} V {where}: {choice.Off * 100:0.#} % {(isLow ? "low" : "high")}: {advice}."), MotorSources.Running) { SiteFields = [field] };
    }

    /// <summary>Volts to neutral that are those of no leg of the supply. A motor's two leads may have been on a line and the neutral themselves.</summary>
    private static IEnumerable<Contradiction> Neutral(MotorNeed need)
    {
        if (need.Site.NeutralVolts is not { } legs) yield break;
        if (need.Site.SupplyArrangement is SupplyArrangement.Delta)
        {
            yield return new([], $"A delta has no neutral, but {Deducing.Text(legs)} to neutral are given: see how the supply is arranged.", MotorSources.LegToNeutral) { SiteFields = ["supplyArrangement", "neutralVolts"] };
            yield break;
        }

        if (need.Site.Volts is not { } lines || SupplyVolts.Of(need, Phases.Single).Refused.Count < legs.Distinct().Count()) yield break;
        bool Stand(double ratio) => legs.Any(leg => lines.Any(line => SupplyVolts.IsAlike(leg.Volts, line.Volts * ratio)));
        if (Stand(1)) yield break;
        var (star, tap, high) = (Stand(1 / Math.Sqrt(3)), Stand(0.5), Stand(Math.Sqrt(3) / 2));
        if (need.Site.SupplyArrangement is { } said && (star || tap || said == SupplyArrangement.HighLegDelta))
        {
            if (!star && !tap && high) yield break;
            yield return new([], $"{Deducing.Text(legs)} to neutral beside {Deducing.Text(lines)} between lines are those of {(star ? "a star" : tap ? "a centre tap" : "no supply")}, but it is said to be {Deducing.Text(said)}.", MotorSources.LegToNeutral) { SiteFields = ["supplyArrangement", "volts", "neutralVolts"] };
            yield break;
        }

        yield return new([], $"{Deducing.Text(legs)} to neutral do not go with {Deducing.Text(lines)} between lines: {(high ? "they are those of the high leg of a delta, which is for no motor" : "a leg of a star stands at 1/√3 of them, one of a centre tap at half")}.", MotorSources.LegToNeutral) { SiteFields = ["volts", "neutralVolts"] };
    }

    /// <summary>The nearest tap of the old plate and the volts there, where no tap takes them; null when one does, or when either is unknown.</summary>
    internal static TapChoice? OffPlate(MotorNeed need)
    {
        var taps = VoltTap.Of(need.Plate.Voltage);
        Phases[] possible = need.Plate.Phase is { } known ? [known] : [Phases.Single, Phases.Three];
        var choices = possible.Select(phases => TapChoice.Best(taps, SupplyVolts.Of(need, phases), oldBetween: null)).OfType<TapChoice>().ToList();
        return choices.Count == 0 || choices.Exists(choice => choice.Tap.Takes(choice.Supply.Volts)) ? null : choices[0];
    }

    private static IEnumerable<Contradiction> Frequency(MotorNeed need)
    {
        if (need.Plate.Frequency is not { } rated || need.Site.SupplyFrequency is not { } there || rated.Any(one => SupplyWindows.TakesFrequency(one.Hertz, there.Hertz))) yield break;
        yield return new(["frequency"], $"{Deducing.Text(rated)} plate, {Deducing.Text(there)} supply: the old motor was not made for it. Check which of the two is true.", MotorSources.Running) { SiteFields = ["supplyFrequency"] };
    }

    private static IEnumerable<Contradiction> Rotation(MotorNeed need)
    {
        if (need.Plate.Rotation is not { FacingShaft: { } turns } plate || need.Site.TurnNeeded is not { FacingShaft: { } needed } turn || turns == needed) yield break;
        yield return new(
            ["rotation"],
            $"The plate says {Deducing.Text(plate)}, but {Deducing.Text(turn)} is said to be needed: see which way the blade drives the air, from which end each was seen, and whether the old motor had been reversed.",
            BodySources.Rotation)
        { SiteFields = ["turnNeeded"] };
    }

    /// <summary>A belt-driven fan's hub sits on a shaft of its own.</summary>
    private static IEnumerable<Contradiction> Hub(MotorNeed need)
    {
        if (need.Plate.ShaftDiameter is not { } shaft || need.Site.HubBore is not { } bore || need.Site.Drive == Drive.Belt) yield break;
        var over = bore.Millimeters - shaft.Millimeters;
        if (Within.AtMost(Math.Abs(over), MotorContradictions.SameShaftMillimetres)) yield break;
        var advice = over > 0 ? "see whether a bushing was between them, and measure both with calipers" : "that hub does not go onto that shaft; measure both with calipers";
        yield return new(["shaftDiameter"], $"The hub's bore is {Deducing.Text(bore)}, the old shaft {Deducing.Text(shaft)}: {advice}.", MotorSources.SameShaft) { SiteFields = ["hubBore"] };
    }

    /// <summary>The old shaft had room, but for the step that <see cref="Aspects.ShaftLength"/> allows.</summary>
    private static IEnumerable<Contradiction> Room(MotorNeed need)
    {
        if (need.Plate.ShaftLength is not { } shaft || need.Site.ShaftRoom is not { } room || BodyDeductions.LeastShaft(shaft) is not { } least) yield break;
        if (Within.AtLeast(room.Millimeters, least.Millimeters)) yield break;
        yield return new(
            ["shaftLength"],
            $"The room for a shaft is {Deducing.Text(room)}, the old shaft {Deducing.Text(shaft)}: it cannot have turned there. See from where to where both were measured, from the end bell to the tip.",
            BodySources.ShaftLength)
        { SiteFields = ["shaftRoom"] };
    }

    /// <summary>Only a motor whose speed is not bound to the supply's frequency, or the fan on the other end of a belt, runs above synchronous speed.</summary>
    private static IEnumerable<Contradiction> Speed(MotorNeed need)
    {
        var (plate, site) = (need.Plate, need.Site);
        if (site.MeasuredSpeed?.RevolutionsPerMinute is not { } rpm || plate.Type == MotorType.ElectronicallyCommutated || site.Drive == Drive.Belt || site.SpeedControl == SpeedControl.Drive) yield break;
        if ((site.SupplyFrequency?.Hertz ?? plate.Frequency?.Max(one => one.Hertz)) is not { } hertz) yield break;
        var bySpeed = HighSpeed.Rpm(plate).SelectMany(point => PoleCounts.Of(point.Value, double.IsNaN(point.Hertz) ? hertz : point.Hertz)).ToList();
        var poles = plate.Poles is > 0 and var known ? known : bySpeed.DefaultIfEmpty(2).Min();
        var synchronous = PoleCounts.Synchronous(poles, hertz);
        if (plate is { Speed: null, Poles: null } || Within.AtMost(rpm, synchronous * (1 + TachometerOff))) yield break;
        var said = plate.Speed is { } speed ? $"the plate's {Deducing.Text(speed)}" : "the plate";
        yield return new(
            [plate.Speed is null ? "poles" : "speed"],
            FormattableString.Invariant($"{rpm:0} rpm measured is above {synchronous:0} rpm, the synchronous speed of {said} ({poles} poles at {hertz:0.##} Hz): no induction motor runs faster. Check the tachometer and its marks, and the plate."),
            MotorSources.Synchronous)
        { SiteFields = ["measuredSpeed"] };
    }

    private static IEnumerable<Contradiction> Amps(MotorNeed need)
    {
        if (need.Site.MeasuredAmps?.Amperes is not { } measured || PlateAmps(need) is not { Count: > 0 } plate || Within.AtMost(measured, plate.Max() * OrdinaryAmps)) yield break;
        yield return new(
            ["fullLoadAmps"],
            FormattableString.Invariant($"{measured:0.##} A measured, {plate.Max():0.##} A on the plate: {((measured / plate.Max()) - 1) * 100:0} % over. Check that the clamp held this motor's lead alone, then volts, capacitor and blade."),
            MotorSources.FarOverAmps)
        { SiteFields = ["measuredAmps"] };
    }
}
