using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.PressureControls;

/// <summary>Gauge pressures from one to another, or a single one: 100 to 400 psi, -0.3 to 7 bar, 20 psi.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The higher end; the same again for a single pressure.</param>
public sealed record PressureSpan(Pressure Low, Pressure High) : IHaveTextForm<PressureSpan>
{
    /// <inheritdoc/>
    public static TextForm<PressureSpan> Form { get; } = new SpanForm<PressureSpan, Pressure>(QuantityForms.GaugePressure, "pressure", "gauge pressures", "100 to 400 psi", (low, high) => new(low, high), span => (span.Low, span.High));

    /// <summary>Both ends in kPa, rounded as facets are.</summary>
    internal Band Kilopascals => new(Rounded.To(Low.Kilopascals, 1), Rounded.To(High.Kilopascals, 1));
}

/// <summary>A gauge pressure in a sentence, in psi and kPa; formed only when the sentence is shown.</summary>
/// <param name="Kilopascals">The pressure, as a facet holds it.</param>
internal readonly record struct ShownPressure(double Kilopascals)
{
    private const double OfOnePsi = 6.894757;

    /// <summary>10 psi (69 kPa).</summary>
    public override string ToString() => FormattableString.Invariant($"{Kilopascals / OfOnePsi:0.#;−0.#;0} psi ({Kilopascals:0;−0;0} kPa)");
}
