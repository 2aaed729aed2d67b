using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contacts;

/// <summary>What is known of what an old one's contacts do.</summary>
/// <typeparam name="TAction">What contacts of the family do.</typeparam>
/// <param name="Marked">As its plate has it; null when not known.</param>
/// <param name="Wired">What is wired to them: one side, or both, which is to change over; null when not known.</param>
/// <param name="Taken">What they are taken to do where neither is known; null where nothing can be taken.</param>
/// <param name="Because">Of what most do so: "a fan delay".</param>
internal readonly record struct OldAction<TAction>(TAction? Marked, TAction? Wired, TAction? Taken, FormattableString? Because)
    where TAction : struct, Enum;

/// <summary>Do contacts do what the old ones did, where either may change over?</summary>
/// <remarks>
/// What is wired is needed, whatever else change-over contacts could do; where nobody said what is, all that they do. The same meets. Change-over contacts do for a single one, with one side unused: a change, unless the old ones were used so. A single one does for one side of the old change-over contacts, where that alone is wired. Else it fails.
/// What is only taken of the old ones is said, and fails none.
/// </remarks>
/// <typeparam name="TAction">What contacts of the family do.</typeparam>
/// <param name="Field">The field of it, on plate and part.</param>
/// <param name="ChangeOver">Its choice for contacts with two sides.</param>
/// <param name="OneSide">A side in words: "the side that opens on rise".</param>
internal sealed record ActionRule<TAction>(string Field, TAction ChangeOver, Func<TAction, FormattableString> OneSide)
    where TAction : struct, Enum
{
    /// <summary>The answer.</summary>
    /// <param name="old">What is known of the old ones.</param>
    /// <param name="has">What the part's do; null when not known.</param>
    public Finding Judge(OldAction<TAction> old, TAction? has)
    {
        if (Misread(old) is { } misread) return misread;
        if ((old.Wired ?? old.Marked) is { } known) return Against(known, old, has);
        return old.Taken is { } taken ? Resting(Against(taken, old, has), taken, old) : Unmarked;
    }

    /// <summary>The answer where nothing tells what the old ones do.</summary>
    public Finding Unmarked => Finding.Unknown(Side.Plate, Field, $"What the old contacts do is not known.");

    /// <summary>An answer by what was taken of the old ones, which says so.</summary>
    public Finding Resting(Finding found, TAction taken, OldAction<TAction> old) => found.RestingOn(Field, $"What the old ones do is not marked: {new Spelt<TAction>(taken)} is taken, as {old.Because} mostly does.");

    /// <summary>The answer where a side is said to be wired that the old contacts do not have; null where none is.</summary>
    /// <param name="old">What is known of the old ones.</param>
    public Finding? Misread(OldAction<TAction> old) =>
        old is { Marked: { } marked, Wired: { } wired } && Disagree(marked, wired) ? Finding.Unknown(Side.Plate, Field, $"The old contacts: {new Spelt<TAction>(marked)}; said to be wired: {Sides(wired)}. One of the two is misread.") : null;

    /// <summary>A wired side that old contacts do not have, which single ones have not two of; none where they change over, or where one of the two is not known.</summary>
    /// <param name="marked">What the old ones do by their plate; null when not known.</param>
    /// <param name="wired">What is wired to them; null when not known.</param>
    /// <param name="source">The rule.</param>
    public IEnumerable<Contradiction> Disagreement(TAction? marked, TAction? wired, Source source)
    {
        if (marked is not { } does || wired is not { } needed || !Disagree(does, needed)) yield break;
        yield return new([Field], FormattableString.Invariant($"The old contacts: {new Spelt<TAction>(does)}; said to be wired: {Sides(needed)} of change-over contacts. One of the two is misread."), source) { SiteFields = ["sidesWired"] };
    }

    private Finding Against(TAction needed, OldAction<TAction> old, TAction? has)
    {
        var isOneOfTwo = old.Marked is { } marked && Is(marked, ChangeOver) && !Is(needed, ChangeOver);
        if (has is not { } now) return Finding.Unknown(Side.Part, Field, $"The old contacts: {new Spelt<TAction>(needed)}; what this one's do is not known.");
        if (Is(now, needed)) return isOneOfTwo ? Finding.Meets($"Of the old change-over contacts {OneSide(needed)} is wired, and its contacts do as that does.") : Finding.Meets($"Its contacts do as the old ones did: {new Spelt<TAction>(now)}.");
        if (Is(now, ChangeOver))
        {
            return isOneOfTwo
                ? Finding.Meets($"Its contacts change over as the old ones did, of which {OneSide(needed)} is wired.")
                : Finding.MeetsWith([new(SwitchChanges.UseOneSide, $"use {OneSide(needed)}, and leave the other unused")], $"Its contacts change over; the old ones: {new Spelt<TAction>(needed)}.");
        }

        if (!Is(needed, ChangeOver)) return Finding.Fails($"The old contacts: {new Spelt<TAction>(needed)}{(isOneOfTwo ? ", the side of them that is wired" : string.Empty)}; this one's: {new Spelt<TAction>(now)}.");
        return old.Wired is null
            ? Finding.Unknown(Side.Site, "sidesWired", $"The old contacts change over, this one's: {new Spelt<TAction>(now)}; which sides are wired is not known.")
            : Finding.Fails($"Both sides of the old change-over contacts are wired; this one's contacts: {new Spelt<TAction>(now)}.");
    }

    private object Sides(TAction wired) => Is(wired, ChangeOver) ? "both sides" : OneSide(wired);

    private bool Disagree(TAction marked, TAction wired) => !Is(marked, ChangeOver) && !Is(marked, wired);

    private static bool Is(TAction one, TAction other) => EqualityComparer<TAction>.Default.Equals(one, other);
}
