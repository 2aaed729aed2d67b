using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Pages.Sheets;

/// <summary>A question with what the old part was, what the site is, and what the new part is.</summary>
public sealed class Comparison(NeedRead need, CatalogueEntry part, AspectFinding found)
{
    private readonly Spec _new = need.Family.Deduce(part.Spec).Spec;

    public Aspect Aspect => found.Aspect;

    public Finding Finding => found.Finding;

    public bool IsMet => Finding.Verdict == Verdict.Meets;

    public string Old(Units units) => Texts(need.Family.SpecShape, Aspect.Fields.Spec, need.Reading.Need.Plate, units);

    public string There(Units units) => Texts(need.Family.SiteShape, Aspect.Fields.Site, need.Reading.Need.Site, units);

    public string New(Units units) => Texts(need.Family.SpecShape, Aspect.Fields.Spec, _new, units);

    private static string Texts(Shape shape, IEnumerable<string> fields, object record, Units units) =>
        string.Join("; ", fields.Select(name => shape.Find(name)!.TextOf(record, units)).OfType<string>());
}
