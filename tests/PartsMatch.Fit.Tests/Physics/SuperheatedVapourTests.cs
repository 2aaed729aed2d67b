using PartsMatch.Fit.Physics;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Physics;

/// <summary>
/// The band of superheated vapour beside a second equation of state: Peng and Robinson, Ind. Eng. Chem. Fundam. 15 (1976) 59-64 (from memory), with each refrigerant's critical temperature as published beside its curve and its acentric factor by definition from that curve.
/// Such an equation is a few percent off in a density, and less in how much it thins from saturation on at one pressure: only that is taken of it, and beside a table it is within 1 % at suction and 3 % in hot gas.
/// </summary>
[Trait("Source", "refrigerant-properties.csv")]
public sealed class SuperheatedVapourTests
{
    private const double ZeroCelsius = 273.15;

    [Theory]
    [InlineData("R-134a", 374.21)]
    [InlineData("R-22", 369.295)]
    [InlineData("R-290", 369.89)]
    [InlineData("R-404A", 345.27)]
    [InlineData("R-507A", 343.765)]
    [InlineData("R-407C", 359.345)]
    [InlineData("R-410A", 344.494)]
    [InlineData("R-448A", 356.8)]
    [InlineData("R-449A", 354.7)]
    public void It_thins_inside_its_band_as_a_second_equation_of_state_has_it(string name, double criticalKelvin)
    {
        var refrigerant = Refrigerants.Find(name)!;
        for (var dew = -40; dew <= 60; dew += 5)
        {
            var pressure = Dew(refrigerant, dew + ZeroCelsius);
            var saturated = Compressibility(refrigerant, criticalKelvin, dew + ZeroCelsius, pressure) * (dew + ZeroCelsius);
            for (var superheat = 5; superheat <= RefrigerantFlow.MostSuperheat; superheat += 5)
            {
                var kelvin = dew + superheat + ZeroCelsius;
                var density = refrigerant.VapourDensity(dew)!.Value * saturated / (Compressibility(refrigerant, criticalKelvin, kelvin, pressure) * kelvin);
                var band = RefrigerantFlow.VapourDensity(refrigerant, dew, dew + superheat)!.Value;
                band.Holds(density).ShouldBeTrue(FormattableString.Invariant($"{name} {superheat} K over {dew} °C: {density:0.000} in {band.Low:0.000} to {band.High:0.000} kg/m³"));
            }
        }
    }

    /// <summary>The second equation itself beside a property table of R-134a (from memory).</summary>
    [Theory]
    [InlineData(0, 20, 13.2, 0.01)]
    [InlineData(39.37, 70, 41.22, 0.03)]
    [InlineData(52.40, 90, 55.79, 0.03)]
    public void The_second_equation_thins_as_a_table_does(double dew, double celsius, double density, double within)
    {
        var refrigerant = Refrigerants.Find("R-134a")!;
        var pressure = Dew(refrigerant, dew + ZeroCelsius);
        double Thinned(double at) => Compressibility(refrigerant, 374.21, at + ZeroCelsius, pressure) * (at + ZeroCelsius);
        (refrigerant.VapourDensity(dew)!.Value * Thinned(dew) / Thinned(celsius)).ShouldBe(density, within * density);
    }

    /// <summary>Compressibility of vapour: the largest root of the cubic, by Newton from above.</summary>
    private static double Compressibility(Refrigerant refrigerant, double criticalKelvin, double kelvin, double kilopascals)
    {
        var critical = refrigerant.CriticalPressure!.Value.Kilopascals;
        var acentric = -Math.Log10(Dew(refrigerant, 0.7 * criticalKelvin) / critical) - 1;
        var slope = 0.37464 + (1.54226 * acentric) - (0.26992 * acentric * acentric);
        var alpha = Math.Pow(1 + (slope * (1 - Math.Sqrt(kelvin / criticalKelvin))), 2);
        var (reduced, warmth) = (kilopascals / critical, kelvin / criticalKelvin);
        var (a, b) = (0.45724 * alpha * reduced / (warmth * warmth), 0.07780 * reduced / warmth);
        var z = 1.0;
        for (var step = 0; step < 50; step++)
        {
            var off = (z * z * z) - ((1 - b) * z * z) + ((a - (3 * b * b) - (2 * b)) * z) - ((a * b) - (b * b) - (b * b * b));
            z -= off / ((3 * z * z) - (2 * (1 - b) * z) + (a - (3 * b * b) - (2 * b)));
        }

        return z;
    }

    private static double Dew(Refrigerant refrigerant, double kelvin) => refrigerant.DewPressure(Temperature.FromKelvins(kelvin))!.Value.Kilopascals;
}
