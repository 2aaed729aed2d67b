using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Valves.CondensingPressureValves;

/// <summary>What follows from a condensing-pressure valve's markings, and what disagrees.</summary>
public static class CondensingPressureValveDeductions
{
    /// <summary>One refrigerant alone is the one of the rating; a check valve's first size is that of its inlet; a range with equal ends is its only setting.</summary>
    public static (CondensingPressureValveSpec Spec, IReadOnlyList<Deduction> Deductions) Deduce(CondensingPressureValveSpec spec) => Deducing.Apply(spec, RatedWith, InletOfCheck, OnlySetting);

    /// <summary>What the old valve says of its place; what was measured outranks it.</summary>
    public static (CondensingPressureValveSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(CondensingPressureValveSpec plate, CondensingPressureValveSite site)
    {
        return Deducing.Apply(site, AsTheOld);

        IEnumerable<Deduction> AsTheOld(CondensingPressureValveSite there)
        {
            if (plate.Arrangement is { } arrangement) yield return As("needsArrangement", Deducing.Text(arrangement), "arrangement");
            if (plate.Setting is { } setting) yield return As("settingNeeded", Deducing.Text(setting), "setting");
            foreach (var refrigerant in RefrigerantThere.Only(plate.Refrigerants)) yield return refrigerant;
            foreach (var oil in ValveOil.Only(plate.Oils)) yield return oil;
            if (plate.Joint is { } joint) yield return As("lineJoint", Deducing.Text(joint), "joint");
            var how = plate.Arrangement ?? site.NeedsArrangement;
            if (how.HasCondenserPort() == true && plate.CondenserPort is { } condenser) yield return As("condenserPipe", Deducing.Text(condenser), "condenserPort");
            if (plate.ReceiverPort is { } receiver) yield return As("receiverPipe", Deducing.Text(receiver), "receiverPort");
            if (how.HasDischargePort() == true && plate.DischargePort is { } discharge) yield return As("dischargePipe", Deducing.Text(discharge), "dischargePort");
            if (OneSize(plate, how) is not (var size, var port)) yield break;
            yield return One("receiverPipe", size, port);
            if (how.HasDischargePort() == true) yield return One("dischargePipe", size, port);
        }
    }

    /// <summary>Readings of the plate that cannot all be true.</summary>
    /// <param name="plate">The plate.</param>
    public static IReadOnlyList<Contradiction> OnPlate(CondensingPressureValveSpec plate) => [.. Span(plate), .. Outside(plate), .. Fixed(plate), .. Ports(plate)];

    private static IReadOnlyList<Contradiction> Span(CondensingPressureValveSpec plate) =>
        plate is { SettingLeast: { } least, SettingMost: { } most } && least.Kilopascals > most.Kilopascals
            ? [new(["settingLeast", "settingMost"], $"It is set from {Deducing.Text(least)} to {Deducing.Text(most)}: one of the two is misread.", CondensingPressureValveSources.HeadSetting)] : [];

    private static IEnumerable<Contradiction> Outside(CondensingPressureValveSpec plate)
    {
        if (plate is { Setting: { } set, SettingLeast: { } least, SettingMost: { } most } && least.Kilopascals <= most.Kilopascals && !Within.Span(set.Kilopascals, least.Kilopascals - Rounded.OffBy(2), most.Kilopascals + Rounded.OffBy(2)))
        {
            yield return new(["setting", "settingLeast", "settingMost"], $"It is set to {Deducing.Text(set)}, and can be {ShownRange.Set(Deducing.Text(least), Deducing.Text(most))}: one of these is misread.", CondensingPressureValveSources.HeadSetting);
        }
    }

    private static IEnumerable<Contradiction> Fixed(CondensingPressureValveSpec plate)
    {
        if (plate is not { IsAdjustable: { } isSet, HasOneSetting: { } isOne, SettingLeast: { } least, SettingMost: { } most } || isSet != isOne) yield break;
        yield return new(["isAdjustable", "settingLeast", "settingMost"], $"It {(isSet ? "can" : "cannot")} be set, and is set {ShownRange.Set(Deducing.Text(least), Deducing.Text(most))}: one of these is misread.", CondensingPressureValveSources.HeadSetting);
    }

    /// <summary>What is known of the site and disagrees with the plate; the site is judged by.</summary>
    /// <param name="plate">The old valve's plate.</param>
    /// <param name="site">The site.</param>
    public static IReadOnlyList<Contradiction> WithSite(CondensingPressureValveSpec plate, CondensingPressureValveSite site) => [.. Arranged(plate, site), .. Set(plate, site), .. Starved(plate, site), .. Listed(plate, site), .. ValveOil.Unlisted(plate.Oils, site.Oil)];

    private static IEnumerable<Contradiction> Ports(CondensingPressureValveSpec plate)
    {
        if (plate is { Arrangement: Arrangement.InletRegulator, DischargePort: { } hot }) yield return new(["arrangement", "dischargePort"], $"An inlet regulator has no port for hot gas, and one of {Deducing.Text(hot)} is said to be there: one of the two is misread.", CondensingPressureValveSources.Ports);
    }

    private static IEnumerable<Contradiction> Arranged(CondensingPressureValveSpec plate, CondensingPressureValveSite site)
    {
        if (plate.Arrangement is { } was && site.NeedsArrangement is { } needed && was != needed) yield return new(["arrangement"], $"The old valve was a {Deducing.Text(was)}, and a {Deducing.Text(needed)} is said to be needed: see how the pipes are laid.", CondensingPressureValveSources.HeadArrangement) { SiteFields = ["needsArrangement"] };
    }

    private static IEnumerable<Contradiction> Set(CondensingPressureValveSpec plate, CondensingPressureValveSite site)
    {
        if (plate.Setting is { } was && site.SettingNeeded is { } needed && Math.Abs(was.Kilopascals - needed.Kilopascals) > HeadLimits.Near) yield return new(["setting"], $"The old valve was set to {Deducing.Text(was)}, and {Deducing.Text(needed)} are said to be needed: see which was right.", CondensingPressureValveSources.HeadSetting) { SiteFields = ["settingNeeded"] };
    }

    /// <summary>A head that is to be held is one that the expansion valves bear; a difference, which it may be as long as the arrangement is not known, says nothing of them.</summary>
    private static IEnumerable<Contradiction> Starved(CondensingPressureValveSpec plate, CondensingPressureValveSite site)
    {
        if ((site.NeedsArrangement ?? plate.Arrangement) is Arrangement.ThreeWay or Arrangement.InletRegulator && site is { SettingNeeded: { } needed, LeastHead: { } least } && !Within.AtLeast(needed.Kilopascals, least.Kilopascals))
        {
            yield return new([], $"{Deducing.Text(needed)} are said to be held, and the expansion valves to need {Deducing.Text(least)}: one of the two is wrong, or the old one starved them.", CondensingPressureValveSources.HeadSetting) { SiteFields = ["settingNeeded", "leastHead"] };
        }
    }

    private static IEnumerable<Contradiction> Listed(CondensingPressureValveSpec plate, CondensingPressureValveSite site)
    {
        if (plate.Refrigerants is { } listed && site.Refrigerant is { } there && !listed.Contains(there)) yield return new(["refrigerants"], $"The old valve lists {Deducing.Text(listed)}, and {there.Name} is there: see what the system was filled with.", ValveSources.Refrigerant) { SiteFields = ["refrigerant"] };
    }

    private static IEnumerable<Deduction> RatedWith(CondensingPressureValveSpec spec)
    {
        if (spec is { RatedCapacity: not null, Refrigerants: { Count: 1 } only }) yield return new(Side.Plate, "ratedWith", only[0].Name, "the only refrigerant that it is for", ["refrigerants"], CondensingPressureValveSources.HeadCapacity);
    }

    /// <summary>It takes nothing from the condenser: a size that stands first is that of its inlet, which takes hot gas.</summary>
    private static IEnumerable<Deduction> InletOfCheck(CondensingPressureValveSpec spec)
    {
        if (spec is { Arrangement: Arrangement.DifferentialCheck, CondenserPort: { } inlet }) yield return new(Side.Plate, "dischargePort", Deducing.Text(inlet), "its inlet's size", ["condenserPort"], CondensingPressureValveSources.InletOfCheck);
    }

    private static IEnumerable<Deduction> OnlySetting(CondensingPressureValveSpec spec)
    {
        if (spec is { HasOneSetting: true, SettingLeast: { } only }) yield return new(Side.Plate, "setting", Deducing.Text(only), "both ends of its range are this", ["settingLeast", "settingMost"], CondensingPressureValveSources.HeadSetting);
    }

    /// <summary>The size that an old valve is marked with where it is the only one, and the field it stands in; null where none or another stands beside it. A check valve's inlet is given by either of two names.</summary>
    private static (Length Size, string Port)? OneSize(CondensingPressureValveSpec plate, Arrangement? how) => plate switch
    {
        { ReceiverPort: not null } => null,
        { CondenserPort: { } size, DischargePort: null } => (size, "condenserPort"),
        { CondenserPort: { } size, DischargePort: { } hot } when how == Arrangement.DifferentialCheck && hot.Millimeters.Equals(size.Millimeters) => (size, "condenserPort"),
        { CondenserPort: null, DischargePort: { } inlet } when how == Arrangement.DifferentialCheck => (inlet, "dischargePort"),
        _ => null,
    };

    private static Deduction One(string field, Length size, string port) => new(Side.Site, field, Deducing.Text(size), "the only size that the old valve is marked with", [port], CondensingPressureValveSources.OnePortSize);

    private static Deduction As(string field, string text, string from) => new(Side.Site, field, text, "the old valve's", [from], ValveSources.AsTheOld);
}

/// <summary>Limits of a head-pressure setting.</summary>
internal static class HeadLimits
{
    /// <summary>10 psi (practice), and what rounding two pressures may add, kPa.</summary>
    public static double Near { get; } = 68.95 + Rounded.OffBy(2);
}
