using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves.Aspects;

/// <summary>What is read of what a contact has to switch.</summary>
/// <param name="Coils">What the part's coils take as they hold.</param>
/// <param name="Inrush">What its own takes as it pulls in, VA; null where not given.</param>
public readonly record struct CoilContactFacet(CoilPowerFacet Coils, double? Inrush);

/// <summary>Does the contact that feeds it switch the coil that goes in?</summary>
/// <remarks>
/// Holding VA, the other coils on the contact added, against what it opens, and VA as they pull in, ten times as much where not given, against what it closes on; edges meet, and over its marking it fails.
/// Where its marking is not known, no more than the old coil's meets, and so does what the weakest pilot duty carries; more is a check. Direct current takes nothing more as it pulls in, and has designations of its own.
/// </remarks>
public sealed class CoilContact() : Aspect<SolenoidValveSpec, SolenoidValveSite, CoilContactFacet>("Coil's contact", isDeciding: false, SolenoidValveSources.CoilContact, new(0.3, 0.4, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["coilPower", "coilInrush", "furtherCoils"], ["contactDuty", "contactVa", "contactOtherCoils"])
    {
        Besides = ["contactDirectDuty", "contactInrushVa", "contactAmps", "coilVolts", "coilFrequency", "coilCurrent", "coilSupplyVolts", "coilSupplyFrequency", "coilSupplyCurrent"],
    };

    /// <inheritdoc/>
    public override CoilContactFacet Read(SolenoidValveSpec part) => new(CoilPowerFacet.Of(part.CoilPower, part.CoilVolts, part.CoilCurrent, part.CoilFrequency, part.FurtherCoils), Rounded.Voltamperes(part.CoilInrush));

    /// <inheritdoc/>
    public override Finding Judge(SolenoidNeed need, CoilContactFacet facet) =>
        CoilGoingIn.Judge(facet.Coils, SolenoidCoils.Supply(need), SolenoidCoils.Window, SolenoidCoils.Names, (name, va) => Switches(need, facet, name, va));

    private static Finding Switches(SolenoidNeed need, CoilContactFacet facet, CoilName name, double va)
    {
        var hung = new HungCoils(name, va, name.Other is null ? facet.Inrush : null, Rounded.Voltamperes(need.Site.ContactOtherCoils) ?? 0);
        var made = name.Other?.Current ?? (facet.Coils.Coils.Own is { Count: > 0 } own ? own[0].Current : null);
        var current = made ?? SolenoidCoils.Supply(need).Current;
        return current is not null || !FeedingContact.IsMarked(need.Site)
            ? Switches(need, hung, current ?? CoilCurrent.Alternating)
            : OneVerdict.Of(
                [Switches(need, hung, CoilCurrent.Alternating), Switches(need, hung, CoilCurrent.Direct)],
                () => Finding.Unknown(Side.Site, "coilSupplyCurrent", $"{hung}; whether it is for direct current, which a contact switches less of, is not known."));
    }

    /// <summary>At the volts there, or at both ends of all that they may be by the old coil's marking.</summary>
    private static Finding Switches(SolenoidNeed need, HungCoils hung, CoilCurrent current)
    {
        var supply = SolenoidCoils.Supply(need);
        if (supply.Volts is { } volts) return At(need, hung, current, volts);
        if (supply.Old.Count == 0) return At(need, hung, current, null);
        return OneVerdict.Of(
            supply.Old.Select(SolenoidCoils.Window.Of).SelectMany(band => band.Ends).Select(end => At(need, hung, current, end)),
            () => Finding.Unknown(Side.Site, "coilSupplyVolts", $"{hung}; whether the contact that feeds it switches as much hangs on the volts there, which are not known."));
    }

    private static Finding At(SolenoidNeed need, HungCoils hung, CoilCurrent current, double? volts)
    {
        var isDirect = current == CoilCurrent.Direct;
        if (FeedingContact.Marked(need.Site, isDirect, volts) is { } contact) return Marked(hung, contact, isDirect, volts);
        if (volts is null && FeedingContact.AsksForVolts(need.Site, isDirect)) return Finding.Unknown(Side.Site, "coilSupplyVolts", $"{hung}; at which volts the contact that feeds it switches is not known.");
        if (IsNoMoreThanOld(need, hung, current)) return Finding.Meets($"{hung}, no more than the old one's {need.Plate.CoilPower!.Value.Voltamperes:0.#} VA, which its contact carried.");
        return volts is { } there && FeedingContact.Weakest(isDirect, there) is { } weakest && Within.AtMost(hung.Holding, weakest.Opens) && Within.AtMost(Inrush(hung, isDirect).High, weakest.Closes)
            ? Finding.Meets($"{hung}; at {there:0.#} V the weakest pilot duty opens {weakest.Opens:0.#} VA and closes on {weakest.Closes:0.#} VA.")
            : Finding.MeetsWith(
                [new(SolenoidValveChanges.CheckCoilContact, $"see that the contact which feeds its coil is marked for {hung.Holding:0.#} VA of coils")],
                $"{hung}{(need.Plate.CoilPower is { } took ? $", the old one took {took.Voltamperes:0.#} VA" : string.Empty)}; what the contact that feeds it is marked for{(isDirect ? " of direct current" : string.Empty)} is not known.");
    }

    private static Finding Marked(HungCoils hung, FeedingContact contact, bool isDirect, double? volts)
    {
        var inrush = Inrush(hung, isDirect);
        if (volts is { } there && contact.MostVolts is { } most && !Within.AtMost(there, most)) return Finding.Fails(new(most - there, "V"), $"The contact that feeds it has a pilot duty up to {most} V; {there:0.#} V are there.");
        if (!Within.AtMost(hung.Holding, contact.Opens)) return Finding.Fails(new(contact.Opens - hung.Holding, "VA"), $"{hung}; the contact that feeds it opens {contact.Opens:0.#} VA of coils{new There(volts)}.");
        if (contact.AreClosedGiven && !Within.AtMost(inrush.Low, contact.Closes)) return Finding.Fails(new(contact.Closes - inrush.Low, "VA"), $"{hung}, {inrush.Low:0.#} VA as it pulls in; the contact that feeds it closes on {contact.Closes:0.#} VA of coils{new There(volts)}.");
        if (!Within.AtMost(inrush.High, contact.Closes))
        {
            return inrush.IsExact ? Finding.Unknown(Side.Site, "contactInrushVa", $"{hung}, {inrush.Low:0.#} VA as it pulls in; what the contact that feeds it closes on is not known.")
                : hung.OwnInrush is not null ? Finding.Unknown(Side.Site, "contactOtherCoils", $"The contact that feeds it closes on {contact.Closes:0.#} VA of coils{new There(volts)}; with ten times the holding VA of the others {inrush.High:0.#} VA would be on it, and what they take as they pull in is not known.")
                : Finding.Unknown(Side.Part, hung.Name.Other is null ? "coilInrush" : "furtherCoils", $"The contact that feeds it closes on {contact.Closes:0.#} VA of coils{new There(volts)}; ten times the holding VA would be {inrush.High:0.#}, and what it takes as it pulls in is not given.");
        }

        return Finding.Meets($"{hung}; the contact that feeds it opens {contact.Opens:0.#} VA of coils{new There(volts)} and closes on {contact.Closes:0.#} VA.") with
        {
            Shortfall = Math.Max(hung.Holding / contact.Opens, inrush.High / contact.Closes),
            Margin = new(contact.Opens - hung.Holding, "VA"),
        };
    }

    /// <summary>Direct current takes no more as it pulls in.</summary>
    private static Band Inrush(HungCoils hung, bool isDirect) => isDirect ? Band.Exactly(hung.Holding) : hung.Inrush;

    /// <summary>Whether the contact carried as much before. What it carried of one kind of current says nothing of the other.</summary>
    private static bool IsNoMoreThanOld(SolenoidNeed need, HungCoils hung, CoilCurrent current) =>
        Rounded.Voltamperes(need.Plate.CoilPower) is { } old && Within.AtMost(hung.Own, old) && (need.Plate.CoilCurrent is not { } was || was == current);

    /// <summary>The volts in words; formed only when they are shown.</summary>
    private readonly record struct There(double? Volts)
    {
        public override string ToString() => Volts is { } volts ? FormattableString.Invariant($" at {volts:0.#} V") : string.Empty;
    }
}
