using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Published;

/// <summary>What motors of a type are like at full load, as bands wide enough for old and new ones.</summary>
/// <param name="Type">The type; null for bands that hold several.</param>
/// <param name="Efficiency">Shaft power over input power, 0 to 1.</param>
/// <param name="PowerFactor">Input power over volt-amperes, 0 to 1.</param>
/// <param name="Breakdown">Breakdown torque over rated torque, at least 1.</param>
/// <param name="Source">Where the bands come from; from memory as soon as one of them is.</param>
public sealed record TypeBand(MotorType? Type, Band Efficiency, Band PowerFactor, Band Breakdown, Source Source)
{
    /// <summary>So far beyond its bands a motor of the type may still lie: they are of common motors and mostly from memory (practice).</summary>
    private const double Beyond = 0.1;

    /// <summary>The efficiency that a plate of the type is not doubted for.</summary>
    public Band PossibleEfficiency => Widened(Efficiency) is var wide ? wide with { High = Math.Min(wide.High, 1) } : default;

    /// <summary>Shaft watts a volt-ampere.</summary>
    public Band ShaftShare => Efficiency * PowerFactor;

    /// <summary>What lies no further beyond a band than a motor of the type may.</summary>
    public static Band Widened(Band band) => new(band.Low * (1 - Beyond), band.High * (1 + Beyond));
}

/// <summary>Efficiency, power factor and breakdown torque by type of motor.</summary>
/// <remarks>Ranges of small motors differ widely between sources: they serve for intervals and doubts, never for a figure.</remarks>
public static class TypeBands
{
    /// <summary>All types.</summary>
    public static IReadOnlyList<TypeBand> All { get; } = [.. PublishedTable.Read("type-bands").Select(row => new TypeBand(
        Enum.Parse<MotorType>(row.Text("type")),
        Span(row, "efficiency"),
        Span(row, "power_factor"),
        Span(row, "breakdown"),
        row.Source))];

    private static readonly Dictionary<MotorType, TypeBand> ByType = All.ToDictionary(band => band.Type!.Value);

    private static readonly Dictionary<(Phases? Phases, bool? HasRunCapacitor), TypeBand> OfUnknown = (
        from phases in (Phases?[])[null, Phases.Single, Phases.Three]
        from hasRunCapacitor in (bool?[])[null, false, true]
        select (phases, hasRunCapacitor)).ToDictionary(known => known, known => Around(known.phases, known.hasRunCapacitor));

    /// <summary>The bands of a type; null for a type that is not known.</summary>
    public static TypeBand? Of(MotorType? type) => type is { } known ? ByType.GetValueOrDefault(known) : null;

    /// <summary>The bands of a motor's type; of an unknown one, bands that hold those of every type it may be.</summary>
    /// <remarks>An unknown type's torque is taken as an induction motor's: an electronically commutated one says so on its plate.</remarks>
    public static TypeBand Likely(MotorType? type, Phases? phases, bool? hasRunCapacitor) => Of(type) ?? OfUnknown[(phases, hasRunCapacitor)];

    /// <summary>The same for a whole plate.</summary>
    public static TypeBand Likely(MotorSpec motor) => Likely(motor.Type, motor.Phase, MotorKinds.HasRunCapacitor(motor));

    private static TypeBand Around(Phases? phases, bool? hasRunCapacitor)
    {
        var possible = All.Where(band => MotorKinds.MayBe(band.Type!.Value, phases, hasRunCapacitor)).ToList();
        if (possible.Count == 0) possible = [.. All];
        var induction = possible.Where(band => band.Type != MotorType.ElectronicallyCommutated).ToList();
        return new(
            null,
            Around(possible, band => band.Efficiency),
            Around(possible, band => band.PowerFactor),
            Around(induction.Count > 0 ? induction : possible, band => band.Breakdown),
            possible[0].Source with { Status = SourceStatus.Memory });
    }

    private static Band Around(List<TypeBand> bands, Func<TypeBand, Band> of) => new(bands.Min(band => of(band).Low), bands.Max(band => of(band).High));

    private static Band Span(PublishedRow row, string figure) => new(row.Needed($"{figure}_low"), row.Needed($"{figure}_high"));
}
