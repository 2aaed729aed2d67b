using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Contactors;

/// <summary>A coil, as facets hold it: one or several volts, and its frequencies.</summary>
/// <param name="Volts">Its volts; empty when not known.</param>
/// <param name="Hertz">Its frequencies, Hz; empty when not known.</param>
/// <param name="Number">Its part number; empty for the coil that the part comes with.</param>
public readonly record struct CoilFigures(Sequence<VoltSpan> Volts, Sequence<double> Hertz, Sequence<char> Number)
{
    /// <summary>The coil that a part comes with.</summary>
    internal static CoilFigures Own(ContactorSpec part) => new(Spans(part.CoilVolts), Figures(part.CoilFrequency), []);

    /// <summary>A coil that its body takes.</summary>
    internal static CoilFigures Of(CoilOffer coil) => new([new(Rounded.To(coil.Volts.First.Volts, 1), Rounded.To(coil.Volts.Last.Volts, 1))], Figures(coil.Frequency), Sequence.Of<char>(coil.Number));

    /// <inheritdoc/>
    public override string ToString() => $"{string.Join('/', Volts)} V{(Hertz.Count > 0 ? FormattableString.Invariant($" {string.Join('/', Hertz.Select(hertz => FormattableString.Invariant($"{hertz:0.##}")))} Hz") : string.Empty)}";

    private static Sequence<VoltSpan> Spans(Taps? volts) => volts is null ? [] : [.. volts.Select(one => new VoltSpan(Rounded.To(one.First.Volts, 1), Rounded.To(one.Last.Volts, 1)))];

    private static Sequence<double> Figures(Figures<Frequency>? frequency) => frequency is null ? [] : [.. frequency.Select(one => Rounded.To(one.Hertz, 2))];
}

/// <summary>Volts of a coil: one figure or a span, V.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The higher end.</param>
public readonly record struct VoltSpan(double Low, double High)
{
    /// <summary>A coil pulls in and holds from this share of its volts (IEC 60947-4-1, from memory).</summary>
    public const double LeastShare = 0.85;

    /// <summary>And bears this share of them.</summary>
    public const double MostShare = 1.1;

    /// <summary>The volts that it works at.</summary>
    internal Band Window => new(LeastShare * Low, MostShare * High);

    /// <inheritdoc/>
    public override string ToString() => Low.Equals(High) ? FormattableString.Invariant($"{Low:0.#}") : FormattableString.Invariant($"{Low:0.#}-{High:0.#}");
}

/// <summary>What is known of the control circuit that a coil hangs on.</summary>
/// <param name="Volts">What was measured; null when nothing was.</param>
/// <param name="Old">The old coil's volts, of which one is there; empty when not known.</param>
/// <param name="Hertz">The frequency; null when not known.</param>
/// <param name="OldHertz">The old coil's frequencies, of which one is there; empty when not known.</param>
internal sealed record ControlCircuit(double? Volts, Sequence<VoltSpan> Old, double? Hertz, Sequence<double> OldHertz)
{
    /// <summary>Up to this share off a coil's frequency (practice).</summary>
    private const double HertzOff = 0.05;

    /// <summary>Reads it of a need.</summary>
    public static ControlCircuit Of(ContactorNeed need) => need.Once(static need =>
    {
        var old = CoilFigures.Own(need.Plate);
        return new ControlCircuit(Rounded.Volts(need.Site.ControlVolts), old.Volts, Rounded.Hertz(need.Site.ControlFrequency), old.Hertz);
    });

    /// <summary>Whether a coil works at its volts; null when that is not known.</summary>
    public bool? Feeds(CoilFigures coil)
    {
        if (coil.Volts.Count == 0) return null;
        if (Volts is { } volts) return coil.Volts.Any(span => span.Window.Holds(volts));
        if (Old.Count == 0) return null;

        // Whichever of its marked volts the old coil was fed, this one takes it; or takes none of all that the old one could be fed.
        if (Old.All(old => coil.Volts.Any(span => span.Window.Holds(old.Low) && span.Window.Holds(old.High)))) return true;
        return Old.Any(old => coil.Volts.Any(span => span.Window.Shared(old.Window) is not null)) ? null : false;
    }

    /// <summary>Whether a coil is for its frequency; null when that is not known.</summary>
    public bool? Suits(CoilFigures coil)
    {
        if (coil.Hertz.Count == 0) return null;
        if (Hertz is { } known) return IsFor(coil, known);
        if (OldHertz.Count == 0) return null;
        if (OldHertz.All(old => IsFor(coil, old))) return true;
        return OldHertz.Any(old => IsFor(coil, old)) ? null : false;
    }

    private static bool IsFor(CoilFigures coil, double hertz) => coil.Hertz.Any(one => Within.AtMost(Math.Abs(hertz - one), HertzOff * one));
}
