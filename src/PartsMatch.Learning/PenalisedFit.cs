using MathNet.Numerics.LinearAlgebra;

namespace PartsMatch.Learning;

/// <summary>What is held of costs before any outcome is seen: each lies about its mean, the closer the greater its precision.</summary>
/// <param name="Means">In the columns' order.</param>
/// <param name="Precisions">One over the square of how far a cost may be expected off its mean; 0 where nothing is held.</param>
public sealed record Prior(double[] Means, double[] Precisions)
{
    /// <summary>Nothing is held of any column.</summary>
    public static Prior None(int columns) => new(new double[columns], new double[columns]);
}

/// <summary>
/// Fits costs to examples: the most likely ones given the outcomes and what was held before, none of them negative. The log-likelihood of a logistic model with a normal prior is concave, so there is one best answer;
/// it is found by Newton's method, projected on what is not negative (Bertsekas 1982: columns that lie at 0 and would go below stay out of the step).
/// </summary>
public static class PenalisedFit
{
    private const int MostSteps = 200;

    /// <summary>The slope of what is fitted, an example, under which it is at its best.</summary>
    private const double Flat = 1e-9;

    /// <summary>The share of a loss that is blurred by rounding as tens of thousands of examples are summed up: a step that promises less is not tried, at one length after the other, in vain.</summary>
    private const double Blur = 1e-13;

    /// <summary>Keeps the curvature's matrix positive where columns say the same.</summary>
    private const double Ridge = 1e-8;

    /// <summary>The costs that fit best. Same examples in the same order, same costs.</summary>
    /// <param name="examples">At least one.</param>
    /// <param name="prior">What is held before.</param>
    /// <param name="start">Where to begin; what is held before where nothing is said.</param>
    /// <param name="cancel">Gives up between steps.</param>
    public static Costs Of(IReadOnlyList<Example> examples, Prior prior, Costs? start = null, CancellationToken cancel = default)
    {
        var at = start ?? new(LogOddsOf(examples), [.. prior.Means]);
        var loss = LossOf(examples, prior, at);
        for (var step = 0; step < MostSteps; step++)
        {
            cancel.ThrowIfCancellationRequested();
            var (slope, curvature) = Around(examples, prior, at);
            int[] free = [.. Enumerable.Range(0, slope.Length).Where(column => column == 0 || at.OfColumn[column - 1] > 0 || slope[column] < 0)];
            if (free.All(column => Math.Abs(slope[column]) < Flat * examples.Count)) break;
            var direction = Direction(slope, curvature, free);
            if (slope.Zip(direction, (one, other) => one * other).Sum() > -Blur * loss) break;
            if (Shorter(examples, prior, at, loss, slope, direction) is not var (next, less)) break;
            (at, loss) = (next, less);
        }

        return at;
    }

    internal static double LossOf(double logOdds, bool worked)
    {
        // log(1 + e^−z) without overflow.
        var z = worked ? logOdds : -logOdds;
        return z > 0 ? Math.Log(1 + Math.Exp(-z)) : Math.Log(1 + Math.Exp(z)) - z;
    }

    /// <summary>As much of the step as makes the loss less; null when none does.</summary>
    private static (Costs Costs, double Loss)? Shorter(IReadOnlyList<Example> examples, Prior prior, Costs at, double loss, double[] slope, double[] direction)
    {
        const double enough = 1e-4;
        for (var length = 1.0; length > 1e-10; length /= 2)
        {
            var next = new Costs(at.Intercept + (length * direction[0]), [.. at.OfColumn.Select((cost, column) => Math.Max(0, cost + (length * direction[column + 1])))]);
            var promised = slope[0] * (next.Intercept - at.Intercept);
            for (var column = 0; column < at.OfColumn.Length; column++) promised += slope[column + 1] * (next.OfColumn[column] - at.OfColumn[column]);
            var less = LossOf(examples, prior, next);
            if (less <= loss + (enough * promised) && less < loss) return (next, less);
        }

        return null;
    }

    private static double LossOf(IReadOnlyList<Example> examples, Prior prior, Costs at)
    {
        var sum = 0.0;
        foreach (var example in examples) sum += LossOf(example.LogOdds(at), example.Worked);
        for (var column = 0; column < at.OfColumn.Length; column++)
        {
            var off = at.OfColumn[column] - prior.Means[column];
            sum += 0.5 * prior.Precisions[column] * off * off;
        }

        return sum;
    }

    /// <summary>Slope and curvature of the loss; the intercept stands first. Of the curvature, row by row, the lower triangle is filled.</summary>
    private static (double[] Slope, double[] Curvature) Around(IReadOnlyList<Example> examples, Prior prior, Costs at)
    {
        var size = at.OfColumn.Length + 1;
        var (slope, curvature) = (new double[size], new double[size * size]);
        foreach (var example in examples)
        {
            var chance = 1 / (1 + Math.Exp(-example.LogOdds(at)));
            var (off, weight) = (chance - (example.Worked ? 1 : 0), chance * (1 - chance));
            slope[0] += off;
            curvature[0] += weight;
            var (columns, values) = (example.Columns, example.Values);
            for (var one = 0; one < columns.Length; one++)
            {
                var value = -values[one];
                slope[columns[one] + 1] += off * value;
                var row = curvature.AsSpan((columns[one] + 1) * size, size);
                row[0] += weight * value;
                for (var other = 0; other <= one; other++) row[columns[other] + 1] -= weight * value * values[other];
            }
        }

        for (var column = 1; column < size; column++)
        {
            slope[column] += prior.Precisions[column - 1] * (at.OfColumn[column - 1] - prior.Means[column - 1]);
            curvature[(column * size) + column] += prior.Precisions[column - 1];
        }

        return (slope, curvature);
    }

    private static double[] Direction(double[] slope, double[] curvature, int[] free)
    {
        var size = slope.Length;
        var matrix = Matrix<double>.Build.Dense(free.Length, free.Length, (row, column) =>
            curvature[(free[Math.Max(row, column)] * size) + free[Math.Min(row, column)]] + (row == column ? Ridge : 0));
        var solved = matrix.Cholesky().Solve(Vector<double>.Build.Dense(free.Length, row => -slope[free[row]]));
        var direction = new double[slope.Length];
        for (var at = 0; at < free.Length; at++) direction[free[at]] = solved[at];
        return direction;
    }

    /// <summary>The log-odds of all examples together, as if nothing spoke against any; kept from the ends, where few are all alike.</summary>
    private static double LogOddsOf(IReadOnlyList<Example> examples)
    {
        var worked = examples.Count(example => example.Worked);
        return Math.Log((worked + 0.5) / (examples.Count - worked + 0.5));
    }
}
