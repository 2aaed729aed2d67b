using Microsoft.AspNetCore.Mvc;

namespace PartsMatch.Service.Pages;

/// <summary>US or SI units, kept in a cookie.</summary>
internal static class UnitChoice
{
    private static readonly TimeSpan Kept = TimeSpan.FromDays(365);

    public static void Map(WebApplication app) => app.MapPost("/units", (HttpContext context, [FromForm] string? units, [FromForm] string? back) =>
    {
        var cookie = new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Lax, Secure = context.Request.IsHttps, MaxAge = Kept, Path = "/", IsEssential = true };
        context.Response.Cookies.Append(Visit.UnitsCookie, units is "us" or "si" ? units : "given", cookie);
        return BackTo(back);
    }).DisableAntiforgery();

    /// <summary>Only ever to a page of this service: an address of another server is not followed.</summary>
    public static IResult BackTo(string? address) =>
        address is { Length: > 0 } && address[0] == '/' && Uri.TryCreate($"http://here{address}", UriKind.Absolute, out var here) && here.Host == "here" && !address.StartsWith("//", StringComparison.Ordinal) && !address.StartsWith("/\\", StringComparison.Ordinal)
            ? new SeeOther(address)
            : new SeeOther("/");
}
