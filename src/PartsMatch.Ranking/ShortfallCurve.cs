namespace PartsMatch.Ranking;

/// <summary>
/// What a shortfall costs, in units of log-odds: a sum of ramps, each of which rises over its part of the way and stays up behind it. No height is negative, so that a greater shortfall never costs less,
/// whatever the shape that outcomes ask for.
/// </summary>
/// <param name="Any">For any shortfall at all.</param>
/// <param name="First">Over the first quarter of the way to the limit, 0 to 0.25.</param>
/// <param name="Second">Over the second, 0.25 to 0.5.</param>
/// <param name="Third">Over the third, 0.5 to 0.75.</param>
/// <param name="Fourth">Over the last, 0.75 to 1.</param>
/// <param name="Beyond">Beyond the limit, 1 to <see cref="Features.MostShortfall"/>.</param>
public sealed record ShortfallCurve(double Any, double First, double Second, double Third, double Fourth, double Beyond)
{
    /// <summary>How many heights a curve has.</summary>
    public const int Count = 6;

    /// <summary>A shortfall under this is none: what binary arithmetic leaves over.</summary>
    private const double Least = 1e-9;

    private const double Quarter = 0.25;

    /// <summary>All heights, in order.</summary>
    public IReadOnlyList<double> Heights => [Any, First, Second, Third, Fourth, Beyond];

    /// <summary>The curve that costs the same for every step of the way.</summary>
    /// <param name="atLimit">What a shortfall of 1 costs.</param>
    public static ShortfallCurve Even(double atLimit) => new(0, atLimit / 4, atLimit / 4, atLimit / 4, atLimit / 4, atLimit);

    /// <summary>The curve of so many heights in order.</summary>
    /// <exception cref="ArgumentException">There are not <see cref="Count"/> of them.</exception>
    public static ShortfallCurve Of(IReadOnlyList<double> heights) =>
        heights is [var any, var first, var second, var third, var fourth, var beyond] ? new(any, first, second, third, fourth, beyond) : throw new ArgumentException($"A curve has {Count} heights.", nameof(heights));

    /// <summary>What a shortfall costs.</summary>
    /// <param name="shortfall">0 to <see cref="Features.MostShortfall"/>.</param>
    public double At(double shortfall) => shortfall < Least ? 0 : Any
        + (First * RampOf(shortfall, 0))
        + (Second * RampOf(shortfall, Quarter))
        + (Third * RampOf(shortfall, 2 * Quarter))
        + (Fourth * RampOf(shortfall, 3 * Quarter))
        + (Beyond * BeyondOf(shortfall));

    /// <summary>How far a shortfall is up each ramp, 0 to 1: what heights are trained by.</summary>
    /// <param name="shortfall">0 to <see cref="Features.MostShortfall"/>.</param>
    /// <param name="to">Takes <see cref="Count"/> figures.</param>
    public static void Climb(double shortfall, Span<double> to)
    {
        to[0] = shortfall < Least ? 0 : 1;
        for (var ramp = 0; ramp < 4; ramp++) to[ramp + 1] = shortfall < Least ? 0 : RampOf(shortfall, ramp * Quarter);
        to[5] = BeyondOf(shortfall);
    }

    private static double RampOf(double shortfall, double from) => Math.Clamp((shortfall - from) / Quarter, 0, 1);

    private static double BeyondOf(double shortfall) => Math.Clamp(shortfall - 1, 0, 1);
}

/// <summary>What an aspect's features cost in the ranking, in units of log-odds; none is negative.</summary>
/// <param name="Shortfall">For its shortfall.</param>
/// <param name="Effort">For changes of effort 1.</param>
/// <param name="Unknown">For a gap in the part's own spec.</param>
public sealed record AspectCost(ShortfallCurve Shortfall, double Effort, double Unknown)
{
    /// <summary>The same for every step of the way to the limit.</summary>
    /// <param name="shortfall">For a shortfall of 1.</param>
    /// <param name="effort">For changes of effort 1.</param>
    /// <param name="unknown">For a gap in the part's own spec.</param>
    public AspectCost(double shortfall, double effort, double unknown)
        : this(ShortfallCurve.Even(shortfall), effort, unknown)
    {
    }

    /// <summary>All that it costs, in the order of <see cref="Features"/>.</summary>
    internal IEnumerable<double> All => [.. Shortfall.Heights, Effort, Unknown];
}
