using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>What the old motor and the fan say of the drive, the blade, and the air that cools a motor.</summary>
public static class PlaceDeductions
{
    /// <summary>Fills what is not known of the site.</summary>
    public static (MotorSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(MotorSpec plate, MotorSite site) =>
        Deducing.Apply(site, _ => OnTheShaft(plate), Blade, there => Airstream(plate, there));

    /// <summary>Whether a motor so enclosed needs the air of the fan that it drives.</summary>
    internal static bool IsAirOver(Enclosure enclosure) => enclosure is Enclosure.OpenAirOver or Enclosure.EnclosedAirOver;

    /// <summary>Whether a motor is of a kind that carries its fan on its own shaft.</summary>
    private static bool IsDirect(MotorSpec plate) =>
        plate.Type is MotorType.ShadedPole or MotorType.PermanentSplitCapacitor or MotorType.ElectronicallyCommutated
        || (plate.Enclosure is { } enclosure && IsAirOver(enclosure))
        || plate.Mounts?.Any(mount => mount is MountKind.BellyBand or MountKind.Studs or MountKind.Ears or MountKind.ThreePoint) == true;

    private static IEnumerable<Deduction> OnTheShaft(MotorSpec plate)
    {
        if (!IsDirect(plate)) yield break;
        var from = plate.Type is MotorType.ShadedPole or MotorType.PermanentSplitCapacitor or MotorType.ElectronicallyCommutated ? "type" : plate.Enclosure is { } enclosure && IsAirOver(enclosure) ? "enclosure" : "mounts";
        yield return new(Side.Site, "drive", Deducing.Text(Drive.Direct), "motors of the old one's kind carry the fan on their shaft", [from], PlaceSources.FanOnShaft);
    }

    private static IEnumerable<Deduction> Blade(MotorSite site)
    {
        if (NewBlade(site) is { } given) yield return new(Side.Site, "bladeStays", Deducing.Text(false), "something of a new blade is given", [given], PlaceSources.BladeStays);
        yield return new(Side.Site, "bladeStays", Deducing.Text(true), "nothing is said of a new blade", [], PlaceSources.BladeStays);
    }

    private static string? NewBlade(MotorSite site) =>
        site.NewBladeBore is not null ? "newBladeBore" : site.NewHubHoldsOn is not null ? "newHubHoldsOn" : site.NewBladeDiameter is not null ? "newBladeDiameter" : null;

    private static IEnumerable<Deduction> Airstream(MotorSpec plate, MotorSite site)
    {
        if (plate.Enclosure is { } enclosure && IsAirOver(enclosure)) yield return InAirstream("the old motor was made for its fan's air", PlaceSources.OldAirOver, "enclosure");
        if (site is { FanKind: FanKind.Propeller, Drive: Drive.Direct }) yield return InAirstream("a propeller on the shaft blows over the motor", PlaceSources.PropellerOnShaft, "fanKind", "drive");
    }

    private static Deduction InAirstream(string because, Source source, params string[] from) =>
        new(Side.Site, "coolingAir", Deducing.Text(CoolingAir.InAirstream), because, from, source);
}
