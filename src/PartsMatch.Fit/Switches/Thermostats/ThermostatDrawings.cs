using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>What is drawn of a thermostat: where it is to move, and where the new one does.</summary>
public static class ThermostatDrawings
{
    /// <summary>A scale of temperature with both; none where either is not known.</summary>
    public static IReadOnlyList<Drawing> Of(ThermostatNeed need, ThermostatSpec part)
    {
        var wanted = WantedPoints.Of(need);
        if (wanted.Function is null || wanted.Main.At(wanted.Tells) is not { } needed) return [];
        var seen = TemperaturesFacet.Of(part).For(wanted);
        var (tells, other) = (At(wanted, seen, wanted.Tells), seen.IsManual ? null : At(wanted, seen, wanted.Other));
        if (tells is not { } now) return [];
        List<ScaleMark> marks = [Old(wanted.Tells, needed), New(wanted.Tells, now)];
        if (!seen.IsManual && wanted.Main.At(wanted.Other) is { } returns) marks.Add(Old(wanted.Other, returns));
        if (other is { } comesBack) marks.Add(New(wanted.Other, comesBack));
        var whole = Band.Around([needed - Degrees.Far, needed + Degrees.Far, .. marks.Select(mark => mark.At.Low)]);
        var room = 0.1 * (whole.High - whole.Low);
        var range = new Band(whole.Low - room, whole.High + room);
        return
        [
            new Scale(
                "temperatures",
                "Where it moves, old and new",
                FormattableString.Invariant($"It is to move at {new ShownTemperature(needed)} {Way(wanted.Tells)}; the new one moves at {new ShownTemperature(now)}{(seen.Settable is null ? string.Empty : ", once it is set")}. Within 5 °F (2.8 K) does the same, over 10 °F (5.6 K) does not."),
                "°C",
                range,
                [
                    new("too cold", Role.Bad, new(range.Low, needed - Degrees.Far)), new("check", Role.Open, new(needed - Degrees.Far, needed - Degrees.Near)), new("the same", Role.Good, new(needed - Degrees.Near, needed + Degrees.Near)),
                    new("check", Role.Open, new(needed + Degrees.Near, needed + Degrees.Far)), new("too warm", Role.Bad, new(needed + Degrees.Far, range.High)),
                ],
                marks),
        ];
    }

    /// <summary>Where a part moves: as shipped where that is near enough, else at the nearest that it can be set to.</summary>
    private static double? At(WantedPoints wanted, TemperaturesFacet seen, Moving moving)
    {
        var has = seen.Main.At(moving);
        return wanted.Main.At(moving) is { } needed && seen.Settable is { } range && !(has is { } shipped && Degrees.AreNear(shipped, needed)) ? Math.Clamp(needed, range.Low, range.High) : has;
    }

    private static ScaleMark Old(Moving moving, double at) => new(FormattableString.Invariant($"wanted {Way(moving)}: {new ShownTemperature(at)}"), Role.Old, Band.Exactly(at));

    private static ScaleMark New(Moving moving, double at) => new(FormattableString.Invariant($"new {Way(moving)}: {new ShownTemperature(at)}"), Role.New, Band.Exactly(at));

    private static string Way(Moving moving) => moving == Moving.OnRise ? "on rise" : "on fall";
}
