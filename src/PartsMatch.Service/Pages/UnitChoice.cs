using PartsMatch.Fit.Quantities;
using PartsMatch.Service.Access;

namespace PartsMatch.Service.Pages;

/// <summary>US or SI units, kept in a cookie.</summary>
internal static class UnitChoice
{
    public const string Path = "/units";
    public const string Name = "units";

    /// <summary>Where to go afterwards: in the form all of an address, in the query the page that what was typed belongs to.</summary>
    public const string Back = "back";

    private const string Cookie = "units";
    private static readonly TimeSpan Kept = TimeSpan.FromDays(365);

    /// <summary>For pages on which nothing is typed, or a search; a page with a form is sent the choice together with what is typed.</summary>
    public static void Map(WebApplication app) => app.MapPost(Path, async (HttpContext context) =>
    {
        var form = await Typed.ReadAsync(context);
        return Pages.Back.To(context.Request.Query[Back].ToString() is { Length: > 0 } page ? Link.To(page, form.Except(Name)) : form[Back]);
    }).DisableAntiforgery().WithMetadata(new OpenToAll());

    /// <summary>Takes the choice that came with a form, for this answer and those that follow.</summary>
    public static void Keep(HttpContext context, Typed form)
    {
        if (form[Name] is not { Length: > 0 } chosen) return;
        context.Features.Set(new Chosen(UnitsOf(chosen)));
        var cookie = new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Lax, MaxAge = Kept, Path = "/", IsEssential = true };
        context.Response.Cookies.Append(Cookie, chosen is "us" or "si" ? chosen : "given", cookie);
    }

    public static Units Of(HttpContext context) => context.Features.Get<Chosen>()?.Units ?? UnitsOf(context.Request.Cookies[Cookie]);

    /// <summary>us and si; anything else is as given.</summary>
    private static Units UnitsOf(string? word) => word switch
    {
        "us" => Units.Us,
        "si" => Units.Si,
        _ => Units.AsGiven,
    };

    private sealed record Chosen(Units Units);
}
