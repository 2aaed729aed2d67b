using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>What a motor's type makes certain.</summary>
public static class MotorKinds
{
    /// <summary>Phases that a type implies; null for an unknown type and for electronically commutated motors, which come in both.</summary>
    public static Phases? PhasesOf(MotorType? type) => type switch
    {
        MotorType.ThreePhaseInduction => Phases.Three,
        null or MotorType.ElectronicallyCommutated => null,
        _ => Phases.Single,
    };

    /// <summary>Whether its speed is bound to poles and frequency: a known type that is not electronically commutated, or any motor with a run capacitor.</summary>
    public static bool IsInduction(MotorSpec spec) =>
        spec.Type is { } type ? type != MotorType.ElectronicallyCommutated : spec.RunCapacitor is { IsNone: false };

    /// <summary>Whether a centrifugal switch takes its start winding or start capacitor out; false for an unknown type.</summary>
    public static bool HasStartSwitch(MotorType? type) => type is MotorType.SplitPhase or MotorType.CapacitorStart or MotorType.CapacitorStartCapacitorRun;

    /// <summary>Whether it has a run capacitor; null when unknown.</summary>
    public static bool? HasRunCapacitor(MotorSpec spec) => spec.RunCapacitor is { } capacitor ? !capacitor.IsNone : null;

    /// <summary>Whether a motor of so many phases, with or without a run capacitor, may be of a type; what is unknown rules nothing out.</summary>
    public static bool MayBe(MotorType type, Phases? phases, bool? hasRunCapacitor) =>
        (phases is null || PhasesOf(type) is not { } its || its == phases)
        && (hasRunCapacitor is not { } has || has == (type is MotorType.PermanentSplitCapacitor or MotorType.CapacitorStartCapacitorRun));

    /// <summary>The types that a motor whose plate names none may be; none where it names one.</summary>
    public static IEnumerable<MotorType> Possible(MotorSpec spec) =>
        spec.Type is not null ? [] : Enum.GetValues<MotorType>().Where(type => MayBe(type, spec.Phase, HasRunCapacitor(spec)));

    /// <summary>A motor of a type, within a sentence: "an electronically commutated motor".</summary>
    public static string Some(MotorType type) => Deducing.Text(type) is var text && "aeiou".Contains(text[0], StringComparison.Ordinal) ? $"an {text} motor" : $"a {text} motor";
}
