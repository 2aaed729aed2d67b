using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Demo.Motors;

/// <summary>The few words a counter says: fan motor, 1/4 hp, 1075 rpm, 208-230 V, PSC.</summary>
public static class MotorTitles
{
    /// <summary>The title of a motor; what is the same for all motors of its kind is not said.</summary>
    public static string Of(string kind, MotorSpec spec)
    {
        var words = new List<string>
        {
            kind,
            TradeText.Write(spec.Power!) + (spec.PowerMeaning == PowerMeaning.Input ? " input" : string.Empty),
            TradeText.Write(spec.Speed!),
            TradeText.Write(spec.Voltage!),
        };
        if (spec.Frequency!.Count > 1 || spec.Frequency[0].Hertz < 60) words.Add(TradeText.Write(spec.Frequency));
        words.Add(spec.Type switch
        {
            MotorType.ShadedPole => "shaded pole",
            MotorType.PermanentSplitCapacitor => "PSC",
            MotorType.SplitPhase => "split phase",
            MotorType.CapacitorStart => "capacitor start",
            MotorType.CapacitorStartCapacitorRun => "capacitor start capacitor run",
            MotorType.ElectronicallyCommutated => "electronically commutated",
            _ => "three-phase",
        });
        return string.Join(", ", words);
    }
}
