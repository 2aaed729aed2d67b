using PartsMatch.Fit.Physics;

namespace PartsMatch.Fit.Valves;

/// <summary>A refrigerant of which no load can be turned into a flow here, whatever else is known of it; in words behind what cannot be computed, formed only when they are shown.</summary>
/// <param name="Refrigerant">The refrigerant.</param>
internal sealed record Uncomputable(Refrigerant Refrigerant)
{
    /// <summary>The refrigerant there, where nothing can be computed of it; null where it can, and where it is not known.</summary>
    public static Uncomputable? Of(Refrigerant? there) => there is null or { HasStates: true, HasCurve: true } ? null : new(there);

    /// <inheritdoc/>
    public override string ToString() => $"cannot be computed for {Refrigerant.Name} here: size it by its maker's tables";
}
