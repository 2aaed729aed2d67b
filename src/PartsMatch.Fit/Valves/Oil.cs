using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves;

/// <summary>The oil that goes round with a refrigerant. A valve's seals and seat swell or shrink in one that they are not made for.</summary>
public enum Oil
{
    /// <summary>Mineral oil.</summary>
    [Words("mineral oil", "MINERAL", "MO")]
    Mineral,

    /// <summary>Alkylbenzene.</summary>
    [Words("alkylbenzene", "AB", "AB OIL")]
    Alkylbenzene,

    /// <summary>Polyolester.</summary>
    [Words("polyolester", "POE", "POE OIL", "ESTER OIL")]
    Polyolester,

    /// <summary>Polyvinylether.</summary>
    [Words("polyvinylether", "PVE", "PVE OIL")]
    PolyvinylEther,

    /// <summary>Polyalkylene glycol.</summary>
    [Words("polyalkylene glycol", "PAG", "PAG OIL")]
    PolyalkyleneGlycol,

    /// <summary>Polyalphaolefin, mostly with ammonia.</summary>
    [Words("polyalphaolefin", "PAO", "PAO OIL")]
    Polyalphaolefin,
}
