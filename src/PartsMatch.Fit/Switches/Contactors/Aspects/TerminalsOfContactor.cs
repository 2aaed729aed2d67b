using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>What the terminals read of a contactor.</summary>
/// <param name="Kinds">What its wires go onto.</param>
public readonly record struct TerminalsFacet(ChoiceSet<TerminalKind> Kinds);

/// <summary>Do the wires go onto the contactor's terminals as they end now?</summary>
/// <remarks>One kind of what the old one had meets; else they are ended anew: a change.</remarks>
public sealed class TerminalsOfContactor() : Aspect<ContactorSpec, ContactorSite, TerminalsFacet>("Terminals", isDeciding: false, ContactorSources.Terminals, new(0.2, 0.5, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["terminals"], []);

    /// <inheritdoc/>
    public override TerminalsFacet Read(ContactorSpec part) => new(ChoiceSet<TerminalKind>.Of(part.Terminals));

    /// <inheritdoc/>
    public override Finding Judge(ContactorNeed need, TerminalsFacet facet)
    {
        var old = ChoiceSet<TerminalKind>.Of(need.Plate.Terminals);
        if (old.IsUnknown) return Finding.Unknown(Side.Plate, "terminals", $"How the wires end there is not known.");
        if (facet.Kinds.IsUnknown) return Finding.Unknown(Side.Part, "terminals", $"The old one's wires end for {old}; this one's terminals are not known.");
        if (facet.Kinds.SharedWith(old) is { } same) return Finding.Meets($"Its wires go onto {new Spelt<TerminalKind>(same)}, as the old one's do.");
        return Finding.MeetsWith(
            [new(SwitchChanges.FitTerminals, $"end the wires for {new Spelt<TerminalKind>(facet.Kinds.First)}") { Kit = [new($"wire ends for {new Spelt<TerminalKind>(facet.Kinds.First)}", Count(need))] }],
            $"Its wires go onto {facet.Kinds}; the old one's end for {old}.");
    }

    private static int Count(ContactorNeed need) => 2 * (need.Site.LinesSwitched ?? 2);
}
