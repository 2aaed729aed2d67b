using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Http.HttpResults;
using PartsMatch.Service.Pages.Parts;
using PartsMatch.Service.Pages.Replacements;
using PartsMatch.Service.Pages.Sheets;
using PartsMatch.Service.Pages.SignIn;
using PartsMatch.Service.Pages.WhatFailed;

namespace PartsMatch.Service.Pages;

/// <summary>The pages: Razor components rendered on the server, one model each, no script needed.</summary>
internal static class PageSetup
{
    public static void AddPages(this IServiceCollection services) => services.AddRazorComponents();

    public static void MapPages(this WebApplication app)
    {
        PageAssets.Map(app);
        UnitChoice.Map(app);
        WhatFailedEndpoints.Map(app);
        ReplacementsEndpoints.Map(app);
        SheetEndpoints.Map(app);
        SignInEndpoints.Map(app);
        PartEndpoints.Map(app);
        PartWriteEndpoints.Map(app);
        RetireEndpoints.Map(app);
    }

    /// <summary>A page made of its model.</summary>
    public static RazorComponentResult<TPage> Page<TPage>(object model, int status = StatusCodes.Status200OK)
        where TPage : IComponent => new(new Dictionary<string, object?> { ["Model"] = model }) { StatusCode = status };
}
