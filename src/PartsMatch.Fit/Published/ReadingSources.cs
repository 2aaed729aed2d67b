using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Published;

/// <summary>Where the limits of readings come from, before a part is condemned and after the swap.</summary>
public static class ReadingSources
{
    /// <summary>No volts, no run.</summary>
    public static Source NoVolts { get; } = new("Called for and no volts at its leads: look up the circuit; under a tenth of the tap counts as none", SourceStatus.Practice);

    /// <summary>Volts, no amps, hot.</summary>
    public static Source ProtectorOpen { get; } = new("Volts, no amps and a hot shell: the protector inside is open; let it cool and try again", SourceStatus.Practice);

    /// <summary>Volts and no amps.</summary>
    public static Source NoCurrent { get; } = new("Under a twentieth of full-load amps, or under 0.05 A where they are not known, counts as no current", SourceStatus.Practice);

    /// <summary>Binds by hand.</summary>
    public static Source Binds { get; } = new("A motor that binds by hand with the power off has lost its bearings, where nothing drags on the blade", SourceStatus.Practice);

    /// <summary>Hums and spins free.</summary>
    public static Source Stalled { get; } = new("Hums at locked amps and spins free by hand: the capacitor, then the windings; when all of these are good, the rotor or the switch inside", SourceStatus.Practice);

    /// <summary>5 MΩ.</summary>
    public static Source Insulation { get; } = new("IEEE 43: at least 5 MΩ for random-wound machines under 1 kV; under 1 MΩ is condemned by practice", SourceStatus.Memory);

    /// <summary>Sum of two windings.</summary>
    public static Source WindingSum { get; } = new("Run to start has the ohms of common to run and common to start together, within 5 %", SourceStatus.Practice);

    /// <summary>Three windings alike.</summary>
    public static Source WindingSpread { get; } = new("The three windings of a three-phase motor differ by at most 5 % of their mean", SourceStatus.Practice);

    /// <summary>Capacitor under load.</summary>
    public static Source CapacitorUnderLoad { get; } = new("C = 10⁶·I / (2π·f·V), and run capacitors keep within ±6 % (EIA-456-A practice, public articles)", SourceStatus.Published);

    /// <summary>Capacitor's look.</summary>
    public static Source CapacitorLook { get; } = new("A run capacitor that bulges or leaks has failed", SourceStatus.Practice);

    /// <summary>Overvoltage of a capacitor.</summary>
    public static Source CapacitorVolts { get; } = new("IEC 60252-1: a run capacitor bears up to 110 % of its marked volts", SourceStatus.Memory);

    /// <summary>Command of an electronically commutated motor.</summary>
    public static Source Command { get; } = new("An electronically commutated motor that has volts and its command and takes no current has failed", SourceStatus.Practice);

    /// <summary>Amps against the plate.</summary>
    public static Source AmpsAgainstPlate { get; } = new("Running amps stay within the plate's full-load amps, service-factor amps only where a service factor is marked", SourceStatus.Practice);

    /// <summary>Amps of the legs.</summary>
    public static Source AmpsUnbalance { get; } = new("A current unbalance over 10 % is looked into", SourceStatus.Practice);

    /// <summary>Volts of the legs.</summary>
    public static Source VoltsUnbalance { get; } = new("NEMA MG 1 12.45, 14.36: 1 % without derating, not over 5 %", SourceStatus.Published);

    /// <summary>Volts under load.</summary>
    public static Source VoltsDrop { get; } = new("A drop of over 10 % under the motor's load means wiring or supply trouble", SourceStatus.Practice);

    /// <summary>Turn by the air.</summary>
    public static Source Turn { get; } = new("A propeller turning backwards blows the wrong way; a blower wheel blows the right way either way round, so its air proves nothing", SourceStatus.Practice);

    /// <summary>Blade clear.</summary>
    public static Source BladeClear { get; } = new("The blade clears its ring and guard all round", SourceStatus.Practice);

    /// <summary>Speed against the plate.</summary>
    public static Source RunningSpeed { get; } = new("A fan motor that carries its load runs within 5 % of its rated speed or above it, and below synchronous speed", SourceStatus.Practice);

    /// <summary>Split against the design.</summary>
    public static Source Split { get; } = new("Condensing split: looked into at 25 % over the unit's design or earlier one; 30 °F (17 K) is the ceiling of any", SourceStatus.Practice);

    /// <summary>Warm box.</summary>
    public static Source WarmBox { get; } = new("On a warm box the evaporator fans start late by design: nothing is judged and no refrigerant added until they run", SourceStatus.Practice);

    /// <summary>What kills motors.</summary>
    public static Source Killers { get; } = new("What killed the old motor kills the new one", SourceStatus.Practice);

    /// <summary>Added rise of an unbalanced winding.</summary>
    public static Source AddedRise { get; } = new("NEMA MG 1 14.36: added temperature rise of about 2 u² percent at u percent unbalance", SourceStatus.Memory);

    /// <summary>What a coil's ohms tell.</summary>
    public static Source ValveCoilOhms { get; } = new("A good coil has some ohms: none at all is a short, open is a break", SourceStatus.Practice);

    /// <summary>Temperature across an open liquid valve.</summary>
    public static Source ValveDropWhenOpen { get; } = new("An open liquid-line valve is as warm behind as before it: 3 °F (1.7 K) colder behind tells a throttled one", SourceStatus.Practice);

    /// <summary>What a look and an ear tell.</summary>
    public static Source ValveSigns { get; } = new("A valve that passes when shut has dirt or wear at its seat; a leak outward is mended or the valve replaced", SourceStatus.Practice);

    /// <summary>Volts at a solenoid valve's coil.</summary>
    public static Source ValveCoilVolts { get; } = new("UFGS 15652A, 2.21.3: a solenoid valve's coil works from 15 % under to 5 % over its marked volts; to 10 % over by practice", SourceStatus.Published);

    /// <summary>Superheat at an expansion valve's bulb.</summary>
    public static Source BulbSuperheat { get; } = new("Superheat at the bulb of 5 to 15 °F (2.8 to 8.3 K) is usual; it is pipe temperature less dew temperature", SourceStatus.Practice);

    /// <summary>What starves a coil beside its valve.</summary>
    public static Source StarvedCoil { get; } = new("Bubbles before an expansion valve, a loose bulb or a coil without air are mended before the valve is judged", SourceStatus.Practice);

    /// <summary>Warming and chilling the bulb.</summary>
    public static Source BulbTest { get; } = new("A valve that neither opens with a warm bulb nor closes with a chilled one has lost its charge or is stuck", SourceStatus.Practice);

    /// <summary>Not called for.</summary>
    public static Source NotCalledFor { get; } = new("A contactor that is not called for, or has no volts at its coil, is not the part: look up the circuit", SourceStatus.Practice);

    /// <summary>Window of a coil.</summary>
    public static Source ContactorCoilVolts { get; } = new("IEC 60947-4-1, NEMA ICS 2: a coil pulls in and holds from 85 to 110 % of its volts", SourceStatus.Memory);

    /// <summary>Ohms of a coil.</summary>
    public static Source ContactorCoilOhms { get; } = new("A coil that is open or under 1 Ω has failed; marked ohms hold within 20 %", SourceStatus.Practice);

    /// <summary>Pulls in.</summary>
    public static Source ContactorPullsIn { get; } = new("With good volts and ohms a coil pulls its armature in, all the way", SourceStatus.Practice);

    /// <summary>Chatters.</summary>
    public static Source ContactorChatters { get; } = new("Low volts make a contactor hum and chatter; with good volts its faces or its shading ring do", SourceStatus.Practice);

    /// <summary>Look of contacts.</summary>
    public static Source ContactsLook { get; } = new("A contactor with a burnt pole is replaced: contacts are not filed", SourceStatus.Practice);

    /// <summary>Welded.</summary>
    public static Source ContactsWelded { get; } = new("Contacts that stay closed with no volts at the coil are welded, or the armature sticks", SourceStatus.Practice);

    /// <summary>Drop across a pole.</summary>
    public static Source ContactDrop { get; } = new("A closed pole loses at most 0.5 V under load; over 1 V it is bad", SourceStatus.Practice);

    /// <summary>Amps of each leg.</summary>
    public static Source ContactAmps { get; } = new("Each leg stays within the full-load amps that a pole is marked for at its volts", SourceStatus.Practice);

    /// <summary>Heat of terminals.</summary>
    public static Source TerminalHeat { get; } = new("IEC 60947-1 table 2: terminals rise at most 65 K over the air round them", SourceStatus.Memory);

    /// <summary>Contacts at a pressure.</summary>
    public static Source PressureContacts { get; } = new("A pressure control is judged by the gauge beside it: open beyond its cut-out it has done its work; within 5 psi of a setting nothing is concluded", SourceStatus.Practice);

    /// <summary>Settings by the gauge.</summary>
    public static Source PressureSetting { get; } = new("A pressure control moves within 5 psi of its setting by the gauge", SourceStatus.Practice);

    /// <summary>What a condensing-pressure valve does at a head.</summary>
    public static Source HeadHeld { get; } = new("A condensing-pressure valve lets hot gas by below its setting and none 20 psi (138 kPa) above it; 10 psi (69 kPa) under it, it does not hold", SourceStatus.Practice);

    /// <summary>Charge to flood with.</summary>
    public static Source HeadCharge { get; } = new("Without enough refrigerant no valve floods a condenser", SourceStatus.Practice);
}
