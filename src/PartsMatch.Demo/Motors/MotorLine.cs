using PartsMatch.Demo.Trade;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Demo.Motors;

/// <summary>What a market asks for, before a maker makes it: several makers offer a design, each a little differently.</summary>
/// <param name="Spec">What all makers' parts of the design have in common.</param>
/// <param name="IsUniversal">Made to replace many others rather than for one machine.</param>
/// <param name="Goodness">Where in its type's efficiency band it lies, 0 to 1.</param>
public sealed record MotorDesign(MotorSpec Spec, bool IsUniversal, double Goodness);

/// <summary>A line of motors that are built alike.</summary>
public abstract class MotorLine
{
    /// <summary>What a counter calls them.</summary>
    public abstract string Title { get; }

    /// <summary>How many parts the catalogue has of them.</summary>
    public abstract int Share { get; }

    /// <summary>Who makes them.</summary>
    public abstract Programme MadeBy { get; }

    /// <summary>Draws what the market asks for.</summary>
    public abstract MotorDesign Design(Draw draw);

    /// <summary>Draws what a maker decides for itself: lengths, bearings, insulation, protection.</summary>
    public abstract MotorSpec Build(MotorDesign design, Draw draw);
}
