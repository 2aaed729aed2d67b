using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;
using UnitsNet;

namespace PartsMatch.Demo.Motors;

/// <summary>How high a motor carries its rating: European plates mostly say 1000 m, American entries rarely say anything.</summary>
public static class MotorAltitudes
{
    /// <summary>The entry with what its maker prints of the altitude, if anything.</summary>
    public static MotorSpec Print(MotorSpec spec, Draw draw) => spec with { AltitudeMost = spec.Standard == PlateStandard.Iec ? European(draw) : American(draw) };

    private static Length? European(Draw draw) => draw.Of<Length?>((null, 40), (Length.FromMeters(1000), 52), (Length.FromMeters(2000), 8));

    private static Length? American(Draw draw) => draw.Of<Length?>((null, 88), (Length.FromFeet(3300), 8), (Length.FromFeet(6600), 3), (Length.FromFeet(9000), 1));
}
