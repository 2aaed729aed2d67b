using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Valves.SolenoidValves.Proof;

/// <summary>Is it the solenoid valve, and is the new one right?</summary>
public static class SolenoidValveProof
{
    /// <summary>The rules, before and after alike: what condemns by itself first, what clears it next, what asks last. A seat that passes condemns it whatever its circuit lacks, and what that is told by is asked first.</summary>
    public static IReadOnlyList<ReadingRule<SolenoidValveCase>> Rules { get; } = [new LeakOutward(), new CoilResistance(), new HoldsWhenShut(), new VoltsAtCoil(), new DropAcrossItsContact(), new Magnet(), new PassesWhenOpen(), new PassesGas()];

    /// <summary>Whether the old one has failed.</summary>
    public static Diagnosis Diagnose(SolenoidNeed need, SolenoidValveReadings readings)
    {
        var one = new SolenoidValveCase(need, readings);
        return Diagnosis.Of(Rules, one, [.. new[] { WrongVolts(one), BurntContact(one), Dirt(one) }.OfType<MendFirst>()]);
    }

    /// <summary>Whether the new one works as it should.</summary>
    public static AfterSwapReport Report(SolenoidNeed need, SolenoidValveSpec part, SolenoidValveReadings readings)
    {
        var one = new SolenoidValveCase(need, readings, part);
        return new([.. Rules.Select(rule => rule.CheckOf(rule.Judge(one))).OfType<ReadingCheck>()], [], []);
    }

    private static MendFirst? WrongVolts(SolenoidValveCase one) => new VoltsAtCoil().Judge(one) is { Verdict: ReadingVerdict.Bad } bad && one.Volts is > 0
        ? new("coilVoltsWrong", bad.Sentence, "Mend the coil's supply before a new coil goes on: at wrong volts it burns or does not lift.", SolenoidValveReadingSources.ValveCoilVolts) : null;

    private static MendFirst? BurntContact(SolenoidValveCase one) => new DropAcrossItsContact().Judge(one) is { Verdict: ReadingVerdict.Bad } bad
        ? new("coilContactBurnt", bad.Sentence, "Replace the contact that feeds the coil: on what it leaves of the volts a new coil burns as well, or does not lift. See that the new one is marked for all coils on it.", ContactReadingSources.ContactDrop) : null;

    private static MendFirst? Dirt(SolenoidValveCase one) => new HoldsWhenShut().Judge(one) is { Concludes: Conclusion.PartHasFailed }
        ? new("dirtInLine", "It passed when shut: most often dirt lies on its seat.", "Change the filter-drier before the valve, and flush with nitrogen: the same dirt stops the new valve.", SolenoidValveReadingSources.ValveSigns) : null;
}
