using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Switches.DefrostTimers;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Switches.DefrostTimers;

/// <summary>Judges one aspect of a defrost timer by named texts, with what the family deduces.</summary>
/// <typeparam name="TAspect">The aspect.</typeparam>
/// <typeparam name="TFacet">Its facet.</typeparam>
public abstract class DefrostTimerAspectTests<TAspect, TFacet>
    where TAspect : Aspect<DefrostTimerSpec, DefrostTimerSite, TFacet>, new()
    where TFacet : struct, IEquatable<TFacet>
{
    private static readonly TAspect Aspect = new();

    protected static Finding Judge(string plate, string site, string part)
    {
        var reading = DefrostTimerFamily.DefrostTimer.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        reading.Complaints.ShouldBeEmpty();
        return ((Aspect)Aspect).Judge(reading.Need, Aspect.FacetOf(DefrostTimerFamily.DefrostTimer.Deduce(Named.Record<DefrostTimerSpec>(part)).Spec));
    }

    /// <summary>The verdict, with the changes or the missing field behind it.</summary>
    protected static string Answer(string plate, string site, string part)
    {
        var finding = Judge(plate, site, part);
        return string.Join(' ', [$"{finding.Verdict}", .. finding.Changes.Select(change => change.Kind.Name), .. finding.Missing.Select(missing => $"{missing.Side} {missing.Field}")]);
    }
}
