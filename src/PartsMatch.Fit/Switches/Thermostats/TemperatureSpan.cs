using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Switches.Thermostats;

/// <summary>Temperatures from one to another: -30 to 90 °F, -35 to 10 °C.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The higher end; the same again for a single temperature.</param>
public sealed record TemperatureSpan(Temperature Low, Temperature High) : IHaveTextForm<TemperatureSpan>
{
    /// <inheritdoc/>
    public static TextForm<TemperatureSpan> Form { get; } = new SpanForm<TemperatureSpan, Temperature>(QuantityForms.Temperature, "temperature", "temperatures", "-30 to 90 °F", (low, high) => new(low, high), span => (span.Low, span.High));

    /// <summary>Both ends in °C, rounded as facets are.</summary>
    internal Band Celsius => new(Degrees.In(Low), Degrees.In(High));
}

/// <summary>Differences of temperature from one to another, or a single one: 3.5 to 36 °F, 2 to 20 K.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The higher end; the same again for a single difference.</param>
public sealed record TemperatureDifferenceSpan(TemperatureDelta Low, TemperatureDelta High) : IHaveTextForm<TemperatureDifferenceSpan>
{
    /// <inheritdoc/>
    public static TextForm<TemperatureDifferenceSpan> Form { get; } = new SpanForm<TemperatureDifferenceSpan, TemperatureDelta>(QuantityForms.TemperatureDifference, "difference", "temperature differences", "3.5 to 36 °F", (low, high) => new(low, high), span => (span.Low, span.High));

    /// <summary>Whether it is one figure.</summary>
    internal bool IsOne => Low.Equals(High, TemperatureDelta.Zero);

    /// <summary>Both ends in K, rounded as facets are.</summary>
    internal Band Kelvins => new(Rounded.To(Low.Kelvins, 2), Rounded.To(High.Kelvins, 2));
}
