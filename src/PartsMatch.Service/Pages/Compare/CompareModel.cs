using PartsMatch.Service.Pages.Fields;
using PartsMatch.Service.Pages.Needs;
using PartsMatch.Service.Pages.Sheets;

namespace PartsMatch.Service.Pages.Compare;

/// <summary>Two part numbers and a site, and what was found.</summary>
/// <param name="Typed">The old part and the site.</param>
/// <param name="NewNumber">The new part's number.</param>
/// <param name="Complaints">What is wrong with what was typed.</param>
/// <param name="Sheet">What was found; null while something is missing.</param>
public sealed record CompareModel(NeedTyped Typed, string NewNumber, Complaints Complaints, SheetModel? Sheet)
{
    public FieldForm Site => new(NeedTyped.SitePrefix, Typed.Family.SiteShape, Typed.Site, Complaints);
}
