using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Judging.Drawings;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>What will be different once a new solenoid valve is in, and how its drop lies between its limits.</summary>
internal static class SolenoidValveDifferences
{
    private const string Assumption = "the load, temperatures and refrigerant that were given, of a liquid line the pressure just before it; a new, clean valve, fully open (IEC 60534-2-1)";

    /// <summary>The pressure drop at full load, old against new; none where what flows is not known.</summary>
    public static IReadOnlyList<Difference> Of(SolenoidNeed need, SolenoidValveSpec part) =>
        Drop(need, part) is { } now && !double.IsInfinity(now.High)
            ? [new("pressureDrop", "Pressure drop at full load", "kPa", Drop(need, need.Plate), now, null, [Assumption])]
            : [];

    /// <summary>The drop between what the valve needs and what may be lost; none where either is not known.</summary>
    public static IReadOnlyList<Drawing> Drawings(SolenoidNeed need, SolenoidValveSpec part)
    {
        if (Drop(need, part) is not { } drop || double.IsInfinity(drop.High) || ServedFlow.Of(need).Flow is not { Allowed: { } allowed } || double.IsInfinity(allowed)) return [];
        var least = Rounded.Kilopascal(part.LeastDifferential) ?? 0;
        if (allowed <= least) return [];
        var range = new Band(0, Math.Max(1.3 * allowed, 1.1 * drop.High));
        return
        [
            new Scale(
                "pressureDrop",
                "Pressure drop at full load",
                $"{new ShownPressure(drop.Low)}{(drop.IsExact ? string.Empty : $" to {new ShownPressure(drop.High)}")} are lost in it; it needs {new ShownPressure(least)} to lift, and {new ShownPressure(allowed)} may be lost{(need.Site.Line == RefrigerantLine.Liquid ? " from its inlet to the expansion valve" : string.Empty)}.",
                "kPa",
                range,
                [.. least > 0 ? (Zone[])[new("does not lift", Role.Bad, new(0, least))] : [], new("good", Role.Good, new(least, allowed)), new("too much", Role.Bad, new(allowed, range.High))],
                [new("this valve", Role.New, drop), .. Drop(need, need.Plate) is { } old && old.High <= range.High ? (ScaleMark[])[new("the old one", Role.Old, old)] : []]),
        ];
    }

    private static Band? Drop(SolenoidNeed need, SolenoidValveSpec valve) => Rounded.Kv(valve.FlowCoefficient) is { } kv ? ServedFlow.Of(need).Flow?.DropAt(kv) : null;
}
