using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Motors;

/// <summary>The amps of those rows of a plate that hold at a supply's frequency; of all rows where none does, which another aspect judges.</summary>
internal readonly struct TakenAmps
{
    private readonly Sequence<AmpsRow> rows;
    private readonly double? hertz;

    /// <summary>Takes the rows.</summary>
    /// <param name="rows">At least one.</param>
    /// <param name="supplyHertz">The supply's frequency; null when unknown: then every row holds.</param>
    public TakenAmps(Sequence<AmpsRow> rows, double? supplyHertz)
    {
        this.rows = rows;
        foreach (var row in rows.AsSpan())
        {
            if (Holds(row, supplyHertz)) hertz = supplyHertz;
        }
    }

    /// <summary>Whether they are amps at different frequencies.</summary>
    public bool HaveSeveralFrequencies
    {
        get
        {
            foreach (var row in rows.AsSpan())
            {
                if (Holds(row, hertz) && !row.Hertz.Equals(rows[0].Hertz)) return true;
            }

            return false;
        }
    }

    /// <summary>What is taken on a tap at some volts.</summary>
    public TakenRange At(VoltTap tap, double volts)
    {
        var all = TakenRange.None;
        foreach (var row in rows.AsSpan())
        {
            if (Holds(row, hertz) && row.Tap == tap) all = all.With(row.At(volts), volts);
        }

        return all;
    }

    /// <summary>What is taken at the ends of a tap, or of all.</summary>
    /// <param name="tap">The tap; null for all of them.</param>
    public TakenRange AtEnds(VoltTap? tap)
    {
        var all = TakenRange.None;
        foreach (var row in rows.AsSpan())
        {
            if (Holds(row, hertz) && (tap is null || row.Tap == tap)) all = all.With(row.AtLow, row.Tap?.Low).With(row.AtHigh, row.Tap?.High);
        }

        return all;
    }

    private static bool Holds(AmpsRow row, double? hertz) => hertz is not { } there || double.IsNaN(row.Hertz) || SupplyWindows.TakesFrequency(row.Hertz, there);
}

/// <summary>From the least to the most of some amps.</summary>
/// <param name="Least">The least, A; infinite of none.</param>
/// <param name="Most">The most, A.</param>
/// <param name="VoltsOfMost">The volts at which the most is taken first; null when unknown.</param>
internal readonly record struct TakenRange(double Least, double Most, double? VoltsOfMost)
{
    /// <summary>No amps at all.</summary>
    public static TakenRange None { get; } = new(double.PositiveInfinity, double.NegativeInfinity, null);

    /// <summary>Whether there are no amps in it.</summary>
    public bool IsNone => Least > Most;

    /// <summary>These and others.</summary>
    public TakenRange With(TakenRange other) => new(Math.Min(Least, other.Least), Math.Max(Most, other.Most), other.Most > Most ? other.VoltsOfMost : VoltsOfMost);

    /// <summary>These and one more.</summary>
    public TakenRange With(double amps, double? volts) => With(new(amps, amps, volts));
}
