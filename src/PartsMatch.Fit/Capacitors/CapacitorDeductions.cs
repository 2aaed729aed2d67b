using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Capacitors;

/// <summary>What follows from a capacitor's markings.</summary>
public static class CapacitorDeductions
{
    private static readonly Shape<CapacitorSite> Site = Shape<CapacitorSite>.Of;

    /// <summary>Two sections or a protected type tell a run capacitor.</summary>
    public static (CapacitorSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(CapacitorSpec spec)
    {
        var hasTwoSections = spec.Rating?.SecondSection is not null;
        if (spec.Duty is not null || !(hasTwoSections || spec.IsProtected == true)) return (spec, []);
        return (spec with { Duty = CapacitorDuty.Run },
        [
            new(Side.Plate, "duty", new EnumForm<CapacitorDuty>().Write(CapacitorDuty.Run), hasTwoSections ? "it has two sections" : "it is of a protected type", [hasTwoSections ? "rating" : "isProtected"], CapacitorSources.RunCapacitorByLook),
        ]);
    }

    /// <summary>What the old capacitor says of the motors it served, of its supply and of its strap; a motor's plate, where given, outranks it.</summary>
    public static (CapacitorSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(CapacitorSpec plate, CapacitorSite site)
    {
        var filled = site with { };
        var deductions = new List<Deduction>();
        Fill("motorAsksFor", plate.Rating is { IsNone: false } rating ? rating : null, "the old capacitor's marking", "rating");
        Fill("secondMotorAsksFor", SecondOf(filled.MotorAsksFor), "the second section", "rating");
        Fill("secondMotorAsksFor", OtherOf(plate.Rating, filled.MotorAsksFor), "the old capacitor's other section", "rating");
        Fill("supplyFrequency", plate.Frequency is { Count: 1 } only ? only[0] : null, "the only frequency on the old capacitor", "frequency");
        Fill("strapHolds", plate.Can, "the old capacitor's can", "can");
        Fill("strapDiameter", plate.Diameter, "the old capacitor's diameter", "diameter");
        return (filled, deductions);

        void Fill(string name, object? value, string because, string from)
        {
            var field = Site.Find(name)!;
            if (value is null || field.Get(filled) is not null) return;
            field.Set(filled, value);
            deductions.Add(new(Side.Site, name, field.Form.WriteAny(value, Units.AsGiven), because, [from], CapacitorSources.AsTheOldCapacitor));
        }
    }

    /// <summary>The old capacitor's section that is not the first motor's.</summary>
    private static CapacitorRating? OtherOf(CapacitorRating? rating, CapacitorRating? first) =>
        rating is { SecondSection: { } second, Capacitance: { } one } && first is not null && MotorAgainstCan.Has(new(second, null), first) && !MotorAgainstCan.Has(new(one, null), first) ? new(one, rating.Volts) : SecondOf(rating);

    private static CapacitorRating? SecondOf(CapacitorRating? rating) => rating?.SecondSection is { } second ? new(second, rating.Volts) : null;
}
