using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Proof;

/// <summary>A contactor and what was read at it.</summary>
/// <param name="Need">The old one and its place.</param>
/// <param name="Readings">The readings.</param>
/// <param name="New">The new one; null before the swap.</param>
public sealed record ContactorCase(ContactorNeed Need, ContactorReadings Readings, ContactorSpec? New = null)
{
    /// <summary>Under this share of its least volts a coil has none (practice).</summary>
    private const double NoVoltsShare = 0.1;

    /// <summary>Under this share of its least volts a contactor for alternating current has let go (IEC 60947-4-1, from memory).</summary>
    private const double LetGoAlternating = 0.2;

    /// <summary>The same of one for direct current.</summary>
    private const double LetGoDirect = 0.1;

    /// <summary>The one the readings were taken at.</summary>
    public ContactorSpec Measured => New ?? Need.Plate;

    /// <summary>What its poles do as the coil pulls in; change over where both sides of them are wired, and null where it is not known which side is.</summary>
    internal ContactAction? Action => MeasuredPoles.ActionOf(Need, Measured);

    /// <summary>Whether contacts stay closed without power, of those that power alone is to close; null where it was not seen, and where others are wired that are closed without.</summary>
    internal bool? StaysIn => ClosesWithoutPower ? null : Readings.StaysIn;

    /// <summary>The coil that is in it.</summary>
    internal Sequence<CoilMade> Coil => New is null ? ContactorCoils.Own(Need.Plate) : ContactorCoils.Chosen(Need, New);

    /// <summary>Volts at the coil, V; null when not read.</summary>
    internal double? Volts => Readings.CoilVolts?.Legs[0].Volts;

    /// <summary>Whether there are practically none at the coil; null when not read, or when its volts are not known.</summary>
    internal bool? HasNoVolts => IsUnder(NoVoltsShare);

    /// <summary>Whether the volts at its coil hold no armature in; null when not read, or when the coil's own, or what drives it, is not known.</summary>
    internal bool? CannotHold => (Coil.Count > 0 ? Coil[0].Current ?? Need.Site.ControlCurrent : null) switch
    {
        CoilCurrent.Alternating => IsUnder(LetGoAlternating),
        CoilCurrent.Direct => IsUnder(LetGoDirect),
        _ => IsUnder(LetGoDirect) == true ? true : IsUnder(LetGoAlternating) == false ? false : null,
    };

    /// <summary>Most amps that flow through its poles, A; null when none were read, or none flow. What flows while no pole is closed, with a shunt round one of them, is the shunt's.</summary>
    internal double? AmpsFlowing => !IsTheShunts && Readings.LegAmps?.Legs.Max(leg => leg.Amperes) is > 0 and var most ? most : null;

    /// <summary>The same through poles that power alone is to close: that they flow shows it in.</summary>
    internal double? AmpsWithPower => ClosesWithoutPower ? null : AmpsFlowing;

    /// <summary>The same though nothing holds it in; null as well when something may.</summary>
    internal double? AmpsUnheld => IsUnheld ? AmpsWithPower : null;

    /// <summary>The same through normally closed poles that are open by what was read of its coil and armature; null when none do.</summary>
    internal double? AmpsThroughOpened => Action == ContactAction.NormallyClosed && IsClosed == false ? AmpsFlowing : null;

    /// <summary>Whether amps were read, and none flow in any leg.</summary>
    internal bool HasNoCurrent => Readings.LegAmps is not null && AmpsFlowing is null;

    /// <summary>Whether its poles are closed, or should be: as somebody saw, or because current flows, or by its coil; null when nothing tells, as of change-over contacts with both sides wired. That it pulled in with volts says nothing of without; that it is not called for says nothing of the volts that may hold it in all the same, and its normally closed poles open.</summary>
    internal bool? IsClosed => Action switch
    {
        ContactAction.NormallyOpen => IsUnfed && (StaysIn == false || (StaysIn is null && AmpsFlowing is null)) ? false : IsSeenIn,
        ContactAction.NormallyClosed => CannotHold == true ? true : Readings.PullsIn is { } pulls && !MayBeHalfIn ? !pulls : AmpsFlowing is null ? null : true,
        _ => null,
    };

    /// <summary>Least volts across poles that are to be open, V, where a closed one loses no more, and nothing that was read shows whether one is welded; else null.</summary>
    internal double? HardlyAcrossOpen => IsClosed == false && !ShowsWeld && LeastAcross is { } least && Within.AtMost(least, ContactDrop.Bad) ? least : null;

    /// <summary>Least volts across its poles, V; null when not read. A shunt in the place of a pole, or round one, has none by right, so that the lowest of several is left out.</summary>
    internal double? LeastAcross => Readings.DropVolts?.Legs.Select(leg => leg.Volts).Order().Take(HasShunt ? 2 : 1).Last();

    /// <summary>Whether a shunt is in the place of one of its poles, or round one.</summary>
    internal bool HasShunt => Measured.PoleCount == PoleCount.OneAndShunt || Need.Site.ShuntFeedsHeat == true;

    /// <summary>Whether it is in, as somebody saw, or because current flows that no shunt may pass; null when neither was read.</summary>
    internal bool? IsSeenIn => Readings.PullsIn ?? (StaysIn == true || (AmpsWithPower is not null && !HasShunt) ? true : null);

    /// <summary>Whether its coil is fed as it should be; null when that is not known.</summary>
    internal bool? IsFed => Volts is not { } volts || Coil.Count == 0 ? null : Coil.Any(one => CoilOnSupply.Works(one, volts, Need.Site.ControlCurrent, ContactorCoils.Window));

    /// <summary>Whether its coil is made for the other kind of current than the control circuit has.</summary>
    internal bool IsOnOtherCurrent => Coil.Any(one => one.IsForOtherThan(Need.Site.ControlCurrent));

    /// <summary>Whether its coil has volts enough to pull in, be they too many; null when that is not known.</summary>
    internal bool? IsFedEnough => IsFed == false && !IsOnOtherCurrent && Coil.All(one => Volts > ContactorCoils.Window.Of(one).High) ? true : IsFed;

    /// <summary>Full-load amps that a pole carries at the volts that it switches, A; null when not known.</summary>
    internal double? Carries => Ratings is { Count: > 0 } rows
        ? Need.Site.LoadVolts is { } volts ? RatedAmps.At(rows, volts.Volts) : rows.All(row => row.Amps.Equals(rows[0].Amps)) ? rows[0].Amps : null
        : null;

    /// <summary>The full-load amps that its poles are rated for, of what hangs on them; empty where they are not known.</summary>
    internal Sequence<AmpsAt> Ratings => RatedAmps.Of(Measured.RatedVolts, Measured.AmpsFor(Need.Site.Loads));

    /// <summary>Whether a side of its contacts is wired that is closed without power.</summary>
    private bool ClosesWithoutPower => Action is ContactAction.NormallyClosed or ContactAction.ChangeOver;

    /// <summary>Whether nothing holds it in: by the volts at its coil, or as it was seen out on some that pull none in. One whose contacts were seen to let go is not welded: low volts may draw it half in.</summary>
    private bool IsUnheld => CannotHold == true || (Readings.PullsIn == false && IsFedEnough == false && StaysIn != false);

    /// <summary>Whether it is not all the way in on volts that may draw it half in, which opens normally closed poles.</summary>
    private bool MayBeHalfIn => Readings.PullsIn == false && CannotHold == false && IsFedEnough == false;

    /// <summary>Whether nothing holds one in whose poles power closes: without a call its coil has no volts unless some were read.</summary>
    private bool IsUnfed => IsUnheld || (Readings.CircuitCalls == false && Volts is null);

    /// <summary>Whether what was read besides the volts across its poles shows whether one is welded, as their ohms do by hand, or asks for the coil's volts first. That nothing flows shows it of no normally closed one: another that is open stops all of it.</summary>
    private bool ShowsWeld => Readings.PolesFollow is not null || (Action == ContactAction.NormallyClosed
        ? AmpsFlowing is not null || Readings.CircuitCalls == false
        : StaysIn is not null || AmpsUnheld is not null || !IsUnfed || (Volts is null && Readings.PullsIn == true));

    /// <summary>Whether what flows is a shunt's: not where a pole beside it loses as little as a closed one.</summary>
    private bool IsTheShunts => CannotHold == true && StaysIn == false && Need.Site.ShuntFeedsHeat == true && !(LeastAcross is { } least && Within.AtMost(least, ContactDrop.Bad));

    private bool? IsUnder(double share) => Volts is not { } volts ? null : volts <= 0 ? true : Coil.Count == 0 ? null : !Within.AtLeast(volts, share * Coil.Min(one => one.Low));
}
