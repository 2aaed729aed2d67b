using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>What is read of a valve's bulb.</summary>
/// <param name="Diameter">mm; null where not given.</param>
/// <param name="Length">mm; null where not given.</param>
public readonly record struct BulbSizeFacet(double? Diameter, double? Length);

/// <summary>Does the bulb go where the old one felt the suction pipe?</summary>
/// <remarks>
/// One that is strapped on may be of any diameter. One in a well goes in up to its bore, edge included; over 1/16 in thinner, paste fills the well; thicker, it is strapped on beside it, where the well's depth no longer counts: both are changes. One that is longer than the room there is a check.
/// Where a well was not measured, one no thicker and no longer than the old one goes in. Where nobody spoke of a well, none is there.
/// </remarks>
public sealed class BulbInPlace() : Aspect<ExpansionValveSpec, ExpansionValveSite, BulbSizeFacet>("Bulb", isDeciding: false, ExpansionValveSources.BulbInPlace, new(0.2, 0.4, 0.3))
{
    /// <summary>1/16 in (practice) and what rounding two sizes may add, mm.</summary>
    private const double Loose = 1.6;

    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["bulbDiameter", "bulbLength"], ["bulbPlace", "wellBore", "bulbRoom"]);

    /// <inheritdoc/>
    public override BulbSizeFacet Read(ExpansionValveSpec part) => Of(part);

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, BulbSizeFacet facet)
    {
        var old = need.OnceOfPlate(static plate => Of(plate));
        var held = need.Site.BulbPlace switch
        {
            BulbPlace.InWell => InWell(facet.Diameter, Rounded.Millimetres(need.Site.WellBore), old.Diameter),
            BulbPlace.StrappedOn => Finding.Meets($"Its bulb is strapped on the suction pipe."),
            _ => Finding.Meets($"Nothing says that its bulb goes into a well."),
        };
        if (held.Verdict == Verdict.Unknown || (need.Site.BulbPlace == BulbPlace.InWell && held.Changes.Any(one => one.Kind == ExpansionValveChanges.StrapBulbOn))) return held;
        var isOld = need.Site is { BulbRoom: null, BulbPlace: BulbPlace.InWell };
        if ((isOld ? old.Length : Rounded.Millimetres(need.Site.BulbRoom)) is not { } room) return held;
        if (facet.Length is not { } length) return Finding.Unknown(Side.Part, "bulbLength", held.Changes, $"There is room for a bulb of {new Shown(room)}; the length of its bulb is not given.");
        if (Within.AtMost(length, room)) return held;
        return isOld
            ? Finding.Unknown(Side.Site, "bulbRoom", held.Changes, $"Its bulb is {new Shown(length)} long, the old one {new Shown(room)}; the depth of the well is not known.")
            : held.With([.. held.Changes, new(ExpansionValveChanges.CheckBulbRoom, $"find room for its bulb, {new Shown(length)} long, where there is {new Shown(room)}")]).Then($"It is {new Shown(length)} long, and there is room for {new Shown(room)}.");
    }

    /// <summary>Whether its bulb goes into a well: there is one, and the bulb is not known to be thicker.</summary>
    internal static bool GoesIntoWell(ExpansionValveSpec part, ExpansionValveSite site) =>
        site.BulbPlace == BulbPlace.InWell && !(Rounded.Millimetres(site.WellBore) is { } bore && Of(part).Diameter is { } diameter && !Within.AtMost(diameter, bore));

    private static Finding InWell(double? diameter, double? bore, double? old)
    {
        if (diameter is not { } thick) return Finding.Unknown(Side.Part, "bulbDiameter", $"The bulb goes into a well; the thickness of its bulb is not given.");
        if (bore is null && !(old is { } was && Within.AtMost(thick, was))) return Finding.Unknown(Side.Site, "wellBore", $"The bulb goes into a well; its bulb is {new Shown(thick)} thick, and the well's bore is not known.");
        var wide = bore ?? old!.Value;
        var sentence = bore is null ? (Reason)$"Its bulb is {new Shown(thick)} thick; the old one in the well was {new Shown(wide)}." : $"Its bulb is {new Shown(thick)} thick; the well's bore is {new Shown(wide)}.";
        if (!Within.AtMost(thick, wide)) return Finding.MeetsWith([new(ExpansionValveChanges.StrapBulbOn, $"strap the bulb on the suction pipe beside its well: it is {new Shown(thick)} thick, the bore {new Shown(wide)}") { Kit = [new($"plug for the bulb's well")] }], sentence) with { Shortfall = 1 };
        return Within.AtMost(wide - thick, Loose)
            ? Finding.Meets(sentence)
            : Finding.MeetsWith([new(ExpansionValveChanges.FillWell, $"fill the bulb's well with heat-conducting paste: the bulb is {new Shown(thick)} thick in {new Shown(wide)}") { Kit = [new($"heat-conducting paste")] }], sentence);
    }

    private static BulbSizeFacet Of(ExpansionValveSpec valve) => new(Rounded.Millimetres(valve.BulbDiameter), Rounded.Millimetres(valve.BulbLength));
}
