using Microsoft.AspNetCore.Mvc;
using PartsMatch.Service.Access;

namespace PartsMatch.Service.Pages;

/// <summary>US or SI units, kept in a cookie.</summary>
internal static class UnitChoice
{
    private static readonly TimeSpan Kept = TimeSpan.FromDays(365);

    public static void Map(WebApplication app) => app.MapPost("/units", (HttpContext context, [FromForm] string? units, [FromForm] string? back) =>
    {
        var cookie = new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Lax, MaxAge = Kept, Path = "/", IsEssential = true };
        context.Response.Cookies.Append(Visit.UnitsCookie, units is "us" or "si" ? units : "given", cookie);
        return Back.To(back);
    }).DisableAntiforgery().WithMetadata(new OpenToAll());
}
