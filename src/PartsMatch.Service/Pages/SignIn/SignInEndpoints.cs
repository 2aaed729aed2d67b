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
    private const string NotSignedIn = "This needs a key, and you are not signed in, or no longer.";
    private const string SpentCode = "This link was used already, is too old, or was cut short. Sign in with the key instead.";

    public static void Map(WebApplication app)
    {
        app.MapGet(SignInLink.Path, (HttpContext context, string? back) => PageSetup.Page<SignInPage>(SignInModel.To(back ?? CameFrom(context.Request)))).WithMetadata(new OpenToAll());
        app.MapPost(SignInLink.FirstPath, async (HttpContext context) =>
        {
            var form = await Typed.ReadAsync(context);
            return PageSetup.Page<SignInPage>(SignInModel.With(form, form[SignInLink.Onward]));
        }).DisableAntiforgery().WithMetadata(new OpenToAll());
        app.MapPost(SignInLink.Path, (HttpContext context, IAntiforgery antiforgery, SignInAttempts attempts, KeyRing keys) =>
            SignInAsync(context, antiforgery, attempts, SignInModel.Key, keys.LabelOf, WrongKey)).WithMetadata(new OpenToAll());
        // A preview of the link, which a mail program may fetch, spends nothing.
        app.MapGet(SignInLink.OncePath, (string? code) => PageSetup.Page<OncePage>(new OnceModel(code ?? string.Empty))).WithMetadata(new OpenToAll());
        app.MapPost(SignInLink.OncePath, (HttpContext context, IAntiforgery antiforgery, SignInAttempts attempts, OneTimeCode code) =>
            SignInAsync(context, antiforgery, attempts, SignInLink.Code, code.Spend, SpentCode)).WithMetadata(new OpenToAll());
        app.MapPost(SignInLink.OutPath, SignOutAsync).WithMetadata(new OpenToAll());
    }

    /// <summary>In place of what was asked for: asks for a key, and keeps what was typed until there is one.</summary>
    public static async Task AskAsync(HttpContext context)
    {
        var request = context.Request;
        var address = $"{request.Path}{request.QueryString}";
        // A file cannot be put into a page; and who came by a link comes back by it.
        var model = HttpMethods.IsPost(request.Method) && request.HasFormContentType && !request.ContentType!.StartsWith("multipart/", StringComparison.OrdinalIgnoreCase)
            ? SignInModel.With(await Typed.ReadAsync(context), address) with { Why = NotSignedIn }
            : SignInModel.To(address) with { Why = HttpMethods.IsPost(request.Method) ? $"{NotSignedIn} Nothing was done; choose the file again afterwards." : null };
        await PageSetup.Page<SignInPage>(model, StatusCodes.Status401Unauthorized).ExecuteAsync(context);
    }

    /// <summary>The page of this service from which someone came (Referer); none for someone from elsewhere.</summary>
    private static string CameFrom(HttpRequest request) =>
        request.GetTypedHeaders().Referer is { } page && page.Authority == request.Host.Value && !page.AbsolutePath.StartsWith(SignInLink.Path, StringComparison.Ordinal) ? page.PathAndQuery : string.Empty;

    private static async Task<IResult> SignInAsync(HttpContext context, IAntiforgery antiforgery, SignInAttempts attempts, string input, Func<string, string?> labelOf, string wrong)
    {
        var form = await Typed.ReadAsync(context);
        var secret = form[input].Trim();
        if (!await antiforgery.IsRequestValidAsync(context)) return Show(form, SendAgain, StatusCodes.Status400BadRequest);
        if (secret.Length == 0) return Show(form, "No key is typed yet.", StatusCodes.Status422UnprocessableEntity);
        var address = context.Connection.RemoteIpAddress;
        if (attempts.Begin(address) is var wait && wait > TimeSpan.Zero)
        {
            context.Response.Headers[HeaderNames.RetryAfter] = Math.Ceiling(wait.TotalSeconds).ToString(CultureInfo.InvariantCulture);
            return Show(form, $"Too many wrong ones were sent. Wait {SignInModel.Words(wait)}, then try again.", StatusCodes.Status429TooManyRequests);
        }

        if (labelOf(secret) is not { } label) return Show(form, wrong, StatusCodes.Status422UnprocessableEntity);
        attempts.WasRight(address);
        await SignInCookie.BeginAsync(context, label);
        return GoOn(form);
    }

    private static async Task<IResult> SignOutAsync(HttpContext context, IAntiforgery antiforgery)
    {
        var form = await Typed.ReadAsync(context);
        if (!await antiforgery.IsRequestValidAsync(context)) return ErrorModel.Page(StatusCodes.Status400BadRequest, "You are still signed in: the page was open for too long.");
        await SignInCookie.EndAsync(context);
        return GoOn(form);
    }

    private static IResult GoOn(Typed form) => form[SignInLink.Onward] is { Length: > 0 } onward ? Back.Onward(onward) : Back.To(form[SignInLink.Back]);

    private static SignInModel Carried(Typed form) => form[SignInLink.Onward] is { Length: > 0 } onward ? SignInModel.With(form, onward) : SignInModel.To(form[SignInLink.Back]);

    private static RazorComponentResult<SignInPage> Show(Typed form, string message, int status) => PageSetup.Page<SignInPage>(Carried(form) with { Wrong = message }, status);
}
