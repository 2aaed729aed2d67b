using System.Security.Claims;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Authentication.Cookies;

namespace PartsMatch.Service.Access;

/// <summary>The cookie of one who signed in. It holds the label of the key and its mark, sealed: another key under the same label is another key.</summary>
internal static class SignInCookie
{
    public const string Name = "signed-in";

    /// <summary>From the last visit on: a counter signs in once, a phone that is lost is out two weeks later.</summary>
    public static readonly TimeSpan Kept = TimeSpan.FromDays(14);

    private const string Label = "label";
    private const string Mark = "mark";
    private const string VisitName = "visit";

    public static void Configure(CookieAuthenticationOptions options)
    {
        options.Cookie.Name = Name;
        options.Cookie.HttpOnly = true;
        // Not Strict: whoever opens a fit sheet from a message would seem signed out. Lax comes with such a link, and never with what another site posts.
        options.Cookie.SameSite = SameSiteMode.Lax;
        options.Cookie.SecurePolicy = CookieSecurePolicy.SameAsRequest;
        options.ExpireTimeSpan = Kept;
        options.SlidingExpiration = true;
        options.Events.OnValidatePrincipal = RejectLostKeysAsync;
    }

    /// <summary>The label of the key; null for one who did not sign in.</summary>
    public static string? LabelIn(ClaimsPrincipal user) => user.FindFirstValue(Label);

    public static Task BeginAsync(HttpContext context, string label) =>
        context.SignInAsync(Name, new(new ClaimsIdentity([new Claim(Label, label), new Claim(Mark, Keys(context).MarkOf(label) ?? string.Empty), new Claim(VisitName, Guid.NewGuid().ToString("N"))], Name)), new() { IsPersistent = true });

    /// <summary>Ends the visit itself, and not only this browser's memory of it.</summary>
    public static Task EndAsync(HttpContext context)
    {
        if (context.User.FindFirstValue(VisitName) is { } visit) context.RequestServices.GetRequiredService<EndedVisits>().Add(visit);
        return context.SignOutAsync(Name);
    }

    private static Task RejectLostKeysAsync(CookieValidatePrincipalContext context)
    {
        var ended = context.HttpContext.RequestServices.GetRequiredService<EndedVisits>();
        if (context.Principal!.FindFirstValue(VisitName) is not { } visit || ended.Contains(visit)) context.RejectPrincipal();
        else if (LabelIn(context.Principal!) is not { } label || Keys(context.HttpContext).MarkOf(label) is not { } mark || context.Principal!.FindFirstValue(Mark) != mark) context.RejectPrincipal();
        return Task.CompletedTask;
    }

    private static KeyRing Keys(HttpContext context) => context.RequestServices.GetRequiredService<KeyRing>();
}
