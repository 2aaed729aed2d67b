using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors.Aspects;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>What follows from a contactor's plate, and for its place.</summary>
public static class ContactorDeductions
{
    /// <summary>What follows from its size, its category and its horsepower: for a catalogue part as well, so that nothing is among it that only mostly holds.</summary>
    public static (ContactorSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(ContactorSpec spec) =>
        Deducing.Apply(spec, Alternating, PolesOfEach, SizeCarries, SizeRates, Categories, HorsepowerInAmps);

    /// <summary>What the old one tells of its place, and what follows from what is on it.</summary>
    public static (ContactorSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(ContactorSpec plate, ContactorSite site) =>
        Deducing.Apply(site, there => BurningRefrigerant.Hazard(there.Refrigerant), ContactDeductions.HeaterVolts, ContactDeductions.HeaterAmps, ContactDeductions.Loads, AlternatingThere, _ => AsTheOldOne(plate));

    private static IEnumerable<Deduction> Alternating(ContactorSpec spec)
    {
        if (spec.CoilFrequency is not null) yield return new(Side.Plate, "coilCurrent", Deducing.Text(CoilCurrent.Alternating), "its coil has a frequency", ["coilFrequency"], ContactorSources.CoilFrequency);
    }

    private static IEnumerable<Deduction> PolesOfEach(ContactorSpec spec)
    {
        if (spec.ContactAction == ContactAction.OneOfEach) yield return new(Side.Plate, "poleCount", Deducing.Text(PoleCount.Two), "one pole of each kind", ["contactAction"], ContactorSources.ContactAction);
    }

    private static IEnumerable<Deduction> AlternatingThere(ContactorSite site)
    {
        if (site.ControlFrequency is not null) yield return new(Side.Site, "controlCurrent", Deducing.Text(CoilCurrent.Alternating), "the control circuit has a frequency", ["controlFrequency"], ContactorSources.CoilFrequency);
    }

    private static IEnumerable<Deduction> SizeCarries(ContactorSpec spec)
    {
        if (spec.Size is { } size && NemaSizes.Continuous(Named(size)) is { } amps) yield return new(Side.Plate, "continuousAmps", Deducing.Text(amps), $"NEMA size {Named(size)}", ["size"], NemaSizes.All[0].Source);
    }

    /// <summary>Horsepower by volts and phases: three-phase for three poles and more. Marked volts are those of other ratings, and stay by themselves.</summary>
    private static IEnumerable<Deduction> SizeRates(ContactorSpec spec)
    {
        if (spec.Size is not { } size || PhasesOf(spec) is not { } phases || spec is not { RatedVolts: null, SinglePhaseHorsepower: null, ThreePhaseHorsepower: null }) yield break;
        var rows = NemaSizes.Of(Named(size), phases);
        if (rows.Count == 0) yield break;
        var because = $"NEMA size {Named(size)}, {(phases == Phases.Three ? "three-phase" : "single-phase")}";
        yield return new(Side.Plate, "ratedVolts", Deducing.Text(new Figures<ElectricPotential>(rows.Select(row => row.Volts))), because, ["size", "poleCount"], rows[0].Source);
        yield return new(Side.Plate, FieldOf(phases), Deducing.Text(new Figures<Power>(rows.Select(row => row.Power))), because, ["size", "poleCount"], rows[0].Source);
    }

    private static IEnumerable<Deduction> Categories(ContactorSpec spec)
    {
        if (spec.AcOneAmps is { } resistance) yield return new(Side.Plate, "resistiveAmps", Deducing.Text(resistance), "its AC-1 amps", ["acOneAmps"], ContactorSources.AcOne);
        if (spec.AcThreeAmps is { } motors) yield return new(Side.Plate, "fullLoadAmps", Deducing.Text(motors), "its AC-3 amps", ["acThreeAmps"], ContactorSources.AcThree);
    }

    /// <summary>Full-load amps of motors of its horsepower, for as many phases as it has poles; null where it has none, or the tables lack it.</summary>
    internal static Figures<ElectricCurrent>? InAmps(ContactorSpec spec) => PhasesOf(spec) is { } phases ? ContactDeductions.InAmps(spec.RatedVolts, HorsepowerOf(spec, phases), phases) : null;

    private static IEnumerable<Deduction> HorsepowerInAmps(ContactorSpec spec) =>
        PhasesOf(spec) is { } phases ? ContactDeductions.FullLoad(spec.RatedVolts, HorsepowerOf(spec, phases), phases, FieldOf(phases)) : [];

    private static Phases? PhasesOf(ContactorSpec spec) => spec.PoleCount is not { } poles ? null : Poles.Switched(poles) >= 3 ? Phases.Three : Phases.Single;

    private static Figures<Power>? HorsepowerOf(ContactorSpec spec, Phases phases) => phases == Phases.Three ? spec.ThreePhaseHorsepower : spec.SinglePhaseHorsepower;

    private static IEnumerable<Deduction> AsTheOldOne(ContactorSpec plate)
    {
        if (plate.PoleCount is { } poles) yield return new(Side.Site, "linesSwitched", Deducing.Text(Poles.Switched(poles)), "the old one's poles", ["poleCount"], ContactSources.AsTheOldOne);
        // One that has or takes an interlock may have none on.
        if (plate.HasInterlock == false) yield return new(Side.Site, "isInterlocked", Deducing.Text(false), "the old one takes no interlock", ["hasInterlock"], ContactSources.AsTheOldOne);
        if (plate.CoilCurrent is { } current) yield return new(Side.Site, "controlCurrent", Deducing.Text(current), "the old coil's", ["coilCurrent"], ContactSources.AsTheOldOne);
        if (plate.CoilFrequency is { Count: 1 } only) yield return new(Side.Site, "controlFrequency", Deducing.Text(only[0]), "the only frequency on the old coil", ["coilFrequency"], ContactSources.AsTheOldOne);
    }

    private static string FieldOf(Phases phases) => phases == Phases.Three ? "threePhaseHorsepower" : "singlePhaseHorsepower";

    /// <summary>A size as the table names it.</summary>
    private static string Named(NemaSize size) => new EnumForm<NemaSize>().Write(size)["NEMA ".Length..];
}
