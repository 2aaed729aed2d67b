using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Published;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors.Aspects;
using PartsMatch.Fit.Switches.Contacts;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>What a contactor's plate, and its place, cannot say all at once.</summary>
public static class ContactorContradictions
{
    /// <summary>All that disagrees on the plate.</summary>
    public static IReadOnlyList<Contradiction> Find(ContactorSpec plate) => [.. ContactAgreement.OfRatings(plate), .. DirectWithFrequency(plate), .. Categories(plate), .. Sizes(plate), .. OneOfEach(plate)];

    /// <summary>All of the place that does not go with the plate.</summary>
    public static IReadOnlyList<Contradiction> AtTheSite(ContactorSpec plate, ContactorSite site) =>
        [.. ContactAgreement.OfLoads(plate, site, "contactor"), .. ControlVolts(plate, site), .. ControlFrequency(plate, site), .. ControlCurrent(plate, site), .. Lines(plate, site), .. Auxiliaries(plate, site), .. Interlocks(plate, site), .. ActionOfContacts.Disagreement(plate, site)];

    private static IEnumerable<Contradiction> Categories(ContactorSpec plate)
    {
        if (plate is { AcOneAmps: { } resistance, AcThreeAmps: { } motors } && resistance.Max(one => one.Amperes) < motors.Max(one => one.Amperes))
        {
            yield return new(["acOneAmps", "acThreeAmps"], "The AC-1 amps are less than the AC-3 amps, though resistance is easier to switch than motors.", ContactorSources.Duty);
        }
    }

    private static IEnumerable<Contradiction> Sizes(ContactorSpec plate)
    {
        if (plate is { Size: { } size, ContinuousAmps: { } marked } && NemaSizes.Continuous(new EnumForm<NemaSize>().Write(size)["NEMA ".Length..]) is { } amps && Math.Abs(marked.Amperes - amps.Amperes) > 0.5)
        {
            yield return new(["size", "continuousAmps"], FormattableString.Invariant($"{new Spelt<NemaSize>(size)} carries {amps.Amperes:0.#} A all day, and {marked.Amperes:0.#} A are marked."), NemaSizes.All[0].Source);
        }
    }

    private static IEnumerable<Contradiction> OneOfEach(ContactorSpec plate)
    {
        if (plate is { ContactAction: ContactAction.OneOfEach, PoleCount: { } poles and not PoleCount.Two }) yield return new(["contactAction", "poleCount"], $"A normally open and a normally closed pole are two, and it is said to have {new EnumForm<PoleCount>().Write(poles)}.", ContactorSources.ContactAction);
    }

    private static IEnumerable<Contradiction> ControlVolts(ContactorSpec plate, ContactorSite site)
    {
        var old = ContactorCoils.Own(plate);
        if (Rounded.Volts(site.ControlVolts) is not { } volts || old.Count == 0 || old.Any(one => CoilOnSupply.FitsVolts(one, volts, ContactorCoils.Window))) yield break;
        yield return new(["coilVolts"], FormattableString.Invariant($"The old coil is marked {Deducing.Text(plate.CoilVolts!)}, and {volts:0.#} V are there: that may have killed it, it was a wrong one, or one of the two is misread."), ContactorSources.Coil) { SiteFields = ["controlVolts"] };
    }

    private static IEnumerable<Contradiction> ControlFrequency(ContactorSpec plate, ContactorSite site)
    {
        if (plate.CoilFrequency is not { } marked || site.ControlFrequency is not { } there || marked.Any(one => Within.AtMost(Math.Abs(one.Hertz - there.Hertz), ContactorCoils.Window.HertzOff * one.Hertz))) yield break;
        yield return new(["coilFrequency"], $"The old coil is marked {Deducing.Text(marked)}, and the control circuit has {Deducing.Text(there)}: check which of the two is true.", ContactorSources.Coil) { SiteFields = ["controlFrequency"] };
    }

    private static IEnumerable<Contradiction> DirectWithFrequency(ContactorSpec plate)
    {
        if (plate is { CoilCurrent: CoilCurrent.Direct, CoilFrequency: { } hertz }) yield return new(["coilCurrent", "coilFrequency"], $"Its coil is said to be for direct current, and {Deducing.Text(hertz)} is marked on it.", ContactorSources.Coil);
    }

    private static IEnumerable<Contradiction> ControlCurrent(ContactorSpec plate, ContactorSite site)
    {
        if (plate.CoilCurrent is { } made && site.ControlCurrent is { } there && made != there) yield return new(["coilCurrent"], $"The old coil is for {Deducing.Text(made)}, and the control circuit is said to be {Deducing.Text(there)}: one of the two is misread.", ContactorSources.Coil) { SiteFields = ["controlCurrent"] };
    }

    private static IEnumerable<Contradiction> Lines(ContactorSpec plate, ContactorSite site)
    {
        if (plate.PoleCount is not { } poles || site.LinesSwitched is not { } lines || lines <= Poles.Switched(poles)) yield break;
        yield return new(["poleCount"], FormattableString.Invariant($"The old one has {new Spelt<PoleCount>(poles)}, and {lines} lines are said to be switched."), ContactorSources.Poles) { SiteFields = ["linesSwitched"] };
    }

    private static IEnumerable<Contradiction> Interlocks(ContactorSpec plate, ContactorSite site)
    {
        if (plate.HasInterlock == false && site.IsInterlocked == true) yield return new(["hasInterlock"], "The old one is said to take no interlock, and to be interlocked with a second one: one of the two is misread.", ContactorSources.Interlock) { SiteFields = ["isInterlocked"] };
    }

    private static IEnumerable<Contradiction> Auxiliaries(ContactorSpec plate, ContactorSite site)
    {
        if (plate.Auxiliaries is not { } had || site.AuxiliariesUsed is not { } used || (used.Open <= had.Open && used.Closed <= had.Closed)) yield break;
        yield return new(["auxiliaries"], $"The old one has {Deducing.Text(had)} as auxiliary contacts, and {Deducing.Text(used)} are said to be in use.", ContactorSources.Auxiliaries) { SiteFields = ["auxiliariesUsed"] };
    }
}
