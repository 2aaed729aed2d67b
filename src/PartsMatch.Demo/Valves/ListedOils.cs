using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Valves;

namespace PartsMatch.Demo.Valves;

/// <summary>The oils that a valve's maker lists with the refrigerants.</summary>
internal static class ListedOils
{
    /// <summary>What goes with the refrigerants (practice); cheap makers say nothing of oils.</summary>
    public static Choices<Oil>? Of(Maker maker, RefrigerantList refrigerants) => maker.PriceFactor < 0.95 ? null : new(With(refrigerants));

    private static Oil[] With(RefrigerantList refrigerants) => refrigerants[0].Name switch
    {
        _ when refrigerants.Any(one => one.Name == "R-717") => [Oil.Mineral, Oil.Polyalphaolefin],
        "R-744" => [Oil.Polyolester, Oil.PolyalkyleneGlycol],
        "R-410A" => [Oil.Polyolester, Oil.PolyvinylEther],
        _ when refrigerants.Any(one => one.Name == "R-410A") => [Oil.Mineral, Oil.Alkylbenzene, Oil.Polyolester, Oil.PolyvinylEther],
        _ => [Oil.Mineral, Oil.Alkylbenzene, Oil.Polyolester],
    };
}
