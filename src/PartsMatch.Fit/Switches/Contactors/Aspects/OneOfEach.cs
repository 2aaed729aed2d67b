using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Do contacts do what the old ones did, where one of the two parts has a normally open pole and a normally closed one?</summary>
/// <remarks>
/// Another so made meets, and so does what is wired of it by itself. Change-over contacts do for it, with a side of each pole unused. It does for one line that is switched, with its other pole unused, but neither for two nor for both sides of a change-over contact, whose common its two poles lack (practice).
/// </remarks>
internal static class OneOfEach
{
    /// <summary>The answer for the place of an old one so made.</summary>
    /// <param name="wired">What of it is wired; change over where both poles are, null when not known.</param>
    /// <param name="has">What the part's do; null when not known.</param>
    public static Finding InItsPlace(ContactAction? wired, ContactAction? has) => (wired, has) switch
    {
        (_, null) => Finding.Unknown(Side.Part, "contactAction", $"The old one had one normally open and one normally closed pole; what this one's contacts do is not known."),
        (_, ContactAction.OneOfEach) => Finding.Meets($"It has one normally open and one normally closed pole, as the old one had."),
        (null or ContactAction.ChangeOver, ContactAction.ChangeOver) => Finding.MeetsWith([new(SwitchChanges.UseOneSide, $"use the normally open side of one pole and the normally closed side of another, and leave the others unused")], $"Its contacts change over; the old one had one normally open and one normally closed pole."),
        ({ } one, ContactAction.ChangeOver) => Finding.MeetsWith([new(SwitchChanges.UseOneSide, $"use the {new Spelt<ContactAction>(one)} side, and leave the other unused")], $"Its contacts change over; of the old one the {new Spelt<ContactAction>(one)} pole is wired."),
        (null, { } now) => Finding.Unknown(Side.Site, "sidesWired", $"The old one had one normally open and one normally closed pole, this one's contacts: {new Spelt<ContactAction>(now)}; which of the old ones are wired is not known."),
        (ContactAction.ChangeOver, { } now) => Finding.Fails($"One normally open and one normally closed pole of the old one are wired; this one's contacts: {new Spelt<ContactAction>(now)}."),
        ({ } one, { } now) when one == now => Finding.Meets($"Of the old one the {new Spelt<ContactAction>(one)} pole is wired, and its contacts do as that does."),
        ({ } one, { } now) => Finding.Fails($"Of the old one the {new Spelt<ContactAction>(one)} pole is wired; this one's contacts: {new Spelt<ContactAction>(now)}."),
    };

    /// <summary>The answer for a new one so made.</summary>
    /// <param name="needed">What the old one's do, of what is wired to them.</param>
    /// <param name="isWired">Whether it is known what is.</param>
    /// <param name="lines">How many lines are switched; null when not known.</param>
    public static Finding ByIt(ContactAction needed, bool isWired, int? lines) => (needed, lines) switch
    {
        (ContactAction.ChangeOver, _) when !isWired => Finding.Unknown(Side.Site, "sidesWired", $"The old contacts change over, this one has one normally open and one normally closed pole; which sides are wired is not known."),
        (ContactAction.ChangeOver, _) => Finding.Fails($"Both sides of the old change-over contacts are wired; this one's normally open and normally closed poles have no terminal in common."),
        (_, null) => Finding.Unknown(Side.Plate, "poleCount", $"The old contacts: {new Spelt<ContactAction>(needed)}; this one has one such pole and one of the other kind, and how many lines are switched is not known."),
        (_, 1) => Finding.MeetsWith([new(ContactorChanges.UsePoleThatDoes, $"use its {new Spelt<ContactAction>(needed)} pole")], $"One line is switched by contacts that are {new Spelt<ContactAction>(needed)}; this one has one such pole and one of the other kind."),
        (_, { } several) => Finding.Fails($"{several} lines are switched by contacts that are {new Spelt<ContactAction>(needed)}; this one has one such pole and one of the other kind."),
    };
}
