using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Demo.Motors;

/// <summary>Leaves out what catalogues leave out, so that a part's gap has to be asked for at the counter.</summary>
public static class MotorGaps
{
    /// <summary>Few entries lack something that decides.</summary>
    private const double DecidingGap = 0.025;

    /// <summary>The entry as the maker prints it.</summary>
    public static MotorSpec Leave(MotorSpec spec, Maker maker, Draw draw)
    {
        if (draw.Chance(maker.GapShare))
        {
            foreach (var gap in draw.Some<Func<MotorSpec, MotorSpec>>([.. Usual], draw.Whole(1, 3))) spec = gap(spec);
        }

        return draw.Chance(DecidingGap) ? draw.Pick(Deciding)(spec) : spec;
    }

    private static readonly Func<MotorSpec, MotorSpec>[] Usual =
    [
        spec => spec with { BodyLength = null },
        spec => spec with { LockedRotorAmps = null, CodeLetter = null },
        spec => spec with { DrainHoles = null },
        spec => spec with { Bearings = null, ShaftPositions = null },
        spec => spec with { ShaftPositions = null },
        spec => spec with { ConnectedFor = null },
        spec => spec with { Insulation = null },
        spec => spec with { FlatLength = null, ShaftCanBeCut = null },
    ];

    private static readonly Func<MotorSpec, MotorSpec>[] Deciding =
    [
        spec => spec with { ShaftLength = null, FlatLength = null },
        spec => spec with { Rotation = spec.Rotation is { } turn ? turn with { SeenFrom = null } : null },
        spec => spec with { Rotation = null, Reversing = null },
        spec => spec with { BodyDiameter = null },
        spec => spec with { Enclosure = null },
        spec => spec with { FullLoadAmps = null },
    ];
}
