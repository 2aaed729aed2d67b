namespace PartsMatch.Demo.Outcomes;

/// <summary>One way in which a new part may do worse than the old one: nothing up to about a threshold, then more and more, without an edge.</summary>
/// <param name="Off">How far off the new part is, in the rule's own unit; 0 where nobody can tell.</param>
/// <param name="Threshold">From where on it begins to matter.</param>
/// <param name="Softness">How gently it begins.</param>
/// <param name="Hazard">What it adds to the hazard, one softness beyond another.</param>
/// <param name="IsRework">Whether it makes more work rather than a failure: a good technician foresees it.</param>
public sealed record HiddenRule(Func<PartFigures, PartFigures, Place, double> Off, double Threshold, double Softness, double Hazard, bool IsRework)
{
    /// <summary>What it adds to the hazard: a softened ramp.</summary>
    public double HazardOf(PartFigures old, PartFigures part, Place place) => Hazard * Math.Log(1 + Math.Exp((Off(old, part, place) - Threshold) / Softness));
}
