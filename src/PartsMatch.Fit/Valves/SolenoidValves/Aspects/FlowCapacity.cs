using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of a valve's capacity.</summary>
/// <param name="Kv">Flow coefficient, m³/h; null where not given.</param>
/// <param name="LeastDrop">Drop that it needs to lift, kPa; null where not given.</param>
/// <param name="IsPiloted">Whether it is said to be pilot-operated.</param>
public readonly record struct CapacityFacet(double? Kv, double? LeastDrop, bool IsPiloted);

/// <summary>Is the valve neither too small nor too large for what flows?</summary>
/// <remarks>
/// The drop at full load is at most what may be lost (liquid must not flash: subcooling's margin, of the pressure just before it, so that lift and losses up to there are counted; suction: 2 °F of saturation; hot gas: until it chokes, and unknown where thin gas may) and at least what a pilot-operated valve needs to lift; below that it fails.
/// At the least load alone below it: a check, and so it is where one that needs a drop has to lift at a least load that is not known. Where the load was not given, a valve of much the same flow coefficient as the old one's meets, if it needs no more drop than that one did.
/// </remarks>
public sealed class FlowCapacity() : Aspect<SolenoidValveSpec, SolenoidValveSite, CapacityFacet>("Capacity", isDeciding: true, SolenoidValveSources.Capacity, new(1, 0.6, 1.5))
{
    /// <summary>Without a load: no smaller than this share of the old flow coefficient, and for one that needs a drop to lift no larger than that (practice).</summary>
    private const double LeastOfOld = 0.9;
    private const double MostOfOld = 1.25;

    /// <summary>Up to this share of either limit nobody would give it a thought (practice).</summary>
    private const double Easy = 0.5;

    /// <summary>Hot gas may lose anything until it chokes; up to this share of the drop at which it does nobody would give it a thought (practice).</summary>
    private const double EasyOfHotGas = 0.1;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["flowCoefficient", "leastDifferential"], ["load", "leastLoad", "line"]) { Besides = ["refrigerant", "evaporatingAt", "condensingAt", "temperatureThere", "lift"] };

    /// <inheritdoc/>
    public override CapacityFacet Read(SolenoidValveSpec part) => new(Rounded.Kv(part.FlowCoefficient), Rounded.Kilopascal(part.LeastDifferential), part.Lift == Lift.Pilot);

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, CapacityFacet facet)
    {
        if (facet.Kv is not { } kv) return Finding.Unknown(Side.Part, "flowCoefficient", $"Its flow coefficient is not given.");
        var (flow, missing) = ServedFlow.Of(need);
        return flow is null ? AgainstOld(need, kv, facet, missing) : Of(flow, kv, facet, need.Site.TemperatureThere is not null);
    }

    private static Finding Of(ServedFlow flow, double kv, CapacityFacet facet, bool isRead)
    {
        if (flow.DropAt(kv) is not { } drop) return Finding.Fails($"{flow.KilogramsAnHour:0} kg/h do not pass it at any drop: with Kv {kv} it chokes before.");
        if (flow.Allowed is { } most && !Within.AtMost(drop.Low, most)) return TooSmall(flow, drop, most);
        if (facet.LeastDrop is not { } least) return Finding.Unknown(Side.Part, "leastDifferential", $"{new Lost(flow, drop)}; the drop that it needs to lift is not given.");
        if (!Within.AtLeast(drop.High, least)) return Finding.Fails(new(drop.High - least, "kPa"), $"{new Lost(flow, drop)}, less than the {new ShownPressure(least)} it needs to lift: it is too large.") with { Shortfall = Math.Max(1, least / drop.High) };
        if (flow.Allowed is not { } allowed) return Finding.Unknown(Side.Site, "condensingAt", $"{new Lost(flow, drop)}; without the saturation temperature of the pressure before it nothing says whether the liquid flashes.");
        if (double.IsInfinity(drop.High) || !Within.AtLeast(drop.Low, least) || !Within.AtMost(drop.High, allowed)) return Finding.Unknown(Side.Site, "temperatureThere", $"{new Lost(flow, drop)}{new Between(least, allowed, flow.IsLiquid)}; {(isRead ? "how dense the gas is there is known no closer: size it by its maker's tables" : "it hangs on the temperature of the gas")}.");
        var lost = double.IsInfinity(allowed) ? Over(Math.Min(1, drop.High / flow.Choking), EasyOfHotGas) : Over(drop.High / Math.Max(allowed, 0.1), Easy);
        var answer = Finding.Meets($"{new Lost(flow, drop)}{new Between(least, allowed, flow.IsLiquid)}.") with { Shortfall = Math.Max(lost, Over(least / Math.Max(drop.Low, 0.1), Easy)), Margin = new(double.IsInfinity(allowed) ? drop.Low - least : Math.Min(drop.Low - least, allowed - drop.High), "kPa") };
        if (flow.LeastShare is null && least > 0) return answer.With([new(SolenoidValveChanges.CheckLeastLoad, $"see that it stays open at the least load, which is not known: {new ShownPressure(drop.Low)} are lost in it at full load, and it needs {new ShownPressure(least)}")]);
        return flow.LeastShare is { } part && flow.DropAt(kv, part) is { } atLeast && !Within.AtLeast(atLeast.Low, least)
            ? answer.With([new(SolenoidValveChanges.CheckLeastLoad, $"see that it stays open at the least load: {new ShownPressure(atLeast.Low)} are lost in it then, and it needs {new ShownPressure(least)}")])
            : answer;
    }

    /// <summary>How far a share of a limit lies over what is easy: 1 at the limit.</summary>
    private static double Over(double share, double easy) => Math.Max(0, (share - easy) / (1 - easy));

    private static Finding TooSmall(ServedFlow flow, Band drop, double most) => Finding.Fails(new(most - drop.Low, "kPa"), flow.IsLiquid
        ? (Reason)$"{new Lost(flow, drop)}; from its inlet to the expansion valve subcooling bears {new ShownPressure(most)}, beyond that the liquid flashes: it is too small."
        : $"{new Lost(flow, drop)}, over the {new ShownPressure(most)} that 2 °F of saturation are: it is too small.") with
    { Shortfall = Math.Max(1, drop.Low / Math.Max(most, 0.1)) };

    private static Finding AgainstOld(SolenoidNeed need, double kv, CapacityFacet facet, string missing)
    {
        if (Rounded.Kv(need.Plate.FlowCoefficient) is not { } old)
        {
            return Uncomputable.Of(need.Site.Refrigerant) is { } bare
                ? Finding.Unknown(Side.Site, missing, $"It has Kv {kv}; what a load makes flow {bare}.")
                : Finding.Unknown(Side.Site, missing, $"It has Kv {kv}; what flows there is not known.");
        }

        var (ratio, asked) = (kv / old, new Asked(Uncomputable.Of(need.Site.Refrigerant)));
        if (Within.AtLeast(ratio, LeastOfOld) && (Within.AtMost(ratio, MostOfOld) || facet.LeastDrop is 0))
        {
            if (facet.LeastDrop is not 0 && Lifts(need, facet, missing, asked) is { } doubt) return doubt;
            return Finding.Meets($"It has Kv {kv}, the old one {old}: between {LeastOfOld * 100} and {MostOfOld * 100} % of it.") with { Shortfall = Math.Min(1, Math.Abs(ratio - 1) / (MostOfOld - 1)) };
        }

        return Finding.Unknown(Side.Site, missing, ratio < 1
            ? (Reason)$"It has Kv {kv}, the old one {old}: under {LeastOfOld * 100} % of it; {asked}."
            : $"It has Kv {kv}, the old one {old}: over {MostOfOld * 100} % of it, and at a small load it may not lift; {asked}.") with
        { Shortfall = 1 };
    }

    /// <summary>One that lifted with less drop than this one needs, or with one that is not known, says nothing of whether there is enough; null where it says that there is.</summary>
    private static Finding? Lifts(SolenoidNeed need, CapacityFacet facet, string missing, Asked asked) => (facet.LeastDrop, Rounded.Kilopascal(need.Plate.LeastDifferential)) switch
    {
        (null, { } lifted) => Finding.Unknown(Side.Part, "leastDifferential", $"The old one lifted at {new ShownPressure(lifted)}; the drop that this one needs to lift is not given."),
        (null, null) => facet.IsPiloted && need.Plate.Lift != Lift.Pilot ? Finding.Unknown(Side.Part, "leastDifferential", $"It is lifted by the flow's drop, which the old one is not known to have been; how much it needs is not given.") : null,
        ({ } least, null) => Finding.Unknown(Side.Site, missing, $"It needs {new ShownPressure(least)} to lift, what the old one needed is not known: whether there is as much hangs on the load; {asked}."),
        ({ } least, { } lifted) => Within.AtMost(least, lifted) ? null : Finding.Unknown(Side.Site, missing, $"It needs {new ShownPressure(least)} to lift, the old one {new ShownPressure(lifted)}: whether there is as much hangs on the load; {asked}."),
    };

    /// <summary>What would bring it further, in words: the load, where anything could be computed of that; formed only when they are shown.</summary>
    private readonly record struct Asked(Uncomputable? Bare)
    {
        public override string ToString() => Bare is null ? "the load has to be known" : $"what a load makes flow {Bare}";
    }

    /// <summary>The drop in words; formed only when it is shown.</summary>
    private readonly record struct Lost(ServedFlow Flow, Band Drop)
    {
        public override string ToString() => FormattableString.Invariant($"{Flow.KilogramsAnHour:0} kg/h lose {new ShownPressure(Drop.Low)}{(Drop.IsExact ? string.Empty : double.IsInfinity(Drop.High) ? " or more" : $" to {new ShownPressure(Drop.High)}")} in it");
    }

    /// <summary>The limits of a drop; formed only when they are shown.</summary>
    private readonly record struct Between(double Least, double Most, bool IsLiquid)
    {
        public override string ToString() => (Least > 0, double.IsInfinity(Most)) switch
        {
            (true, false) => $"; it needs {new ShownPressure(Least)} to lift, and {new ShownPressure(Most)} may be lost{Where}",
            (false, false) => $"; {new ShownPressure(Most)} may be lost{Where}",
            (true, true) => $"; it needs {new ShownPressure(Least)} to lift",
            _ => string.Empty,
        };

        /// <summary>Lift and losses behind it take their share of what liquid may lose.</summary>
        private string Where => IsLiquid ? " from its inlet to the expansion valve" : string.Empty;
    }
}
