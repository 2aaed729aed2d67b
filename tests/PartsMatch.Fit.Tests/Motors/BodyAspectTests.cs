using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>Judges one aspect of a motor by named texts, with what the old motor tells of its place.</summary>
/// <typeparam name="TAspect">The aspect.</typeparam>
/// <typeparam name="TFacet">Its facet.</typeparam>
public abstract class BodyAspectTests<TAspect, TFacet>
    where TAspect : Aspect<MotorSpec, MotorSite, TFacet>, new()
    where TFacet : struct, IEquatable<TFacet>
{
    private static readonly TAspect Aspect = new();

    protected static TFacet Facet(string part) => Aspect.Read(Named.Record<MotorSpec>(part));

    protected static Finding Judge(string plate, string site, string part)
    {
        var old = Named.Record<MotorSpec>(plate);
        return Aspect.Judge(new Need<MotorSpec, MotorSite>(old, BodyDeductions.DeduceSite(old, Named.Record<MotorSite>(site)).Site), Facet(part));
    }

    /// <summary>The verdict, with the changes or the missing field behind it: "MeetsWithChanges reverse", "Unknown Plate rotation".</summary>
    protected static string Answer(string plate, string site, string part)
    {
        var finding = Judge(plate, site, part);
        return string.Join(' ', [$"{finding.Verdict}", .. finding.Changes.Select(change => change.Kind.Name), .. finding.Missing.Select(missing => $"{missing.Side} {missing.Field}")]);
    }
}
