using System.Collections.Concurrent;
using UnitsNet;

namespace PartsMatch.Fit.Quantities;

/// <summary>The text form of every type that a field can have: one a type.</summary>
public static class TextForms
{
    private static readonly Dictionary<Type, TextForm> OfLibraryTypes = new TextForm[]
    {
        QuantityForms.Power, QuantityForms.Volts, QuantityForms.Amps, QuantityForms.Hertz, QuantityForms.Speed,
        QuantityForms.Capacitance, QuantityForms.Length, QuantityForms.Temperature, QuantityForms.Angle, QuantityForms.Percent,
        QuantityForms.TemperatureDifference, QuantityForms.GaugePressure, QuantityForms.VoltAmperes,
        new MeasuredForm<ElectricPotential>(QuantityForms.MeteredVolts, "460/467/450 V"),
        new MeasuredForm<ElectricCurrent>(QuantityForms.MeteredAmps, "2.1/2.2/2.1 A"),
        new MeasuredForm<ElectricCapacitance>(QuantityForms.MeteredCapacitance, "4.9 µF"),
        new FiguresForm<Power>(QuantityForms.Power, "3/4-1/3 hp"),
        new FiguresForm<ElectricPotential>(QuantityForms.Volts, "460/467/450 V"),
        new FiguresForm<ElectricCurrent>(QuantityForms.Amps, "40/40/32 A"),
        new FiguresForm<Frequency>(QuantityForms.Hertz, "50/60 Hz"),
        new FiguresForm<RotationalSpeed>(QuantityForms.Speed, "1725/1140 rpm"),
        new SpreadsForm<ElectricPotential>(QuantityForms.Volts, "115/208-230 V", widestRatio: 1.25),
        new SpreadsForm<ElectricCurrent>(QuantityForms.Amps, "7.4/3.9-3.7 A", widestRatio: null),
        new CountForm(), new FactorForm(), new YesNoForm(), new WordingForm(),
    }.ToDictionary(form => form.ValueType);

    private static readonly ConcurrentDictionary<Type, TextForm> Known = new(OfLibraryTypes);

    /// <summary>The text form of a type.</summary>
    /// <exception cref="InvalidOperationException">The type has none: a mistake of ours, found when a shape is made at start.</exception>
    public static TextForm Of(Type type) => Known.GetOrAdd(type, Make);

    /// <summary>The text form of a type.</summary>
    public static TextForm<T> Of<T>()
        where T : notnull => (TextForm<T>)Of(typeof(T));

    private static TextForm Make(Type type)
    {
        if (type.IsEnum) return (TextForm)Activator.CreateInstance(typeof(EnumForm<>).MakeGenericType(type))!;
        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(Choices<>)) return (TextForm)Activator.CreateInstance(typeof(ChoicesForm<>).MakeGenericType(type.GenericTypeArguments))!;
        return type.GetProperty("Form")?.GetValue(null) as TextForm ?? throw new InvalidOperationException($"{type.Name} has no text form.");
    }
}
