namespace PartsMatch.Fit.Motors;

/// <summary>The rating rows that a motor is on where it stands: by its connection, the volts read at its leads and the supply's frequency.</summary>
internal static class RowsThere
{
    /// <summary>Of the rows of the taps that it is connected for, those whose tap takes the volts and whose frequency is the supply's; as far as one of these is unknown or fits no row, it leaves them all.</summary>
    /// <param name="motor">The motor.</param>
    /// <param name="volts">Volts at its leads; null when not read.</param>
    /// <param name="hertz">Frequency of the supply, Hz; null when unknown.</param>
    public static IReadOnlyList<Rating> Of(MotorSpec motor, double? volts, double? hertz)
    {
        var connected = VoltTap.Of(motor.ConnectedFor);
        var rows = Narrowed(Ratings.Of(motor).Rows, row => row.Volts is { } tap && connected.Any(one => one.Overlaps(VoltTap.Of(tap))));
        rows = Narrowed(rows, row => row.Volts is { } tap && volts is { } there && VoltTap.Of(tap).Takes(there));
        return Narrowed(rows, row => hertz is { } there && row.Frequencies.Any(one => SupplyWindows.TakesFrequency(one.Hertz, there)));
    }

    private static IReadOnlyList<Rating> Narrowed(IReadOnlyList<Rating> rows, Predicate<Rating> fits) => rows.Where(row => fits(row)).ToList() is { Count: > 0 } fitting ? fitting : rows;
}
