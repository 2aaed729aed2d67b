using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Pages.Sheets;

/// <summary>A question with what the old part was, what the site is, and what the new part is.</summary>
public sealed class Comparison(NeedRead need, Spec part, AspectFinding found)
{
    /// <summary>What asks for something, is not known, or fails stands first. What is deduced of the part is deduced once for all.</summary>
    public static IReadOnlyList<Comparison> AllOf(NeedRead need, CatalogueEntry part, FitSheet sheet)
    {
        var deduced = need.Family.Deduce(part.Spec).Spec;
        return [.. sheet.Findings.OrderBy(one => one.Finding.Verdict == Verdict.Meets).Select(one => new Comparison(need, deduced, one))];
    }

    public Aspect Aspect => found.Aspect;

    public Finding Finding => found.Finding;

    public bool IsMet => Finding.Verdict == Verdict.Meets;

    public IReadOnlyList<Said> Old(Units units) => Texts(need.Family.SpecShape, Aspect.Fields.Spec, need.Reading.Need.Plate, units);

    public IReadOnlyList<Said> There(Units units) => Texts(need.Family.SiteShape, Aspect.Fields.Site, need.Reading.Need.Site, units);

    public IReadOnlyList<Said> New(Units units) => Texts(need.Family.SpecShape, Aspect.Fields.Spec, part, units);

    /// <summary>The most telling field speaks for itself; the others say what they are.</summary>
    private static IReadOnlyList<Said> Texts(Shape shape, IEnumerable<string> fields, object record, Units units) =>
        [.. fields.Select(name => shape.Find(name)!).Index().Where(one => one.Item.Get(record) is not null)
            .Select(one => new Said(one.Index == 0 ? null : InSentence.Of(one.Item.Label), one.Item.TextOf(record, units)!))];
}

/// <summary>What one field says, beside others in a cell.</summary>
/// <param name="Label">What it is; null where that goes without saying.</param>
/// <param name="Text">Its value.</param>
public sealed record Said(string? Label, string Text);
