using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Fit.Published;

/// <summary>Amps with the rotor locked, as far as a code letter tells them.</summary>
/// <param name="From">The least, A.</param>
/// <param name="Below">What they stay below, A; null for letter V, which has no upper end.</param>
public readonly record struct LockedRotorAmps(double From, double? Below);

/// <summary>What a code letter on a motor's plate says.</summary>
/// <param name="Letter">A to V, without I, O and Q.</param>
/// <param name="From">Least locked-rotor kVA a horsepower.</param>
/// <param name="Below">What it stays below; null for V.</param>
/// <param name="Source">The table.</param>
public sealed record LockedRotorCode(string Letter, double From, double? Below, Source Source)
{
    /// <summary>Amps in a line with the rotor locked: kVA a horsepower × horsepower × 1000 / volts, and on three phases / √3.</summary>
    /// <param name="horsepower">Rated power, hp; above 0.</param>
    /// <param name="volts">Rated volts between the lines; above 0.</param>
    /// <param name="phases">Phases of the motor.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is not above 0.</exception>
    public LockedRotorAmps Amps(double horsepower, double volts, Phases phases)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(horsepower);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(volts);
        var ampsPerUnit = horsepower * 1000 / (volts * (phases == Phases.Three ? Math.Sqrt(3) : 1));
        return new(From * ampsPerUnit, Below * ampsPerUnit);
    }
}

/// <summary>Code letters for locked-rotor kVA a horsepower: NEMA MG 1 10.37.2, NFPA 70 table 430.7(B).</summary>
/// <remarks>A range goes up to the lower figure of the next letter, as MG 1 has it; NFPA 70 prints the upper end 0.01 lower and leaves a gap.</remarks>
public static class LockedRotorCodes
{
    /// <summary>All letters.</summary>
    public static IReadOnlyList<LockedRotorCode> All { get; } = [.. PublishedTable.Read("locked-rotor-codes")
        .Select(row => new LockedRotorCode(row.Text("letter"), row.Needed("kva_per_hp_from"), row.Number("kva_per_hp_below"), row.Source))];

    /// <summary>What a letter says; null for anything that is no code letter.</summary>
    /// <param name="letter">The letter, in either case.</param>
    public static LockedRotorCode? Find(string letter) => All.FirstOrDefault(code => string.Equals(code.Letter, letter.Trim(), StringComparison.OrdinalIgnoreCase));
}
