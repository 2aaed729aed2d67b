using PartsMatch.Fit.Judging;
using UnitsNet;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>What follows from an expansion valve's markings.</summary>
public static class ExpansionValveDeductions
{
    /// <summary>The pressure of a limit tells its temperature, for one refrigerant alone; a limit a pressure-limited charge; one refrigerant alone is the one of the rating.</summary>
    public static (ExpansionValveSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(ExpansionValveSpec spec) => Deducing.Apply(spec, LimitTemperature, Limited, RatedWith);

    /// <summary>What the old valve says of its place; what was measured outranks it.</summary>
    public static (ExpansionValveSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(ExpansionValveSpec plate, ExpansionValveSite site)
    {
        return Deducing.Apply(site, AsTheOld, WithoutDistributor, Bored);

        IEnumerable<Deduction> AsTheOld(ExpansionValveSite there)
        {
            foreach (var refrigerant in RefrigerantThere.Only(plate.Refrigerants)) yield return refrigerant;
            foreach (var oil in ValveOil.Only(plate.Oils)) yield return oil;
            if (plate.Charge is { } charge) yield return As("needsCharge", Deducing.Text(charge), "charge");
            if (plate.Joint is { } joint) yield return As("lineJoint", Deducing.Text(joint), "joint");
            if (plate.InletSize is { } inlet) yield return As("inletLine", Deducing.Text(inlet), "inletSize");
            if (plate.OutletSize is { } outlet) yield return As("outletLine", Deducing.Text(outlet), "outletSize");
            if (plate.Equaliser == Equaliser.External) yield return As("hasEqualiserTap", "yes", "equaliser");
        }
    }

    /// <summary>Dew temperature of the pressure of a valve's limit at sea level, which is where plates are printed for; null where either is not known, or there is none.</summary>
    internal static Temperature? LimitDew(ExpansionValveSpec spec) =>
        spec is { LimitPressure: { } limit, Refrigerants: { Count: 1 } only } ? only[0].SaturationAtGauge(limit, Length.Zero)?.Dew : null;

    /// <summary>The field that says that a valve has a limit, the pressure first, since the temperature may follow from it; null where none does.</summary>
    internal static string? LimitField(ExpansionValveSpec spec) => spec switch
    {
        { LimitPressure: not null } => "limitPressure",
        { LimitsAt: not null } => "limitsAt",
        _ => null,
    };

    private static IEnumerable<Deduction> Limited(ExpansionValveSpec spec)
    {
        if (LimitField(spec) is { } limit) yield return new(Side.Plate, "charge", Deducing.Text(BulbCharge.PressureLimited), "it has a pressure limit", [limit], ExpansionValveSources.PressureLimit);
    }

    /// <summary>To a tenth of a degree, since whoever reads it by a chart would get no more. One where no limit lies is misread, which is told, and tells nothing.</summary>
    private static IEnumerable<Deduction> LimitTemperature(ExpansionValveSpec spec)
    {
        if (LimitDew(spec) is { } dew && ExpansionValveVocabulary.MayBeLimit(dew)) yield return new(Side.Plate, "limitsAt", Deducing.Text(Temperature.FromDegreesFahrenheit(Math.Round(dew.DegreesFahrenheit, 1))), $"where vapour of {spec.Refrigerants![0].Name} has the pressure of its limit", ["limitPressure", "refrigerants"], ExpansionValveSources.PressureLimit);
    }

    private static IEnumerable<Deduction> RatedWith(ExpansionValveSpec spec)
    {
        if (spec is { RatedCapacity: not null, Refrigerants: { Count: 1 } only }) yield return new(Side.Plate, "ratedWith", only[0].Name, "the only refrigerant that it is for", ["refrigerants"], ExpansionValveSources.Rating);
    }

    private static IEnumerable<Deduction> WithoutDistributor(ExpansionValveSite site)
    {
        if (site.HasDistributor == false) yield return new(Side.Site, "distributorLoss", "0 psi", "there is no distributor", ["hasDistributor"], ExpansionValveSources.Rating);
    }

    private static IEnumerable<Deduction> Bored(ExpansionValveSite site)
    {
        if (site.WellBore is not null) yield return new(Side.Site, "bulbPlace", Deducing.Text(BulbPlace.InWell), "its well has a bore", ["wellBore"], ExpansionValveSources.BulbInPlace);
    }

    private static Deduction As(string field, string text, string from) => new(Side.Site, field, text, "the old valve's", [from], ValveSources.AsTheOld);
}
