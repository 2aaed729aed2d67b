using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using PartsMatch.Fit;
using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;

namespace PartsMatch.Service.Pages.Parts;

/// <summary>Adds, changes and retires parts, for whoever signed in.</summary>
internal static class PartWriteEndpoints
{
    private const string SendAgain = "This page was open for too long, or you signed in anew meanwhile. All that was typed still stands below: look it over, and send it again.";
    private const string SignedIn = "You are signed in. Nothing is saved yet, and all that was typed stands below: look it over, and send it again.";
    private const string NothingNew = "Nothing was changed, so nothing was written.";
    private const string TakenOver = "This is what the catalogue has now, with what you changed. Nothing is saved yet: look it over, and save it.";

    public static void Map(WebApplication app)
    {
        app.MapGet(PartAddress.New, (string? kind) => Show(new(PartTyped.New(Families.Find(kind ?? string.Empty) ?? Families.All[0]), Present: null, Complaints.None))).WithMetadata(new NeedsKey());
        app.MapPost(PartAddress.New, AddAsync).WithMetadata(new NeedsKey());
        app.MapGet($"{PartAddress.List}/{{number}}/{PartAddress.Change}", (string number, Catalogues catalogues) =>
            Find(catalogues, number) is { } part ? Show(new(PartTyped.Of(part.Family, part.Stored), part.Stored, Complaints.None)) : PartEndpoints.NotThere(number)).WithMetadata(new NeedsKey());
        app.MapPost($"{PartAddress.List}/{{number}}/{PartAddress.Change}", async (HttpContext context, string number, Catalogues catalogues, IAntiforgery antiforgery, PartWrites writes, PartHistories histories) =>
            Find(catalogues, number) is { } part ? await ChangeAsync(context, part, antiforgery, writes, histories) : PartEndpoints.NotThere(number)).WithMetadata(new NeedsKey());
    }

    private static async Task<IResult> AddAsync(HttpContext context, IAntiforgery antiforgery, PartWrites writes)
    {
        var form = await Typed.ReadAsync(context);
        var model = new PartFormModel(PartTyped.Of(Families.Find(form[PartTyped.KindName]) ?? Families.All[0], form), Present: null, Complaints.None);
        if (form.IsOnlyShown) return ShowAgain(form, model with { Typed = model.Typed.As(Families.Find(form[Typed.OtherKind]) ?? model.Family) });
        if (!await antiforgery.IsRequestValidAsync(context)) return Show(model with { Notice = SendAgain }, StatusCodes.Status400BadRequest);
        var (given, unreadable) = model.Typed.Read(present: null);
        var answer = await writes.AddAsync(given, Caller.Of(context).KeyLabel!, unreadable);
        if (!answer.IsGiven) return Refuse(model, answer.Refusals);
        return answer.Value.Conflict is { } taken
            ? Show(model with { Taken = answer.Value.Part.Stored, Complaints = PartFormModel.Wrong([new(Codes.NumberUnusable, PartTyped.NumberName, taken)]) }, StatusCodes.Status409Conflict)
            : new SeeOther(PartAddress.Of(given.Number));
    }

    private static async Task<IResult> ChangeAsync(HttpContext context, CatalogueEntry part, IAntiforgery antiforgery, PartWrites writes, PartHistories histories)
    {
        var form = await Typed.ReadAsync(context);
        var model = new PartFormModel(PartTyped.Of(part.Family, form), part.Stored, Complaints.None);
        if (form.IsOnlyShown) return ShowAgain(form, model);
        if (!await antiforgery.IsRequestValidAsync(context)) return Show(model with { Notice = SendAgain }, StatusCodes.Status400BadRequest);
        if (form[PartFormModel.Then] == PartFormModel.Theirs)
        {
            var read = PartTyped.VersionIn(form, PartFormModel.BeganName);
            var began = (await histories.OfAsync(part)).FirstOrDefault(edit => edit.Change.Version == read)?.Change.After ?? part.Stored;
            return Show(model with { Typed = model.Typed.Onto(PartTyped.Of(part.Family, began), PartTyped.Of(part.Family, part.Stored)), Notice = TakenOver });
        }

        var (given, unreadable) = model.Typed.Read(part.Stored);
        var answer = await writes.ChangeAsync(model.Typed.Version, given, Caller.Of(context).KeyLabel!, unreadable);
        if (!answer.IsGiven) return Refuse(model, answer.Refusals);
        if (answer.Value.WasSame) return Show(model with { Notice = NothingNew });
        if (answer.Value.Conflict is not { } sentence) return new SeeOther(PartAddress.Of(given.Number));
        var (now, history) = (answer.Value.Part, await histories.OfAsync(answer.Value.Part));
        return Show(
            model with
            {
                Typed = model.Typed with { Version = now.Stored.Version },
                Present = now.Stored,
                Conflict = ConflictModel.Of(sentence, now, history, model.Typed.Version, given),
            },
            StatusCodes.Status409Conflict);
    }

    private static RazorComponentResult<PartFormPage> ShowAgain(Typed form, PartFormModel model) => Show(model with { Notice = form[SignInLink.Onward].Length > 0 ? SignedIn : null });

    private static CatalogueEntry? Find(Catalogues catalogues, string number) => catalogues.Shelf.Find(PartAddress.NumberIn(number));

    /// <summary>The form with all complaints beside their inputs.</summary>
    private static RazorComponentResult<PartFormPage> Refuse(PartFormModel model, IReadOnlyList<Refusal> refusals) => Show(
        model with { Complaints = PartFormModel.Wrong(refusals) },
        refusals.Any(refusal => refusal.Code == Codes.StoreFailed) ? StatusCodes.Status503ServiceUnavailable : StatusCodes.Status422UnprocessableEntity);

    private static RazorComponentResult<PartFormPage> Show(PartFormModel model, int status = StatusCodes.Status200OK) => PageSetup.Page<PartFormPage>(model, status);
}
