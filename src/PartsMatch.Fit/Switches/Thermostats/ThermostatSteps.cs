using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.Thermostats.Aspects;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>The steps of every thermostat's job round its changes: an electrical circuit to make dead, and a bulb to be put where it feels what it is to feel.</summary>
internal static class ThermostatSteps
{
    /// <summary>What every such job is made of.</summary>
    public static JobSteps Of(ThermostatNeed need, ThermostatSpec part)
    {
        var isDefrost = need.Plate.Function is ThermostatFunction.FanDelay or ThermostatFunction.DefrostEnd or ThermostatFunction.FanDelayAndDefrostEnd;
        return new(
            [
                SafeSteps.LockOut,
                SafeSteps.ProveDead("its terminals", need.Site.LoadVolts is { } volts ? QuantityForms.Volts.Write(volts) : null),
                new(Stage.ProveThePart, "measure ohms through it and the temperature at its bulb before it is condemned", "On a warm box a fan delay keeps the fans off as it should: judge nothing before the coil is cold."),
                new(Stage.NoteWhatIsThere, "photograph its scale and terminals, where its bulb sits and how it is held, and note which wire goes where", null),
            ],
            [
                FormOfBulb.IsDisc(part.Bulb)
                    ? new(Stage.Mount, "hold the disc flat and tight where the old one sat", "Clean metal under it, leads tied where neither fan nor heater reaches them, and no melting water standing on it.")
                    : new(Stage.Mount, "put the bulb where the old one sat, and lead the capillary where nothing rubs on it", "Coil what is spare with wide bends: a kinked capillary is a dead thermostat. Keep it off the defrost heaters."),
                new(Stage.Wire, "put each wire back where its mark says", "Never bridge a limit to see whether the rest runs."),
                new(Stage.StartAndCheck, $"let it move by its own, with a thermometer at its bulb: it is to open{At(need.Site.CutOutNeeded)}, and close{(part.Reset == ContactReset.Manual ? " by its button" : At(need.Site.CutInNeeded))}, within 5 °F (2.8 K)", $"Take {Brought(need.Site)}, and put a disc in a bag; the thermometer counts, not the scale."),
                .. isDefrost ? (Step[])[new(Stage.StartAndCheck, "start a defrost by hand: it is to end by temperature, and the fans are to start once the coil is cold", "Add no refrigerant, and judge nothing by the fans, before they run.")] : [],
                new(Stage.StartAndCheck, "measure the volts across its closed contacts under load: at most 0.5 V (practice)", null),
                new(Stage.Record, "write down its number, where it opened and closed by the thermometer, and the date", null),
            ])
        {
            Kit = [SafeSteps.LockAndTag, SafeSteps.Meter, new($"thermometer with a probe for a bulb")],
            Cautions = [SafeSteps.CodesFirst, SafeSteps.Ladders, .. RefrigerantCautions.Of(need.Site.Hazard, need.Site.Refrigerant, opensCircuit: false), SafeSteps.BladesStart, .. FanWords(need), .. isDefrost ? (Caution[])[new(Stage.StartAndCheck, "Defrost heaters are hot and live without a sound: keep hands and wires off them.")] : []],
        };
    }

    /// <summary>With three wires the fans hang on a contact of their own, and may on another circuit.</summary>
    private static IEnumerable<Caution> FanWords(ThermostatNeed need) => need.Plate.Function == ThermostatFunction.FanDelayAndDefrostEnd || need.Site is not { FanMotors: null, FanVolts: null }
        ? [new(Stage.MakeSafe, "Fans and heaters may hang on two circuits: both are locked, and both are proved dead.")]
        : [];

    private static BulbBrought Brought(ThermostatSite site) => (Degrees.In(site.CutOutNeeded), Degrees.In(site.CutInNeeded)) is ({ } opens, { } closes) ? new(Math.Min(opens, closes), Math.Max(opens, closes)) : default;

    private static string At(UnitsNet.Temperature? temperature) => temperature is { } known ? $" at {QuantityForms.Temperature.Write(known)}" : string.Empty;
}
