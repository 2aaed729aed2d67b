using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;

namespace PartsMatch.Fit.Motors;

/// <summary>What the old motor and the fan say of the air that cools a motor.</summary>
public static class PlaceDeductions
{
    /// <summary>Fills what is not known of the site.</summary>
    public static (MotorSite Site, IReadOnlyList<Deduction> Deductions) DeduceSite(MotorSpec plate, MotorSite site) =>
        Deducing.Apply(site, there => Airstream(plate, there));

    /// <summary>Whether a motor so enclosed needs the air of the fan that it drives.</summary>
    internal static bool IsAirOver(Enclosure enclosure) => enclosure is Enclosure.OpenAirOver or Enclosure.EnclosedAirOver;

    private static IEnumerable<Deduction> Airstream(MotorSpec plate, MotorSite site)
    {
        if (plate.Enclosure is { } enclosure && IsAirOver(enclosure)) yield return InAirstream("the old motor was made for its fan's air", PlaceSources.OldAirOver, "enclosure");
        if (site is { FanKind: FanKind.Propeller, Drive: Drive.Direct }) yield return InAirstream("a propeller on the shaft blows over the motor", PlaceSources.PropellerOnShaft, "fanKind", "drive");
    }

    private static Deduction InAirstream(string because, Source source, params string[] from) =>
        new(Side.Site, "coolingAir", Deducing.Text(CoolingAir.InAirstream), because, from, source);
}
