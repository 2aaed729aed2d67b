using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Errors;

namespace PartsMatch.Service.Pages.Parts;

/// <summary>Takes a part out of the catalogue, once it was asked whether that is meant.</summary>
internal static class RetireEndpoints
{
    private const string Address = $"{PartAddress.List}/{{number}}/{PartAddress.Retire}";
    private const string SendAgain = "This page was open for too long, or you signed in anew meanwhile. Nothing was done; send it again.";

    public static void Map(WebApplication app)
    {
        app.MapGet(Address, (string number, Catalogues catalogues) =>
            Find(catalogues, number) is { } part ? Show(part, inTheWay: null, []) : PartEndpoints.NotThere(number)).WithMetadata(new NeedsKey());
        app.MapPost(Address, async (HttpContext context, string number, Catalogues catalogues, IAntiforgery antiforgery, PartWrites writes, PartHistories histories) =>
            Find(catalogues, number) is { } part ? await RetireAsync(context, part, antiforgery, writes, histories) : PartEndpoints.NotThere(number)).WithMetadata(new NeedsKey());
    }

    private static async Task<IResult> RetireAsync(HttpContext context, CatalogueEntry part, IAntiforgery antiforgery, PartWrites writes, PartHistories histories)
    {
        var form = await Typed.ReadAsync(context);
        if (!await antiforgery.IsRequestValidAsync(context)) return Show(part, SendAgain, [], StatusCodes.Status400BadRequest);
        var version = PartTyped.VersionIn(form, PartTyped.VersionName);
        var answer = await writes.RetireAsync(part.Stored.Number, version, Caller.Of(context).KeyLabel!);
        if (!answer.IsGiven) return ErrorModel.Page(StatusCodes.Status503ServiceUnavailable, answer.Refusals[0].Message);
        if (answer.Value.Conflict is not { } sentence) return new SeeOther(PartAddress.Of(part.Stored.Number));
        var now = answer.Value.Part;
        var read = (await histories.OfAsync(now)).FirstOrDefault(edit => edit.Change.Version == version)?.Change.After ?? now.Stored;
        return Show(now, sentence, PartTexts.Between(PartTexts.Of(now.Family, read), PartTexts.Of(now.Family, now.Stored)), StatusCodes.Status409Conflict);
    }

    private static CatalogueEntry? Find(Catalogues catalogues, string number) => catalogues.Shelf.Find(PartAddress.NumberIn(number));

    private static RazorComponentResult<RetirePage> Show(CatalogueEntry part, string? inTheWay, IReadOnlyList<ChangedText> since, int status = StatusCodes.Status200OK) =>
        PageSetup.Page<RetirePage>(new RetireModel(part.Stored, inTheWay, since), status);
}
