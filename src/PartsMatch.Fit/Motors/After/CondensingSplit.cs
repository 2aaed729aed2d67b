using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Physics;
using PartsMatch.Fit.Quantities;
using UnitsNet;

namespace PartsMatch.Fit.Motors.After;

/// <summary>Is the condensing split, condensing saturation less entering air, as it was or was designed?</summary>
/// <remarks>
/// Looked into above 25 % over the design or earlier split. 30 °F (17 K) is the ceiling of any: without a design it is the limit, with one it only leaves the answer open. With glide bubble, mean
/// and dew are shown, and where they straddle the limit nothing is said. A head-pressure control holds the pressure up in the cold: while entering air and design split lie below its setting, no split
/// means anything. One indicator among several, and never a way to charge.
/// </remarks>
public sealed class CondensingSplit() : ReadingRule<SwapCase>("Condensing split", MotorReadingSources.Split)
{
    /// <summary>30 °F in K.</summary>
    internal const double CeilingKelvin = 30 / 1.8;

    /// <summary>10 °F in K: no refrigeration condenser is designed for less (practice).</summary>
    private const double LeastDesignKelvin = 10 / 1.8;

    /// <inheritdoc/>
    public override Ruling Judge(SwapCase one)
    {
        var readings = one.Readings;
        if (EvaporatorAfter.IsWaitedFor(readings)) return Ruling.NotApplicable($"The evaporator fans do not run yet, as on a warm box they do not by design: until they do, the split means nothing.");
        if (readings is { EnteringAir: null, CondensingPressure: null }) return Ruling.CantTell($"The split of an air-cooled condenser was not measured: condensing pressure, entering air, refrigerant.");
        if (readings.EnteringAir is not { } air) return Ruling.CantTell($"The air entering the condenser was not measured.");
        if (readings.CondensingPressure is not { } pressure) return Ruling.CantTell($"The condensing pressure was not measured.");
        if (readings.Refrigerant is not { } refrigerant) return Ruling.CantTell($"The refrigerant is not known.");
        if (one.At(pressure) is not { } saturation) return Ruling.CantTell($"{(refrigerant.HasCurve ? "The pressure lies outside what is known of" : "No saturation is known here of")} {refrigerant.Name}.");
        if (ByControl(one, air) is { } held) return held;
        return saturation.Dew < air
            ? Ruling.CantTell($"{refrigerant.Name} at this pressure would condense at {Degrees.Of(saturation.Dew)}, below the entering air of {Degrees.Of(air)}: gauge, refrigerant or thermometer is wrong, or the unit does not run.")
            : Against(one, SplitFigures.Of(one, air, saturation));
    }

    /// <summary>The figures that are judged; null where no split can be told, or where a head-pressure control makes it mean nothing.</summary>
    internal static SplitFigures? Figures(SwapCase one) =>
        one.Readings.EnteringAir is { } air && one.At(one.Readings.CondensingPressure) is { } saturation && saturation.Dew >= air && ByControl(one, air) is null && !EvaporatorAfter.IsWaitedFor(one.Readings)
            ? SplitFigures.Of(one, air, saturation) : null;

    /// <summary>What a head-pressure control makes of the split; null when it leaves it alone.</summary>
    private static Ruling? ByControl(SwapCase one, Temperature air)
    {
        if (one.Readings.HeadControlSetting is not { } setting) return null;
        if (one.At(setting) is not { } held) return Ruling.CantTell($"The head-pressure control's setting lies outside what is known of the refrigerant.");
        var design = one.Readings.DesignSplit?.Kelvins;
        var (most, least) = (air.Kelvins + (design ?? CeilingKelvin), air.Kelvins + (design ?? LeastDesignKelvin));
        FormattableString limit = $"entering air above {Degrees.Of(Temperature.FromKelvins(held.Dew.Kelvins - (design ?? LeastDesignKelvin)))}";
        return most < held.Bubble.Kelvins
            ? Ruling.NotApplicable($"The head-pressure control holds {Degrees.Of(held.Bubble)}, and entering air of {Degrees.Of(air)} with {(design is null ? "any" : "the design")} split lies below it: a large split is by design in the cold.", limit)
            : least < held.Dew.Kelvins
                ? Ruling.CantTell($"The head-pressure control may hold the pressure up at {Degrees.Of(air)} entering air: its setting condenses at {Degrees.Of(held.Bubble)} to {Degrees.Of(held.Dew)}. Measure on a warmer day.", limit)
                : null;
    }

    private static Ruling Against(SwapCase one, SplitFigures figures)
    {
        var (bubble, mean, dew, design, most) = figures;
        FormattableString limit = $"at most {Degrees.Apart(most)}";
        var measured = (figures.Glides ? $"The split is {Degrees.Apart(bubble)} at bubble, {Degrees.Apart(mean)} at mean and {Degrees.Apart(dew)} at dew" : $"The split is {Degrees.Apart(mean)}") + (one.AltitudeKnown ? string.Empty : ", taken at sea level");
        var against = design is { } known ? $"{Degrees.Apart(known)} by design and 25 % more, {Degrees.Apart(most)}," : $"the ceiling of any condenser, {Degrees.Apart(most)},";
        if (!Within.AtMost(bubble, most)) return Ruling.Bad($"{measured}: {against} is the limit.{(one.Readings.HeadControlSetting is null ? " Where a head-pressure control holds the pressure up, give its setting." : string.Empty)}", limit);
        if (!Within.AtMost(dew, most)) return Ruling.CantTell($"{measured}: they straddle the limit, {against} so it cannot be told.", limit);
        return Within.AtMost(dew, CeilingKelvin)
            ? Ruling.Good($"{measured}; {against} is the limit.", limit)
            : Ruling.CantTell($"{measured}: within 25 % of the design, and over {Degrees.Apart(CeilingKelvin)}, which is the ceiling of most: is the design split right?", limit);
    }
}

/// <summary>A condensing split and what it is held against; K.</summary>
/// <param name="Bubble">Bubble temperature less entering air.</param>
/// <param name="Mean">Mean temperature less entering air.</param>
/// <param name="Dew">Dew temperature less entering air.</param>
/// <param name="Design">The design or earlier split; null when not given.</param>
/// <param name="Most">The limit.</param>
internal readonly record struct SplitFigures(double Bubble, double Mean, double Dew, double? Design, double Most)
{
    /// <summary>Over the design split.</summary>
    private const double MostOfDesign = 1.25;

    /// <summary>Less glide than this is not told apart by gauges.</summary>
    private const double LeastGlide = 0.05;

    /// <summary>Whether bubble and dew lie apart.</summary>
    public bool Glides => Dew - Bubble >= LeastGlide;

    /// <summary>What they are for a case.</summary>
    public static SplitFigures Of(SwapCase one, Temperature air, SaturationTemperatures saturation)
    {
        var design = one.Readings.DesignSplit?.Kelvins;
        return new(saturation.Bubble.Kelvins - air.Kelvins, saturation.Mean.Kelvins - air.Kelvins, saturation.Dew.Kelvins - air.Kelvins, design, design * MostOfDesign ?? CondensingSplit.CeilingKelvin);
    }
}
