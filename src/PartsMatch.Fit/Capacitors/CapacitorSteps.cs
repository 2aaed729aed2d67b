using PartsMatch.Fit.Capacitors.Aspects;
using PartsMatch.Fit.Notes;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors;

/// <summary>The steps of every run capacitor's job round its changes: discharged before anything else is touched.</summary>
internal static class CapacitorSteps
{
    /// <summary>What every capacitor's job is made of.</summary>
    public static JobSteps Of(CapacitorNeed need, CapacitorSpec part) => new(
        [
            SafeSteps.LockOut,
            SafeSteps.ProveDead("the terminals on the motor's side of the contactor", null),
            Discharge(need.Plate.Rating ?? need.Site.MotorAsksFor),
            new(
                Stage.ProveThePart,
                Measured(need),
                "With its wires off. A swollen top or a wet can is dead whatever the meter says."),
            new(
                Stage.NoteWhatIsThere,
                part.Rating?.SecondSection is null ? "photograph the terminals, and mark each wire with where it goes" : "photograph the terminals, and mark the wires of the common terminal and of either section",
                null),
        ],
        [
            new(Stage.Mount, "strap the can upright, its terminals free to lift", "A protected can opens by stretching: nothing may press on its top."),
            new(Stage.Wire, "put each wire back where its mark says, on a terminal that grips", null),
            new(Stage.StartAndCheck, UnderLoad(need, part), "Clamp the wire of the section, meter across its two terminals: µF = k × A ÷ V, k being 2652 at 60 Hz and 3183 at 50 Hz."),
            new(Stage.Record, $"write down {(part.Rating is { IsNone: false } rating ? CapacitorRating.Form.Write(rating) : "the new can's marking")}, the amps and the date", null),
        ])
    {
        Kit = [SafeSteps.Resistor, SafeSteps.LockAndTag, SafeSteps.Meter],
        Cautions = [SafeSteps.CodesFirst, SafeSteps.Ladders, SafeSteps.BladesStart],
    };

    private static Step Discharge(CapacitorRating? rating) => rating is { Capacitance: { } first }
        ? SafeSteps.Discharge($"the {CapacitorRating.Form.Write(rating)} capacitor", Rounded.To(first.Microfarads + (rating.SecondSection?.Microfarads ?? 0), 2), rating.SecondSection is not null)
        : SafeSteps.Discharge("the old capacitor", null);

    private static string Measured(CapacitorNeed need)
    {
        var percent = need.Plate.Tolerance?.Percent ?? 6;
        return need.Plate.Rating is { Capacitance: { } first } rating
            ? $"measure the old one: {string.Join(" and ", new[] { first, rating.SecondSection }.OfType<UnitsNet.ElectricCapacitance>().Select(section => FormattableString.Invariant($"{section.Microfarads * (1 - (percent / 100)):0.##} to {section.Microfarads * (1 + (percent / 100)):0.##} µF")))} is good"
            : "measure the old one: outside its marked tolerance, mostly ±6 %, it is the part";
    }

    private static string UnderLoad(CapacitorNeed need, CapacitorSpec part) =>
        need.Site.SupplyFrequency is { } frequency && part.Rating is { Volts: { } volts } && Capacitance.Pair(Asked.Of(need), SectionsFacet.Of(part)).ForFirst is { } used
            ? FormattableString.Invariant($"start it, and measure under load: {Rounded.To(used, 2)} µF take {CapacitorFormula.Amps(used, 100, frequency.Hertz):0.00} A for each 100 V across them, and not more than {volts.Volts:0.#} V may stand there")
            : "start it, and measure amps and volts of the capacitor under load";
}
