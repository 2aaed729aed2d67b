using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves.ExpansionValves.Aspects;

/// <summary>What is read of a valve's equaliser.</summary>
/// <param name="From">Internal or external; null where not given.</param>
public readonly record struct EqualiserFacet(Equaliser? From);

/// <summary>Gets the diaphragm its pressure from where it has to?</summary>
/// <remarks>External for external; internal on a coil with a distributor fails; external for internal needs a tap, a change; internal for external without a distributor is a check of the coil's drop.</remarks>
public sealed class EqualiserLine() : Aspect<ExpansionValveSpec, ExpansionValveSite, EqualiserFacet>("Equaliser", isDeciding: true, ExpansionValveSources.Equaliser, new(0.3, 1.2, 1.5))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["equaliser"], ["hasDistributor", "hasEqualiserTap"]);

    /// <inheritdoc/>
    public override EqualiserFacet Read(ExpansionValveSpec part) => new(part.Equaliser);

    /// <inheritdoc/>
    public override Finding Judge(ExpansionNeed need, EqualiserFacet facet) => (facet.From, need.Plate.Equaliser, need.Site.HasDistributor) switch
    {
        (null, _, _) => Finding.Unknown(Side.Part, "equaliser", $"Whether its equaliser is internal or external is not given."),
        (Equaliser.External, _, _) => need.Site.HasEqualiserTap switch
        {
            true => Finding.Meets($"Its equaliser is external, and the suction pipe has a tap for it."),
            false => Tapped(),
            null when need.Plate.Equaliser == Equaliser.Internal => Tapped(),
            null => Finding.Unknown(Side.Site, "hasEqualiserTap", $"Its equaliser is external; whether the suction pipe has a tap for it is not known."),
        },
        (_, _, true) => Finding.Fails($"A distributor loses more than 2 °F (1.1 K) of saturation; it has an internal equaliser and would starve the coil."),
        (_, Equaliser.Internal, _) => Finding.Meets($"Its equaliser is internal, as the old one's was."),
        (_, _, false) => Finding.MeetsWith([new(ExpansionValveChanges.CheckCoilDrop, $"see that the coil loses less than 2 °F (1.1 K) of saturation")], $"Its equaliser is internal; without a distributor that does where the coil loses less than 2 °F (1.1 K)."),
        (_, _, null) => Finding.Unknown(Side.Site, "hasDistributor", $"Its equaliser is internal; whether a distributor follows it is not known."),
    };

    private static Finding Tapped() => Finding.MeetsWith(
        [new(ExpansionValveChanges.FitEqualiserTap, $"fit a tap for its equaliser line, 1/4 in, into the suction pipe") { Kit = [new($"1/4 in tube, tee or saddle for the equaliser line")] }],
        $"Its equaliser is external, and the suction pipe has no tap for it.");
}
