using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Notes;

namespace PartsMatch.Fit.Motors.Aspects;

/// <summary>What the shaft's position reads of a motor.</summary>
/// <param name="Bearings">Sleeve or ball; null when not known.</param>
/// <param name="Positions">A bit for each position it is rated for; 0 when none is listed.</param>
public readonly record struct PositionFacet(Bearings? Bearings, int Positions)
{
    /// <summary>Every position.</summary>
    public static int Every { get; } = Bits(Enum.GetValues<ShaftPosition>());

    /// <summary>What it is for a motor.</summary>
    public static PositionFacet Of(MotorSpec motor) => new(motor.Bearings, Bits(motor.ShaftPositions));

    /// <summary>Whether it is rated for a position; null when no position is listed.</summary>
    public bool? IsRatedFor(ShaftPosition position) => Positions == 0 ? null : (Positions & Bit(position)) != 0;

    private static int Bits(IEnumerable<ShaftPosition>? positions) => positions?.Aggregate(0, (bits, position) => bits | Bit(position)) ?? 0;

    private static int Bit(ShaftPosition position) => 1 << (int)position;
}

/// <summary>Do the bearings run with the shaft pointing as it must?</summary>
/// <remarks>
/// Ball bearings run in any position; sleeves only in those that are listed, and level where none is (practice).
/// With the position not known, a motor rated for all that the old one was rated for is no worse; that the old one was rated for a position does not say that it sat so.
/// </remarks>
public sealed class BearingsAndPosition() : Aspect<MotorSpec, MotorSite, PositionFacet>("Bearings and position", isDeciding: false, PlaceSources.Position, new(0.3, 0.8, 0.6))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["bearings", "shaftPositions"], ["shaftPosition", "surroundings"]);

    /// <inheritdoc/>
    public override PositionFacet Read(MotorSpec part) => PositionFacet.Of(part);

    /// <inheritdoc/>
    public override Finding Judge(MotorNeed need, PositionFacet facet)
    {
        if (need.Site.ShaftPosition is not { } position) return Anywhere(need, facet);
        var finding = There(position, facet);
        return position == ShaftPosition.Up && need.Site.Surroundings is Surroundings.Rain or Surroundings.WashDown && finding.Verdict <= Verdict.MeetsWithChanges
            ? finding with { CautionWords = $"Keep water off the upper bearing: see that a slinger sits on the shaft.", CautionAt = Stage.Mount }
            : finding;
    }

    private static Finding There(ShaftPosition position, PositionFacet facet) => (facet.Bearings, facet.IsRatedFor(position)) switch
    {
        (_, true) => Finding.Meets($"It is rated to run with {Pointing(position)}, as it does here."),
        (Bearings.Ball, null) => Finding.Meets($"It has ball bearings, which run in any position."),
        (Bearings.Ball, false) => Finding.MeetsWith([new(PlaceChanges.AskPosition, $"ask whether it may sit with {Pointing(position)}: its entry lists other positions")], $"It has ball bearings, which run in any position, but its entry does not list {Pointing(position)}."),
        (Bearings.Sleeve, false) => Finding.Fails($"Its sleeve bearings are not rated to run with {Pointing(position)}, as they would here."),
        (_, null) when position == ShaftPosition.Horizontal => Finding.Meets($"The shaft is level: any bearing runs that way."),
        (Bearings.Sleeve, null) => Finding.Unknown(Side.Part, "shaftPositions", $"It has sleeve bearings; whether they are rated for {Pointing(position)} is not known."),
        _ => Finding.Unknown(Side.Part, "bearings", $"Whether its bearings run with {Pointing(position)} is not known: ball bearings do, sleeves only where they are rated for it."),
    };

    private static Finding Anywhere(MotorNeed need, PositionFacet facet)
    {
        var old = need.OnceOfPlate(static plate => PositionFacet.Of(plate).Positions);
        if (facet.Positions == PositionFacet.Every) return Finding.Meets($"It is rated for any position of the shaft.");
        if (old != 0 && (old & ~facet.Positions) == 0) return Finding.Meets($"It is rated for every position that the old motor was rated for.");
        if (facet.Bearings == Bearings.Ball && facet.Positions == 0) return Finding.Meets($"It has ball bearings, which run in any position.");
        return Finding.Unknown(Side.Site, "shaftPosition", $"It may not suit every position of the shaft.");
    }

    private static string Pointing(ShaftPosition position) => position switch
    {
        ShaftPosition.Up => "the shaft up",
        ShaftPosition.Down => "the shaft down",
        _ => "the shaft level",
    };
}
