using System.Globalization;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;
using PartsMatch.Service.Access;
using PartsMatch.Service.Pages.Errors;

namespace PartsMatch.Service.Pages.SignIn;

/// <summary>In with a key or a one-time link, and out again.</summary>
internal static class SignInEndpoints
{
    private const string SendAgain = "This page was open for too long, or the browser keeps no cookies for it. Send it again from here.";
    private const string WrongKey = "This key is not one of this service's. It begins with partsmatch_ and is shown once, at the service's first start.";
    private const string SpentCode = "This link was used already, is too old, or was cut short. Sign in with the key instead.";

    public static void Map(WebApplication app)
    {
        app.MapGet(SignInLink.Path, (string? back) => PageSetup.Page<SignInPage>(new SignInModel(back ?? string.Empty))).WithMetadata(new OpenToAll());
        app.MapPost(SignInLink.Path, (HttpContext context, IAntiforgery antiforgery, SignInAttempts attempts, KeyRing keys) =>
            SignInAsync(context, antiforgery, attempts, SignInModel.Key, keys.LabelOf, WrongKey)).WithMetadata(new OpenToAll());
        // A preview of the link, which a mail program may fetch, spends nothing.
        app.MapGet(SignInLink.OncePath, (string? code) => PageSetup.Page<OncePage>(new OnceModel(code ?? string.Empty))).WithMetadata(new OpenToAll());
        app.MapPost(SignInLink.OncePath, (HttpContext context, IAntiforgery antiforgery, SignInAttempts attempts, OneTimeCode code) =>
            SignInAsync(context, antiforgery, attempts, SignInLink.Code, code.Spend, SpentCode)).WithMetadata(new OpenToAll());
        app.MapPost(SignInLink.OutPath, SignOutAsync).WithMetadata(new OpenToAll());
    }

    private static async Task<IResult> SignInAsync(HttpContext context, IAntiforgery antiforgery, SignInAttempts attempts, string input, Func<string, string?> labelOf, string wrong)
    {
        var form = await Typed.ReadAsync(context);
        var (secret, back) = (form[input].Trim(), form[SignInLink.Back]);
        if (!await antiforgery.IsRequestValidAsync(context)) return Show(back, SendAgain, StatusCodes.Status400BadRequest);
        if (secret.Length == 0) return Show(back, "No key is typed yet.", StatusCodes.Status422UnprocessableEntity);
        var address = context.Connection.RemoteIpAddress;
        if (attempts.Begin(address) is var wait && wait > TimeSpan.Zero)
        {
            context.Response.Headers[HeaderNames.RetryAfter] = Math.Ceiling(wait.TotalSeconds).ToString(CultureInfo.InvariantCulture);
            return Show(back, $"Too many wrong ones were sent. Wait {SignInModel.Words(wait)}, then try again.", StatusCodes.Status429TooManyRequests);
        }

        if (labelOf(secret) is not { } label) return Show(back, wrong, StatusCodes.Status422UnprocessableEntity);
        attempts.WasRight(address);
        await SignInCookie.BeginAsync(context, label);
        return Back.To(back);
    }

    private static async Task<IResult> SignOutAsync(HttpContext context, IAntiforgery antiforgery)
    {
        var form = await Typed.ReadAsync(context);
        if (!await antiforgery.IsRequestValidAsync(context)) return ErrorModel.Page(StatusCodes.Status400BadRequest, "You are still signed in: the page was open for too long.");
        await SignInCookie.EndAsync(context);
        return Back.To(form[SignInLink.Back]);
    }

    private static RazorComponentResult<SignInPage> Show(string back, string message, int status) => PageSetup.Page<SignInPage>(new SignInModel(back, message), status);
}
