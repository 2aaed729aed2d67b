using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.ExpansionValves;

/// <summary>What lets the pressures come together while the compressor is off.</summary>
public enum OffTimeWay
{
    /// <summary>A bleed port past its seat.</summary>
    [Words("bleed port", "BLEED", "BLEED TYPE")]
    BleedPort,

    /// <summary>Its charge or a passage that opens, quickly.</summary>
    [Words("quick equalising", "QUICK EQUALIZING", "RAPID EQUALIZING", "OFF-TIME EQUALIZING", "OFF-CYCLE EQUALIZING")]
    Quick,

    /// <summary>Nothing: it holds tight.</summary>
    [Words("none", "NO BLEED", "NO BLEED PORT", "TIGHT CLOSING")]
    None,
}
