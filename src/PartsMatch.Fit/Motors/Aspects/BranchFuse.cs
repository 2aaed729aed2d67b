using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the branch fuse reads.</summary>
/// <param name="Amps">The current that sizes a fuse, by tap and frequency.</param>
/// <param name="IsFromTable">Whether it is the code's rather than the plate's.</param>
public readonly record struct BranchFuseFacet(MotorAmps Amps, bool IsFromTable);

/// <summary>Does the fuse or breaker of the branch suit the motor?</summary>
/// <remarks>
/// Less than its full-load amps, and those of the other motors, fails; less than 125 % of its own beside the others' may trip at the start, and is to be checked (practice). So is a fuse larger than the most that NFPA 70 table 430.52 allows
/// (the larger of a fuse without delay and a breaker, next standard size up, others added), but not where the old motor took no more: it was so before.
/// With no fuse named, a motor that takes no more than the old one meets.
/// </remarks>
public sealed class BranchFuse() : Aspect<MotorSpec, MotorSite, BranchFuseFacet>("Branch fuse", isDeciding: false, CircuitSources.BranchFuse, new(0.2, 0.4, 0.2))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a fuse that leaves it", "of its amps", MotorCircuit.ConductorAmps(100), 100, "%");

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["fullLoadAmps"], ["fuse", "otherFullLoadAmps", "equipmentFanAmps"]) { Besides = RatingFields.All };

    /// <inheritdoc/>
    public override BranchFuseFacet Read(MotorSpec part)
    {
        var (amps, isFromTable) = FuseAmps.Of(part);
        return new(amps, isFromTable);
    }

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, BranchFuseFacet facet)
    {
        if (facet.Amps.Rows.Count == 0) return Finding.Unknown(Side.Part, "fullLoadAmps", $"The part's full-load amps are not given.");
        return facet.Amps.Connections.ForPhases((need, facet), static (phases, of) => Judge(of.need, of.facet, phases));
    }

    private static Finding Judge(MotorNeed need, BranchFuseFacet facet, Phases phases)
    {
        var amps = AmpsThere.Of(facet.Amps, need, phases, facet.Amps.Connections.Taps);
        return need.Once(static need => need.Site.Fuse is { } fuse ? Rounded.To(fuse.Amperes, 2) : (double?)null) is { } fuse
            ? OnFuse(need, facet, phases, amps, fuse)
            : Unnamed(facet, amps.Most, Old(need, facet, amps));
    }

    private static Finding Unnamed(BranchFuseFacet facet, double amps, OldAmps? old) => old switch
    {
        { } took when took.IsNotExceededBy(amps) => Finding.Meets($"{Counts(facet)} {amps:0.##} A, and the old motor {Counted(facet)} {took}: up to 5 % more, the old fuse will do."),
        { } took => Finding.Unknown(Side.Site, "fuse", $"{Counts(facet)} {amps:0.##} A, and the old motor {Counted(facet)} {took}, more than 5 % less: the old fuse may not do."),
        null => Finding.Unknown(Side.Site, "fuse", $"{Counts(facet)} {amps:0.##} A, and the old motor's amps are not known: the old fuse may not do."),
    };

    private static Finding OnFuse(MotorNeed need, BranchFuseFacet facet, Phases phases, AmpsThere amps, double fuse)
    {
        var others = need.Once(static need => need.Site.OtherFullLoadAmps?.Amperes ?? 0);
        var with = new Beside(others);
        if (!Within.AtMost(amps.Least + others, fuse))
        {
            return Finding.Fails($"{Counts(facet)} {amps.Most:0.##} A{with}; the fuse there carries only {fuse:0.##} A.") with { Shortfall = (amps.Most + others) / fuse, Margin = new(fuse - others - amps.Most, "A") };
        }

        var least = MotorCircuit.ConductorAmps(amps.Most) + others;
        var most = Most(phases, amps.Most) + others;
        var isOver = !Within.AtMost(fuse, most);
        var isLarge = isOver && Old(need, facet, amps)?.TookNoMoreThan(amps.Most) != true;
        Change[] changes = !Within.AtMost(least, fuse) ? [new(CircuitChanges.CheckFuse, $"see that the {fuse:0.##} A fuse starts it: {least:0.##} A or more is usual, and a fuse with delay holds longest")]
            : isLarge ? [new(CircuitChanges.CheckFuse, $"see that the {fuse:0.##} A fuse still protects it: {most:0.##} A is the most for it (NFPA 70 430.52)")]
            : [];
        return Finding.MeetsWith(changes, $"{Counts(facet)} {amps.Most:0.##} A{with}: a fuse of {least:0.##} to {most:0.##} A suits, and {fuse:0.##} A is there{(isOver && !isLarge ? "; the old motor took no more, and ran on it" : string.Empty)}.") with
        {
            Shortfall = Math.Clamp((least - fuse) / (least - amps.Least - others), 0, 1),
            Margin = new(fuse - others - amps.Least, "A"),
        };
    }

    /// <summary>The old motor's amps, reckoned by table or plate as the part's are; else those on the equipment's plate.</summary>
    private static OldAmps? Old(MotorNeed need, BranchFuseFacet facet, AmpsThere now)
    {
        var (taken, isFromTable) = need.Once(static need =>
        {
            var (amps, isFromTable) = need.OnceOfPlate(FuseAmps.Of);
            return (OldTaken.Of(need, amps), isFromTable);
        });
        return isFromTable == facet.IsFromTable
            ? OldAmps.Of(taken, need, facet.Amps.Connections.Taps, now) ?? OldAmps.OfEquipment(need)
            : OldAmps.Of(need, facet.Amps.Connections.Taps, now);
    }

    private static double Most(Phases phases, double amps)
    {
        var motor = phases == Phases.Three ? BranchMotor.SquirrelCage : BranchMotor.SinglePhase;
        return Math.Max(Most(motor, BranchDevice.NonTimeDelayFuse, amps), Most(motor, BranchDevice.InverseTimeBreaker, amps));
    }

    private static double Most(BranchMotor motor, BranchDevice device, double amps) => BranchFuses.StandardSize(amps, motor, device) ?? double.PositiveInfinity;

    private static string Counts(BranchFuseFacet facet) => facet.IsFromTable ? "By the code's table it counts as" : "It takes";

    private static string Counted(BranchFuseFacet facet) => facet.IsFromTable ? "as" : "took";

    /// <summary>", with 3 A of other motors beside it", or nothing; formed only when it is shown.</summary>
    private readonly record struct Beside(double Amps)
    {
        public override string ToString() => Amps > 0 ? FormattableString.Invariant($", with {Amps:0.##} A of other motors beside it") : string.Empty;
    }
}
