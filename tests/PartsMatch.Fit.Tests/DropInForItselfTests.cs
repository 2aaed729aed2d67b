using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Tests;

/// <summary>A fully specified part, at a site that matches it as shipped, is a drop-in for itself: shown on every such part of the demo catalogue.</summary>
public sealed class DropInForItselfTests
{
    [Fact]
    public void Every_fully_specified_motor_is_a_drop_in_for_itself() => EveryOneIsADropIn<MotorSpec>("motor", 1000, IsFullySpecified, motor =>
    [
        new("volts", AllLines(Midpoint((motor.ConnectedFor ?? motor.Voltage!)[0]), motor.Phase!.Value)),
        new("supplyFrequency", QuantityForms.Hertz.Write(motor.Frequency![0])),
        new("supplyPhase", new EnumForm<Phases>().Write(motor.Phase!.Value)),
        new("bladeStays", "yes"),
        new("drive", "direct"),
        new("speedsUsed", motor.Speeds!.Value.ToString(CultureInfo.InvariantCulture)),
        new("surroundings", "dry"),
        new("shaftPosition", "horizontal"),
        new("overloadInCircuit", motor.Protection == Protection.None ? "yes" : "no"),
    ]);

    [Fact]
    public void Every_fully_specified_run_capacitor_is_a_drop_in_for_itself() => EveryOneIsADropIn<CapacitorSpec>("capacitor", 50, IsFullySpecified, capacitor =>
    [
        new("supplyFrequency", QuantityForms.Hertz.Write(capacitor.Frequency![0])),
        new("airMost", "50 °C"),
    ]);

    /// <summary>Watts from the line alone do not say what the shaft gives: those are not fully specified.</summary>
    private static bool IsFullySpecified(MotorSpec motor) =>
        motor is { Type: not null, Power: not null, PowerMeaning: PowerMeaning.Output, Speed: not null, Speeds: not null, Phase: not null, Frequency: not null, Voltage: not null, RunCapacitor: not null }
        && motor is { ShaftDiameter: not null, ShaftLength: not null, ShaftForm: not null, ShaftEnds: not null, Rotation.SeenFrom: not null, Reversing: not null, Enclosure: not null, Mounts: not null, BodyDiameter: not null }
        && motor is { FullLoadAmps: not null, Protection: not null }
        && (motor.Voltage.Count == 1 || motor.ConnectedFor is not null)
        && (motor.Poles is not null || motor.Type == MotorType.ElectronicallyCommutated)
        && (motor.RunCapacitor.IsNone || motor.RunCapacitor.Volts is not null)
        && motor.Mounts.All(mount => mount switch
        {
            MountKind.Studs => motor.StudCircle is not null,
            MountKind.TappedFace or MountKind.Flange => motor.FaceBoltCircle is not null && motor.FacePilot is not null,
            MountKind.RigidBase or MountKind.ResilientCradle => motor.Frame is { PromisesDimensions: true },
            _ => true,
        });

    /// <summary>Start capacitors and unprotected ones are never offered for running, not even for themselves.</summary>
    private static bool IsFullySpecified(CapacitorSpec capacitor) =>
        capacitor is { Rating.Volts: not null, Tolerance: not null, Frequency: not null, Duty: CapacitorDuty.Run, IsProtected: true, TemperatureMost: not null, Can: not null, Diameter: not null, Height: not null };

    private static void EveryOneIsADropIn<T>(string kind, int least, Func<T, bool> isFullySpecified, Func<T, IReadOnlyList<NamedText>> siteOf)
        where T : Spec
    {
        var family = Families.Find(kind)!;
        var checkedParts = 0;
        var others = new List<string>();
        foreach (var (number, texts) in Rows(family))
        {
            var (read, complaints) = family.ReadSpec(texts);
            complaints.ShouldBeEmpty(number);
            var spec = (T)read;
            if (!isFullySpecified(spec)) continue;
            checkedParts++;
            var sheet = family.Judge(family.ReadNeed(new(null, texts, siteOf(spec))).Need, spec);
            if (sheet.Fit != PartFit.DropIn) others.Add($"{number}: {string.Join(" ", sheet.Findings.Where(one => one.Finding.Verdict != Verdict.Meets).Select(one => $"{one.Aspect.Name} {one.Finding.Verdict}: {one.Finding.Sentence}"))}");
        }

        others.ShouldBeEmpty();
        checkedParts.ShouldBeGreaterThan(least);
    }

    private static string Midpoint(Spread<UnitsNet.ElectricPotential> tap) => QuantityForms.Volts.Write(UnitsNet.ElectricPotential.FromVolts((tap.First.Volts + tap.Last.Volts) / 2));

    private static string AllLines(string volts, Phases phases) => phases == Phases.Three ? $"{volts[..^2]}/{volts[..^2]}/{volts}" : volts;

    private static IEnumerable<(string Number, IReadOnlyList<NamedText> Texts)> Rows(Family family)
    {
        using var csv = new CsvReader(new StreamReader(Path.Combine(Repository.Root, "seed-data", $"{family.Kind}s.csv")), new CsvConfiguration(CultureInfo.InvariantCulture));
        csv.Read();
        csv.ReadHeader();
        while (csv.Read())
        {
            yield return (csv.GetField("number")!, [.. family.SpecShape.Fields.Select(field => new NamedText(field.Name, csv.GetField(field.Name) ?? string.Empty))]);
        }
    }
}
