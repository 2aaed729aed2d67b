using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>A contactor's coil, and what feeds it.</summary>
internal static class ContactorCoils
{
    /// <summary>A coil pulls in and holds from 85 to 110 % of its volts (IEC 60947-4-1, from memory), within 5 % of its frequency (practice).</summary>
    public static CoilWindow Window { get; } = new(0.85, 1.1, 1.1) { HertzOff = 0.05 };

    /// <summary>Where it stands, and what is changed about it.</summary>
    public static CoilNames Names { get; } = new("coil", "coilVolts", "coilFrequency", "controlVolts", "controlFrequency") { PartCurrent = "coilCurrent", SiteCurrent = "controlCurrent", PartVa = "coilVa", PartFurther = "furtherCoils", Change = ContactorChanges.ChangeCoil, Connect = ContactorChanges.ConnectCoil };

    /// <summary>The voltages of the coil that a part comes with; empty where they are not given.</summary>
    public static Sequence<CoilMade> Own(ContactorSpec part) => CoilFacet.Of(part.CoilVolts, part.CoilCurrent, part.CoilFrequency, null).Own;

    /// <summary>What feeds it: what was measured of the control circuit, or else all that the old one was marked for.</summary>
    public static CoilSupply Supply(ContactorNeed need) => need.Once(static need => new Remembered(new(Rounded.Volts(need.Site.ControlVolts), Rounded.Hertz(need.Site.ControlFrequency), need.Site.ControlCurrent, Own(need.Plate)))).Supply;

    /// <summary>The coil that a part runs on: its own, or the first that its body takes and the control circuit feeds.</summary>
    public static Sequence<CoilMade> Chosen(ContactorNeed need, ContactorSpec part) =>
        CoilGoingIn.Possible(CoilFacet.Of(part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils), Supply(need), Window)[0].Coil;

    private sealed record Remembered(CoilSupply Supply);
}

/// <summary>The volts that a coil works at, in words; formed only when they are shown.</summary>
/// <param name="Coil">Its voltages.</param>
internal readonly record struct WorkingVolts(Sequence<CoilMade> Coil)
{
    /// <inheritdoc/>
    public override string ToString() => string.Join(" or ", Coil.Select(one => ContactorCoils.Window.Of(one)).Select(takes => FormattableString.Invariant($"from {takes.Low:0.##} to {takes.High:0.##} V")));
}
