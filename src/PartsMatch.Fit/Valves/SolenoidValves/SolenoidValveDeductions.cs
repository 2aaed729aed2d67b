using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>What follows from a solenoid valve's markings.</summary>
public static class SolenoidValveDeductions
{
    /// <summary>A direct-acting valve needs no drop; where one size is given both sides have it; a coil with a frequency is for alternating current.</summary>
    public static (SolenoidValveSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(SolenoidValveSpec spec) => Deducing.Apply(spec, NoDrop, OtherSide, Alternating);

    /// <summary>What the old valve says of its place; what was measured outranks it.</summary>
    public static (SolenoidValveSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(SolenoidValveSpec plate, SolenoidValveSite site)
    {
        return Deducing.Apply(site, AlternatingThere, AsTheOld, there => RefrigerantThere.Hazard(there.Refrigerant, plate.Refrigerants));

        IEnumerable<Deduction> AsTheOld(SolenoidValveSite there)
        {
            if (plate.NormalState is { } state) yield return As("needsState", Deducing.Text(state), "normalState");
            if (plate.Joint is { } joint) yield return As("lineJoint", Deducing.Text(joint), "joint");
            if (plate.InletSize is { } inlet) yield return As("inletLine", Deducing.Text(inlet), "inletSize");
            if (plate.OutletSize is { } outlet) yield return As("outletLine", Deducing.Text(outlet), "outletSize");
            foreach (var refrigerant in RefrigerantThere.Only(plate.Refrigerants)) yield return refrigerant;
            foreach (var oil in ValveOil.Only(plate.Oils)) yield return oil;
            if (plate.CoilFrequency is { Count: 1 } hertz) yield return As("coilSupplyFrequency", Deducing.Text(hertz[0]), "coilFrequency");
            if (plate.CoilCurrent is { } current) yield return As("coilSupplyCurrent", Deducing.Text(current), "coilCurrent");
        }
    }

    private static IEnumerable<Deduction> AlternatingThere(SolenoidValveSite site)
    {
        if (site.CoilSupplyFrequency is not null) yield return new(Side.Site, "coilSupplyCurrent", Deducing.Text(CoilCurrent.Alternating), "its supply has a frequency", ["coilSupplyFrequency"], SolenoidValveSources.CoilFrequency);
    }

    private static IEnumerable<Deduction> NoDrop(SolenoidValveSpec spec)
    {
        if (spec.Lift == Lift.Direct) yield return new(Side.Plate, "leastDifferential", "0 psi", "it is direct-acting", ["lift"], SolenoidValveSources.DirectActing);
    }

    private static IEnumerable<Deduction> OtherSide(SolenoidValveSpec spec)
    {
        if (spec.InletSize is { } inlet) yield return new(Side.Plate, "outletSize", Deducing.Text(inlet), "its inlet's size", ["inletSize"], SolenoidValveSources.SameBothSides);
    }

    private static IEnumerable<Deduction> Alternating(SolenoidValveSpec spec)
    {
        if (spec.CoilFrequency is not null) yield return new(Side.Plate, "coilCurrent", Deducing.Text(CoilCurrent.Alternating), "its coil has a frequency", ["coilFrequency"], SolenoidValveSources.CoilFrequency);
    }

    private static Deduction As(string field, string text, string from) => new(Side.Site, field, text, "the old valve's", [from], ValveSources.AsTheOld);
}
