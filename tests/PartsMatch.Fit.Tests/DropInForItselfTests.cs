using System.Globalization;
using FsCheck;
using FsCheck.Fluent;
using FsCheck.Xunit;
using PartsMatch.Fit.Capacitors;
using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers;
using PartsMatch.Fit.Switches.PressureControls;
using PartsMatch.Fit.Switches.Thermostats;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Valves.CondensingPressureValves;
using PartsMatch.Fit.Valves.ExpansionValves;
using PartsMatch.Fit.Valves.SolenoidValves;

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

    [Property(MaxTest = 300)]
    public Property A_motor_of_any_number_of_speeds_is_a_drop_in_for_itself_whether_they_are_said_to_be_used_or_not() => Prop.ForAll(
        (from speeds in Gen.Choose(1, 4)
         from power in Gen.Elements("1/2", "1/2-1/3", "1/2-1/3-1/4", "1/2-1/3-1/4-1/5").Where(text => text == "1/2" || text.Split('-').Length == speeds)
         from amps in Gen.Elements(true, false)
         from means in Gen.Elements("tapped", "separate windings", string.Empty)
         from used in Gen.Elements(string.Empty, $"speedsUsed={speeds}")
         select (speeds, power, amps, means, used)).ToArbitrary(),
        one =>
        {
            var rpm = string.Join('/', ((string[])["1075", "950", "850", "725"]).Take(one.speeds));
            var amps = one.amps ? string.Join('/', ((string[])["3.4", "2.3", "1.8", "1.4"]).Take(one.speeds)) : "3.4";
            var texts = Named.Texts($"type=PSC; power={one.power} hp; speed={rpm} rpm; speeds={one.speeds}; poles=6; voltage=208-230 V; phase=1; frequency=60 Hz; fullLoadAmps={amps} A; runCapacitor=5/370; mounts=band; bodyDiameter=5.6 in; "
                + $"shaftDiameter=1/2 in; shaftLength=4 in; shaftForm=flat; shaftEnds=1; rotation=CW shaft end; reversing=fixed; enclosure=TEAO; bearings=ball; insulation=B; ambientMost=60 °C; protection=automatic; bodyLength=5 in{(one.means.Length > 0 ? $"; speedMeans={one.means}" : string.Empty)}");
            var family = Families.Find("motor")!;
            var need = family.ReadNeed(new(null, texts, Named.Texts($"volts=230 V; surroundings=dry; bladeStays=yes; drive=direct; fanKind=propeller; {one.used}"))).Need;
            var sheet = family.Judge(need, family.ReadSpec(texts).Spec);
            sheet.Fit.ShouldBe(PartFit.DropIn, string.Join(" ", sheet.Findings.Where(found => found.Finding.Verdict != Verdict.Meets).Select(found => found.Finding.Sentence)));
            sheet.Findings.Single(found => found.Aspect.Name == "outputPower").Finding.Shortfall.ShouldBe(0);
        });

    [Fact]
    public void Every_fully_specified_run_capacitor_is_a_drop_in_for_itself() => EveryOneIsADropIn<CapacitorSpec>("capacitor", 50, IsFullySpecified, capacitor =>
    [
        new("supplyFrequency", QuantityForms.Hertz.Write(capacitor.Frequency![0])),
        new("airMost", "50 °C"),
    ]);

    [Fact]
    public void Every_fully_specified_solenoid_valve_is_a_drop_in_for_itself() => EveryOneIsADropIn<SolenoidValveSpec>("solenoidValve", 200, IsFullySpecified, valve =>
    [
        new("refrigerant", valve.Refrigerants!.First(one => !one.IsFlammable || valve.Refrigerants!.All(other => other.IsFlammable)).Name),
        .. valve.CoilCurrent == CoilCurrent.Alternating ? (NamedText[])[new("coilSupplyFrequency", "60 Hz")] : [],
    ]);

    [Fact]
    public void Every_fully_specified_expansion_valve_is_a_drop_in_for_itself() => EveryOneIsADropIn<ExpansionValveSpec>("expansionValve", 200, IsFullySpecified, valve =>
    [
        new("refrigerant", valve.Refrigerants![0].Name),
        new("evaporatingAt", QuantityForms.Temperature.Write(UnitsNet.Temperature.FromDegreesFahrenheit(Math.Min(valve.EvaporatingMost!.Value.DegreesFahrenheit, (valve.LimitsAt?.DegreesFahrenheit ?? 100) - 5)))),
    ]);

    [Fact]
    public void Every_fully_specified_contactor_is_a_drop_in_for_itself() => EveryOneIsADropIn<ContactorSpec>("contactor", 250, IsFullySpecified, contactor =>
    [
        new("controlVolts", Midpoint(contactor.CoilVolts![0])),
        new("hazard", "none"),
        new("shuntFeedsHeat", "no"),
        new("isInterlocked", "no"),
    ]);

    [Fact]
    public void Every_fully_specified_contactor_is_a_drop_in_for_itself_under_all_that_it_carries() => EveryOneIsADropIn<ContactorSpec>("contactor", 150, contactor => IsFullySpecified(contactor) && contactor is { FullLoadAmps: not null, LockedRotorAmps: not null }, contactor =>
    [
        new("controlVolts", Midpoint(contactor.CoilVolts![0])),
        new("loads", "compressor"),
        new("motors", FormattableString.Invariant($"{contactor.FullLoadAmps![0].Amperes}/{contactor.LockedRotorAmps![0].Amperes} A")),
        new("loadVolts", QuantityForms.Volts.Write(contactor.RatedVolts![0])),
        new("isInterlocked", "no"),
    ]);

    [Fact]
    public void Every_fully_specified_pressure_control_is_a_drop_in_for_itself_at_the_setting_it_ships_with() => EveryOneIsADropIn<PressureControlSpec>("pressureControl", 150, IsFullySpecified, control =>
    [
        new("hazard", "none"),
        new("refrigerant", "R-404A"),
        new("designPressure", QuantityForms.GaugePressure.Write(control.Range?.High ?? control.CutOut!.Value)),
        new("reliefSetting", QuantityForms.GaugePressure.Write((control.Range?.High ?? control.CutOut!.Value) * 1.2)), // over 1 / 0.9 of it
        new("testPressure", QuantityForms.GaugePressure.Write(control.PressureMost!.Value)),
    ]);

    [Fact]
    public void Every_fully_specified_thermostat_is_a_drop_in_for_itself_at_the_setting_it_ships_with() => EveryOneIsADropIn<ThermostatSpec>("thermostat", 150, IsFullySpecified, thermostat =>
    [
        new("hazard", "none"),
        new("defrostPeak", QuantityForms.Temperature.Write(thermostat.BulbMost!.Value)),
        .. thermostat.Capillary is { } length ? (NamedText[])[new("capillaryReach", QuantityForms.Length.Write(length))] : [],
    ]);

    [Fact]
    public void Every_fully_specified_condensing_pressure_valve_is_a_drop_in_for_itself() => EveryOneIsADropIn<CondensingPressureValveSpec>("condensingPressureValve", 60, valve => valve is { RatedCapacity: not null, RatedDrop: not null, RatedAmbient: not null, WorkingPressure: not null, Joint: not null }, valve =>
    [
        new("refrigerant", valve.RatedWith!.Name),
        new("receiverHoldsFlooding", "yes"),
    ]);

    [Fact]
    public void Every_fully_specified_defrost_timer_is_a_drop_in_for_itself() => EveryOneIsADropIn<DefrostTimerSpec>("defrostTimer", 50, IsFullySpecified, timer =>
    [
        new("hazard", "none"),
        new("clockSupplyFrequency", QuantityForms.Hertz.Write(timer.ClockFrequency![0])),
        new("minutesNeeded", DefrostMinutes.Form.Write(new((timer.FailSafe!.Low + timer.FailSafe.High) / 2))),
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

    private static bool IsFullySpecified(SolenoidValveSpec valve) =>
        valve is { NormalState: not null, Refrigerants: not null, FlowCoefficient: not null, LeastDifferential: not null, OpeningDifferential: not null, WorkingPressure: not null, Body: not null, Joint: not null, InletSize: not null }
        && valve is { CoilVolts: not null, CoilPower: not null }
        && (valve.CoilFrequency is not null || valve.CoilCurrent == CoilCurrent.Direct)
        && !(valve.Hazards is null && valve.Refrigerants.All(one => one.IsFlammable));

    private static bool IsFullySpecified(ExpansionValveSpec valve) =>
        valve is { Refrigerants: not null, Equaliser: not null, WorkingPressure: not null, RatedCapacity: not null, RatedWith: not null, RatedEvaporatingAt: not null, RatedLiquidAt: not null, RatedDrop: not null }
        && valve is { Joint: not null, InletSize: not null, OutletSize: not null, Charge: not null, EvaporatingLeast: not null, EvaporatingMost: not null, Capillary: not null };

    /// <summary>Full-load amps alone do not say what motors it starts.</summary>
    private static bool IsFullySpecified(ContactorSpec contactor) =>
        contactor is { PoleCount: not null, ContactAction: not null, Auxiliaries: not null, CoilVolts: not null, CoilVa: not null, Mounts: not null, Terminals: not null }
        && (contactor.CoilFrequency is not null || contactor.CoilCurrent == CoilCurrent.Direct)
        && contactor is not { FullLoadAmps: not null, LockedRotorAmps: null, AcThreeAmps: null, SinglePhaseHorsepower: null, ThreePhaseHorsepower: null }
        && (contactor.HasInterlock is not null && contactor.TakesAuxiliaries is not null);

    private static bool IsFullySpecified(PressureControlSpec control) =>
        control is { Function: not null, Action: not null, Reset: not null, Poles: not null, CutOut: not null, PressureMost: not null, Connection: not null, PilotDuty: not null }
        && (control.Reset == ContactReset.Manual || control is { CutIn: not null, Differential: not null })
        && (control.IsAdjustable == false || control.Range is not null);

    private static bool IsFullySpecified(ThermostatSpec thermostat) =>
        thermostat is { Function: not null, Action: not null, Reset: not null, CutOut: not null, Bulb: not null, BulbMost: not null, Terminals: not null, PilotDuty: not null, FullLoadAmps: not null }
        && (thermostat.Reset == ContactReset.Manual || thermostat.CutIn is not null)
        && (thermostat.IsAdjustable == false || thermostat is { Range: not null, Capillary: not null } and ({ Differential: not null } or { Reset: ContactReset.Manual }))
        && (thermostat.Bulb is not (BulbForm.Straight or BulbForm.Coiled) || thermostat.BulbLength is not null)
        && (thermostat.Action != ThermostatAction.ChangeOver || thermostat.Common is not null);

    /// <summary>A clock for two voltages has to be connected for one, even in its own place.</summary>
    private static bool IsFullySpecified(DefrostTimerSpec timer) =>
        timer is { ClockVolts.Count: 1, ClockFrequency: not null, Clock: not null, Starts: not null, FailSafe: not null, EndedBy: not null, ContactsFor: not null, Poles: not null, Terminals: not null, Body: not null, BoxPattern: not null }
        && timer is { RatedVolts: not null, ResistiveAmps: not null, FullLoadAmps: not null, PilotDuty: not null }
        && (timer.ReleaseVolts is not null || !timer.EndedBy.Contains(DefrostEnd.Temperature));

    private static void EveryOneIsADropIn<T>(string kind, int least, Func<T, bool> isFullySpecified, Func<T, IReadOnlyList<NamedText>> siteOf)
        where T : Spec
    {
        var family = Families.Find(kind)!;
        var checkedParts = 0;
        var others = new List<string>();
        foreach (var (number, texts) in DemoParts.Of(family))
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
}
