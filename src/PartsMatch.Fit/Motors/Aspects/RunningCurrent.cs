using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the running current reads.</summary>
/// <param name="FullLoad">Full-load amps by tap and frequency, the greatest of its speeds.</param>
/// <param name="ServiceFactor">The service factor; null when unknown.</param>
/// <param name="Lower">Its lower speeds, without their powers; empty for a motor of one.</param>
/// <param name="LowerFullLoad">Full-load amps of each of them.</param>
/// <param name="Means">How it has several speeds; null when unknown, or when it has no lower one.</param>
public readonly record struct RunningCurrentFacet(MotorAmps FullLoad, double? ServiceFactor, Sequence<LowerSpeed> Lower, Sequence<MotorAmps> LowerFullLoad, SpeedMeans? Means)
{
    /// <summary>What they are for a motor.</summary>
    public static RunningCurrentFacet Of(MotorSpec motor)
    {
        Sequence<LowerSpeed> lower = [.. LowerSpeeds.Of(motor).Select(one => one with { Watts = null })];
        return new(MotorAmps.FullLoad(motor), motor.ServiceFactor is { } factor ? Rounded.To(factor, 2) : null, lower, LowerSpeeds.FullLoadAmps(motor), lower.Count > 0 ? motor.SpeedMeans : null);
    }
}

/// <summary>Does the circuit carry the motor's full-load amps?</summary>
/// <remarks>
/// At the tap that the supply chooses, the greatest of its speeds; amps of a lower speed in use also against the old motor's on that speed. Contact (with the other motors on it) and cycling switch fail above what they are marked for; over 5 % more than the old motor took is to be checked (practice: plates round as much),
/// and an overload device in the circuit is set anew when the amps change by more, or its setting lies outside the new amps and the most that NFPA 70 430.32 allows.
/// Contacts that nobody looked up are not asked for while the amps do not rise: what carried the old motor carries this one.
/// </remarks>
public sealed class RunningCurrent() : Aspect<MotorSpec, MotorSite, RunningCurrentFacet>("Running current", isDeciding: false, CircuitSources.RunningCurrent, new(0.4, 0.5, 0.5))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = CircuitDevice.Measure with { Or = OldAmps.Measure };

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["fullLoadAmps", "serviceFactor"], ["contactFullLoadAmps", "cyclingSwitchFullLoadAmps", "overloadSetting"]) { Besides = [.. RatingFields.All, "overloadInCircuit", "otherFullLoadAmps"] };

    /// <inheritdoc/>
    public override RunningCurrentFacet Read(MotorSpec part) => RunningCurrentFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, RunningCurrentFacet facet) =>
        facet.FullLoad.Rows.Count == 0
            ? Finding.Unknown(Side.Part, "fullLoadAmps", $"The part's full-load amps are not given.")
            : facet.FullLoad.Connections.ForPhases((need, facet), static (phases, of) => Judge(of.need, of.facet, phases));

    private static Finding Judge(MotorNeed need, RunningCurrentFacet facet, Phases phases) =>
        EverySpeed.Of(Judge(need, facet, AmpsThere.Of(facet.FullLoad, need, phases, facet.FullLoad.Connections.Taps)), Lower(need, facet, phases));

    /// <summary>Each lower speed has a contact and wire of its own, which carried the old motor's amps there.</summary>
    private static List<Finding> Lower(MotorNeed need, RunningCurrentFacet facet, Phases phases)
    {
        var taps = facet.FullLoad.Connections.Taps;
        var olds = need.Once(static need => (OldTaken[])[.. need.OnceOfPlate(LowerSpeeds.FullLoadAmps).Select(amps => OldTaken.Of(need, amps))]);
        List<Finding> all = [];
        foreach (var pair in SpeedPairs.Of(need, facet.Lower, facet.Means))
        {
            if (pair.Row is not { } row || facet.LowerFullLoad[row] is not { Rows.Count: > 0 } marked) continue;
            var there = AmpsThere.Of(marked, need, phases, taps);
            if (OldAmps.Of(olds[pair.OldRow], need, taps, there) is not { } old) continue;
            Change[] changes = old.IsNotExceededBy(there.Most) ? [] : [new(CircuitChanges.CheckCircuit, $"see that what switches {new Called(pair.Name)} suits {there.Most:0.##} A; the old motor took {old}")];
            all.Add(Finding.MeetsWith(changes, $"On {pair.Name} it takes {there.Most:0.##} A, and the old motor took {old}; up to 5 % more counts as the same.") with
            {
                Shortfall = old.Shortfall(there.Most),
                Margin = new((old.Amps * OldAmps.Same) - there.Most, "A"),
            });
        }

        return all;
    }

    private static Finding Judge(MotorNeed need, RunningCurrentFacet facet, AmpsThere amps)
    {
        var tightest = CircuitDevice.Deciding(CircuitDevice.FullLoad(need), amps);
        if (tightest is not null && !tightest.Takes(amps.Most)) return TooMuch(tightest, amps);
        var old = OldAmps.Of(need, facet.FullLoad.Connections.Taps, amps);
        if (tightest is null && old is null) return Finding.Unknown(Side.Plate, "fullLoadAmps", $"It takes {amps.Most:0.##} A; what the old motor took, and what the contact carries, is not known.");
        List<Change> changes = [];
        if (old is { } before && !before.IsNotExceededBy(amps.Most)) changes.Add(new(CircuitChanges.CheckCircuit, $"see that wire, fuse and contact suit {amps.Most:0.##} A; the old motor took {before}"));
        if (SetOverload(need, amps.Most, old, facet.ServiceFactor) is { } set) changes.Add(set);
        return Finding.MeetsWith(changes, tightest is null ? (Reason)$"It takes {amps.Most:0.##} A, and the old motor took {old}; up to 5 % more counts as the same." : $"It takes {new DeviceLoad(tightest, amps.Most)}; the {tightest.Name} carries {tightest.Carries:0.##} A.") with
        {
            Shortfall = Math.Max(tightest?.Shortfall(amps.Most) ?? 0, old?.Shortfall(amps.Most) ?? 0),
            Margin = new(tightest is null ? (old!.Value.Amps * OldAmps.Same) - amps.Most : tightest.Carries - tightest.Others - amps.Most, "A"),
        };
    }

    private static Finding TooMuch(CircuitDevice device, AmpsThere amps) =>
        device.NeverTakes(amps.Least)
            ? Finding.Fails($"It takes {new DeviceLoad(device, amps.Most)}; the {device.Name} carries {device.Carries:0.##} A.") with { Shortfall = device.Shortfall(amps.Most), Margin = new(device.Carries - device.Others - amps.Most, "A") }
            : Finding.Unknown(Side.Site, amps.Missing, $"It takes {amps.Least:0.##} to {amps.Most:0.##} A by the tap in use, and the {device.Name} carries {device.Carries:0.##} A: see what the supply is.") with { Shortfall = 1 };

    private static Change? SetOverload(MotorNeed need, double amps, OldAmps? old, double? serviceFactor)
    {
        var most = MotorCircuit.OverloadAmps(amps, serviceFactor, riseKelvins: null);
        var setting = need.Once(static need => need.Site.OverloadSetting?.Amperes);
        var suits = setting is { } set ? Within.Span(set, amps, most) : need.Site.OverloadInCircuit != true || (old is { } before && Within.Ratio(amps, before.Took, OldAmps.Same));
        return suits ? null : new(CircuitChanges.SetOverload, $"set the overload to {amps:0.##} A{(setting is { } now ? FormattableString.Invariant($" (it is set to {now:0.##} A)") : string.Empty)}, {most:0.##} A at most (NFPA 70 430.32)");
    }
}
