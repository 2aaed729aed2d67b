using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.PressureControls.Proof;

/// <summary>Is it the pressure control, and is the new one right?</summary>
public static class PressureControlProof
{
    /// <summary>The rules, before and after alike: what condemns it by itself stands before what clears it, and both before what asks. Where its contacts moved only condemns; what they are at this pressure clears it as well.</summary>
    public static IReadOnlyList<ReadingRule<PressureControlCase>> Rules { get; } = [new DropAcrossContacts(), new OpensAtSetting(), new ClosesAtSetting(), new ContactsAtPressure(), new FirstReading()];

    /// <summary>Whether the old one has failed.</summary>
    public static Diagnosis Diagnose(PressureControlNeed need, PressureControlReadings readings)
    {
        var one = new PressureControlCase(need, readings);
        return Diagnosis.Of(Rules, one, [.. new[] { Tripped(one) }.OfType<MendFirst>()]);
    }

    /// <summary>Whether the new one opens and closes where it should.</summary>
    public static AfterSwapReport Report(PressureControlNeed need, PressureControlSpec part, PressureControlReadings readings)
    {
        var one = new PressureControlCase(need, readings, part);
        return new([.. Rules.Select(rule => rule.CheckOf(rule.Judge(one))).OfType<ReadingCheck>()], [], []);
    }

    private static MendFirst? Tripped(PressureControlCase one) => one is { Misread: null, BeyondCutOut: > Aspects.Settings.Near and var beyond, Need.Plate.Function: { } function }
        ? new(
            "pressureBeyondCutOut",
            $"The pressure is {new ShownPressure(beyond)} beyond its cut-out.",
            function == PressureFunction.HighPressure ? "Find why it is so high: condenser fan, dirty coil, warm air drawn in again, a valve closed, overcharge." : function == PressureFunction.LowPressure ? "Find why it is so low: leak, frosted coil, a fan that stands still, a strainer or valve closed." : "Cold air keeps the pressure down: the fan may rightly stand still.",
            PressureControlReadingSources.PressureContacts)
        : null;
}
