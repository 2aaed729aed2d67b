using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using PartsMatch.Fit.Tests.Judging;

namespace PartsMatch.Fit.Tests.Motors;

/// <summary>Judges one aspect of motors, so that a case is one line: fields as name=text, semicolons between, deductions included.</summary>
/// <typeparam name="TAspect">The aspect.</typeparam>
public abstract class MotorAspectTests<TAspect>
    where TAspect : Aspect, new()
{
    private static readonly TAspect Aspect = new();

    /// <summary>Judges, after asserting that every text could be read.</summary>
    protected static Finding Judge(string plate = "", string site = "", string part = "")
    {
        var need = MotorFamily.Motor.ReadNeed(new(null, Named.Texts(plate), Named.Texts(site)));
        need.Complaints.ShouldBeEmpty();
        var (spec, complaints) = MotorFamily.Motor.ReadSpec(Named.Texts(part));
        complaints.ShouldBeEmpty();
        return Aspect.Judge(need.Need, Aspect.FacetOf(MotorFamily.Motor.Deduce(spec).Spec));
    }

    /// <summary>Asserts that the part meets as it is.</summary>
    protected static Finding Meets(string plate = "", string site = "", string part = "") => Has(Verdict.Meets, plate, site, part);

    /// <summary>Asserts that the part fails.</summary>
    protected static Finding Fails(string plate = "", string site = "", string part = "")
    {
        var finding = Has(Verdict.Fails, plate, site, part);
        finding.Shortfall.ShouldBeGreaterThanOrEqualTo(1, finding.Sentence);
        return finding;
    }

    /// <summary>Asserts that the part meets with exactly these kinds of change.</summary>
    protected static Finding MeetsWith(IEnumerable<ChangeKind> changes, string plate = "", string site = "", string part = "")
    {
        var finding = Has(Verdict.MeetsWithChanges, plate, site, part);
        finding.Changes.Select(change => change.Kind).ShouldBe(changes);
        finding.Changes.ShouldAllBe(change => change.Text.Length > 0);
        return finding;
    }

    /// <summary>Asserts that the answer is unknown, and for want of which field.</summary>
    protected static Finding Unknown(Side side, string field, string plate = "", string site = "", string part = "")
    {
        var finding = Has(Verdict.Unknown, plate, site, part);
        finding.Missing.ShouldBe([new Missing(side, field)], finding.Sentence);
        return finding;
    }

    private static Finding Has(Verdict verdict, string plate, string site, string part)
    {
        var finding = Judge(plate, site, part);
        finding.Verdict.ShouldBe(verdict, finding.Sentence);
        return finding;
    }
}
