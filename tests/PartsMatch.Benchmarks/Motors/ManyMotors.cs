using PartsMatch.Benchmarks.Parts;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;

namespace PartsMatch.Benchmarks.Motors;

/// <summary>Motors, as many as are asked for.</summary>
internal sealed class ManyMotors(int count, int seed) : ManyParts(MotorFamily.Motor, count, seed)
{
    private readonly MotorPool pool = new(seed);

    /// <summary>A part as it is, without the gaps that the catalogue has.</summary>
    public MotorSpec WholeAt(int row) => (MotorSpec)DrawnAt(row);

    /// <summary>A motor that is no part of the catalogue but could be one, with nothing left out.</summary>
    public MotorSpec MotorBy(Random random) => Variation.Of(pool.Pick(random), random);

    public override IReadOnlyList<Need> Needs(int many, int from) => MotorNeeds.Of(this, many, from);

    protected override Spec Drawn(Random random) => MotorBy(random);

    protected override Spec WithGaps(Spec whole, Random random) => Variation.WithGaps((MotorSpec)whole, random);
}
