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
        PartFit? only = Enum.TryParse<PartFit>(query[Fit], ignoreCase: true, out var fit) && Enum.IsDefined(fit) && fit != PartFit.DoesntFit ? fit : null;
        var after = query[After] is { Length: > 0 } cursor ? cursor : null;
        var answer = judgements.Replacements(need.Given, ReplacementsModel.PageSize, after, only is { } one ? [one] : null);
        if (answer.IsGiven) return PageSetup.Page<ReplacementsPage>(new ReplacementsModel(need, answer.Value, only, after));

        // A page of an order that is gone begins again; whatever else is wrong was typed, and is put right where it was.
        return answer.Refusals.Any(refusal => refusal.Code is Codes.CursorExpired or Codes.CursorMalformed)
            ? new SeeOther(need.To(Path))
            : WhatFailedEndpoints.Show(context, catalogues.Shelf, need, Complaints.OfNeed(answer.Refusals));
    });
}
