using System.Text.Encodings.Web;
using System.Text.Unicode;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using PartsMatch.Service.Pages.Compare;
using PartsMatch.Service.Pages.Lists;
using PartsMatch.Service.Pages.Models;
using PartsMatch.Service.Pages.Outcomes;
using PartsMatch.Service.Pages.Parts;
using PartsMatch.Service.Pages.Proofs;
using PartsMatch.Service.Pages.Replacements;
using PartsMatch.Service.Pages.Sheets;
using PartsMatch.Service.Pages.SignIn;
using PartsMatch.Service.Pages.Tables;
using PartsMatch.Service.Pages.WhatFailed;

namespace PartsMatch.Service.Pages;

/// <summary>The pages: Razor components rendered on the server, one model each, no script needed.</summary>
internal static class PageSetup
{
    public static void AddPages(this IServiceCollection services)
    {
        // Letters of all scripts stand in a page as they are: µ is one character, not six.
        services.AddSingleton(HtmlEncoder.Create(UnicodeRanges.All));
        services.AddRazorComponents();
        services.AddSingleton<ImportJobs>();
        // A page goes packed over a thin connection; not over TLS of this process's own, where the length of what is packed could tell of what is in it (BREACH).
        services.AddResponseCompression(packing => packing.MimeTypes = ["text/html", "text/css", "image/svg+xml"]);
    }

    public static void MapPages(this WebApplication app)
    {
        PageAssets.Map(app);
        UnitChoice.Map(app);
        WhatFailedEndpoints.Map(app);
        ReplacementsEndpoints.Map(app);
        SheetEndpoints.Map(app);
        CompareEndpoints.Map(app);
        ProofPages.Map(app);
        SignInEndpoints.Map(app);
        PartEndpoints.Map(app);
        PartWriteEndpoints.Map(app);
        RetireEndpoints.Map(app);
        ListEndpoints.Map(app);
        TableEndpoints.Map(app);
        OutcomeEndpoints.Map(app);
        ModelEndpoints.Map(app);
    }

    /// <summary>A page made of its model.</summary>
    public static RazorComponentResult<TPage> Page<TPage>(object model, int status = StatusCodes.Status200OK)
        where TPage : IComponent => new(new Dictionary<string, object?> { ["Model"] = model }) { StatusCode = status };
}
