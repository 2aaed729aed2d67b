using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;
using PartsMatch.Service.Pages.Needs;
using PartsMatch.Service.Pages.WhatFailed;

namespace PartsMatch.Service.Pages.Replacements;

/// <summary>The list: what will do the job, in order.</summary>
internal static class ReplacementsEndpoints
{
    public const string Path = "/replacements";
    public const string Fit = "fit";
    public const string After = "after";

    public static void Map(WebApplication app) => app.MapGet(Path, (HttpContext context, Catalogues catalogues, Judgements judgements) =>
    {
        var query = Typed.Of(context.Request.Query);
        var need = NeedTyped.Of(query).Read(catalogues.Shelf);
        if (need.IsEmpty || need.StrangeKind is not null) return new SeeOther(need.To(WhatFailedEndpoints.Path));
        var only = ReplacementsModel.Shown.Cast<PartFit?>().FirstOrDefault(fit => fit.ToString()!.Equals(query[Fit], StringComparison.OrdinalIgnoreCase));
        var strange = only is null && query[Fit].Length > 0 ? query[Fit] : null;
        var after = query[After] is { Length: > 0 } cursor ? cursor : null;
        var answer = judgements.Replacements(need.Given, ReplacementsModel.PageSize, after, only is { } one ? [one] : null);
        if (answer.IsGiven) return PageSetup.Page<ReplacementsPage>(new ReplacementsModel(need, answer.Value, only, after) { StrangeFit = strange }, strange is null ? StatusCodes.Status200OK : StatusCodes.Status422UnprocessableEntity);

        // A page of an order that is gone begins again; whatever else is wrong was typed, and is put right where it was.
        return answer.Refusals.Any(refusal => refusal.Code is Codes.CursorExpired or Codes.CursorMalformed)
            ? new SeeOther(need.To(Path))
            : WhatFailedEndpoints.Show(context, catalogues.Shelf, need, Complaints.OfNeed(answer.Refusals));
    });
}
