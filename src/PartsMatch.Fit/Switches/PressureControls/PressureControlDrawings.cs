using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.PressureControls.Aspects;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>What is drawn of a pressure control: cut-out and cut-in within its range.</summary>
public static class PressureControlDrawings
{
    /// <summary>A part's range with what is needed; none where either is not known.</summary>
    public static IReadOnlyList<Drawing> Of(PressureControlNeed need, PressureControlSpec part)
    {
        if (part.Range?.Kilopascals is not { } good || Settings.In(need.Site.CutOutNeeded) is not { } cutOut) return [];
        var cutIn = part.Reset == ContactReset.Manual ? null : Settings.In(need.Site.CutInNeeded);
        var (least, most) = (Math.Min(good.Low, Math.Min(cutOut, cutIn ?? cutOut)), Math.Max(good.High, Math.Max(cutOut, cutIn ?? cutOut)));
        var room = 0.1 * (most - least);
        var range = new Band(least - room, most + room);
        var isIn = good.Holds(cutOut) && (cutIn is not { } closes || good.Holds(closes));
        return
        [
            new Scale(
                "settings",
                "Cut-out and cut-in in its range",
                FormattableString.Invariant($"It can be set {ShownRange.Set(new ShownPressure(good.Low), new ShownPressure(good.High))}; cut-out {new ShownPressure(cutOut)}{(cutIn is { } at ? FormattableString.Invariant($" and cut-in {new ShownPressure(at)}") : string.Empty)}, {(isIn ? "within it" : "not within it")}."),
                "kPa",
                range,
                [new("too low", Role.Bad, new(range.Low, good.Low)), new("can be set", Role.Good, good), new("too high", Role.Bad, new(good.High, range.High))],
                [
                    new(FormattableString.Invariant($"cut-out: {new ShownPressure(cutOut)}"), Role.Limit, Band.Exactly(cutOut)),
                    .. cutIn is { } closing ? (ScaleMark[])[new(FormattableString.Invariant($"cut-in: {new ShownPressure(closing)}"), Role.Old, Band.Exactly(closing))] : [],
                ]),
        ];
    }
}
