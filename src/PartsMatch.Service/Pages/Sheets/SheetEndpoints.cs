using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Fields;
using PartsMatch.Service.Pages.Needs;
using PartsMatch.Service.Pages.WhatFailed;

namespace PartsMatch.Service.Pages.Sheets;

/// <summary>One part's fit sheet.</summary>
internal static class SheetEndpoints
{
    public const string Path = "/sheet";
    public const string Part = "part";

    public static void Map(WebApplication app) => app.MapGet(Path, (HttpContext context, Catalogues catalogues, Judgements judgements) =>
    {
        var query = Typed.Of(context.Request.Query);
        var need = NeedTyped.Of(query).Read(catalogues.Shelf);
        if (need.IsEmpty || need.StrangeKind is not null) return new SeeOther(need.To(WhatFailedEndpoints.Path));
        if (query[Part].Length == 0) return new SeeOther(need.To(Replacements.ReplacementsEndpoints.Path));
        var answer = judgements.FitSheet(need.Given, query[Part], need.ReadingsGiven);
        return answer.IsGiven
            ? PageSetup.Page<SheetPage>(new SheetModel(need, answer.Value))
            : WhatFailedEndpoints.Show(context, catalogues.Shelf, need, Complaints.OfNeed(answer.Refusals).Without(Part));
    });
}
