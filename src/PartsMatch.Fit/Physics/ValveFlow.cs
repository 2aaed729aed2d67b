namespace PartsMatch.Fit.Physics;

/// <summary>Flow through a valve by its flow coefficient: turbulent forms of IEC 60534-2-1 without fittings, liquid with choking, gas with the expansion factor.</summary>
/// <remarks>
/// Kv is the flow of water in m³/h at a drop of 1 bar. Constants for m³/h, kg/h and kPa are those of the standard's table 1: N1 = 0.1, N6 = 3.16; water of 15 °C, 999.1 kg/m³, is the reference.
/// Pressures are absolute. Refrigerant valves are small and their flow turbulent; laminar flow and fittings are left out.
/// </remarks>
public static class ValveFlow
{
    /// <summary>Liquid pressure recovery of a globe-like valve, and so of a solenoid valve's seat (IEC 60534-2-1 typical values; taken where the maker gives none: practice).</summary>
    public const double UsualRecovery = 0.9;

    /// <summary>Pressure drop ratio at choking of a globe-like valve (IEC 60534-2-1 typical values; taken where the maker gives none: practice).</summary>
    public const double UsualGasRatio = 0.7;

    private const double N1 = 0.1;
    private const double N6 = 3.16;
    private const double WaterDensity = 999.1;

    /// <summary>F_F, the liquid's critical pressure ratio factor: 0.96 − 0.28·√(pv/pc).</summary>
    /// <param name="vapourPressure">Of the liquid at its temperature, any unit.</param>
    /// <param name="criticalPressure">In the same unit.</param>
    public static double CriticalRatio(double vapourPressure, double criticalPressure) => 0.96 - (0.28 * Math.Sqrt(vapourPressure / criticalPressure));

    /// <summary>The drop from which on a liquid's flow grows no more: F_L²·(p1 − F_F·pv).</summary>
    /// <param name="inlet">Absolute pressure before the valve, kPa.</param>
    /// <param name="vapourPressure">Of the liquid at its temperature, kPa.</param>
    /// <param name="criticalPressure">kPa.</param>
    /// <param name="recovery">F_L, 0 to 1.</param>
    public static double ChokingDrop(double inlet, double vapourPressure, double criticalPressure, double recovery = UsualRecovery) =>
        recovery * recovery * (inlet - (CriticalRatio(vapourPressure, criticalPressure) * vapourPressure));

    /// <summary>Flow coefficient that a liquid's flow asks for.</summary>
    /// <param name="cubicMetresAnHour">Flow, m³/h; above 0.</param>
    /// <param name="density">kg/m³; above 0.</param>
    /// <param name="drop">Pressure before less behind the valve, kPa; above 0.</param>
    /// <param name="choking">The drop at which it chokes, of <see cref="ChokingDrop"/>, kPa; infinite where it cannot.</param>
    /// <returns>Kv, m³/h.</returns>
    public static double LiquidKv(double cubicMetresAnHour, double density, double drop, double choking = double.PositiveInfinity) =>
        cubicMetresAnHour / N1 * Math.Sqrt(density / WaterDensity / Math.Min(drop, choking));

    /// <summary>The drop that a liquid's flow makes at a valve that does not choke.</summary>
    /// <param name="cubicMetresAnHour">Flow, m³/h.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="kv">Flow coefficient Kv, m³/h; above 0.</param>
    /// <returns>kPa.</returns>
    public static double LiquidDrop(double cubicMetresAnHour, double density, double kv) =>
        density / WaterDensity * Math.Pow(cubicMetresAnHour / (N1 * kv), 2);

    /// <summary>Flow coefficient that a gas's flow asks for.</summary>
    /// <param name="kilogramsAnHour">Flow, kg/h; above 0.</param>
    /// <param name="inlet">Absolute pressure before the valve, kPa.</param>
    /// <param name="drop">Pressure before less behind the valve, kPa; above 0, below the inlet pressure.</param>
    /// <param name="density">Before the valve, kg/m³.</param>
    /// <param name="heatRatio">Ratio of specific heats γ.</param>
    /// <param name="gasRatio">x_T, the pressure drop ratio at choking with air.</param>
    /// <returns>Kv, m³/h.</returns>
    public static double GasKv(double kilogramsAnHour, double inlet, double drop, double density, double heatRatio, double gasRatio = UsualGasRatio)
    {
        var (x, expansion) = Expansion(drop / inlet, heatRatio, gasRatio);
        return kilogramsAnHour / (N6 * expansion * Math.Sqrt(x * inlet * density));
    }

    /// <summary>The drop from which on a gas's flow grows no more: F_γ·x_T of the inlet pressure.</summary>
    /// <param name="inlet">Absolute pressure before the valve, kPa.</param>
    /// <param name="heatRatio">Ratio of specific heats γ.</param>
    /// <param name="gasRatio">x_T, the pressure drop ratio at choking with air.</param>
    public static double GasChokingDrop(double inlet, double heatRatio, double gasRatio = UsualGasRatio) => Math.Min(1, heatRatio / 1.4 * gasRatio) * inlet;

    /// <summary>The drop that a gas's flow makes at a valve: the one at which its flow coefficient is just what the flow asks for.</summary>
    /// <param name="kilogramsAnHour">Flow, kg/h.</param>
    /// <param name="inlet">Absolute pressure before the valve, kPa.</param>
    /// <param name="density">Before the valve, kg/m³.</param>
    /// <param name="kv">Flow coefficient Kv, m³/h; above 0.</param>
    /// <param name="heatRatio">Ratio of specific heats γ.</param>
    /// <param name="gasRatio">x_T, the pressure drop ratio at choking with air.</param>
    /// <returns>kPa; null when the valve chokes before it passes the flow.</returns>
    public static double? GasDrop(double kilogramsAnHour, double inlet, double density, double kv, double heatRatio, double gasRatio = UsualGasRatio)
    {
        var most = GasChokingDrop(inlet, heatRatio, gasRatio);
        if (GasKv(kilogramsAnHour, inlet, most, density, heatRatio, gasRatio) > kv) return null;
        var (low, high) = (0.0, most);

        // What is asked for falls all the way to choking, so halving finds the one drop.
        for (var halving = 0; halving < 60; halving++)
        {
            var middle = (low + high) / 2;
            if (GasKv(kilogramsAnHour, inlet, middle, density, heatRatio, gasRatio) > kv) low = middle;
            else high = middle;
        }

        return (low + high) / 2;
    }

    /// <summary>The pressure drop ratio that counts, and the expansion factor Y = 1 − x/(3·F_γ·x_T), 2/3 once it chokes.</summary>
    private static (double Ratio, double Expansion) Expansion(double ratio, double heatRatio, double gasRatio)
    {
        var choking = heatRatio / 1.4 * gasRatio;
        var counted = Math.Min(ratio, choking);
        return (counted, 1 - (counted / (3 * choking)));
    }
}
