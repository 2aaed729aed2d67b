using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>Where the rules for a motor's place come from: position, air, blade and room.</summary>
public static class PlaceSources
{
    /// <summary>The fan sits on the shaft of a small fan motor.</summary>
    public static Source FanOnShaft { get; } = new("Shaded-pole, split-capacitor, electronically commutated and air-over motors, and those held by band, studs or ears, carry their fan on the shaft", SourceStatus.Practice);

    /// <summary>The old blade goes onto the new motor.</summary>
    public static Source BladeStays { get; } = new("The old blade goes onto the new motor, unless a new one is spoken of", SourceStatus.Practice);

    /// <summary>Sleeves hold their oil, and their thrust face the rotor, only in some positions.</summary>
    public static Source Position { get; } = new("Sleeve bearings run only in positions they are rated for, ball bearings in any", SourceStatus.Practice);

    /// <summary>Air-over motors have no fan of their own.</summary>
    public static Source AirOver { get; } = new("NEMA MG 1 1.26: an air-over motor is cooled by the air of the fan it drives and has no rating outside it", SourceStatus.Published);

    /// <summary>Where an air-over motor ran, its fan's air is.</summary>
    public static Source OldAirOver { get; } = new("An old air-over motor sat in its fan's air", SourceStatus.Practice);

    /// <summary>A propeller on the shaft blows along the motor.</summary>
    public static Source PropellerOnShaft { get; } = new("A propeller on the motor's own shaft moves its air over the motor", SourceStatus.Practice);

    /// <summary>40 °C where nothing is marked; −15 °C, or +5 °C on small IEC motors.</summary>
    public static Source Ambient { get; } = new("NEMA MG 1 14.2 and IEC 60034-1 clause 6: air up to 40 °C where nothing is marked, not below −15 °C (NEMA's from memory), by IEC not below 5 °C under 600 W", SourceStatus.Published);

    /// <summary>Limits of the classes.</summary>
    public static Source Insulation { get; } = new("IEC 60085, limits of insulation classes; a marked ambient tells more than a class", SourceStatus.Published);

    /// <summary>Up to 1000 m; what is asked above it is from memory.</summary>
    public static Source Altitude { get; } = new("NEMA MG 1 14.2 and IEC 60034-1 clause 6: rated up to 1000 m; above it MG 1 14.4 (from memory); fan power goes with the air's density (fan laws)", SourceStatus.Published);

    /// <summary>A blade is made for one turn; the fan laws hold for one design only.</summary>
    public static Source Blade { get; } = new("A blade moves its air in the turn that it is made for; another number of blades or pitch loads the motor differently", SourceStatus.Practice);

    /// <summary>A body not much longer than the old one goes where that went.</summary>
    public static Source BodyLength { get; } = new("A body up to 1/4 in longer than the old one goes where that went", SourceStatus.Practice);
}
