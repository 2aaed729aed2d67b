using PartsMatch.Fit;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Errors;

namespace PartsMatch.Service.Pages.Parts;

/// <summary>The catalogue to leaf through, and a part with its history.</summary>
internal static class PartEndpoints
{
    private const int OutcomesShown = 10;

    public static void Map(WebApplication app)
    {
        app.MapGet(PartAddress.List, (HttpContext context, Catalogues catalogues) =>
        {
            var (query, shelf) = (Typed.Of(context.Request.Query), catalogues.Shelf);
            var (text, kind) = (query[PartListModel.TextName].Trim(), Families.Find(query[PartListModel.KindName]));
            var after = query[PartListModel.After] is { Length: > 0 } cursor ? cursor : null;
            var page = PartLists.Page(shelf, kind, text, PartListModel.PageSize, after);
            // The only thing that can be wrong with a link to a list is where it goes on: then it begins again.
            return page.IsGiven
                ? PageSetup.Page<PartListPage>(new PartListModel(text, kind, page.Value, text.Length > 0 ? shelf.Find(text) : null))
                : (IResult)new SeeOther(Link.To(PartAddress.List, [new(PartListModel.TextName, text), new(PartListModel.KindName, kind?.Kind ?? string.Empty)]));
        });
        app.MapGet($"{PartAddress.List}/{{number}}", async (string number, Catalogues catalogues, PartHistories histories, OutcomeRecords records) =>
        {
            var shelf = catalogues.Shelf;
            return shelf.Find(PartAddress.NumberIn(number)) is { } part
                ? PageSetup.Page<PartEntryPage>(PartModel.Of(shelf, part, await histories.OfAsync(part), await records.NewestOfAsync(part, OutcomesShown)))
                : NotThere(number);
        });
    }

    public static IResult NotThere(string number) => ErrorModel.Page(StatusCodes.Status404NotFound, Counter.Needs.NotFound(PartAddress.NumberIn(number), string.Empty).Message);
}
