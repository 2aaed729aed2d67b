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

    public string Old(Units units) => Texts(need.Family.SpecShape, Aspect.Fields.Spec, need.Reading.Need.Plate, units);

    public string There(Units units) => Texts(need.Family.SiteShape, Aspect.Fields.Site, need.Reading.Need.Site, units);

    public string New(Units units) => Texts(need.Family.SpecShape, Aspect.Fields.Spec, part, units);

    /// <summary>The most telling field speaks for itself; the others say what they are.</summary>
    private static string Texts(Shape shape, IEnumerable<string> fields, object record, Units units) =>
        string.Join("; ", fields.Select(name => shape.Find(name)!).Index().Select(one => one.Item.TextOf(record, units) is { } text ? one.Index == 0 ? text : $"{Words.Small(one.Item.Label)}: {text}" : null).OfType<string>());
}
