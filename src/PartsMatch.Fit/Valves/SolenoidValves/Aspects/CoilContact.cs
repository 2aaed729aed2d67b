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
/// What it closes on is taken, where it is not marked, as pilot duty has it: six times what it opens up to 72 VA, ten times above; over what is taken no more than the old coil takes meets, and else it is unknown, and a check where only the other coils' inrush, which is asked nowhere, is more than it is marked for.
/// Where its marking is not known, no more than the old coil's meets, as it holds and as it pulls in: a given figure is held against the old coil's, or against what a contact is taken to close on that opened that; where neither coil's is given the two are taken for alike; and so does what the weakest pilot duty carries, which is said to be taken; more is a check. Direct current takes nothing more as it pulls in, and has designations of its own: one marked for alternating current alone is unknown.
/// </remarks>
public sealed class CoilContact() : Aspect<SolenoidValveSpec, SolenoidValveSite, CoilContactFacet>("Coil's contact", isDeciding: false, SolenoidValveSources.CoilContact, new(0.3, 0.4, 0.3))
{
    /// <inheritdoc/>
    public override OwnMeasure Measure { get; } = new("a coil load", "of what its contact switches", 0, 100, "%");

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
        var inrush = isDirect ? Band.Exactly(hung.Holding) : hung.Inrush;
        var marked = FeedingContact.Marked(need.Site, isDirect, volts);
        if (marked is { } one && TooMuch(hung, inrush, one, volts) is { } tooMuch) return tooMuch;
        if (volts is null && FeedingContact.AsksForVolts(need.Site, isDirect)) return Finding.Unknown(Side.Site, "coilSupplyVolts", $"{hung}; at which volts the contact that feeds it switches is not known.");
        var doubt = marked is { } known ? InDoubt(hung, inrush, known, volts) : null;
        if (doubt is null && marked is { } contact && Enough(hung, inrush, contact, volts) is { } enough) return enough;

        // That it carried the old coil says more than what is taken of it, and less than what it is marked for.
        var isClosingMarked = marked is { AreClosedGiven: true };
        if (doubt is not null && isClosingMarked) return doubt;
        if (IsNoMoreThanOld(need, hung, current, isClosingMarked)) return Finding.Meets($"{hung}, no more than the old one's {need.Plate.CoilPower!.Value.Voltamperes:0.#} VA, which its contact carried{(isClosingMarked || isDirect || need.Plate.CoilInrush is not null ? null : new TakenOfOld(hung.OwnInrush, need.Plate.CoilPower.Value.Voltamperes))}.");
        if (doubt is not null) return doubt;
        if (isDirect && need.Site.ContactDuty is { } alternating) return Finding.Unknown(Side.Site, "contactDirectDuty", $"{hung}; the contact that feeds it has {alternating.Designation}, which is for alternating current: what it switches of direct current is not known.");
        var unknown = new NotKnown(marked, isDirect, volts);
        return volts is { } there && FeedingContact.Weakest(isDirect, there) is { Opens: { } opens } weakest && Within.AtMost(hung.Holding, opens) && Within.AtMost(inrush.High, weakest.Closes)
            ? Finding.Meets($"{hung}; {unknown}, and a pilot duty is taken: at {there:0.#} V the weakest opens {opens:0.#} VA and closes on {weakest.Closes:0.#} VA.")
            : Finding.MeetsWith([Check(hung, isDirect)], $"{hung}{new AsItPullsIn(isDirect ? null : hung.OwnInrush)}{(need.Plate.CoilPower is { } took ? $", the old one took {took.Voltamperes:0.#} VA{new AsItPullsIn(isDirect ? null : need.Plate.CoilInrush?.Voltamperes)}" : string.Empty)}; {unknown}.");
    }

    /// <summary>What is certainly over its marking; null where nothing is.</summary>
    private static Finding? TooMuch(HungCoils hung, Band inrush, FeedingContact contact, double? volts)
    {
        if (volts is { } there && contact.MostVolts is { } most && !Within.AtMost(there, most)) return Finding.Fails(new(most - there, "V"), $"The contact that feeds it has a pilot duty up to {most} V; {there:0.#} V are there.");
        if (contact.Opens is { } opens && !Within.AtMost(hung.Holding, opens)) return Finding.Fails(new(opens - hung.Holding, "VA"), $"{hung}; the contact that feeds it opens {opens:0.#} VA of coils{new There(volts)}.");
        return contact.AreClosedGiven && !Within.AtMost(inrush.Low, contact.Closes)
            ? Finding.Fails(new(contact.Closes - inrush.Low, "VA"), $"{hung}, {inrush.Low:0.#} VA as it pulls in; the contact that feeds it {new ClosesOn(contact, volts)}.")
            : null;
    }

    /// <summary>What may be more than it closes on; null where nothing is. What the others take as they pull in is asked nowhere: it is a check.</summary>
    private static Finding? InDoubt(HungCoils hung, Band inrush, FeedingContact contact, double? volts)
    {
        if (Within.AtMost(inrush.High, contact.Closes)) return null;
        if (hung.OwnInrush is not { } own) return Finding.Unknown(Side.Part, hung.Name.Other is null ? "coilInrush" : "furtherCoils", $"{hung}, and what it takes as it pulls in is not given: ten times the holding VA would be {inrush.High:0.#} VA, and the contact that feeds it {new ClosesOn(contact, volts)}.");
        return contact.AreClosedGiven
            ? Finding.MeetsWith([Check(hung, isDirect: false)], $"{hung}{new AsItPullsIn(own)}, and {inrush.High:0.#} VA with ten times the holding VA of the others, which is taken; the contact that feeds it {new ClosesOn(contact, volts)}.")
            : Finding.Unknown(Side.Site, "contactInrushVa", $"{hung}{new AsItPullsIn(own)}; the contact that feeds it {new ClosesOn(contact, volts)}: on how many is not known.");
    }

    /// <summary>That its marking holds; null where what it opens is not part of that.</summary>
    private static Finding? Enough(HungCoils hung, Band inrush, FeedingContact contact, double? volts) => contact.Opens is { } opens
        ? Finding.Meets($"{hung}; the contact that feeds it opens {opens:0.#} VA of coils{new There(volts)} and {new ClosesOn(contact, null)}.") with
        {
            Shortfall = Math.Max(hung.Holding / opens, inrush.High / contact.Closes),
            Margin = new(opens - hung.Holding, "VA"),
        }
        : null;

    private static Change Check(HungCoils hung, bool isDirect) => new(
        SolenoidValveChanges.CheckCoilContact,
        $"see that the contact which feeds its coil is marked for {hung.Holding:0.#} VA of coils{(isDirect || hung.OwnInrush is not { } own ? string.Empty : hung.Others > 0 ? ", and for closing on what all of them take as they pull in" : FormattableString.Invariant($", and for closing on {own:0.#} VA"))}");

    /// <summary>Whether the contact carried as much before, as it held and, where nothing is marked of that, as it pulled in. What it carried of one kind of current says nothing of the other.</summary>
    private static bool IsNoMoreThanOld(SolenoidNeed need, HungCoils hung, CoilCurrent current, bool isInrushMarked) =>
        Rounded.Voltamperes(need.Plate.CoilPower) is { } old && Within.AtMost(hung.Own, old) && (need.Plate.CoilCurrent is not { } was || was == current)
        && (isInrushMarked || current == CoilCurrent.Direct || Within.AtMost(hung.OwnInrushTaken, OldInrush(need, hung, old)));

    /// <summary>What the contact closed on with the old coil, VA: as that coil's plate says. Where it says nothing, as many times what it held by as are taken of a new one of which nothing is said either, and beside a given figure what a contact is taken to close on that opened as much.</summary>
    private static double OldInrush(SolenoidNeed need, HungCoils hung, double old) => Rounded.Voltamperes(need.Plate.CoilInrush) ?? (hung.OwnInrush is null ? HungCoils.Taken(null, old) : FeedingContact.ClosesOnTaken(old));

    /// <summary>What is not known of its marking; formed only when it is shown.</summary>
    private readonly record struct NotKnown(FeedingContact? Marked, bool IsDirect, double? Volts)
    {
        public override string ToString() => Marked is { } contact
            ? FormattableString.Invariant($"the contact that feeds it {new ClosesOn(contact, Volts)}, and what it opens is not known")
            : $"what the contact that feeds it is marked for{(IsDirect ? " of direct current" : string.Empty)} is not known";
    }

    /// <summary>What it closes on, or is taken to; formed only when it is shown.</summary>
    private readonly record struct ClosesOn(FeedingContact Contact, double? Volts)
    {
        public override string ToString() => Contact.AreClosedGiven
            ? FormattableString.Invariant($"closes on {Contact.Closes:0.#} VA of coils{new There(Volts)}")
            : FormattableString.Invariant($"is taken to close on {Contact.Closes:0.#} VA of coils{new There(Volts)}, {Contact.Closes / Contact.Opens:0} times what it opens");
    }

    /// <summary>VA as a coil pulls in; formed only when they are shown.</summary>
    private readonly record struct AsItPullsIn(double? Va)
    {
        public override string ToString() => Va is { } va ? FormattableString.Invariant($" and {va:0.#} VA as it pulls in") : string.Empty;
    }

    /// <summary>What is taken of an old coil as it pulled in; formed only when it is shown.</summary>
    private sealed record TakenOfOld(double? Given, double Old)
    {
        public override string ToString() => Given is { } own
            ? FormattableString.Invariant($"; it takes {own:0.#} VA as it pulls in, and the contact is taken to close on {FeedingContact.ClosesOnTaken(Old):0.#} VA, as one that opens what the old one took")
            : "; as they pull in the two are taken for alike";
    }

    /// <summary>The volts in words; formed only when they are shown.</summary>
    private readonly record struct There(double? Volts)
    {
        public override string ToString() => Volts is { } volts ? FormattableString.Invariant($" at {volts:0.#} V") : string.Empty;
    }
}
