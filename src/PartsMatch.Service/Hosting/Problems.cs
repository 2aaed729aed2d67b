using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.WebUtilities;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Pages.Errors;

namespace PartsMatch.Service.Hosting;

/// <summary>What goes wrong at the level of HTTP, as problem details (RFC 9457), or as a page for a person at a browser. An exception is logged under an id, and only the id is told.</summary>
internal static partial class Problems
{
    public static Task WriteAsync(HttpContext context, int status, string code, string message) => WriteAsync(context, status, code, message, more: []);

    /// <summary>With members of the problem's own beside its code.</summary>
    public static Task WriteAsync(HttpContext context, int status, string code, string message, params IEnumerable<KeyValuePair<string, object?>> more)
    {
        IResult answer = Browser.Asks(context)
            ? ErrorModel.Page(status, message)
            : Results.Problem(
                message,
                statusCode: status,
                title: ReasonPhrases.GetReasonPhrase(status),
                type: "about:blank",
                extensions: more.Prepend(new("code", code)));
        return answer.ExecuteAsync(context);
    }

    public static void UseProblems(this WebApplication app)
    {
        app.UseExceptionHandler(new ExceptionHandlerOptions { ExceptionHandler = WriteExceptionAsync, CreateScopeForErrors = true, SuppressDiagnosticsCallback = _ => true });
        app.UseStatusCodePages(pages => WriteStatusAsync(pages.HttpContext));
    }

    /// <summary>Logs an exception under a new id.</summary>
    public static string Log(ILogger logger, Exception exception)
    {
        var id = Guid.NewGuid().ToString("N");
        LogFailure(logger, id, exception);
        return id;
    }

    public static string Masked(string id) => $"Something went wrong here, not in what was asked. The log holds it under {id}.";

    private static Task WriteExceptionAsync(HttpContext context)
    {
        var exception = context.Features.Get<IExceptionHandlerFeature>()!.Error;
        if (exception is BadHttpRequestException bad) return WriteAsync(context, bad.StatusCode, CodeOf(bad.StatusCode), SentenceOf(bad.StatusCode));
        var logger = context.RequestServices.GetRequiredService<ILoggerFactory>().CreateLogger(typeof(Problems).FullName!);
        return WriteAsync(context, StatusCodes.Status500InternalServerError, Codes.Internal, Masked(Log(logger, exception)));
    }

    private static Task WriteStatusAsync(HttpContext context) => context.Response.StatusCode switch
    {
        StatusCodes.Status404NotFound => WriteAsync(context, 404, Codes.NoSuchPage, Browser.Asks(context) ? "There is nothing at this address." : "There is nothing at this address. GraphQL is at /graphql."),
        StatusCodes.Status405MethodNotAllowed => WriteAsync(context, 405, Codes.MethodNotAllowed, $"This address takes {context.Response.Headers.Allow}."),
        var status => WriteAsync(context, status, CodeOf(status), SentenceOf(status)),
    };

    private static string CodeOf(int status) => status switch
    {
        StatusCodes.Status413PayloadTooLarge => Codes.RequestTooLarge,
        StatusCodes.Status414UriTooLong => Codes.RequestTooLarge,
        StatusCodes.Status415UnsupportedMediaType => Codes.MediaTypeUnsupported,
        _ => Codes.RequestMalformed,
    };

    private static string SentenceOf(int status) => status switch
    {
        StatusCodes.Status413PayloadTooLarge => "More was sent than is taken at once.",
        StatusCodes.Status414UriTooLong => FormattableString.Invariant($"The address is too long: at most {AddressLength.Most} characters are taken."),
        StatusCodes.Status415UnsupportedMediaType => "What was sent is of a kind that this address does not take.",
        _ => "The request cannot be answered as it is.",
    };

    [LoggerMessage(Level = LogLevel.Error, Message = "Failure {Id}")]
    private static partial void LogFailure(ILogger logger, string id, Exception exception);
}
