using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using UnitsNet.Units;

namespace PartsMatch.Fit.Motors;

/// <summary>What follows from a motor's readings. A reading is never overridden; what takes some working out is not worked out for a field that is read.</summary>
public static class MotorDeductions
{
    /// <summary>What follows for the motor.</summary>
    public static (MotorSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(MotorSpec spec) =>
        Deducing.Apply(spec, PhaseOfType, PowerAtShaft, PowerBalance.MeaningBesideInput, LineBalance.Meaning, PowerBalance.Efficiency, StandardOfMarks, StarDeltaOfVolts, SpeedsCounted, PolesOfSpeed, FaceOfFrame, ShaftOfFrame, FeetOfFrame);

    /// <summary>What follows for the site from the old motor.</summary>
    public static (MotorSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(MotorSpec plate, MotorSite site) =>
        Deducing.Apply(site, there => FrequencyThere(plate, there), there => PhasesThere(plate, there), there => SpeedsInUse(plate, there));

    private static IEnumerable<Deduction> PhaseOfType(MotorSpec spec)
    {
        if (spec.Phase is not null || MotorKinds.PhasesOf(spec.Type) is not { } phases) yield break;
        yield return Plate("phase", phases, $"{MotorKinds.Some(spec.Type!.Value)} is {Deducing.Text(phases)}", MotorSources.TypeOfMotor, "type");
    }

    private static IEnumerable<Deduction> PowerAtShaft(MotorSpec spec)
    {
        if (spec is not { PowerMeaning: null, Power: { } power }) yield break;
        if (power.All(one => one.Unit is PowerUnit.ElectricalHorsepower))
        {
            yield return Plate("powerMeaning", PowerMeaning.Output, "horsepower is at the shaft", MotorSources.ShaftPower, "power");
        }
        else if (spec.Type == MotorType.ThreePhaseInduction || (spec.Type is null && spec.Phase == Phases.Three))
        {
            yield return Plate("powerMeaning", PowerMeaning.Output, "a three-phase motor's rated power is at the shaft", MotorSources.ShaftPower, spec.Type is null ? "phase" : "type", "power");
        }
    }

    /// <summary>Only what stands on the plate tells whose habits it follows: volts that are 1 to √3 do not.</summary>
    private static IEnumerable<Deduction> StandardOfMarks(MotorSpec spec)
    {
        if (spec.StarDelta != true || spec.LeadMarks?.Contains(LeadNames.NemaMarks) == true) yield break;
        yield return Plate("standard", PlateStandard.Iec, "Δ and Y beside the volts are a habit of IEC plates", MotorSources.IecHabit, "starDelta");
    }

    /// <summary>What is marked by NEMA's habits has no delta and star between its volts.</summary>
    private static IEnumerable<Deduction> StarDeltaOfVolts(MotorSpec spec)
    {
        if (spec is not { Phase: Phases.Three, StarDelta: null } || spec.Standard == PlateStandard.Nema || spec.LeadMarks?.Contains(LeadNames.NemaMarks) == true || !StarAndDelta.AreVolts(spec)) yield break;
        yield return Plate("starDelta", true, $"{Deducing.Text(spec.Voltage!)} stand 1 to √3: the lower is for delta, the higher for star", MotorSources.StarDelta, "voltage", "phase");
    }

    /// <summary>Several speeds, or powers, on the plate are as many speeds, unless they are, or may be, one speed at several frequencies.</summary>
    private static IEnumerable<Deduction> SpeedsCounted(MotorSpec spec)
    {
        if (spec.Speeds is not null || HighSpeed.MayBeByFrequency(spec) || RatedSpeeds.AreCrossed(spec)) yield break;
        var count = LowerSpeeds.Of(spec).Count + 1;
        if (spec.Speed is { Count: > 1 } speed) yield return Plate("speeds", count, $"the plate gives {Deducing.Text(speed)}", MotorSources.SideBySide, "speed");
        else if (count > 1) yield return Plate("speeds", count, $"the plate gives {Deducing.Text(spec.Power!)}", MotorSources.SideBySide, "power");
    }

    private static IEnumerable<Deduction> PolesOfSpeed(MotorSpec spec)
    {
        if (spec is not { Poles: null, Speed: { } speed, Frequency: { } frequency } || !MotorKinds.IsInduction(spec)) yield break;
        var counts = HighSpeed.Rpm(spec).Select(point => PoleCounts.Of(point.Value, point.Hertz)).ToList();
        if (counts.Exists(possible => possible.Count != 1) || counts.Select(possible => possible[0]).Distinct().Count() != 1) yield break;
        yield return Plate("poles", counts[0][0], $"{Deducing.Text(speed)} at {Deducing.Text(frequency)} fits no other count", MotorSources.Slip, "speed", "frequency");
    }

    private static IEnumerable<Deduction> FaceOfFrame(MotorSpec spec)
    {
        if (spec.Frame is not { } frame || MotorFaces.Find(frame) is not { } face) yield break;
        var because = $"frame {Deducing.Text(frame)} has the {face.Name} face";
        yield return Plate("faceBoltCircle", face.BoltCircle, because, face.Source, "frame");
        yield return Plate("facePilot", face.Pilot, because, face.Source, "frame");
        if (face.ShaftBeyondFace is { } beyond) yield return Plate("shaftLength", beyond, because, face.Source, "frame");
    }

    private static IEnumerable<Deduction> ShaftOfFrame(MotorSpec spec)
    {
        if (spec is { ShaftDiameter: not null, ShaftForm: not null, ShaftLength: not null } || spec.Frame is not { } frame || MotorFrames.Find(frame) is not { } row) yield break;
        var because = $"frame {Deducing.Text(frame)} has this shaft as standard";
        yield return Plate("shaftDiameter", row.ShaftDiameter, because, row.Source, "frame");
        yield return Plate("shaftForm", row.ShaftForm, because, row.Source, "frame");

        // On the small frames the length is made to the job, in steps of a quarter inch (MG 1 4.4.1 note 3): the table's is only the usual one.
        if (frame.System == FrameSystem.Iec || frame.Number >= 100) yield return Plate("shaftLength", row.ShaftLength, because, row.Source, "frame");
    }

    /// <summary>Frames that have feet: a longer foot, or the 1964 series, without a letter for a face, a flange or a mounting of the maker's own. A special shaft (Z, S) leaves the feet.</summary>
    private static IEnumerable<Deduction> FeetOfFrame(MotorSpec spec)
    {
        if (spec is not { Mounts: null, Frame: { System: FrameSystem.Nema, Suffix: "H" or "HZ" or "T" or "TZ" or "TS" } frame }) yield break;
        yield return Plate("mounts", new Choices<MountKind>(MountKind.RigidBase), $"frame {Deducing.Text(frame)} names no face or flange, and so has feet", MotorSources.FeetOfFrame, "frame");
    }

    private static IEnumerable<Deduction> FrequencyThere(MotorSpec plate, MotorSite site)
    {
        if (site.SupplyFrequency is not null || plate.Frequency is not { Count: 1 } frequency) yield break;
        yield return Site("supplyFrequency", frequency[0], $"the old motor ran on {Deducing.Text(frequency[0])}", "frequency");
    }

    /// <summary>A plate that rates its speeds one by one is of a motor made to run on all of them; how many the controls use outranks it.</summary>
    private static IEnumerable<Deduction> SpeedsInUse(MotorSpec plate, MotorSite site)
    {
        if (site.SpeedsUsed is not null || plate.Speeds is not { } speeds || LowerSpeeds.Of(plate).Count == 0) yield break;
        var (field, text) = plate.Speed is { Count: > 1 } speed ? ("speed", Deducing.Text(speed)) : ("power", Deducing.Text(plate.Power!));
        yield return Site("speedsUsed", speeds, $"the old motor is rated for {text}", field);
    }

    /// <summary>A sign of one phase outweighs any sign of three: two wires at the leads are two wires, whatever stands behind them.</summary>
    private static IEnumerable<Deduction> PhasesThere(MotorSpec plate, MotorSite site)
    {
        if (plate.Phase == Phases.Single) yield return Site("supplyPhase", Phases.Single, "the old motor was single-phase: two wires reach it", "phase");
        if (site.SupplyArrangement == SupplyArrangement.SinglePhase) yield return Site("supplyPhase", Phases.Single, "the supply is single-phase", "supplyArrangement");
        if (plate.Phase == Phases.Three) yield return Site("supplyPhase", Phases.Three, "the old motor was three-phase", "phase");
        if (site.SupplyArrangement is not (null or SupplyArrangement.SinglePhase)) yield return Site("supplyPhase", Phases.Three, "stars and deltas have three phases", "supplyArrangement");
        if (site.Volts is { Count: 3 }) yield return Site("supplyPhase", Phases.Three, "three voltages were measured line to line", "volts");
    }

    private static Deduction Plate<T>(string field, T value, string because, Source source, params string[] from)
        where T : notnull => new(Side.Plate, field, Deducing.Text(value), because, from, source);

    private static Deduction Site<T>(string field, T value, string because, params string[] from)
        where T : notnull => new(Side.Site, field, Deducing.Text(value), because, from, MotorSources.OldMotorRan);
}
