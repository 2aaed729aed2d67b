using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Valves;

/// <summary>What is read of a valve's ways.</summary>
/// <param name="Both">Whether it may be flowed through both ways; null where not given.</param>
public readonly record struct WaysFacet(bool? Both);

/// <summary>Does a valve hold both ways where the flow reverses?</summary>
internal static class ValveWays
{
    /// <summary>A one-way valve in a reversing line fails. Where nobody said anything of it, only an old valve for both ways asks for the same again.</summary>
    /// <param name="facet">The part's.</param>
    /// <param name="reverses">Whether the flow reverses there; null where not known.</param>
    /// <param name="old">The old one's; null where not known.</param>
    public static Finding Judge(WaysFacet facet, bool? reverses, bool? old) => (reverses, facet.Both) switch
    {
        (_, true) => Finding.Meets($"It may be flowed through both ways."),
        (false, _) => Finding.Meets($"Refrigerant flows through it one way."),
        (true, false) => Finding.Fails($"The flow reverses there, and this valve is for one way only."),
        (true, null) => Finding.Unknown(Side.Part, "bothWays", $"The flow reverses there; whether the valve is for both ways is not given."),
        (null, _) when old == true => Finding.Unknown(Side.Site, "flowReverses", $"The old valve was for both ways, this one is not said to be; whether the flow reverses there is not known."),
        _ => Finding.Meets($"Nothing says that the flow reverses there."),
    };
}
