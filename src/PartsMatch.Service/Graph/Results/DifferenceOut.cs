using System.ComponentModel;
using GraphQL;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Service.Graph.Results;

[Name("Difference")]
[Description("Something that will be different once the new part runs: an estimate, never a measurement.")]
internal sealed class DifferenceOut(Difference difference)
{
    [Description("Its name.")]
    public string Name => difference.Name;

    [Description("A few words for it.")]
    public string Title => difference.Title;

    [Description("The unit of old and new.")]
    public string Unit => difference.Unit;

    [Description("With the old part.")]
    public BandOut? Old => BandOut.Of(difference.Old);

    [Description("With the new part.")]
    public BandOut? New => BandOut.Of(difference.New);

    [Description("New over old.")]
    public BandOut? Ratio => BandOut.Of(difference.Ratio);

    [Description("What the estimate rests on.")]
    public IEnumerable<string> Assumptions => difference.Assumptions;
}

[Name("Band")]
[Description("A figure known only to lie between two limits.")]
internal sealed class BandOut(Band band)
{
    [Description("The least it can be.")]
    public double Low => band.Low;

    [Description("The most it can be.")]
    public double High => band.High;

    internal static BandOut? Of(Band? band) => band is { } known ? new(known) : null;
}
