using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Thermostats.Proof;

/// <summary>Is it the thermostat, and is the new one right?</summary>
public static class ThermostatProof
{
    /// <summary>The rules, before and after alike: what condemns it by itself stands before what clears it, and both before what asks. Where its contacts moved only condemns; what they are at this temperature clears it as well.</summary>
    public static IReadOnlyList<ReadingRule<ThermostatCase>> Rules { get; } =
    [
        new DropAcrossContacts(), new OpensAtSetting(), new ClosesAtSetting(), new ContactsAtTemperature(), new FansContactsAtTemperature(), new BulbInItsPlace(), new WarmBox(), new FansAfterDefrost(), new EndOfDefrost(), new FirstReading(),
    ];

    /// <summary>Whether the old one has failed.</summary>
    public static Diagnosis Diagnose(ThermostatNeed need, ThermostatReadings readings)
    {
        var one = new ThermostatCase(need, readings);
        return Diagnosis.Of(Rules, one, readings.BulbInPlace == false ? [new MendFirst("bulbOutOfPlace", "Its bulb is not where it belongs.", "Put it back, tight, and in touch with what it is to feel, before anything is set or replaced.", ThermostatReadingSources.ThermostatBulb)] : []);
    }

    /// <summary>Whether the new one moves where it should.</summary>
    public static AfterSwapReport Report(ThermostatNeed need, ThermostatSpec part, ThermostatReadings readings)
    {
        var one = new ThermostatCase(need, readings, part);
        return new([.. Rules.Select(rule => rule.CheckOf(rule.Judge(one))).OfType<ReadingCheck>()], [], []);
    }
}
