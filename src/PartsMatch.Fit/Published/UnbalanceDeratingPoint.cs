using PartsMatch.Fit.Judging;

namespace PartsMatch.Fit.Published;

/// <summary>A point of the derating curve for unbalanced volts.</summary>
/// <param name="Percent">Unbalance in percent.</param>
/// <param name="Factor">Power allowed, as a share of the rating.</param>
/// <param name="Source">The figure it is read off.</param>
public sealed record UnbalanceDeratingPoint(double Percent, double Factor, Source Source);
