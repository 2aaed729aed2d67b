using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Tests.Judging;
using PartsMatch.Fit.Valves.CondensingPressureValves;

namespace PartsMatch.Fit.Tests.Valves.CondensingPressureValves;

/// <summary>Judges one aspect of a condensing-pressure valve by named texts, with what the family deduces.</summary>
/// <typeparam name="TAspect">The aspect.</typeparam>
/// <typeparam name="TFacet">Its facet.</typeparam>
public abstract class HeadAspectTests<TAspect, TFacet>
    where TAspect : Aspect<CondensingPressureValveSpec, CondensingPressureValveSite, TFacet>, new()
    where TFacet : struct, IEquatable<TFacet>
{
    private static readonly TAspect Aspect = new();

    protected static Finding Judge(string plate, string site, string part)
    {
        var reading = CondensingPressureValveFamily.CondensingPressureValve.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        reading.Complaints.ShouldBeEmpty();
        return ((Aspect)Aspect).Judge(reading.Need, Aspect.FacetOf(CondensingPressureValveFamily.CondensingPressureValve.Deduce(Named.Record<CondensingPressureValveSpec>(part)).Spec));
    }

    /// <summary>The verdict, with the changes or the missing field behind it.</summary>
    protected static string Answer(string plate, string site, string part)
    {
        var finding = Judge(plate, site, part);
        return string.Join(' ', [$"{finding.Verdict}", .. finding.Changes.Select(change => change.Kind.Name), .. finding.Missing.Select(missing => $"{missing.Side} {missing.Field}")]);
    }
}
