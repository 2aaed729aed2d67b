using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Valves.Pipes;

/// <summary>How a valve is joined to its pipes.</summary>
public enum PipeJoint
{
    /// <summary>Solder or brazing cups over the tube.</summary>
    [Words("solder", "ODF", "ODS", "SWEAT", "BRAZE", "SOLDER CUPS")]
    Solder,

    /// <summary>SAE flare (SAE J513, from memory).</summary>
    [Words("flare", "SAE", "SAE FLARE", "FL")]
    Flare,

    /// <summary>Pipe threads.</summary>
    [Words("pipe thread", "FPT", "NPT", "FNPT", "MPT")]
    PipeThread,

    /// <summary>Butt-welded steel.</summary>
    [Words("butt weld", "BW", "WELD", "WELDED")]
    ButtWeld,
}

/// <summary>What a valve's body is made of.</summary>
public enum BodyMaterial
{
    /// <summary>Brass or bronze.</summary>
    [Words("brass", "BRASS BODY", "BRONZE")]
    Brass,

    /// <summary>Steel or cast iron.</summary>
    [Words("steel", "STEEL BODY", "CAST IRON", "IRON")]
    Steel,

    /// <summary>Stainless steel.</summary>
    [Words("stainless steel", "STAINLESS", "SST", "INOX")]
    Stainless,
}
