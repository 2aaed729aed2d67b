using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Access;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Errors;
using PartsMatch.Service.Pages.Fields;
using PartsMatch.Service.Pages.Needs;
using PartsMatch.Service.Pages.Parts;
using PartsMatch.Service.Pages.WhatFailed;

namespace PartsMatch.Service.Pages.Outcomes;

/// <summary>How it went: a form about one part for one need, and what was kept of it.</summary>
internal static class OutcomeEndpoints
{
    public const string Path = "/outcome";

    private const string SendAgain = "This page was open for too long, or you signed in anew meanwhile. Nothing is kept yet, and all that was typed stands below: look it over, and send it again.";
    private const string SignedIn = "You are signed in. Nothing is kept yet, and all that was typed stands below: look it over, and send it again.";
    private const string SentBefore = "This form was sent before, and what was kept says something else. A record is never changed: look at it, and put it right there.";

    private static readonly string[] Inputs = [OutcomeReading.On, OutcomeReading.Place, OutcomeReading.Result, OutcomeReading.Reason, OutcomeReading.Note];

    public static string Of(string id) => $"{Path}/{Uri.EscapeDataString(id)}";

    public static string ToCorrect(string id) => Link.To(Path, [new NamedText(OutcomeReading.Corrects, id)]);

    public static void Map(WebApplication app)
    {
        app.MapGet(Path, AskAsync).WithMetadata(new NeedsKey());
        app.MapPost(Path, KeepAsync).WithMetadata(new NeedsKey());
        app.MapGet($"{Path}/{{id}}", async (string id, OutcomeRecords records) => await records.FindAsync(id) is { } outcome ? PageSetup.Page<OutcomePage>(new OutcomeModel(outcome, records.WhyNothingIsLearnt(outcome))) : NotThere(id));
    }

    private static async Task<IResult> AskAsync(HttpContext context, Catalogues catalogues, OutcomeRecords records)
    {
        var (query, shelf) = (Typed.Of(context.Request.Query), catalogues.Shelf);
        if (query[OutcomeReading.Corrects] is { Length: > 0 } id)
        {
            if (await records.FindAsync(id) is not { } outcome || Families.Find(outcome.Said.Kind) is null) return NotThere(id);
            if (outcome.CorrectedBy is not null) return new SeeOther(Of(id));
            var correction = OutcomeTyped.ToCorrect(outcome.Said);
            return Show(new(correction, shelf.Find(correction.Part)!, Complaints.None));
        }

        var need = NeedTyped.Of(query).Read(shelf);
        if (need.IsEmpty || need.StrangeKind is not null || query[OutcomeTyped.PartName].Length == 0) return new SeeOther(need.To(WhatFailedEndpoints.Path));
        if (shelf.Find(query[OutcomeTyped.PartName]) is not { } part) return PartEndpoints.NotThere(query[OutcomeTyped.PartName]);
        return part.Family == need.Family
            ? Show(new(OutcomeTyped.New(need, part.Stored.Number, records.Today), part, Complaints.None))
            : ErrorModel.Page(StatusCodes.Status404NotFound, $"{part.Stored.Number} is a {part.Family.Title}: it was not put in for a {need.Family.Title}.");
    }

    private static async Task<IResult> KeepAsync(HttpContext context, Catalogues catalogues, OutcomeRecords records, IAntiforgery antiforgery)
    {
        var (form, shelf) = (await Typed.ReadAsync(context), catalogues.Shelf);
        var typed = OutcomeTyped.Of(NeedTyped.Of(form), form);
        if (shelf.Find(typed.Part) is not { } part) return PartEndpoints.NotThere(typed.Part);
        var model = new OutcomeFormModel(typed, part, Complaints.None);
        if (form.IsOnlyShown) return Show(model with { Notice = form[SignInLink.Onward].Length > 0 ? SignedIn : null });
        if (!await antiforgery.IsRequestValidAsync(context)) return Show(model with { Notice = SendAgain }, StatusCodes.Status400BadRequest);
        var answer = await records.RecordAsync(typed.Given, Caller.Of(context).KeyLabel!);
        if (answer.IsGiven) return new SeeOther(Of(answer.Value.Said.Id));
        if (answer.Refusals is [{ Code: Codes.IdTaken }]) return Show(model with { Notice = SentBefore, KeptBefore = Of(typed.Id) }, StatusCodes.Status409Conflict);
        return Show(
            model with { Complaints = Complaints.Of(answer.Refusals, at => Inputs.Contains(at, StringComparer.Ordinal) ? at : string.Empty) },
            answer.Refusals.Any(refusal => refusal.Code == Codes.StoreFailed) ? StatusCodes.Status503ServiceUnavailable : StatusCodes.Status422UnprocessableEntity);
    }

    private static RazorComponentResult<OutcomeFormPage> Show(OutcomeFormModel model, int status = StatusCodes.Status200OK) => PageSetup.Page<OutcomeFormPage>(model, status);

    private static IResult NotThere(string id) => ErrorModel.Page(StatusCodes.Status404NotFound, $"No outcome has the id “{id}”.");
}
