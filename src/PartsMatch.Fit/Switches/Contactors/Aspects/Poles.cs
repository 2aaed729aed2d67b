using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What poles read of a contactor.</summary>
/// <param name="Count">Its main poles; null when not known.</param>
public readonly record struct PolesFacet(PoleCount? Count);

/// <summary>Has the contactor a pole for each line that is switched?</summary>
/// <remarks>
/// Fewer fail, of an old one with one of each kind as well until fewer lines are said to be switched; more are left unused. Where the old one had a shunt and the new one opens both lines, the crankcase heat that the shunt fed is lost: a change, or a check while nobody knows whether it fed any.
/// Where the old one had a shunt and the new one has none, the line is joined through.
/// </remarks>
public sealed class Poles() : Aspect<ContactorSpec, ContactorSite, PolesFacet>("Poles", isDeciding: true, ContactorSources.Poles, new(0.3, 0.6, 1.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["poleCount"], ["linesSwitched", "shuntFeedsHeat"]) { Besides = ["contactAction", "sidesWired"] };

    /// <inheritdoc/>
    public override PolesFacet Read(ContactorSpec part) => new(part.PoleCount);

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, PolesFacet facet)
    {
        if (need.Site.LinesSwitched is not { } lines) return Finding.Unknown(Side.Plate, "poleCount", $"How many lines are switched is not known.");
        if (facet.Count is not { } has) return Finding.Unknown(Side.Part, "poleCount", $"{Lines(lines)} switched; the part's poles are not known.");
        if (Switched(has) < lines)
        {
            var fails = Finding.Fails(new Margin(Switched(has) - lines, "poles"), $"{Lines(lines)} switched; it has {new Spelt<PoleCount>(has)}.");
            return need is { Plate.ContactAction: ContactAction.OneOfEach, Site.SidesWired: not ContactSides.Both } && lines == 2 ? fails.Then($"Both poles of the old one count until fewer lines are said to be switched.") : fails;
        }

        var hadShunt = lines == 1 && (need.Plate.PoleCount == PoleCount.OneAndShunt || need is { Plate.PoleCount: null, Site.ShuntFeedsHeat: true });
        return hadShunt && has != PoleCount.OneAndShunt ? WithoutShunt(need, has) : Spare(lines, has);
    }

    /// <summary>Lines that poles open; a shunt opens none.</summary>
    internal static int Switched(PoleCount poles) => poles switch
    {
        PoleCount.One or PoleCount.OneAndShunt => 1,
        PoleCount.Two => 2,
        PoleCount.Three => 3,
        _ => 4,
    };

    private static Finding WithoutShunt(ContactorNeed need, PoleCount has) => (has, need.Site.ShuntFeedsHeat) switch
    {
        (PoleCount.One, _) => Finding.MeetsWith(
            [new(ContactorChanges.JoinLine, $"join the line through that went over the old one's shunt") { Kit = [new($"splice connector for the line's wire")] }],
            $"The old one had a shunt for the second line; this one has a pole and no shunt."),
        (_, true) => Finding.MeetsWith(
            [new(ContactorChanges.FeedCrankcaseHeat, $"feed the crankcase heat from the line side: with {new Spelt<PoleCount>(has)} both lines open, and the shunt that fed it is gone") { Kit = [new($"wire for the crankcase heater's feed")] }],
            $"The old one's shunt fed the crankcase heat; with {new Spelt<PoleCount>(has)} both lines open."),
        (_, null) => Finding.MeetsWith(
            [new(ContactorChanges.CheckShunt, $"see whether the old one's shunt fed the crankcase heat: with {new Spelt<PoleCount>(has)} both lines open")],
            $"The old one had a shunt; with {new Spelt<PoleCount>(has)} both lines open, and whether the shunt fed the crankcase heat is not known."),
        _ => Finding.Meets($"The old one's shunt fed nothing; with {new Spelt<PoleCount>(has)} both lines open."),
    };

    private static Finding Spare(int lines, PoleCount has) => Switched(has) == lines
        ? Finding.Meets($"{Lines(lines)} switched; it has {new Spelt<PoleCount>(has)}.")
        : Finding.MeetsWith([new(ContactorChanges.LeavePoleUnused, $"leave {(Switched(has) - lines == 1 ? "one pole" : $"{Switched(has) - lines} poles")} unused")], $"{Lines(lines)} switched; it has {new Spelt<PoleCount>(has)}.");

    private static string Lines(int lines) => lines == 1 ? "One line is" : FormattableString.Invariant($"{lines} lines are");
}
