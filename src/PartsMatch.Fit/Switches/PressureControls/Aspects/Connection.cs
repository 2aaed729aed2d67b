using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Fit.Switches.PressureControls.Aspects;

/// <summary>What the connection reads of a pressure control.</summary>
/// <param name="Connection">How it is connected; null when not known.</param>
public readonly record struct ConnectionFacet(PressureConnection? Connection);

/// <summary>Does it screw onto what is there?</summary>
/// <remarks>The same connection meets; another one is adapted: a change.</remarks>
public sealed class Connection() : Aspect<PressureControlSpec, PressureControlSite, ConnectionFacet>("Connection", isDeciding: false, PressureControlSources.Connection, new(0.3, 0.6, 0.3))
{
    /// <inheritdoc/>
    public override LookedAt Fields { get; } = new(["connection"], []);

    /// <inheritdoc/>
    public override ConnectionFacet Read(PressureControlSpec part) => new(part.Connection);

    /// <inheritdoc/>
    public override Finding Judge(PressureControlNeed need, ConnectionFacet facet) => (need.Plate.Connection, facet.Connection) switch
    {
        (null, _) => Finding.Unknown(Side.Plate, "connection", $"How the old one is connected is not known."),
        ({ } old, null) => Finding.Unknown(Side.Part, "connection", $"The old one has {new Spelt<PressureConnection>(old)}; this one's connection is not known."),
        ({ } old, { } now) when old == now => Finding.Meets($"It has {new Spelt<PressureConnection>(now)}, as the old one has."),
        ({ } old, { } now) => Finding.MeetsWith([new(PressureControlChanges.AdaptConnection, $"adapt {new Spelt<PressureConnection>(now)} to where {new Spelt<PressureConnection>(old)} was") { Kit = [new($"fitting from {new Spelt<PressureConnection>(now)} to {new Spelt<PressureConnection>(old)}, rated for the refrigerant")] }], $"It has {new Spelt<PressureConnection>(now)}; the old one has {new Spelt<PressureConnection>(old)}."),
    };
}
