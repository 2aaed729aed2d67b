using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.SolenoidValves;

/// <summary>What flows through a valve at its site, as far as it is known.</summary>
/// <param name="IsLiquid">Whether it is liquid.</param>
/// <param name="KilogramsAnHour">At the greatest load, kg/h.</param>
/// <param name="Density">Before the valve, kg/m³; a band of gas, and a wide one of gas whose temperature was not read: that may be saturated, or superheated as far as the approximation goes.</param>
/// <param name="Inlet">Absolute pressure before the valve, kPa; null where it is not known, as nothing then says when liquid flashes.</param>
/// <param name="Choking">Drop from which on it flows no faster, kPa; infinite where the inlet pressure is not known.</param>
/// <param name="Allowed">Drop that may be lost there, kPa; null where not known, infinite where any may.</param>
/// <param name="LeastShare">Least load over the greatest; null where not known.</param>
internal sealed record ServedFlow(bool IsLiquid, double KilogramsAnHour, Band Density, double? Inlet, double Choking, double? Allowed, double? LeastShare)
{
    /// <summary>Ratio of specific heats of refrigerant vapour (practice: 1.1 to 1.2 for those in use). It enters through the expansion factor alone, and so hardly where little pressure is lost.</summary>
    private const double HeatRatio = 1.15;

    private const double ZeroCelsius = 273.15;

    /// <summary>A suction valve may cost as much pressure as this much of saturation, K: 2 °F (practice).</summary>
    private const double SuctionKelvins = 2 / 1.8;

    /// <summary>The drop that the flow makes at a valve; its high end is infinite where the valve may choke before.</summary>
    /// <param name="kv">Its Kv, m³/h.</param>
    /// <param name="share">Of the greatest load.</param>
    /// <returns>kPa; null when the valve chokes before it passes the flow, however dense it is.</returns>
    public Band? DropAt(double kv, double share = 1)
    {
        if (DropAt(kv, share, Density.High) is not { } least) return null;
        return new(least, Density.IsExact ? least : DropAt(kv, share, Density.Low) ?? double.PositiveInfinity);
    }

    private double? DropAt(double kv, double share, double density)
    {
        var flow = KilogramsAnHour * share;
        if (!IsLiquid) return ValveFlow.GasDrop(flow, Inlet!.Value, density, kv, HeatRatio);
        var drop = ValveFlow.LiquidDrop(flow / density, density, kv);
        return Within.AtMost(drop, Choking) ? drop : null;
    }

    /// <summary>What flows at a need's site; null with the name of the field of the site that is missing.</summary>
    public static (ServedFlow? Flow, string Missing) Of(SolenoidNeed need) => need.Once(static need => Work(need.Site));

    private static (ServedFlow? Flow, string Missing) Work(SolenoidValveSite site)
    {
        if (site.Refrigerant is not { HasStates: true, HasCurve: true } refrigerant) return (null, "refrigerant");
        if (site.Line is not { } line) return (null, "line");
        if (site.Load is not { } load) return (null, "load");
        if (Rounded.Celsius(site.EvaporatingAt) is not { } evaporating) return (null, "evaporatingAt");
        double? least = site.LeastLoad is { } leastLoad && leastLoad.Watts <= load.Watts ? leastLoad.Watts / load.Watts : null;
        return line == RefrigerantLine.Liquid ? Liquid(site, refrigerant, load.Watts, evaporating, least) : Gas(site, refrigerant, line, load.Watts, evaporating, least);
    }

    private static (ServedFlow? Flow, string Missing) Liquid(SolenoidValveSite site, Refrigerant refrigerant, double watts, double evaporating, double? least)
    {
        if (Rounded.Celsius(site.TemperatureThere) is not { } there) return (null, "temperatureThere");
        if (RefrigerantFlow.KilogramsAnHour(refrigerant, watts, evaporating, there) is not { } flow || refrigerant.LiquidDensity(there) is not { } density) return (null, "temperatureThere");
        var condensesAt = Rounded.Celsius(site.CondensingAt);
        if (condensesAt is { } most && Within.AtLeast(there, most)) return (null, "temperatureThere");
        if (condensesAt is not { } condensing || Bubble(refrigerant, condensing) is not { } inlet || Bubble(refrigerant, there) is not { } boils)
        {
            return (new(true, flow, Band.Exactly(density), null, double.PositiveInfinity, null, least), string.Empty);
        }

        var choking = ValveFlow.ChokingDrop(inlet, Math.Min(boils, inlet), refrigerant.CriticalPressure!.Value.Kilopascals);
        return (new(true, flow, Band.Exactly(density), inlet, choking, Math.Max(0, inlet - boils), least), string.Empty);
    }

    private static (ServedFlow? Flow, string Missing) Gas(SolenoidValveSite site, Refrigerant refrigerant, RefrigerantLine line, double watts, double evaporating, double? least)
    {
        if (Rounded.Celsius(site.CondensingAt) is not { } condensing) return (null, "condensingAt");
        var dew = line == RefrigerantLine.Suction ? evaporating : condensing;
        if (RefrigerantFlow.KilogramsAnHour(refrigerant, watts, evaporating, condensing) is not { } flow || Dew(refrigerant, dew) is not { } inlet) return (null, "condensingAt");
        if (DensityOf(refrigerant, dew, Rounded.Celsius(site.TemperatureThere)) is not { } density) return (null, "temperatureThere");
        double? allowed = line == RefrigerantLine.HotGas ? double.PositiveInfinity : inlet - Dew(refrigerant, dew - SuctionKelvins);
        return (new(false, flow, density, inlet, ValveFlow.GasChokingDrop(inlet, HeatRatio), allowed, least), string.Empty);
    }

    /// <summary>
    /// The approximation's band at a temperature that was read; from saturated to the most superheat it is for where none was, or none that gas can have there (which is reported).
    /// Hotter gas than that is thinned on by temperature, as an ideal gas is: at its lightest it is one, less the 5 % by which that is not known better, and it departs from one by no more than saturated gas does (practice).
    /// </summary>
    private static Band? DensityOf(Refrigerant refrigerant, double dew, double? read)
    {
        if (read is { } celsius && RefrigerantFlow.VapourDensity(refrigerant, dew, celsius) is { } there) return there;
        if (RefrigerantFlow.VapourDensity(refrigerant, dew, dew) is not { } saturated || RefrigerantFlow.VapourDensity(refrigerant, dew, dew + RefrigerantFlow.MostSuperheat) is not { } hottest) return null;
        return read > dew ? new(Thinned(hottest.Low), Thinned(hottest.High)) : new(hottest.Low, saturated.High);

        double Thinned(double density) => density * (dew + RefrigerantFlow.MostSuperheat + ZeroCelsius) / (read.Value + ZeroCelsius);
    }

    private static double? Bubble(Refrigerant refrigerant, double celsius) => refrigerant.BubblePressure(UnitsNet.Temperature.FromDegreesCelsius(celsius))?.Kilopascals;

    private static double? Dew(Refrigerant refrigerant, double celsius) => refrigerant.DewPressure(UnitsNet.Temperature.FromDegreesCelsius(celsius))?.Kilopascals;
}
