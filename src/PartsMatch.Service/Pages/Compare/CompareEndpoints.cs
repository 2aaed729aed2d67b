using Microsoft.AspNetCore.Http.HttpResults;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;
using PartsMatch.Service.Pages.Needs;
using PartsMatch.Service.Pages.Sheets;

namespace PartsMatch.Service.Pages.Compare;

/// <summary>Two parts side by side: does anything need changing before the new one leaves the bench?</summary>
internal static class CompareEndpoints
{
    public const string Path = "/compare";

    public static void Map(WebApplication app)
    {
        app.MapGet(Path, (HttpContext context, Catalogues catalogues, Judgements judgements) =>
        {
            var query = Typed.Of(context.Request.Query);
            var (need, part) = (OfOldPart(query, catalogues.Shelf), query[SheetEndpoints.Part].Trim());
            if (need.OldNumber.Length == 0 && part.Length == 0) return Show(new(need, part, Complaints.None, null));
            var answer = judgements.Compare(need.OldNumber, part, need.Site.Count > 0 ? new(need.Family, need.Site) : null);
            return Show(new(need, part, Complaints.OfNeed(answer.Refusals), answer.IsGiven ? new(need, answer.Value) : null));
        });
        app.MapPost(Path, async (HttpContext context, Catalogues catalogues) =>
        {
            var form = await Typed.ReadAsync(context);
            var (need, part) = (OfOldPart(form, catalogues.Shelf), form[SheetEndpoints.Part].Trim());
            var link = form.IsOnlyShown && need.IsEmpty && part.Length == 0 ? Path : need.To(Path, new NamedText(SheetEndpoints.Part, part));
            return link.Length <= Link.Longest ? (IResult)new SeeOther(link) : Show(new(need, part, Complaints.TooLongForALink(string.Empty), null));
        });
    }

    /// <summary>The old part says of which kind both are.</summary>
    private static NeedTyped OfOldPart(Typed typed, Shelf shelf)
    {
        var need = NeedTyped.Of(typed) with { Text = string.Empty, Shown = string.Empty, Plate = [], Readings = [] };
        return shelf.Find(need.OldNumber) is { } old ? need with { Family = old.Family } : need;
    }

    private static RazorComponentResult<ComparePage> Show(CompareModel model) => PageSetup.Page<ComparePage>(model, model.Complaints.Any ? StatusCodes.Status422UnprocessableEntity : StatusCodes.Status200OK);
}
