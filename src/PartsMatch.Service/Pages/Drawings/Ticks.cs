using System.Globalization;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Service.Pages.Drawings;

/// <summary>A tick of an axis.</summary>
internal readonly record struct Tick(double Value, string Text);

/// <summary>Round numbers along an axis.</summary>
internal static class Ticks
{
    private static readonly double[] Leading = [1, 2, 5, 10];

    /// <summary>Ticks 1, 2 or 5 times a power of ten apart, as many as there may be at most, none outside the range.</summary>
    public static IReadOnlyList<Tick> Of(Band range, int most)
    {
        var span = range.High - range.Low;
        if (!(span > 0) || !double.IsFinite(span)) return [new(range.Low, Text(range.Low, 2))];
        var power = Math.Floor(Math.Log10(span / most));
        var step = Leading.Select(leading => leading * Math.Pow(10, power)).First(one => Count(range, one) <= most);
        var decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(step) - 1e-9), 0, 10);
        return [.. Enumerable.Range(0, Count(range, step)).Select(index => (First(range, step) + index) * step).Select(value => new Tick(Math.Round(value, decimals), Text(value, decimals)))];
    }

    private static double First(Band range, double step) => Math.Ceiling((range.Low / step) - 1e-9);

    private static int Count(Band range, double step) => (int)(Math.Floor((range.High / step) + 1e-9) - First(range, step)) + 1;

    private static string Text(double value, int decimals) => (Math.Round(value, decimals) + 0.0).ToString($"F{decimals}", CultureInfo.InvariantCulture);
}
