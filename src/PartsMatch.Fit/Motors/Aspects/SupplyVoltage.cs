using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the supply voltage aspect reads.</summary>
/// <param name="Connections">Taps and phases.</param>
/// <param name="ConnectedFor">The taps it may ship connected for; empty when unknown.</param>
/// <param name="IsStarDelta">Whether the lower of its two taps is for delta, the higher for star.</param>
/// <param name="HasIecTerminals">Whether its terminals are then called U1 to W2.</param>
public readonly record struct SupplyVoltageFacet(TapsFacet Connections, Sequence<VoltTap> ConnectedFor, bool IsStarDelta = false, bool HasIecTerminals = false);

/// <summary>Which of the available voltages does a tap take?</summary>
/// <remarks>
/// Within 5 % of a tap nobody would give it a thought; up to 10 %, edges included, it runs, though not as rated (NEMA MG 1 12.44); beyond that it fails.
/// A span takes from 10 % under its low end to 10 % over its high end: 208-230 takes 187.2 to 253 V (practice).
/// </remarks>
public sealed class SupplyVoltage() : Aspect<MotorSpec, MotorSite, SupplyVoltageFacet>("Supply voltage", isDeciding: true, MotorSources.Running, new(1.5, 0.5, 1.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a voltage", "off its tap", 100 * SupplyWindows.EasyVoltsOff, 100 * SupplyWindows.MostVoltsOff, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["voltage", "connectedFor"], ["volts", "neutralVolts", "supplyArrangement"]) { Besides = ["phase", "supplyPhase"] };

    /// <inheritdoc/>
    public override SupplyVoltageFacet Read(MotorSpec part) => new(TapsFacet.Of(part), VoltTap.Of(part.ConnectedFor), part.StarDelta == true && StarAndDelta.AreVolts(part), MotorConnections.HasSixIecTerminals(part));

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, SupplyVoltageFacet facet) =>
        facet.Connections.Taps.Count == 0
            ? Finding.Unknown(Side.Part, "voltage", $"The part's voltage is not given.")
            : facet.Connections.ForPhases((need, facet), static (phases, of) => Judge(of.need, of.facet, phases));

    private static Finding Judge(MotorNeed need, SupplyVoltageFacet facet, Phases phases)
    {
        var taps = facet.Connections.Taps;
        var supply = SupplyVolts.Of(need, phases);
        var old = TapChoice.Old(need);
        var best = TapChoice.Best(taps, supply, old);
        if (best is { } choice && choice.Tap.Takes(choice.Supply.Volts)) return Takes(choice, old, facet);
        if (!supply.LinesMeasured)
        {
            return Finding.Unknown(Side.Site, "volts", ByOldPlate(need, facet), $"It takes {new Windows(taps)}; the volts there were not measured.") with { Shortfall = Uncovered(VoltTap.OfOld(need), taps) };
        }

        if (supply.NeutralMayHelpAny(taps, SupplyWindows.MostVoltsOff))
        {
            return Finding.Unknown(Side.Site, "neutralVolts", $"It takes {new Windows(taps)}, not the {supply.Available[0].Volts:0.#} V between lines; line to neutral may suit it, if a neutral is there.") with { Shortfall = 1 };
        }

        var nearest = best!.Value;
        return Finding.Fails($"{Words(nearest.Supply)}; the nearest tap, {nearest.Tap}, takes {nearest.Tap.Least:0.#} to {nearest.Tap.Most:0.#} V{new Refused(supply)}.") with
        {
            Shortfall = Shortfall(nearest),
            Margin = new(nearest.Tap.Room(nearest.Supply.Volts), "V"),
        };
    }

    private static Finding Takes(TapChoice choice, Between? old, SupplyVoltageFacet facet)
    {
        var (tap, supply) = choice;
        List<Change> changes = [];
        if (old is { } before && before != supply.Between) changes.Add(new(SupplyChanges.Reconnect, $"connect it {Connection(supply.Between)}, where the old motor was {Connection(before)}"));

        // What the old motor was on is not known: left between lines, this one would burn.
        if (old is null && supply.Between == Between.LineAndNeutral) changes.Add(new(SupplyChanges.Reconnect, $"connect it {Connection(supply.Between)}, never between lines"));
        if (OfTap(tap, facet) is var (kind, words)) changes.Add(new(kind, words));
        return Finding.MeetsWith(changes, $"{Words(supply)}; the {tap} tap takes {tap.Least:0.#} to {tap.Most:0.#} V.") with
        {
            Shortfall = Shortfall(choice),
            Margin = new(tap.Room(supply.Volts), "V"),
            CautionWords = choice.Off > SupplyWindows.EasyVoltsOff + 1e-9
                ? (FormattableString)$"At {supply.Volts:0.#} V, {choice.Off * 100:0.0} % off {tap}, it runs, but speed, torque and heat will not necessarily be as rated (NEMA MG 1 12.44)."
                : null,
        };
    }

    /// <summary>What has to be done about the taps to have it on this one; null when nothing has.</summary>
    private static (ChangeKind Kind, FormattableString Words)? OfTap(VoltTap tap, SupplyVoltageFacet facet)
    {
        if (facet.Connections.Taps.Count < 2 || facet.ConnectedFor.AsSpan().Contains(tap)) return null;
        if (facet.ConnectedFor.Count > 0)
        {
            return (SupplyChanges.SetTap, facet.IsStarDelta
                ? (FormattableString)$"set the {tap} tap: join it {new Joined(tap, facet)}; it ships connected for {facet.ConnectedFor[0]}"
                : $"set the {tap} tap; it ships connected for {facet.ConnectedFor[0]}");
        }

        return (SupplyChanges.CheckTap, facet.IsStarDelta ? (FormattableString)$"see that it is joined {new Joined(tap, facet)}" : $"see that it is connected for {tap}");
    }

    /// <summary>The tap that takes the whole of the old motor's only one: most likely it is the one to set, and whoever hands the part out shall hear that it ships for another.</summary>
    private static IReadOnlyList<Change> ByOldPlate(MotorNeed need, SupplyVoltageFacet facet)
    {
        if (VoltTap.OfOld(need) is not [var old]) return [];
        VoltTap? narrowest = null;
        foreach (var tap in facet.Connections.Taps.AsSpan())
        {
            if (tap.Low <= old.Low && tap.High >= old.High && (narrowest is not { } before || tap.High - tap.Low < before.High - before.Low)) narrowest = tap;
        }

        return narrowest is { } covering && OfTap(covering, facet) is var (kind, words) ? [new(kind, $"the old motor was for {old}: {words}; measure the supply")] : [];
    }

    private static double Shortfall(TapChoice choice) => SupplyWindows.Shortfall(choice.Off, SupplyWindows.EasyVoltsOff, SupplyWindows.MostVoltsOff);

    /// <summary>The share of the volts that the old motor's taps took and the part's do not, 0 to 1, averaged over the old taps: which of them was used is unknown.</summary>
    private static double Uncovered(Sequence<VoltTap> old, Sequence<VoltTap> taps)
    {
        var sum = 0.0;
        foreach (var one in old.AsSpan())
        {
            var most = 0.0;
            foreach (var tap in taps.AsSpan()) most = Math.Max(most, Math.Clamp((Math.Min(one.Most, tap.Most) - Math.Max(one.Least, tap.Least)) / (one.Most - one.Least), 0, 1));
            sum += 1 - most;
        }

        return old.Count == 0 ? 0 : sum / old.Count;
    }

    private static FormattableString Words(AvailableVolts supply) =>
        supply.Between == Between.LineAndNeutral ? (FormattableString)$"{supply.Volts:0.#} V from line to neutral" : $"{supply.Volts:0.#} V measured";

    private static string Connection(Between between) => between == Between.Lines ? "between lines" : "from line to neutral";

    /// <summary>How the windings are joined for a tap; formed only when it is shown.</summary>
    private sealed record Joined(VoltTap Tap, SupplyVoltageFacet Facet)
    {
        public override string ToString() => $"{StarAndDelta.Joined(Tap.High >= Facet.Connections.Taps.Max(one => one.High), Facet.HasIecTerminals)} for {Tap} between lines";
    }

    /// <summary>What taps take; formed only when it is shown.</summary>
    private readonly record struct Windows(Sequence<VoltTap> Taps)
    {
        public override string ToString() => string.Join(" or ", Taps.Select(tap => FormattableString.Invariant($"{tap.Least:0.#} to {tap.Most:0.#} V")));
    }

    /// <summary>A reading against neutral that is no leg, or nothing; formed only when it is shown.</summary>
    private readonly record struct Refused(SupplyVolts Supply)
    {
        public override string ToString() =>
            Supply.Refused.Count == 0 ? string.Empty : FormattableString.Invariant($" ({Supply.Refused[0]:0.#} V to neutral is no leg to connect a motor to here)");
    }
}
