using PartsMatch.Fit.Ignition;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What a contact's ratings, and what is on it, cannot be all at once.</summary>
internal static class ContactAgreement
{
    /// <summary>Ratings that do not pair with their volts, or that no contact has.</summary>
    public static IEnumerable<Contradiction> OfRatings(ContactSpec plate)
    {
        foreach (var (field, label, count) in Counts(plate))
        {
            if (plate.RatedVolts is { } volts && !RatedAmps.Pair(volts.Count, count)) yield return new(["ratedVolts", field], FormattableString.Invariant($"{label}: {count} figures stand beside {volts.Count} rated volts, so that they do not pair."), ContactSources.Ratings);
        }

        if (plate is { DirectVolts: { } direct, DirectAmps: { } directAmps } && !RatedAmps.Pair(direct.Count, directAmps.Count)) yield return new(["directVolts", "directAmps"], FormattableString.Invariant($"DC amps: {directAmps.Count} figures stand beside {direct.Count} DC volts, so that they do not pair."), ContactSources.Ratings);
        if (Amps(plate.LockedRotorAmps) is { } locked && Amps(plate.FullLoadAmps) is { } full && locked < full)
        {
            yield return new(["fullLoadAmps", "lockedRotorAmps"], FormattableString.Invariant($"The locked-rotor amps, {locked:0.##} A, are less than the full-load amps, {full:0.##} A."), ContactSources.LockedRotor);
        }
    }

    /// <summary>What is on the contact against what it was named as, and against what the old one was rated for.</summary>
    public static IEnumerable<Contradiction> OfLoads(ContactSpec plate, ContactSite site, string part)
    {
        foreach (var understated in BurningRefrigerant.Understated(site.Hazard, site.Refrigerant)) yield return understated;
        if (site is { LoadCurrent: Coils.CoilCurrent.Direct, LoadPhase: Motors.Phases.Three }) yield return new([], $"Direct current has no three phases: one of the two is misread.", ContactSources.DirectCurrent) { SiteFields = ["loadCurrent", "loadPhase"] };
        if (site.Loads is { } loads)
        {
            if (site.Motors is not null && !loads.Contains(ContactLoad.Motor) && !loads.Contains(ContactLoad.Compressor)) yield return NotNamed("Motors' amps are given", "motors");
            if (site.HeaterAmps is not null && !loads.Contains(ContactLoad.Heater)) yield return NotNamed("Heaters' amps are given", "heaterAmps");
            if (site is { HeaterAmps: null, HeaterPower: not null } && !loads.Contains(ContactLoad.Heater)) yield return NotNamed("Heaters' power is given", "heaterPower");
            if (site.CoilsVa is not null && !loads.Contains(ContactLoad.Coil)) yield return NotNamed("Coils' VA are given", "coilsVa");
            if (site is { CoilsVa: null, CoilsInrushVa: not null } && !loads.Contains(ContactLoad.Coil)) yield return NotNamed("Coils' inrush VA are given", "coilsInrushVa");
        }

        foreach (var there in Enum.GetValues<ContactLoad>().Select(site.VoltsOf).DistinctBy(there => there.Field))
        {
            if (there.Volts is not { } volts || plate.RatedVolts is not { } rated || Within.AtMost(volts.Volts, rated.Max(one => one.Volts) * RatedAmps.Wander)) continue;
            yield return new(["ratedVolts"], FormattableString.Invariant($"The old {part} is rated up to {rated.Max(one => one.Volts):0.#} V, and {volts.Volts:0.#} V are switched: it was a wrong one, or one of the two is misread."), ContactSources.FullLoad) { SiteFields = [there.Field] };
        }

        foreach (var (field, siteField, kind, amps, load) in new[]
        {
            ("fullLoadAmps", "motors", ContactLoad.Motor, RatedAmps.Of(plate.RatedVolts, plate.AmpsFor(site.Loads)), site.Motors?.FullLoad),
            ("lockedRotorAmps", "motors", ContactLoad.Motor, RatedAmps.Of(plate.RatedVolts, plate.LockedRotorAmps), site.Motors is { AreLockedRotorAmpsGiven: true } motors ? motors.LockedRotor(1) : null),
            ("resistiveAmps", "heaterAmps", ContactLoad.Heater, RatedAmps.Of(plate.RatedVolts, plate.ResistiveAmps), site.HeaterAmps?.Amperes),
        })
        {
            if (load is not { } drawn || site.VoltsOf(kind).Volts is not { } volts || RatedAmps.At(amps, volts.Volts) is not { } carried || Within.AtMost(drawn, carried)) continue;
            yield return new([field], FormattableString.Invariant($"The old {part} carried {carried:0.##} A at {volts.Volts:0.#} V, and {drawn:0.##} A are on it: it was too small, which may have killed it, or one of the two is misread."), ContactSources.FullLoad) { SiteFields = [siteField] };
        }
    }

    private static Contradiction NotNamed(string what, string field) =>
        new([], $"{what}, but nothing of the kind is named among what is on the contact: see what it switches.", ContactSources.LoadsNamed) { SiteFields = ["loads", field] };

    private static IEnumerable<(string Field, string Label, int Count)> Counts(ContactSpec plate)
    {
        foreach (var name in (string[])["fullLoadAmps", "lockedRotorAmps", "resistiveAmps"])
        {
            var figures = name switch { "fullLoadAmps" => plate.FullLoadAmps, "lockedRotorAmps" => plate.LockedRotorAmps, _ => plate.ResistiveAmps };
            if (figures is not null) yield return (name, name switch { "fullLoadAmps" => "Full-load amps", "lockedRotorAmps" => "Locked-rotor amps", _ => "Resistive amps" }, figures.Count);
        }

        if (plate.SinglePhaseHorsepower is { } single) yield return ("singlePhaseHorsepower", "Single-phase horsepower", single.Count);
        if (plate.ThreePhaseHorsepower is { } three) yield return ("threePhaseHorsepower", "Three-phase horsepower", three.Count);
    }

    private static double? Amps(Figures<ElectricCurrent>? figures) => figures?.Max(one => one.Amperes);
}
