using PartsMatch.Fit.Coils;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>How a published opening differential stands to the coil that goes in.</summary>
internal enum OpeningBound
{
    /// <summary>It was given for such a coil.</summary>
    Exact,

    /// <summary>It was given with alternating current, and with direct current it is less.</summary>
    AtMost,

    /// <summary>It was given with direct current, and with alternating current it is no less.</summary>
    AtLeast,

    /// <summary>With which kind of current it was given is not known.</summary>
    Unknown,
}

/// <summary>The largest difference that a valve opens against with a coil, kPa.</summary>
/// <param name="Most">kPa; null where not given.</param>
/// <param name="Bound">How that stands to the coil.</param>
/// <remarks>A maker gives it for the coil that comes on the valve, and a few for direct current beside it. On the same body a coil for direct current lifts less than one for alternating current (practice).</remarks>
internal readonly record struct OpensUpTo(double? Most, OpeningBound Bound)
{
    /// <summary>With the coil that comes on it.</summary>
    /// <param name="given">What is given for that, or for alternating current; kPa.</param>
    /// <param name="direct">What is given for direct current beside it, kPa.</param>
    /// <param name="own">What its own coil is for.</param>
    public static OpensUpTo WithOwn(double? given, double? direct, CoilCurrent? own) => new(own == CoilCurrent.Direct ? direct ?? given : given, OpeningBound.Exact);

    /// <summary>With another coil of its body.</summary>
    /// <param name="given">As above.</param>
    /// <param name="direct">As above.</param>
    /// <param name="own">What its own coil is for.</param>
    /// <param name="other">What the other one is for.</param>
    public static OpensUpTo With(double? given, double? direct, CoilCurrent? own, CoilCurrent other) => (other, own) switch
    {
        (CoilCurrent.Direct, _) when direct is not null => new(direct, OpeningBound.Exact),
        (CoilCurrent.Alternating, _) when direct is not null => new(given, OpeningBound.Exact),
        (_, null) => new(given, OpeningBound.Unknown),
        (CoilCurrent.Direct, CoilCurrent.Alternating) => new(given, OpeningBound.AtMost),
        (CoilCurrent.Alternating, CoilCurrent.Direct) => new(given, OpeningBound.AtLeast),
        _ => new(given, OpeningBound.Exact),
    };
}
