using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Switches.Contactors.Proof;

/// <summary>What the poles do that the readings were taken at: normally open ones are closed with power, normally closed ones without.</summary>
internal static class MeasuredPoles
{
    /// <summary>How it is asked for which side of change-over contacts is wired.</summary>
    private const string WhichSide = "See which sides of its change-over contacts have a wire, or which of two poles that do not do the same: the normally open one is closed with power, the other without.";

    private const string InDoubt = "The plate says something of contacts that are normally open or closed, of its poles or of others: look at its diagram, or power off, wires off, measure ohms through each pole. A normally open one is open then.";

    /// <summary>What they do as the coil pulls in: of change-over contacts the side that is wired, or of new ones in the place of single ones the side that does as those did; change over where both sides are wired, or both of a pole of each kind, and null where nobody said which. Poles that do not say it close, as most do (practice), unless the plate says something of it that was not taken.</summary>
    /// <param name="need">The old one and its place.</param>
    /// <param name="measured">The one the readings were taken at.</param>
    public static ContactAction? ActionOf(ContactorNeed need, ContactorSpec measured) => measured.ContactAction is ContactAction.NormallyOpen or ContactAction.NormallyClosed
        ? measured.ContactAction
        : need.Site.WiredAction ?? need.Plate.ContactAction switch
        {
            ContactAction.ChangeOver or ContactAction.OneOfEach => null,
            null when need.Doubts("contactAction") => null,
            var one => one ?? ContactAction.NormallyOpen,
        };

    /// <summary>Asks what the poles that are wired do: of the plate where that is in doubt, else by the wires.</summary>
    /// <param name="one">The case.</param>
    public static Ruling SeeWhichSide(ContactorCase one) =>
        one.Need.Plate.ContactAction is null ? Ruling.Read("contactAction", InDoubt, Side.Plate) : Ruling.Read("sidesWired", WhichSide, Side.Site);

    /// <summary>The same ruling, and it is asked what the poles that are wired do.</summary>
    /// <param name="open">What is not known.</param>
    /// <param name="one">The case.</param>
    public static Ruling ThenSeeWhichSide(this Ruling open, ContactorCase one) =>
        SeeWhichSide(one).Asks is { } next ? open.ThenRead(next.Field, next.Why, next.Side) : open;

    /// <summary>The same ruling, and it is asked for what tells whether the poles are closed; with both sides wired one of them always is.</summary>
    /// <param name="open">What is not known.</param>
    /// <param name="one">The case.</param>
    /// <param name="pullsIn">How it is asked for where power closes them.</param>
    public static Ruling ThenSeeWhetherClosed(this Ruling open, ContactorCase one, string pullsIn) => one switch
    {
        { Action: null } => open.ThenSeeWhichSide(one),
        { Action: ContactAction.ChangeOver } => open,
        { Action: ContactAction.NormallyOpen } => open.ThenRead("pullsIn", pullsIn),
        { Volts: null } => open.ThenRead("coilVolts", "Measure the volts at its coil: its normally closed poles are closed only without them."),
        _ => open.ThenRead("pullsIn", "Does it pull in? That opens its normally closed poles."),
    };
}
